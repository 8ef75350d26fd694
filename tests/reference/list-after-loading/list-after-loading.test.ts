import { expect, test } from 'vitest';
import type { FloatingBody } from '../../../sim/hydro/body.ts';
import { floatBody } from '../../../sim/hydro/float.ts';
import { treeOf } from '../../support/float-mesh.ts';
import { barMesh } from '../../support/meshes.ts';
import book from './case.json' with { type: 'json' };

const { weight_t, KG, KM, draught, loads } = book.given;
const { expect: wanted } = book;
/** Salt water, t/m³. */
const WATER = 1.025;
const DEPTH = 16;
// KM = d/2 + B²/(12 d)
const BM = KM - draught / 2;
const breadth = Math.sqrt(12 * draught * BM);
const length = wanted.weight_t.value / (WATER * breadth * draught);

const bare: FloatingBody = {
  trees: [treeOf(barMesh(length, breadth, DEPTH))],
  waterDensity: WATER,
  mass: weight_t,
  centre: [0, 0, KG - DEPTH / 2],
  outside: [],
  hung: [],
};

/** The ship with some of the loads at their places. */
function loaded(some: typeof loads): FloatingBody {
  return {
    ...bare,
    hung: some.map((load) => ({
      mass: load.weight_t,
      volume: 0,
      eye: [0, load.starboard, load.KG - DEPTH / 2],
      hang: 0,
    })),
  };
}

const ship = floatBody(loaded(loads));

test('her weight and the height of its centre are those of the table of moments', () => {
  expect(Math.abs(ship.mass - wanted.weight_t.value)).toBeLessThan(wanted.weight_t.tolerance);
  const moment = ship.mass * (ship.gravityCentre[2] + DEPTH / 2);
  expect(Math.abs(moment - wanted.moment_tm.value)).toBeLessThan(wanted.moment_tm.tolerance);
  expect(Math.abs(ship.gravityCentre[1] - wanted.GG1.value)).toBeLessThan(wanted.GG1.tolerance);
});

test('upright, her metacentric height is the one of the book', () => {
  // the same weights brought to the middle line
  const upright = floatBody(loaded(loads.map((load) => ({ ...load, starboard: 0 }))));
  expect(upright.heel).toBeCloseTo(0, 12);
  expect(upright.draft).toBeCloseTo(draught, 9);
  expect(Math.abs(upright.gm - wanted.GM.value)).toBeLessThan(wanted.GM.tolerance);
});

test('she lists to starboard, as far as the book says and exactly as a wall-sided hull must', () => {
  const degrees = (ship.heel * 180) / Math.PI;
  expect(Math.abs(degrees - wanted.list_deg.value)).toBeLessThan(wanted.list_deg.tolerance);
  const tan = Math.tan(ship.heel);
  const GM = KM - (ship.gravityCentre[2] + DEPTH / 2);
  expect((GM + (BM / 2) * tan ** 2) * tan).toBeCloseTo(ship.gravityCentre[1], 10);
});
