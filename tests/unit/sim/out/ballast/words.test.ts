import { describe, expect, test } from 'vitest';
import type { HungEffect } from '../../../../../sim/ballast/forgiveness.ts';
import type { Obstacle } from '../../../../../sim/ballast/plan.ts';
import {
  holeWords,
  hungWords,
  obstacleWords,
  pinWords,
  planWords,
  trimWords,
  whatIfWords,
} from '../../../../../sim/out/ballast/words.ts';
import { amountsIn } from '../../../../../sim/units/amounts.ts';
import { makePlan, makeWhatIf } from '../../../../support/make-checked-bait.ts';
import { makeHole } from '../../../../support/make-hole.ts';

const DEGREE = Math.PI / 180;
const IMPERIAL = amountsIn('in-oz');

describe('why a link cannot be ballasted', () => {
  test.each<readonly [Obstacle, string]>([
    [{ kind: 'too-heavy', over: 1.234 }, 'Without any lead tail is 1.23 g too heavy already.'],
    [{ kind: 'too-heavy', over: 0.03 }, 'Without any lead tail has its weight already, and is not level.'],
    [
      { kind: 'no-weight-left', net: 0.15, moment: 30 },
      'Only 0.15 g may be added to tail: too little to level it with.',
    ],
    [{ kind: 'empty-shop', lacks: 'drills' }, "The shop's lists have no drills."],
    [{ kind: 'empty-shop', lacks: 'lead' }, "The shop's lists have no lead."],
    [
      { kind: 'empty-shop', lacks: 'drills that take the lead' },
      "The shop's lists have no drill that takes its lead (at most 1 mm wider than the rod).",
    ],
    [
      { kind: 'outside', x: 61.26, from: 66, to: 104 },
      'Lead for tail would have to stand 61.3 mm from the nose tip; its holes fit from 66.0 mm to 104.0 mm.',
    ],
    [{ kind: 'no-room', wanted: 12.5, most: 8.04 }, 'Tail wants 12.50 g more, and its holes hold about 8.04 g.'],
    [{ kind: 'not-level' }, 'No holes that fit into tail bring it within 2° of level and upright.'],
  ])('%o', (why, words) => {
    expect(obstacleWords('tail', why)).toBe(words);
  });

  test('is said in the units that are asked for', () => {
    expect(obstacleWords('tail', { kind: 'outside', x: 50.8, from: 63.5, to: 101.6 }, IMPERIAL)).not.toContain('mm');
    expect(obstacleWords('tail', { kind: 'too-heavy', over: 28 }, IMPERIAL)).toContain('oz');
  });
});

describe('a plan in a line', () => {
  test.each([
    [
      makePlan(0, 'head', { state: 'planned', lead: 4.3, left: { trim: 0.4 * DEGREE, net: 0.01 } }),
      '4.3 g of lead in head, 0.4° nose-down as rounded.',
    ],
    [
      makePlan(0, 'head', { state: 'planned', lead: 4.3, left: { trim: 0.01 * DEGREE, net: 0 } }),
      '4.3 g of lead in head, level as rounded.',
    ],
    [makePlan(0, 'head', { state: 'planned', lead: 4.3, left: null }), '4.3 g of lead in head.'],
    [makePlan(0, 'head'), 'Head rests as it should without lead.'],
    [
      makePlan(0, 'head', { state: 'kept', lead: 2 }),
      'Head keeps its 2.0 g of lead: over the pin it bears what its neighbour cannot.',
    ],
    [
      makePlan(0, 'head', { state: 'cannot', why: { kind: 'too-heavy', over: 2 } }),
      'Without any lead head is 2.00 g too heavy already.',
    ],
  ])('%#', (plan, words) => {
    expect(planWords(plan)).toBe(words);
  });
});

describe('a hole in a line', () => {
  test.each([
    [makeHole(), 'head, hole 1: from the belly at 24.0 mm, 8.0 mm wide, 10.0 mm deep, 4.0 g of 8 mm rod'],
    [
      makeHole({ across: 3, lead: null }),
      'head, hole 1: from the belly at 24.0 mm, 3.0 mm to starboard, 8.0 mm wide, 10.0 mm deep',
    ],
    [
      makeHole({ from: 'back', across: -3, lead: null }),
      'head, hole 1: from the back at 24.0 mm, 3.0 mm to port, 8.0 mm wide, 10.0 mm deep',
    ],
    [
      makeHole({ from: 'port', across: -6, lead: null }),
      'head, hole 1: from the port at 24.0 mm, 6.0 mm below the datum, 8.0 mm wide, 10.0 mm deep',
    ],
    [
      makeHole({ from: 'starboard', across: 6, lead: null }),
      'head, hole 1: from the starboard at 24.0 mm, 6.0 mm above the datum, 8.0 mm wide, 10.0 mm deep',
    ],
    // a drill with a point is measured to where it is full
    [
      makeHole({ point: 118 * DEGREE, lead: null }),
      'head, hole 1: from the belly at 24.0 mm, 8.0 mm wide, 10.0 mm deep to its shoulder',
    ],
    [
      makeHole({ lead: null, air: { plug: 4 } }),
      'head, hole 1: from the belly at 24.0 mm, 8.0 mm wide, 10.0 mm deep, air under a plug of 4.0 mm',
    ],
  ])('%#', (hole, words) => {
    expect(holeWords(hole)).toBe(words);
  });
});

test('trim is level below a twentieth of a degree, and has its way from there', () => {
  expect([0, 0.049, -0.049].map((degrees) => trimWords(degrees * DEGREE))).toEqual(['level', 'level', 'level']);
  expect([0.051, -0.051].map((degrees) => trimWords(degrees * DEGREE))).toEqual(['0.1° nose-down', '0.1° tail low']);
});

test('what a pin carries is said by its size', () => {
  const load = { force: -0.456, moment: -123.4 };
  const carries = 'the pin carries 0.46 g and 123 g mm; let go it';
  expect(pinWords({ ...load, curl: null })).toBe(`${carries} stays straight`);
  expect(pinWords({ ...load, curl: { yaw: -0.7, heel: 0.3 } })).toBe(`${carries} curls by 40° and heels by 17°`);
});

test('a hung item is told with what would undo it, as far as anything would', () => {
  const hook: HungEffect = { name: 'fore treble', trim: 1.5 * DEGREE, levelX: 44.4, levelMass: 1.26 };
  const start = 'fore treble trims it 1.5° nose-down';
  expect(hungWords(hook)).toBe(`${start}; level with its eye at 44.4 mm, or a mass of 1.3 g`);
  expect(hungWords({ ...hook, levelMass: null })).toBe(`${start}; level with its eye at 44.4 mm`);
  expect(hungWords({ ...hook, levelX: null })).toBe(`${start}; level with a mass of 1.3 g`);
  expect(hungWords({ ...hook, levelX: null, levelMass: null })).toBe(start);
});

describe('what becomes of a setup', () => {
  const rowOf = (change: Partial<ReturnType<typeof makeWhatIf>['change']>) =>
    whatIfWords(makeWhatIf({ change: { netWet: 0.52, trim: 0, proud: null, firstFoot: null, ...change } }));

  test('is weight first, then height, then trim, each only where it changes', () => {
    expect(rowOf({})).toBe('+0.52 g in the water');
    expect(rowOf({ netWet: -0.5 })).toBe('-0.50 g in the water');
    expect(rowOf({ proud: -0.4 })).toBe('+0.52 g in the water, 0.4 mm lower');
    expect(rowOf({ proud: 0.4, trim: -0.2 * DEGREE })).toBe('+0.52 g in the water, 0.4 mm higher, turns 0.2° tail low');
    expect(rowOf({ proud: 0.04, trim: 0.04 * DEGREE })).toBe('+0.52 g in the water');
    expect(rowOf({ firstFoot: -0.42 })).toBe('+0.52 g in the water, its first foot 0.4 s sooner');
    expect(rowOf({ firstFoot: 0.42 })).toBe('+0.52 g in the water, its first foot 0.4 s later');
    expect(rowOf({ firstFoot: 0.04 })).toBe('+0.52 g in the water');
  });

  test('at the same target is the lead that it then wants', () => {
    expect(whatIfWords(makeWhatIf({ lead: { mass: 6.2, change: -0.7 } }))).toBe('-0.7 g of lead, 6.2 g in all');
  });
});
