import { describe, expect, test } from 'vitest';
import { type Arms, amountsIn, type Roll } from '../../../../../sim/index.ts';
import { armRows, layOutArms, SIZE } from '../../../../../src/panels/roll/arms-figure.ts';
import { makeRoll } from '../../../../support/make-checked-bait.ts';

const DEGREE = Math.PI / 180;
const METRIC = amountsIn('mm-g');

/** Arms of a sine, 3 mm at the most, all the way round; limits at either side where given. */
function sine(limit: number | null = null, rest = 0): Arms {
  const at = (degrees: number) => {
    const heel = degrees * DEGREE;
    return { heel, arm: 3 * Math.sin(heel - rest), energy: 1 - Math.cos(heel - rest) };
  };
  const over = (way: 1 | -1) => ({
    limit: limit === null ? null : way * limit * DEGREE,
    most: { heel: rest + way * 90 * DEGREE, arm: 3 },
    energy: 6,
    onEnd: null,
  });
  return {
    points: Array.from({ length: 73 }, (_, i) => at(5 * (i - 36))),
    starboard: over(1),
    port: over(-1),
  };
}

function figureOf(arms: Arms, roll: Partial<Roll> = {}) {
  return layOutArms(makeRoll({ ...roll, arms }), arms, 'mm-g', METRIC);
}

describe('The drawing of righting arms', () => {
  test('runs from half a turn to port to half a turn to starboard, through nothing where it rests', () => {
    const { curve, level, marks, heels } = figureOf(sine());
    const points = curve
      .slice(1)
      .split('L')
      .map((place) => place.split(' ').map(Number));
    expect(points).toHaveLength(73);
    expect(points[36]?.[1]).toBeCloseTo(level, 1);
    expect(points[54]?.[1]).toBeLessThan(level);
    const [rest] = marks;
    expect(rest).toMatchObject({ kind: 'rest', x: heels[2]?.x, label: null });
  });

  test('names its longest arms, and where it no longer comes back', () => {
    const names = figureOf(sine(74)).marks.flatMap(({ kind, label }) => (label ? [`${kind}: ${label.text}`] : []));
    expect(names).toEqual([
      'most: most 3.0 mm at 90°',
      'limit: limit 74°',
      'most: most 3.0 mm at 90°',
      'limit: limit 74°',
    ]);
  });

  test('names the loll of one that lays over', () => {
    const [rest] = figureOf(sine(null, 0.5), { loll: 0.5 }).marks;
    expect(rest?.label?.text).toBe('loll 29°');
  });

  test('keeps all its words on the paper, whatever they stand at', () => {
    for (const limit of [1, 60, 120, 179]) {
      const { marks, arms, heels } = figureOf(sine(limit));
      for (const label of [...marks.flatMap((mark) => mark.label ?? []), ...arms, ...heels]) {
        const width = 5 * label.text.length;
        const from = { start: label.x, middle: label.x - width / 2, end: label.x - width }[label.anchor];
        expect(from).toBeGreaterThanOrEqual(-1);
        expect(from + width).toBeLessThanOrEqual(SIZE.width + 1);
        expect(label.y).toBeGreaterThan(8);
        expect(label.y).toBeLessThan(SIZE.height);
      }
    }
  });

  test('has no number that is none, even of arms that are nothing', () => {
    const flat = { ...sine(), points: sine().points.map((point) => ({ ...point, arm: 0 })) };
    expect(JSON.stringify(figureOf(flat))).not.toMatch(/NaN|null,"y"|Infinity/);
    expect(figureOf(flat).curve).not.toMatch(/NaN|Infinity/);
  });

  test('is as well in inches', () => {
    const inches = layOutArms(makeRoll(), sine(), 'in-oz', amountsIn('in-oz'));
    expect(inches.arms.map(({ text }) => text)).toEqual(['-0.10', '-0.05', '0.00', '0.05', '0.10']);
  });
});

test('The table has what brings it back from either side, and a dash past the end of the curve', () => {
  const arms = sine();
  const ended = { ...arms, points: arms.points.filter(({ heel }) => heel < 100 * DEGREE) };
  const rows = armRows(ended, METRIC);
  expect(rows).toHaveLength(13);
  expect(rows[2]).toEqual({ heel: '30°', starboard: '+1.50 mm', port: '+1.50 mm' });
  expect(rows[8]).toEqual({ heel: '120°', starboard: '–', port: '+2.60 mm' });
});
