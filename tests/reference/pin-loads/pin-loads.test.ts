import { expect, test } from 'vitest';
import { assembled, type BoxLink, boxChain } from '../../support/box-chain.ts';
import { WATER } from '../../support/float-mesh.ts';
import sheet from './case.json' with { type: 'json' };

/** Metres are millimetres here, and a tonne is what a cubic metre of the sheet's water weighs. */
const TONNE = WATER;

/** A vessel cut at some stations, stiffly joined, with a weight in each part at a place along it. */
function partsOf(
  cuts: readonly number[],
  wide: number,
  high: number,
  weights: readonly { readonly mass: number; readonly x: number }[],
): readonly BoxLink[] {
  return weights.map(({ mass, x }, i) => ({
    from: cuts[i],
    to: cuts[i + 1],
    wide,
    high,
    mass: mass * TONNE,
    centre: [x, 0, -0.3 * high] as const,
  }));
}

test('a box vessel in five holds is sheared and bent at its bulkheads as the sheet has it, hogging negative', () => {
  const { given, at, shear_t, moment_tm, shear_tolerance, moment_tolerance } = sheet.holds;
  const cuts = [0, ...at, given.length];
  const weights = given.weights_t.map((mass, i) => ({ mass, x: (i + 0.5) * given.hold }));
  const total = given.weights_t.reduce((sum, mass) => sum + mass, 0);
  // deep enough to float the sheet's weights, which its 2 m of depth would not in fresh water
  const { straight } = assembled(
    boxChain(partsOf(cuts, given.breadth, (2 * total) / (given.length * given.breadth), weights)),
  );
  straight.joints.forEach(({ load }, j) => {
    expect(Math.abs(load.shear / TONNE - shear_t[j])).toBeLessThan(shear_tolerance);
    expect(Math.abs(load.moment / TONNE - moment_tm[j])).toBeLessThan(moment_tolerance);
  });
});

test('a barge free to trim under a load that grows along it has the shears and moments printed', () => {
  const { given, at, shear_t, moment_tm, shear_tolerance, moment_tolerance } = sheet.barge;
  // so broad that it trims by next to nothing, as the sheet takes it
  const parts = partsOf([0, ...at, given.length], 2000, 40, [
    { mass: 1e-9, x: 7.5 },
    { mass: given.load_t, x: given.centroid },
    { mass: 1e-9, x: 42.5 },
  ]);
  const { straight } = assembled(boxChain(parts));
  straight.joints.forEach(({ load }, j) => {
    // the sheet counts the shear of the same parts with the other sign: load less what bears it
    expect(Math.abs(load.shear / TONNE - -shear_t[j])).toBeLessThan(shear_tolerance);
    expect(Math.abs(load.moment / TONNE - -moment_tm[j])).toBeLessThan(moment_tolerance);
  });
});
