import { describe, expect, test } from 'vitest';
import type { Hole, LeadStock } from '../../../../sim/design/design.ts';
import { buildHull } from '../../../../sim/hull/hull.ts';
import { placeHole } from '../../../../sim/mass/hole.ts';
import { wallOf } from '../../../../sim/mass/wall.ts';
import { ellipsoidBody, plankHull } from '../../../support/bodies.ts';

const PLANK = plankHull(20, 40);

function thickness(changes: Partial<Hole>): number {
  const hole = { name: 'h', from: 'belly', x: 5e6, across: 0, diameter: 8, depth: 12, point: Math.PI } as const;
  return wallOf(
    PLANK,
    placeHole(PLANK, { ...hole, lead: null, air: null, plugDensity: 0.00115, done: false, ...changes }, 0),
  ).thickness;
}

describe('the thinnest wall of a hole in a plank', () => {
  test.each([
    ['in the middle is half of what the drill leaves of the width', {}, 10 - 4],
    ['off the middle is on that side', { across: 3 }, 10 - 4 - 3],
    ['off the middle the other way is as thin', { across: -3 }, 10 - 4 - 3],
    ['deep is ahead of the drill', { depth: 38 }, 2],
    ['from the back is ahead of it too', { from: 'back', depth: 38 }, 2],
    ['from port is to starboard', { from: 'port', depth: 17 }, 3],
    ['from starboard is to port', { from: 'starboard', depth: 19 }, 1],
    ['from the side, high up, is to the back', { from: 'port', depth: 10, across: 14 }, 2],
    ['from the side, low down, is to the belly', { from: 'port', depth: 10, across: -15 }, 1],
    ['that breaks through is none', { across: 8 }, 0],
  ] as const)('%s', (_, changes, wanted) => {
    expect(thickness(changes)).toBeCloseTo(wanted, 6);
  });
});

const SHOT: LeadStock = { name: 'shot in epoxy', kind: 'filled', density: 0.0073 };

/** Lead that fills so much of the shaft of a hole of 8 mm. */
function column(mm: number): Hole['lead'] {
  return { stock: SHOT, mass: Math.PI * 16 * mm * SHOT.density };
}

describe('the thinnest wall round lead in a plank', () => {
  test.each([
    // 12 deep, with 10 of lead: it begins 2 under the belly
    ['from the belly is the plug where that is shorter than the wood beside it', { lead: column(10) }, 2],
    ['from the back is the plug too', { from: 'back', lead: column(10.5) }, 1.5],
    ['deep in the wood is to the flank', { depth: 20, lead: column(10) }, 10 - 4],
    ['deep and off the middle is to the nearer flank', { depth: 20, across: 2.5, lead: column(10) }, 10 - 4 - 2.5],
    ['from the flank is the plug', { from: 'port', depth: 9, lead: column(7.5) }, 1.5],
    ['from the flank is what is left to the other one', { from: 'starboard', depth: 17, lead: column(8) }, 3],
    ['round a chamber counts as round lead', { air: { plug: 1.2 } }, 1.2],
    ['that fills the hole to the skin is none', { lead: column(12) }, 0],
  ] as const)('%s', (_, changes, wanted) => {
    expect(thickness(changes)).toBeCloseTo(wanted, 3);
  });

  test('under the back is from the tip of a pointed drill', () => {
    const point = (118 * Math.PI) / 180;
    const tip = 4 / Math.tan(point / 2);
    // of the lead 10 mm over the shoulder's depth less what fills the point
    expect(thickness({ depth: 36, point, lead: column(6) })).toBeCloseTo(40 - 36 - tip, 3);
  });
});

test('a hole square through the middle of a round bar has its wall at the corner of its floor', () => {
  // half way along a bar of 10 m and 20 mm across; the floor's rim lies 4 off the axis and 6 over the middle
  const bar = buildHull(ellipsoidBody(5000, 10, 10));
  const hole = { name: 'h', from: 'belly', x: 5000, across: 0, diameter: 8, depth: 16, point: Math.PI } as const;
  const rest = { lead: null, air: null, plugDensity: 0.00115, done: false };
  const { thickness: wall, at } = wallOf(bar, placeHole(bar, { ...hole, ...rest }, 0));
  expect(wall).toBeCloseTo(10 - Math.hypot(4, 6), 3);
  expect(Math.abs(at[1] / at[2])).toBeCloseTo(4 / 6, 1);
});
