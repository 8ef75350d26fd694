import { describe, expect, test } from 'vitest';
import type { FloatingBody } from '../../../sim/hydro/body.ts';
import { floatBody } from '../../../sim/hydro/float.ts';
import { treeOf } from '../../support/float-mesh.ts';
import { barMesh } from '../../support/meshes.ts';
import book from './case.json' with { type: 'json' };

const { given, expect: wanted } = book;
const BREADTH = 60;

interface Question {
  readonly draught: number;
  readonly inch_trim_moment: number;
  readonly moved: number;
  readonly by: number;
}

/** Draughts at the ends of a box that answers to the inch trim moment, after the weight was moved aft; feet. */
function ends({ draught, inch_trim_moment, moved, by }: Question, length: number) {
  const depth = 2 * draught;
  // half way up to the water, so that she stands; KB + BM_L - KG lengthwise
  const KG = draught / 2;
  const GM_L = length ** 2 / (12 * draught);
  const weight = (inch_trim_moment * 12 * length) / GM_L;
  const ship: FloatingBody = {
    trees: [treeOf(barMesh(length, BREADTH, depth))],
    waterDensity: weight / (length * BREADTH * draught),
    mass: weight - moved,
    centre: [0, 0, KG - depth / 2],
    outside: [],
    hung: [{ mass: moved, volume: 0, eye: [by, 0, KG - depth / 2], hang: 0 }],
  };
  const { offset, up } = floatBody(ship);
  // along the ship's own end, from the keel to the surface up·p = offset
  const at = (x: number) => ((offset ?? Number.NaN) - up[0] * x) / up[2] + depth / 2;
  return { fore: at(-length / 2), aft: at(length / 2) };
}

describe('a box whose trim changes by an inch for 480 foot tons', () => {
  test.each(given.p_527.length)('and that is %d ft long trims 3 inches for 40 tons moved 36 ft', (length) => {
    const { fore, aft } = ends(given.p_527, length);
    const { value, tolerance } = wanted.p_527.trim_in;
    expect(Math.abs(12 * (aft - fore) - value)).toBeLessThan(tolerance);
  });
});

test('a box 600 ft long draws 9 ft 10 in forward and 10 ft 2 in aft after 20 tons moved 48 ft aft', () => {
  const { fore, aft } = ends(given.no_34, given.no_34.length);
  const { fore_in, aft_in, tolerance } = wanted.no_34;
  expect(Math.abs(12 * fore - fore_in.value)).toBeLessThan(tolerance);
  expect(Math.abs(12 * aft - aft_in.value)).toBeLessThan(tolerance);
});

test('a box 36 ft broad at 18 ft has its metacentre 15 ft over the keel', () => {
  const { breadth, draught } = given.box;
  const depth = 30;
  const float = floatBody({
    trees: [treeOf(barMesh(400, breadth, depth))],
    waterDensity: 1,
    mass: 400 * breadth * draught,
    // weight at the keel: GM is KM
    centre: [0, 0, -depth / 2],
    outside: [],
    hung: [],
  });
  const KB = float.buoyancyCentre[2] + depth / 2;
  expect(Math.abs(KB - wanted.box.KB)).toBeLessThan(wanted.box.tolerance);
  expect(Math.abs(float.gm - KB - wanted.box.BM)).toBeLessThan(wanted.box.tolerance);
  expect(Math.abs(float.gm - wanted.box.KM)).toBeLessThan(wanted.box.tolerance);
});
