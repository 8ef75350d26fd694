import { evaluate, unit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { parseQuantity } from '../../../sim/units/parse.ts';
import { type QuantityKind, UNITS } from '../../../sim/units/parse-units.ts';
import reference from './case.json' with { type: 'json' };

/** The value of what is typed, in the file's unit. */
function read(typed: string, kind: QuantityKind): number {
  const quantity = parseQuantity(typed, { kind, unit: UNITS[kind][0]?.symbol ?? '' });
  if (!quantity.ok) throw new Error(quantity.message);
  return quantity.value;
}

describe('A quantity as typed', () => {
  test.each(reference.units)(
    'in $typed comes to what mathjs makes of $theirs',
    ({ kind, typed, theirs, file, times }) => {
      for (const [text, value] of [
        ['1', 1],
        ['3/8', 3 / 8],
        ['68', 68],
      ] as const) {
        // a percentage has no dimension there: 1 % is 10 in a thousand, or a hundredth
        const expected = times === undefined ? unit(value, theirs).toNumber(file) : value * times;
        const size = Math.abs(expected) + (kind === 'temperature' ? 273.15 : 0);
        const error = Math.abs(read(`${text} ${typed}`, kind as QuantityKind) - expected);
        expect(error).toBeLessThanOrEqual(reference.relative_tolerance * size);
      }
    },
  );

  test('every unit but the file’s own is held against it', () => {
    for (const [kind, units] of Object.entries(UNITS)) {
      const held = reference.units.filter((row) => row.kind === kind).length;
      expect([kind, held]).toEqual([kind, units.length - 1]);
    }
  });
});

describe('Why typed text is read without an evaluator of expressions', () => {
  test('1-3/8 is a subtraction there, and 1 3/8 is refused', () => {
    expect(evaluate('1-3/8')).toBe(0.625);
    expect(() => evaluate('1 3/8')).toThrow();
    expect(read('1-3/8', 'length')).toBe(1.375);
    expect(read('1 3/8', 'length')).toBe(1.375);
  });

  test('3/8 in is refused there, for `in` means `to`', () => {
    expect(() => unit('3/8 in')).toThrow();
    expect(() => evaluate('3/8 in to mm')).toThrow();
    expect(read('3/8 in', 'length')).toBe(9.525);
  });

  test('0,092 is refused there', () => {
    expect(() => unit('0,092 inch')).toThrow();
    expect(read('0,092', 'length')).toBe(0.092);
  });

  test('0.375 in comes back with noise there, and as 3/8 in here', () => {
    expect(unit('0.375 in').toNumber('in')).toBe(0.37499999999999994);
    expect(parseQuantity('0.375 in', { kind: 'length', unit: 'mm' })).toMatchObject({
      value: 9.525,
      understood: '0.375 in = 9.525 mm',
    });
  });

  test('1⅜ is 13/8 to the usual decomposition of signs, and one and three eighths here', () => {
    expect('1⅜'.normalize('NFKC')).toBe('13⁄8');
    expect(read('1⅜ in', 'length')).toBe(34.925);
  });
});
