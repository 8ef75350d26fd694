import { describe, expect, test } from 'vitest';
import {
  baitOffCentreWords,
  leastLeadWords,
  linkOffCentreWords,
  rollWords,
  steadinessWords,
} from '../../../../../sim/out/roll/words.ts';
import type { Arms } from '../../../../../sim/roll/arms.ts';
import { makeRoll } from '../../../../support/make-checked-bait.ts';

const DEGREE = Math.PI / 180;
const { arms } = makeRoll();
if (arms === null) throw new Error('a roll has arms');

function withWays(starboard: Partial<Arms['starboard']>, port: Partial<Arms['port']>): Arms {
  if (arms === null) throw new Error('a roll has arms');
  return { ...arms, starboard: { ...arms.starboard, ...starboard }, port: { ...arms.port, ...port } };
}

describe('how it takes being rolled', () => {
  test('alike to either side is said once', () => {
    expect(rollWords(makeRoll())).toEqual([
      'Roll: steady, GM 1.90 mm (9.5 % of its width)',
      'Comes back from up to 74° either way; 31 g mm of work takes it there; most arm 2.1 mm at 41°; let go belly up it comes back',
    ]);
  });

  test('each side has its own words where they differ', () => {
    const [, over] = rollWords(makeRoll({ arms: withWays({ limit: null }, { limit: null, onEnd: -100 * DEGREE }) }));
    expect(over).toMatch(
      /^Comes back from however far it is rolled to starboard, comes back from all of 100° to port, past which it swings up on end;/,
    );
  });

  test('of a link that lays over names its angle of loll and what is past upright', () => {
    const roll = makeRoll({
      steadiness: 'lays over',
      gm: -0.32,
      loll: 31.7 * DEGREE,
      fromBellyUp: false,
      arms: withWays({ limit: 60 * DEGREE }, { limit: 1e-9 }),
    });
    expect(rollWords(roll)).toEqual([
      'Roll: lays over, GM -0.32 mm held upright (-1.6 % of its width)',
      'Comes to 31.7° to starboard, its angle of loll; comes back from up to 60° to starboard; rolled back past upright it goes over to port; 31 g mm of work takes it there; most arm 2.1 mm at 41°; let go belly up it does not come back',
    ]);
    const port = { ...roll, loll: -31.7 * DEGREE, arms: withWays({ limit: 4 * DEGREE }, { limit: -60 * DEGREE }) };
    expect(rollWords(port)[1]).toContain('up to 60° to port; rolled back past 4° it goes over to starboard');
  });

  test('under water says plainly what the arm is', () => {
    const roll = makeRoll({ isAfloat: false, gm: 3.2 });
    expect(rollWords(roll)).toEqual([
      'Roll: steady, buoyancy 3.20 mm over weight (16 % of its width)',
      'Wholly under, its righting arm is 2.10 mm times the sine of the heel from its rest, so it comes back from anywhere',
    ]);
    expect(rollWords({ ...roll, loll: Math.PI })[1]).toContain('Wholly under, turns over to 180.0° to starboard; its');
  });

  test('says no more decimals than are meant', () => {
    expect(rollWords(makeRoll(), { gm: 0, heel: 0 })[0]).toBe('Roll: steady, GM 2 mm (9.5 % of its width)');
  });

  test('on end, and without a preferred way up, has no arms to tell of', () => {
    expect(rollWords(makeRoll({ steadiness: null, arms: null }))).toEqual([
      'Roll: it stands on end or has gone over it, where roll means nothing',
    ]);
    const round = makeRoll({ steadiness: 'tender', gm: 0.001, arms: null });
    expect(rollWords(round)).toEqual(['Roll: no preferred way up, GM 0.00 mm (0.0 % of its width)']);
    expect([makeRoll(), round].map(steadinessWords)).toEqual(['steady', 'no preferred way up']);
  });
});

test('lead off the middle is said alone and joined up, and not where there is none', () => {
  expect(linkOffCentreWords(4.1 * DEGREE, 1.3 * DEGREE)).toBe(
    'Its lead 3 mm off the middle heels it 4.1° alone, 1.3° joined up',
  );
  expect(linkOffCentreWords(null, null)).toBeNull();
  expect(baitOffCentreWords({ offCentre: { all: 5.2 * DEGREE, links: [] } })).toBe(
    'All lead 3 mm off the middle heels it 5.2°',
  );
  expect(baitOffCentreWords({ offCentre: null })).toBeNull();
});

describe('the least lead', () => {
  const { least } = makeRoll();
  if (least === null) throw new Error('a roll has a least lead');

  test('is said with its height, and how much makes it steady', () => {
    expect(leastLeadWords({ least })).toBe(
      'At least 3.2 g of lead where its lead is, 14.0 mm below the datum, stands it up; 3.5 g of lead makes it steady',
    );
  });

  test('of what is planned, or low over the keel, says so', () => {
    expect(leastLeadWords({ least: { ...least, of: 'plan', at: [30, 0, 2] } })).toContain(
      'where it is planned, 2.0 mm above the datum,',
    );
    expect(leastLeadWords({ least: { ...least, of: 'keel' } })).toContain('low over the keel,');
  });

  test('without a metal to reckon with is the net weight', () => {
    const stands = { net: 3, lead: null };
    expect(leastLeadWords({ least: { ...least, stands, steady: null } })).toBe(
      'At least 3.0 g more than the wood it replaces where its lead is, 14.0 mm below the datum, stands it up; no weight there makes it steady',
    );
  });

  test('may be none, or be nowhere enough', () => {
    const none = { net: 0, lead: 0 };
    expect(leastLeadWords({ least: { ...least, stands: none, steady: none } })).toBe('Without any lead it is steady');
    expect(leastLeadWords({ least: { ...least, stands: none } })).toMatch(
      /^Without any lead it stands; 3\.5 g of lead/,
    );
    expect(leastLeadWords({ least: { ...least, stands: null, steady: null } })).toMatch(
      /^No weight of lead .* stands it up$/,
    );
    expect(leastLeadWords({ least: null })).toBeNull();
  });
});
