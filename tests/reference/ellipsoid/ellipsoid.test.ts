import { describe, expect, test } from 'vitest';
import type { Joint } from '../../../sim/design/design.ts';
import { buildHull, type Hull } from '../../../sim/hull/hull.ts';
import { buildRing } from '../../../sim/hull/section.ts';
import { cutLinks, type LinkSpec } from '../../../sim/links/cut.ts';
import { loftLink } from '../../../sim/mesh/loft.ts';
import { measureArea, measureVolume } from '../../../sim/mesh/measure.ts';
import type { Mesh } from '../../../sim/mesh/mesh.ts';
import { linkTopology } from '../../../sim/mesh/topology.ts';
import { ellipsoidBody } from '../../support/bodies.ts';
import { validateMesh } from '../../support/meshes.ts';
import { area, cut } from './case.json';

const GAP = 1e-3;

function ellipsoid(a: number, b: number, c: number): Hull {
  return buildHull(ellipsoidBody(a, b, c));
}

/** A flat cut whose aft face, or fore face, stands at x. */
function joint(x: number): Joint {
  const hinge = {
    kind: 'pin' as const,
    eyes: [],
    wire: 1,
    bore: 2,
    shank: 5,
    pin: { x, diameter: 1, z: [-1, 1] as const, heldBy: 'fore' as const, density: 0.00785 },
  };
  return { x, gap: GAP, faces: { kind: 'bevel', fore: 0, aft: 0 }, hinge, slots: [] };
}

function meshOf(hull: Hull, spec: LinkSpec, fineness: number): Mesh {
  const counts = {
    bands: 15 * fineness,
    steps: 8 * fineness,
    foreTip: spec.foreFace === null,
    aftTip: spec.aftFace === null,
    slots: 0,
  };
  const mesh = {
    topology: linkTopology(counts),
    positions: loftLink(hull, buildRing(hull.section, counts.steps), spec, counts, { skin: 0, face: 0 }),
  };
  expect(validateMesh(mesh)).toEqual([]);
  return mesh;
}

function errorsOf(values: readonly number[], wanted: number): readonly number[] {
  return values.map((value) => Math.abs(value / wanted - 1));
}

/** Orders by which errors of meshes each twice as fine fall. */
function ordersOf(errors: readonly number[]): readonly number[] {
  return errors.slice(1).map((error, i) => Math.log2(errors[i] / error));
}

/** Asserts that what a skin encloses closes in on the wanted value by more than the square of the step. */
function expectClosesIn(values: readonly number[], wanted: number): void {
  const errors = errorsOf(values, wanted);
  for (const order of ordersOf(errors)) expect(order).toBeGreaterThan(cut.order.low);
  expect(errors[errors.length - 1]).toBeLessThan(cut.expect.tolerance);
}

const FINENESSES = [2, 4, 8, 16];

describe('an ellipsoid sawn across', () => {
  const [a, b, c] = cut.given.semi_axes_mm;
  const hull = ellipsoid(a, b, c);
  const { volume_over_abc, centre_over_a } = cut.expect;
  const rows = cut.given.u.map((u, i) => ({
    u,
    volume: volume_over_abc.value[i] * a * b * c,
    centre: centre_over_a.value[i] * a,
  }));
  const links = [
    { name: 'fore', density: null },
    { name: 'aft', density: null },
  ];
  /** The aft link begins exactly at x = u a of an ellipsoid about the origin. */
  const piecesAt = (u: number) => cutLinks(2 * a, links, [joint(a + u * a - GAP / 2)]);

  test.each(rows)('at $u of its half length leaves $volume mm³ aft of the cut', ({ u, volume }) => {
    const [, aft] = piecesAt(u);
    const volumes = FINENESSES.map((fineness) => measureVolume(meshOf(hull, aft, fineness)).volume);
    expectClosesIn(volumes, volume);
  });

  test.each(rows)('at $u of its half length has the centre of the aft part $centre mm aft of its middle', (row) => {
    const [, aft] = piecesAt(row.u);
    const centres = FINENESSES.map((fineness) => measureVolume(meshOf(hull, aft, fineness)).centre[0] - a);
    expectClosesIn(centres, row.centre);
  });

  test.each(rows)('at $u: both parts and the sawdust of the gap are the whole', ({ u }) => {
    const [fore, aft] = piecesAt(u);
    const volumes = [fore, aft].map((spec) => measureVolume(meshOf(hull, spec, 16)).volume);
    // the gap is thin: its section stands for it to the second order of 1e-3 mm
    const sawdust = GAP * Math.PI * b * c * (1 - u * u);
    expect(volumes[0] + volumes[1] + sawdust).toBeCloseTo((4 / 3) * Math.PI * a * b * c, 1);
  });
});

describe('a whole ellipsoid', () => {
  const rows = area.given.semi_axes.map((axes, i) => ({ axes, wanted: area.expect.area.value[i] }));

  test.each(rows)('of semi-axes $axes has an area of $wanted', ({ axes: [a, b, c], wanted }) => {
    // ten times as large: a bait's size, and a hundred times the area
    const hull = ellipsoid(10 * a, 10 * b, 10 * c);
    const [whole] = cutLinks(20 * a, [{ name: 'whole', density: null }], []);
    const areas = FINENESSES.map((fineness) => measureArea(meshOf(hull, whole, fineness)).area / 100);
    for (const order of ordersOf(errorsOf(areas, wanted))) {
      expect(order).toBeGreaterThan(area.order.low);
      expect(order).toBeLessThan(area.order.high);
    }
    const [middle, fine] = areas.slice(-2);
    expect(Math.abs((4 * fine - middle) / 3 / wanted - 1)).toBeLessThan(area.expect.tolerance);
  });
});
