import { describe, expect, test } from 'vitest';
import type { Hole } from '../../../../sim/design/design.ts';
import { placeHole } from '../../../../sim/mass/hole.ts';
import { wallOf } from '../../../../sim/mass/wall.ts';
import { plankHull } from '../../../support/bodies.ts';

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
