import fc from 'fast-check';
import { parse, type SymbolNode } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { EQUATIONS } from '../../../../sim/equations/equations.ts';
import type { Amount } from '../../../../sim/equations/worked.ts';
import { placeText } from '../../../../sim/sources/cite.ts';
import { withUnits } from '../../../support/sums-of.ts';

const FUNCTIONS = ['sum', 'sqrt', 'atan', 'tan', 'cos'];

test('every formula has a name of its own', () => {
  const ids = EQUATIONS.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});

describe.each(EQUATIONS.map((equation) => [equation.id, equation] as const))('%s', (_, equation) => {
  const { formula, uses, gives } = equation;

  test('explains the symbols of its formula, and no others', () => {
    const symbols = new Set<string>();
    parse(formula).traverse((node) => {
      if (node.type === 'SymbolNode') symbols.add((node as SymbolNode).name);
    });
    const own = [...symbols].filter((name) => name !== 'pi' && !FUNCTIONS.includes(name));
    expect(own.sort()).toEqual(Object.keys(uses).sort());
  });

  test('says what it means, where it is from and where in the code it is', () => {
    const texts = [equation.name, equation.words, gives.means, placeText(equation.source)];
    for (const text of [...texts, ...Object.values(uses).map(({ means }) => means)]) expect(text.trim()).not.toBe('');
    expect(equation.code).toMatch(/^sim\/[\w/-]+\.ts/);
  });

  test('gives the unit it claims, for any numbers in the units of its symbols', () => {
    const positive = fc.double({ min: 0.1, max: 50, noNaN: true });
    fc.assert(
      fc.property(fc.array(positive, { minLength: 20, maxLength: 20 }), (numbers) => {
        let next = 0;
        const amount = (unit: Amount['unit']): Amount => {
          next++;
          return { value: numbers[next % numbers.length], unit, origin: 'any', column: null };
        };
        const values = Object.fromEntries(
          Object.entries(uses).map(([name, { unit, list }]) => [
            name,
            list ? [amount(unit), amount(unit)] : amount(unit),
          ]),
        );
        expect(Number.isFinite(withUnits(formula, values, gives.unit))).toBe(true);
      }),
      { numRuns: 20 },
    );
  });
});

test('a formula with a wrong unit in it is noticed', () => {
  const values = {
    m: { value: 3, unit: 'g', origin: '', column: null },
    V: { value: 2, unit: 'mm^2', origin: '', column: null },
  } as const;
  expect(() => withUnits('m / V', values, 'g/mm^3')).toThrow();
  expect(() => withUnits('m + V', values, 'g')).toThrow();
});
