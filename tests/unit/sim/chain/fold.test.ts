import { expect, test } from 'vitest';
import { foldBait, holdAt } from '../../../../sim/chain/fold.ts';
import { waterOf } from '../../../../sim/chain/system.ts';
import { floatBody } from '../../../../sim/hydro/float.ts';
import { type BoxLink, boxChain, rigidOf } from '../../../support/box-chain.ts';

const DEGREE = Math.PI / 180;
const PLAY = { room: 0.4, rise: [0.5, 0.5], jam: 0.5 } as const;

/** Links of 60 mm, 20 wide and 30 high, weighted low; lead is shifted aft by so much in each. */
function baitOf(shifts: readonly number[], low = -8) {
  const links = shifts.map((shift, i): BoxLink => {
    const from = 64 * i;
    return { from, to: from + 60, wide: 20, high: 30, mass: 26, centre: [from + 30 + shift, 0, low] };
  });
  const chain = boxChain(links, PLAY);
  return { chain, start: floatBody(rigidOf(chain)) };
}

test('a bait whose links are balanced each alone rests at any fold, upright and unloaded', () => {
  const { chain, start } = baitOf([0, 0, 0]);
  const folded = holdAt(chain, start, [40 * DEGREE, -25 * DEGREE], null);
  for (const pose of folded.ground.poses) expect(waterOf(pose).up[2]).toBeCloseTo(1, 9);
  for (const { sum } of folded.ground.pulls) expect(Math.abs(sum)).toBeLessThan(1e-6);
});

test('a bait that sags at its pin heels as it folds, about as the sine of half the fold, and alike to both sides', () => {
  const { chain, start } = baitOf([1, -1]);
  const stiff = { ...chain, hinges: chain.hinges.map((hinge) => ({ ...hinge, room: 0, rise: [0, 0] as const })) };
  const reach = [{ port: 30 * DEGREE, starboard: 30 * DEGREE }];
  const { port, starboard } = foldBait(stiff, start, reach);
  expect(starboard.points).toHaveLength(11);
  starboard.points.forEach(({ heel, fold }, k) => {
    expect(heel).toBeCloseTo(-port.points[k].heel, 6);
    expect(fold).toBeCloseTo(k * 3 * DEGREE, 9);
  });
  // the heavy middle comes out to one side of the line between the ends: 2 M sin(ψ/2)/(W GM)
  const early = starboard.points[3];
  const expected = (2 * 26 * Math.sin(early.fold / 2)) / (52 * start.gm);
  expect(Math.abs(early.heel) / expected).toBeGreaterThan(0.95);
  expect(Math.abs(early.heel) / expected).toBeLessThan(1.1);
  expect(starboard.rollsFrom).toBeNull();
});

test('a tender bait with a heavy sag goes over when it turns right round', () => {
  const { chain, start } = baitOf([6, -6], -3);
  const reach = [{ port: 90 * DEGREE, starboard: 90 * DEGREE }];
  const { starboard } = foldBait(chain, start, reach);
  expect(starboard.rollsFrom).not.toBeNull();
  expect(Math.abs(starboard.most.heel)).toBeGreaterThan(30 * DEGREE);
});

test('a bait that is not alike to either side is folded to both for itself, and one that is has two mirror images', () => {
  const { chain, start } = baitOf([1, -1]);
  const reach = [{ port: 30 * DEGREE, starboard: 30 * DEGREE }];
  const { port, starboard } = foldBait(chain, start, reach);
  starboard.points.forEach(({ bait }, k) => {
    const held = holdAt(chain, start, [-k * 3 * DEGREE], null);
    const image = port.points[k].bait;
    held.ground.poses.forEach((pose, i) => {
      for (const axis of ['x', 'y', 'z', 'origin'] as const) {
        // within what its play leaves open, come to from one side or the other
        for (const n of [0, 1, 2]) expect(Math.abs(image.poses[i][axis][n] - pose[axis][n])).toBeLessThan(0.02);
      }
    });
    expect(image.joints[0].yaw).toBeCloseTo(-bait.joints[0].yaw, 12);
  });
  // lead to one side in one link only
  const bodies = chain.bodies.map((body, i) => ({ ...body, centre: [body.centre[0], i === 0 ? 0.5 : 0, -8] as const }));
  const uneven = { ...chain, bodies };
  const leaning = floatBody(rigidOf(uneven));
  const both = foldBait(uneven, leaning, reach);
  expect(Math.abs(both.port.most.heel + both.starboard.most.heel)).toBeGreaterThan(0.02);
  const held = holdAt(uneven, leaning, [-30 * DEGREE], null);
  const end = both.port.points.at(-1)?.bait.links[0].heel ?? Number.NaN;
  expect(end).toBeCloseTo(Math.atan2(-held.ground.poses[0].y[2], held.ground.poses[0].z[2]), 2);
});
