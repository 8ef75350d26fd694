import { describe, expect, test } from 'vitest';
import { evaluateExpression, parseExpression } from '../../../../sim/design/expression.ts';
import { SimError } from '../../../../sim/flow/outcome.ts';

const NAMES: Readonly<Record<string, number>> = { length_mm: 140, head_mm: 58.8 };

function evaluated(text: string): number {
  return evaluateExpression(parseExpression(text, 'joints.0.x_mm'), (name) => NAMES[name] ?? Number.NaN);
}

describe('an expression in a design file', () => {
  test.each([
    ['12.5', 12.5],
    ['.5', 0.5],
    ['1e2', 100],
    ['length_mm * 0.42', 140 * 0.42],
    ['(length_mm - head_mm) / 2', (140 - 58.8) / 2],
    ['-2^2', -4],
    ['2^-1', 0.5],
    ['2^3^2', 512],
    ['+3 - -4', 7],
    ['min(3, 1, 2) + max(3, 1, 2)', 4],
    ['sqrt(16) + abs(-3) + round(2.5)', 10],
    ['1 - 2 - 3', -4],
    ['8 / 4 / 2', 1],
    ['\tlength_mm\t', 140],
  ])('%s is %d', (text, value) => {
    expect(evaluated(text)).toBe(value);
  });

  test.each([
    ['an implicit product', '2 length_mm', '"2 length_mm" is not allowed'],
    ['an implicit product of brackets', '2(length_mm)', 'is not allowed in an expression; allowed: numbers, names'],
    ['a per cent sign', '5%', '"%" is not allowed'],
    ['a remainder in words', '5 mod 2', 'is not allowed'],
    ['a factorial', '5!', '"!" is not allowed'],
    ['a comparison', '2 > 1', '">" is not allowed'],
    ['a choice', '1 ? 2 : 3', '"?" is not allowed'],
    ['an assignment', 'length_mm = 3', '"=" is not allowed'],
    ['a function of its own', 'f(x) = x', '"=" is not allowed'],
    ['a function of the parser', 'import(1)', '"import(1)" is not allowed'],
    ['an evaluation', 'evaluate(1)', '"evaluate(1)" is not allowed'],
    ['a sine', 'sin(1)', 'min, max, sqrt, abs, round'],
    ['a function every object has', 'toString(1)', 'is not allowed'],
    ['an operator as a function', 'add(1, 2)', 'is not allowed'],
    ['a call of a number', 'length_mm(3)', 'is not allowed'],
    ['rounding to places', 'round(2.345, 1)', 'is not allowed'],
    ['a least of nothing', 'min()', 'is not allowed'],
    ['a root of two', 'sqrt(4, 9)', 'is not allowed'],
    ['a property', 'length_mm.constructor', 'is not allowed'],
    ['an index', 'length_mm[1]', '"[" is not allowed'],
    ['a list', '[1, 2]', '"[" is not allowed'],
    ['an object', '{a: 1}', '"{" is not allowed'],
    ['text', '"a"', 'is not allowed'],
    ['true', 'true', '"true" is not allowed'],
    ['two statements', '1; 2', '";" is not allowed'],
    ['two lines', '1\n2', '"\\n" is not allowed'],
    ['a comment', '1 # mine', '"#" is not allowed'],
    ['a unit', '5 cm', 'a unit is not allowed in an expression'],
    ['a unit asked for', '5 to 3', 'is not allowed'],
    ['a decimal comma', '0,42', 'cannot be read: decimals stand after a point (write 0.42)'],
    ['a number in another base', '0x1f', '"0x1f" is not allowed'],
    ['a letter of another script', 'µ * 2', '"µ" is not allowed'],
    ['half an expression', 'length_mm *', 'cannot be read: it makes no sense where it ends'],
    ['an open bracket', '(1 + 2', 'cannot be read: it makes no sense where it ends'],
    ['two operators', '1 * / 2', 'cannot be read: it makes no sense at character 5, "/"'],
    ['only spaces', '   ', 'nothing in it'],
    ['element-wise operators', '2 .* 3', 'is not allowed'],
  ])('is refused for %s', (_, text, says) => {
    expect(() => parseExpression(text, 'joints.0.x_mm')).toThrow(SimError);
    expect(() => parseExpression(text, 'joints.0.x_mm')).toThrow(says);
    expect(() => parseExpression(text, 'joints.0.x_mm')).toThrow(/^joints\.0\.x_mm: /);
  });

  test('may have 120 characters, 40 parts and 12 levels, and not one more', () => {
    const signs = (count: number) => `${'-'.repeat(count)}1`;
    const sum = (terms: number) => Array(terms).fill('1').join('+');
    expect(evaluated(`1${' '.repeat(119)}`)).toBe(1);
    expect(() => evaluated(`1${' '.repeat(120)}`)).toThrow('121 characters, at most 120');
    // 12 signs stand above the 1
    expect(evaluated(signs(12))).toBe(1);
    expect(() => evaluated(signs(13))).toThrow('over 12 deep');
    // 20 terms and the 19 sums of them, shallow in brackets of four
    const shallow = Array(5)
      .fill(`(${sum(4)})`)
      .join('+');
    // each bracket is a part too: 20 terms, 15 + 4 sums, 5 brackets
    expect(() => evaluated(shallow)).toThrow('over 40 parts');
    expect(
      evaluated(
        Array(4)
          .fill(`(${sum(4)})`)
          .join('+'),
      ),
    ).toBe(16);
  });

  test('is refused at once however deep its brackets or high its powers', () => {
    const started = performance.now();
    expect(() => evaluated(`${'('.repeat(60)}1${')'.repeat(60)}`)).toThrow(SimError);
    expect(() => evaluated(`${'sqrt('.repeat(19)}1${')'.repeat(19)}`)).toThrow('over 12 deep');
    expect(evaluated('9^9^9^9^9')).toBe(Number.POSITIVE_INFINITY);
    expect(() => evaluated('('.repeat(100_000))).toThrow('at most 120');
    expect(performance.now() - started).toBeLessThan(1000);
  });

  test('is plain data once read', () => {
    expect(parseExpression('-length_mm + max(1, 2)', '')).toEqual({
      kind: 'operation',
      operator: 'add',
      parts: [
        { kind: 'operation', operator: 'unaryMinus', parts: [{ kind: 'name', name: 'length_mm' }] },
        { kind: 'call', call: 'max', parts: [1, 2].map((value) => ({ kind: 'number', value })) },
      ],
    });
  });
});
