import { describe, expect, test } from 'vitest';
import type { Hole } from '../../../../sim/design/design.ts';
import { buildHull } from '../../../../sim/hull/hull.ts';
import { inBody } from '../../../../sim/mass/checks/wood.ts';
import { placeHole } from '../../../../sim/mass/hole.ts';
import { wallOf } from '../../../../sim/mass/wall.ts';
import { BOARD } from '../../../support/bodies.ts';

const HULL = buildHull(BOARD);

function drilled(changes: Partial<Hole>) {
  const size = { diameter: 6, depth: 10, point: Math.PI, lead: null, air: null, plugDensity: 0.00115, done: false };
  return placeHole(HULL, { name: 'h', from: 'belly', x: 66, across: 0, ...size, ...changes }, 0);
}

describe('a hole where a board runs straight', () => {
  test('takes a plain cylinder out of the flat of belly, back or flank', () => {
    for (const hole of [drilled({}), drilled({ from: 'back' }), drilled({ from: 'port', across: 3 })]) {
      expect(hole.volume).toBeCloseTo(Math.PI * 9 * 10, 9);
    }
    expect(drilled({}).mouth).toEqual([66, 0, -21]);
    expect(drilled({ from: 'back' }).mouth[2]).toBeCloseTo(19, 12);
    expect(drilled({ from: 'starboard', across: 3 }).mouth[1]).toBeCloseTo(9, 12);
  });

  test('takes less where it is drilled over an edge', () => {
    // the disc reaches 1.5 mm into a round of 2.5 mm, which falls back by up to 0.5 mm there
    expect(drilled({ across: 5 }).volume).toBeLessThan(Math.PI * 9 * 10 - 0.3);
  });

  test('leaves the wood between it and the flat flank', () => {
    expect(wallOf(HULL, drilled({})).thickness).toBeCloseTo(9 - 3, 9);
    expect(wallOf(HULL, drilled({ across: -2 })).thickness).toBeCloseTo(7 - 3, 9);
  });
});

test('a point in the corner that an edge took off is not in the wood', () => {
  expect(inBody(HULL, [66, 8.9, 10])).toBe(true);
  expect(inBody(HULL, [66, 8.9, 18.9])).toBe(false);
  expect(inBody(HULL, [66, 5, 18.9])).toBe(true);
});
