import { describe, expect, test } from 'vitest';
import { createSpread, shiftsApart, shiftsOf, shrunkSheet } from '../../../../src/scene/apart.ts';
import { roomOf } from '../../../../src/scene/room.ts';
import { shownBait } from '../../../../src/scene/shown.ts';
import { makeDesignFile } from '../../../support/make-design.ts';
import { outcomesOf } from '../../../support/worked-bait.ts';

/** Knuckles reach into hollows by 3 mm, the second joint is square with 1 mm between, the third stands wide open. */
const SPANS = [
  [0, 43],
  [40, 80],
  [81, 121],
  [141, 178],
] as const;
/** A fifth of the mean of 43, 40, 40 and 37 mm. */
const GAP = 8;

const moved = (spans: readonly (readonly [number, number])[]) => {
  const shifts = shiftsApart(spans);
  return spans.map(([fore, aft], i) => [fore + (shifts[i] ?? Number.NaN), aft + (shifts[i] ?? Number.NaN)] as const);
};

describe('links pulled apart', () => {
  test('stand a fifth of their mean length from each other, knuckles clear of their hollows', () => {
    const ends = moved(SPANS);
    const gaps = ends.slice(1).map(([fore], i) => fore - (ends[i]?.[1] ?? Number.NaN));
    expect(gaps[0]).toBeCloseTo(GAP, 12);
    expect(gaps[1]).toBeCloseTo(GAP, 12);
    // already wider than that: left as it was
    expect(gaps[2]).toBeCloseTo(20, 12);
  });

  test('keep their order, their lengths and the middle of the whole', () => {
    const ends = moved(SPANS);
    const along = ends.flat();
    expect([...along].sort((a, b) => a - b)).toEqual(along);
    expect(((along[0] ?? Number.NaN) + (along.at(-1) ?? Number.NaN)) / 2).toBeCloseTo(89, 12);
    ends.forEach(([fore, aft], i) => {
      expect(aft - fore).toBeCloseTo((SPANS[i]?.[1] ?? Number.NaN) - (SPANS[i]?.[0] ?? Number.NaN), 12);
    });
  });

  test('do not move where there is one, or none', () => {
    expect(shiftsApart([[30, 70]])).toEqual([0]);
    expect(shiftsApart([])).toEqual([]);
  });

  test('go at once where motion is not wanted, else within 200 ms and back from where they are', () => {
    const spread = createSpread();
    const heard: number[] = [];
    spread.listen((share) => heard.push(share));
    spread.aim(true, 0, true);
    expect(spread.step(0)).toBe(false);
    spread.aim(false, 1000, false);
    expect(spread.step(1100)).toBe(true);
    spread.aim(true, 1100, false);
    expect(spread.step(1200)).toBe(true);
    expect(spread.step(1300)).toBe(false);
    expect(heard).toEqual([0, 1, 0.5, 0.75, 1]);
  });
});

describe('the room of a bait that is pulled apart', () => {
  const answers = outcomesOf(makeDesignFile());
  const bait = shownBait({ ...answers, lastGood: { bait: {}, links: [] } }, 'whole');
  if (bait === null) throw new Error('the plain bait can be shown');
  const [together, apart] = [roomOf(bait), roomOf(bait, shiftsOf(bait))];

  test('is longer by its gaps, about the same middle', () => {
    const [first = Number.NaN, last = Number.NaN] = shiftsOf(bait);
    expect(apart.length).toBeCloseTo(together.length + last - first, 9);
    expect(last).toBeGreaterThan(first);
    expect(apart.middle).toBeCloseTo(together.middle, 9);
  });

  test('is drawn smaller where the tub is too narrow, about the same place, and never larger', () => {
    const narrow = { width: 540, height: 500 };
    const sheet = { scale: 4, left: 30 };
    const shrunk = shrunkSheet(sheet, narrow, apart);
    expect(shrunk.left + apart.middle * shrunk.scale).toBeCloseTo(30 + apart.middle * 4, 9);
    expect(shrunk.left + (apart.middle - apart.length / 2) * shrunk.scale).toBeGreaterThan(0);
    expect(shrunk.left + (apart.middle + apart.length / 2) * shrunk.scale).toBeLessThan(narrow.width);
    const middled = { scale: 4, left: 480 };
    expect(shrunkSheet(middled, { width: 1440, height: 900 }, apart)).toEqual(middled);
    // a sheet still laid out for a wider tub
    expect(shrunkSheet(middled, narrow, apart)).toEqual(middled);
  });
});
