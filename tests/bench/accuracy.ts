import { type Float, floatBody } from '../../sim/hydro/float.ts';
import { dot, length, subtract, type Vec3 } from '../../sim/numerics/vec3.ts';
import { degreeFromRadian } from '../../sim/units/convert.ts';
import { floatHomogeneous } from '../support/float-mesh.ts';
import { barMesh } from '../support/meshes.ts';
import type { AllAnswers } from '../support/worked-bait.ts';
import { bodyAt, CONVERGED, ENGINE, type Fineness, meshAt, SIZES } from './demo.ts';
import { atMost, type Row, valueRow } from './rows.ts';

/** Relative densities well away from those at which a square log changes its way of floating. */
const LOG_DENSITIES = [0.12, 0.18, 0.225, 0.235, 0.245, 0.255, 0.265, 0.275, 0.3, 0.35, 0.4, 0.45, 0.5];

/** Heel error of a homogeneous square log against the closed forms. */
export function logRow(): Row {
  const bar = barMesh(400, 10, 10);
  const errors = LOG_DENSITIES.map((density) => {
    const heel = Math.abs(degreeFromRadian(floatHomogeneous(bar, density).heel)) % 90;
    return Math.abs(Math.min(heel, 90 - heel) - logHeel(density));
  });
  return valueRow('square log: largest error of heel', Math.max(...errors), '°', atMost(1e-5));
}

/**
 * Degrees from flat, for densities up to 1/2 (Am. J. Phys. 31 (8), p. 565 for the regimes; closed forms as in
 * tests/reference/square-log).
 */
function logHeel(s: number): number {
  if (s <= (3 - Math.sqrt(3)) / 6) return 0;
  if (s <= 1 / 4) return degreeFromRadian(Math.atan(Math.sqrt(12 * s * (1 - s) - 2)));
  if (s >= 9 / 32) return 45;
  // wet legs p + q = 3/2, p q = 2 s
  const half = Math.sqrt(9 / 16 - 2 * s);
  return degreeFromRadian(Math.atan((3 / 4 - half) / (3 / 4 + half)));
}

interface Measure {
  readonly name: string;
  readonly unit: string;
  /** At the engine's own fineness. */
  readonly most: number | null;
  readonly apart: (float: Float, right: Float, middle: Vec3) => number;
}

const MEASURES: readonly Measure[] = [
  { name: 'draft', unit: 'mm', most: 0.01, apart: (float, right) => Math.abs(draftOf(float) - draftOf(right)) },
  {
    // without what the draft owes to the keel of the mesh, which lies a little lower than the smooth one
    name: 'water over the middle of the link',
    unit: 'mm',
    most: null,
    apart: (float, right, middle) => Math.abs(depthOf(float, middle) - depthOf(right, middle)),
  },
  {
    name: 'attitude',
    unit: '°',
    most: 0.03,
    apart: (float, right) => degreeFromRadian(2 * Math.asin(length(subtract(float.up, right.up)) / 2)),
  },
  { name: 'GM', unit: 'mm', most: 0.005, apart: (float, right) => Math.abs(float.gm - right.gm) },
];

function draftOf({ draft }: Float): number {
  return draft ?? Number.NaN;
}

function depthOf({ offset, up }: Float, point: Vec3): number {
  return (offset ?? Number.NaN) - dot(up, point);
}

/** Every link of the demo that floats, at every size, against a converged mesh: the worst of them. */
export function linkRows(answers: AllAnswers): readonly Row[] {
  const floatAt = (link: number, fineness: Fineness) =>
    floatBody(bodyAt(answers, link, meshAt(answers, link, fineness)));
  const afloat = answers.links.flatMap(({ float, wetted }, link) =>
    float.state === 'floats' ? [{ link, middle: wetted.centre, right: floatAt(link, CONVERGED) }] : [],
  );
  return SIZES.flatMap((size) => {
    const floats = afloat.map(({ link }) => floatAt(link, size));
    return MEASURES.map(({ name, unit, most, apart }) => {
      const worst = Math.max(...afloat.map(({ right, middle }, i) => apart(floats[i], right, middle)));
      const target = size.name === ENGINE && most !== null ? atMost(most) : null;
      return valueRow(`${size.name}: error of ${name}`, worst, unit, target);
    });
  });
}
