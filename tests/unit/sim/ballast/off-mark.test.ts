import { describe, expect, test } from 'vitest';
import { waterHeight, waterOffMark } from '../../../../sim/ballast/off-mark.ts';
import { upFrom } from '../../../../sim/frames.ts';

const DEGREE = Math.PI / 180;
const LEVEL = { up: upFrom(0, 0), offset: 5 };

describe('the water against its mark', () => {
  test('is over it by the same everywhere on a bait that floats level and 0.7 mm too deep', () => {
    const marks = waterOffMark({ ...LEVEL, offset: 5.7 }, LEVEL, [40, 80], 120);
    expect(marks.map(({ at, x }) => [at, x])).toEqual([
      ['nose', 0],
      [1, 40],
      [2, 80],
      ['tail', 120],
    ]);
    for (const { off, mark } of marks) {
      expect(off).toBeCloseTo(0.7, 12);
      expect(mark).toBe(5);
    }
  });

  test('climbs at the nose and falls at the tail of a bait that floats nose-down about its middle', () => {
    // right half way along; nose-down by an angle whose tangent is 0.05: 3 mm in 60
    const up = upFrom(Math.atan(0.05), 0);
    const marks = waterOffMark({ up, offset: up[0] * 60 + up[2] * 5 }, LEVEL, [60], 120);
    expect(marks.map(({ off }) => off)).toEqual([expect.closeTo(3, 12), expect.closeTo(0, 12), expect.closeTo(-3, 12)]);
  });

  test('is taken along the line that was asked for where that is itself not level', () => {
    const aim = { up: upFrom(Math.atan(0.1), 0), offset: 0 };
    const [nose, tail] = waterOffMark({ ...LEVEL, offset: 0 }, aim, [], 100);
    expect([nose.mark, tail.mark]).toEqual([0, expect.closeTo(-10, 12)]);
    expect(tail.off).toBeCloseTo(10, 12);
  });

  test('is measured on the centre plane of a bait that heels', () => {
    const up = upFrom(0, 30 * DEGREE);
    const [nose] = waterOffMark({ up, offset: 6 * up[2] }, LEVEL, [], 100);
    expect(nose.off).toBeCloseTo(1, 12);
  });

  test('is not spoken of for a bait that went under, was to weigh something, lies on its side or stands on its tail', () => {
    expect(waterOffMark({ ...LEVEL, offset: null }, LEVEL, [], 100)).toEqual([]);
    expect(waterOffMark(LEVEL, { ...LEVEL, offset: null }, [], 100)).toEqual([]);
    for (const up of [upFrom(0, 90 * DEGREE), upFrom(0, Math.PI), upFrom(-85 * DEGREE, 0)]) {
      expect(waterOffMark({ up, offset: 3 }, LEVEL, [], 100)).toEqual([]);
    }
  });

  test('is spoken of up to the 60° of trim that a target may ask for', () => {
    expect(waterOffMark({ up: upFrom(60 * DEGREE, 0), offset: 3 }, LEVEL, [], 100)).toHaveLength(2);
  });
});

test('a water under a bait that lies belly up has no height over the datum', () => {
  expect(waterHeight({ up: [0, 0, -1], offset: 3 }, 10)).toBeNull();
  expect(waterHeight({ up: [0, 0, 1], offset: 3 }, 10)).toBe(3);
});
