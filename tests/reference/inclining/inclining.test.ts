import { expect, test } from 'vitest';
import type { FloatingBody } from '../../../sim/hydro/body.ts';
import { floatBody } from '../../../sim/hydro/float.ts';
import { rightingArm, treeOf, WATER } from '../../support/float-mesh.ts';
import { prismMesh, roundSection } from '../../support/meshes.ts';
import book from './case.json' with { type: 'json' };

const { given, expect: wanted } = book;
const RADIUS = 15;
/** Fine enough that its flats shift a heel by a few parts in a million. */
const SIDES = 1440;

/** A round ship half under water; G lies GM under her axis once the weight hangs at its place off her middle. */
function roundShip(weight: number, GM: number, moved: number, by: number, sides = SIDES): FloatingBody {
  const length = weight / (WATER * (Math.PI / 2) * RADIUS ** 2);
  return {
    trees: [treeOf(prismMesh(roundSection(RADIUS, sides), -length / 2, length / 2))],
    waterDensity: WATER,
    mass: weight - moved,
    centre: [0, 0, (-GM * weight) / (weight - moved)],
    outside: [],
    hung: [{ mass: moved, volume: 0, eye: [0, by, 0], hang: 0 }],
  };
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

/** What the surveyor would work out: GM by the heel that the engine finds for a ship with the GM of the book. */
function surveyed(weight: number, moved: number, by: number, tanHeel: number) {
  const GM = (moved * by) / (weight * tanHeel);
  const heel = floatBody(roundShip(weight, GM, moved, by)).heel;
  return { GM, heel, found: (moved * by) / (weight * Math.tan(heel)) };
}

test('100 tons moved 30 ft heel a ship of 9000 tons by 8 degrees: GM 2.37 ft', () => {
  const { weight, moved, by, heel_deg } = given.no_18;
  const { GM, heel, found } = surveyed(weight, moved, by, Math.tan(radians(heel_deg)));
  expect((heel * 180) / Math.PI).toBeCloseTo(heel_deg, 3);
  expect(Math.abs(found - wanted.no_18.GM.value)).toBeLessThan(wanted.no_18.GM.tolerance);
  expect(found / GM).toBeCloseTo(1, 4);
});

test('3 tons moved 40 ft put a pendulum of 29 ft 6 in out by 2 in: GM 8.17 ft', () => {
  const { weight, moved, by, pendulum_in, deflection_in } = given.no_19;
  const { heel, found } = surveyed(weight, moved, by, deflection_in / pendulum_in);
  expect(pendulum_in * Math.tan(heel)).toBeCloseTo(deflection_in, 4);
  expect(Math.abs(found - wanted.no_19.GM.value)).toBeLessThan(wanted.no_19.GM.tolerance);
});

test('15 t must move 4.2 m to list a ship of 4515 t by 2 degrees', () => {
  const { weight, moved, GM, heel_deg } = given.ex_14_2;
  const { value, tolerance } = wanted.ex_14_2.by;
  const heelAt = (by: number) => (floatBody(roundShip(weight, GM, moved, by)).heel * 180) / Math.PI;
  expect(heelAt(value - tolerance)).toBeLessThan(heel_deg);
  expect(heelAt(value + tolerance)).toBeGreaterThan(heel_deg);
});

test('a ship of 10,000 t with a GM of 0.5 m rights herself at 7.75 degrees by 674.25 t m', () => {
  const { weight, GM, heel_deg } = given.ex_15_1;
  const { value, tolerance } = wanted.ex_15_1.moment;
  const moment = weight * rightingArm(roundShip(weight, GM, 0, 0), radians(heel_deg));
  expect(Math.abs(moment - value)).toBeLessThan(tolerance);
});

test('a ship of flats heels as a round one the more nearly the more flats she has', () => {
  const { weight, moved, by, heel_deg } = given.no_18;
  const GM = (moved * by) / (weight * Math.tan(radians(heel_deg)));
  const wobble = (sides: number) =>
    Math.max(
      ...[0.9, 1, 1.1].map((share) => {
        const found = floatBody(roundShip(weight, GM / share, moved, by, sides)).heel;
        return Math.abs(Math.tan(found) / (share * Math.tan(radians(heel_deg))) - 1);
      }),
    );
  const [coarse, middle, fine] = [90, 360, 1440].map(wobble);
  // four times as many flats: a sixteenth, give or take where on a flat the water ends
  expect(middle).toBeLessThan(coarse / 8);
  expect(fine).toBeLessThan(middle / 8);
});
