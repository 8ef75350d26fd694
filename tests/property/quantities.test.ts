import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatRuler, type RulerParts, rulerFraction } from '../../sim/units/format-ruler.ts';
import { parseQuantity } from '../../sim/units/parse.ts';
import { type QuantityKind, UNITS } from '../../sim/units/parse-units.ts';
import { measureOf } from '../../src/view/measures.ts';

const RUNS = { numRuns: Number(process.env.FLOATWRIGHT_RUNS ?? 300) };
const KINDS = Object.keys(UNITS) as readonly QuantityKind[];
const RULERS: readonly RulerParts[] = [16, 32, 64];

/** The value of what is typed where inches are shown. */
function inches(typed: string): number {
  const quantity = parseQuantity(typed, { kind: 'length', unit: 'in' });
  if (!quantity.ok) throw new Error(quantity.message);
  return quantity.value;
}

/** Every way to write a whole number and a fraction that a box takes. */
const SMALL = ['⁰¹²³⁴⁵⁶⁷⁸⁹', '₀₁₂₃₄₅₆₇₈₉'] as const;
const smallDigits = (number: number, set: string) =>
  [...String(number)].map((digit) => [...set][Number(digit)]).join('');
const MIXED = [
  (whole: number, top: number, bottom: number) => `${whole} ${top}/${bottom}`,
  (whole: number, top: number, bottom: number) => `${whole}-${top}/${bottom}`,
  (whole: number, top: number, bottom: number) => `${whole}\u00a0${top}⁄${bottom}\u202fin`,
  (whole: number, top: number, bottom: number) => `${whole} ${top}/${bottom}"`,
  (whole: number, top: number, bottom: number) => `${whole}-${top}/${bottom}”`,
  (whole: number, top: number, bottom: number) =>
    `${whole}${smallDigits(top, SMALL[0])}⁄${smallDigits(bottom, SMALL[1])} in`,
  (whole: number, top: number, bottom: number) => `${whole * bottom + top}/${bottom} inch`,
  (whole: number, top: number, bottom: number) => `${((whole * bottom + top) * 1000) / bottom} thou`,
];

describe('every sixty-fourth of an inch up to two feet', () => {
  const marks = Array.from({ length: 24 * 64 + 1 }, (_, mark) => mark);

  test('is stored as the millimetres that it is, to the last digit, however it is typed', () => {
    for (const mark of marks) {
      const [whole, top] = [Math.floor(mark / 64), mark % 64];
      // 25.4 / 64 is 0.396875, so that a mark has six decimals at most: whole numbers keep them exactly
      const exact = (mark * 396875) / 1e6;
      for (const write of MIXED) expect(inches(write(whole, top, 64))).toBe(exact);
    }
  });

  test('prints as itself, and what was printed reads as itself, round and round', () => {
    for (const mark of marks) {
      const exact = (mark * 396875) / 1e6;
      let length = exact;
      for (let round = 0; round < 5; round += 1) {
        const text = formatRuler(length, 64);
        expect(text).not.toContain('≈');
        length = inches(text);
      }
      expect(length).toBe(exact);
    }
  });

  test('is reached from nothing by steps of the field, and left again, without drift', () => {
    const measure = measureOf('length', 'in-oz');
    let length = 0;
    for (const mark of marks.slice(1)) {
      length = measure.stepped(length, 1);
      expect(length).toBe((mark * 396875) / 1e6);
    }
    for (const _ of marks.slice(1)) length = measure.stepped(length, -1);
    expect(length).toBe(0);
  });
});

describe('any length', () => {
  test('in millimetres, shown in inches to the stored precision and typed again, is what it was', () => {
    fc.assert(
      fc.property(fc.integer({ min: -600_000, max: 600_000 }), (micrometres) => {
        const length = micrometres / 1000;
        // nine decimals of an inch are 2.5e-8 mm: to the micrometre nothing is lost
        const typed = (length / 25.4).toFixed(9);
        expect(Number(inches(typed).toFixed(6)) + 0).toBe(length + 0);
        expect(inches(`${length} mm`)).toBe(length + 0);
      }),
      RUNS,
    );
  });

  test('has a nearest mark within half a part, and says whether it is on it', () => {
    fc.assert(
      fc.property(fc.integer({ min: -600_000, max: 600_000 }), fc.constantFrom(...RULERS), (micrometres, parts) => {
        const length = micrometres / 1000;
        const text = formatRuler(length, parts);
        const nearest = inches(text.replace('≈ ', ''));
        expect(Math.abs(nearest - length)).toBeLessThanOrEqual(25.4 / parts / 2 + 1e-9);
        expect(text.startsWith('≈')).toBe(nearest !== length + 0);
        expect(rulerFraction(length, parts) === null).toBe(text.startsWith('≈'));
      }),
      RUNS,
    );
  });
});

describe('any text', () => {
  const signs = fc.constantFrom(
    ...'0123456789.,/-+ \'"’”′″°½⅜⅟⁄−³¹₈^*()e',
    ...[
      'in',
      'mm',
      'ft',
      'oz',
      'g',
      'lb',
      'c',
      'f',
      'k',
      'kg/m3',
      ' per ',
      '\u00a0',
      '\u2009',
      '\u200b',
      '🐟',
      '__proto__',
    ],
  );

  test('is a finite number, with what was understood, or is refused in words', () => {
    const typed = fc.oneof(
      fc.array(signs, { maxLength: 12 }).map((parts) => parts.join('')),
      fc.string(),
    );
    fc.assert(
      fc.property(typed, fc.constantFrom(...KINDS), fc.constantFrom('mm-g', 'in-oz' as const), (text, kind, units) => {
        const quantity = measureOf(kind, units as 'mm-g').read(text);
        if (quantity.ok) {
          expect(Number.isFinite(quantity.value)).toBe(true);
          expect(Object.is(quantity.value, -0)).toBe(false);
          expect(quantity.understood).not.toMatch(/NaN|undefined|Infinity/);
        } else {
          expect(quantity.message).toMatch(/^(Nothing typed: |".*" is not read: ).*[^.]$/s);
          expect(quantity.message).not.toMatch(/NaN|undefined|Infinity/);
        }
      }),
      { numRuns: RUNS.numRuns * 10 },
    );
  });

  test('that was understood is understood in the same way when its echo is typed', () => {
    const typed = fc.array(signs, { maxLength: 8 }).map((parts) => parts.join(''));
    fc.assert(
      fc.property(typed, fc.constantFrom(...KINDS), (text, kind) => {
        const measure = measureOf(kind, 'mm-g');
        const quantity = measure.read(text);
        if (!quantity.ok) return;
        const [echo = ''] = quantity.understood.split(/ [=≈] /);
        // a comma is echoed as the point: 1,2345 as 1.2345; nothing else in an echo can be refused
        expect(measure.read(echo)).toMatchObject({ ok: true, value: quantity.value });
      }),
      { numRuns: RUNS.numRuns * 10 },
    );
  });
});
