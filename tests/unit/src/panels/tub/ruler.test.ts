import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rulerTicks, scaleBar } from '../../../../../src/panels/tub/ruler.ts';

describe('a ruler along the bait', () => {
  test('is marked from the nose: every 5 mm and numbered by tens where there is room for that', () => {
    const ticks = rulerTicks(32, 4, 'mm-g');
    expect(ticks.filter(({ text }) => text !== null).map(({ at, text }) => [at, text])).toEqual([
      [0, '0'],
      [10, '10'],
      [20, '20'],
      [30, '30'],
    ]);
    expect(ticks.map(({ at }) => at)).toEqual([0, 5, 10, 15, 20, 25, 30]);
  });

  test('in inches is numbered by whole ones', () => {
    const ticks = rulerTicks(60, 4, 'in-oz');
    expect(ticks.filter(({ text }) => text !== null).map(({ text }) => text)).toEqual(['0', '1', '2']);
    expect(ticks.find(({ text }) => text === '2')?.at).toBeCloseTo(50.8, 12);
  });

  test('never has ticks or numbers too near to be told apart, nor runs past the tail', () => {
    const units = fc.constantFrom('mm-g' as const, 'in-oz' as const);
    fc.assert(
      fc.property(
        fc.double({ min: 40, max: 400, noNaN: true }),
        fc.double({ min: 0.6, max: 12, noNaN: true }),
        units,
        (length, scale, system) => {
          const ticks = rulerTicks(length, scale, system);
          const numbered = ticks.filter(({ text }) => text !== null);
          ticks.slice(1).forEach(({ at }, i) => {
            expect((at - (ticks[i]?.at ?? 0)) * scale).toBeGreaterThan(4.999);
          });
          numbered.slice(1).forEach(({ at }, i) => {
            expect((at - (numbered[i]?.at ?? 0)) * scale).toBeGreaterThan(29.999);
          });
          expect(ticks[0]).toEqual({ at: 0, text: '0' });
          expect(ticks.at(-1)?.at).toBeLessThanOrEqual(length + 1e-6);
        },
      ),
    );
  });
});

test('a bar is the longest round length that fits', () => {
  expect(scaleBar(120, 4, 'mm-g')).toEqual({ length: 20, text: '20 mm' });
  expect(scaleBar(120, 1, 'mm-g')).toEqual({ length: 100, text: '100 mm' });
  expect(scaleBar(120, 4, 'in-oz')).toEqual({ length: 25.4, text: '1 in' });
});
