import { describe, expect, test } from 'vitest';
import { readDecimal, stepped, writeDecimal } from '../../../../src/ui/decimal.ts';

describe('A number as typed', () => {
  test.each([
    ['12.5', 12.5],
    ['12,5', 12.5],
    ['0,092', 0.092],
    [' 140 ', 140],
    ['.5', 0.5],
    ['7.', 7],
    ['-2', -2],
    ['−2', -2],
    ['+3', 3],
  ])('%j reads as %d', (text, value) => {
    expect(readDecimal(text, 'mm')).toEqual({ ok: true, value });
  });

  test.each(['3/8', '1 3/8', '1-3/8', '1,234.5', '1.2.3', '35 mm', '1e3', 'length_mm * 2', 'NaN', '-', '.', '0x10'])(
    '%j is refused with what was typed and what is wanted',
    (text) => {
      const typed = readDecimal(text, 'mm');
      expect(typed.ok).toBe(false);
      expect(typed).toMatchObject({
        message: `"${text}" is not a plain number: type mm with a decimal point, such as 12.5`,
      });
    },
  );

  test('Nothing typed is refused in words of its own', () => {
    expect(readDecimal('  ', 'g')).toMatchObject({ ok: false, message: expect.stringContaining('Nothing typed') });
  });
});

describe('A number as shown', () => {
  test.each([
    [58.8, [1, 3], '58.8'],
    [140, [1, 3], '140.0'],
    [9.525, [1, 3], '9.525'],
    // 0.27 of 140 comes to 37.800000000000004 in binary
    [140 * 0.27, [1, 3], '37.8'],
    [20, [0, 1], '20'],
    [0.36, [2, 5], '0.36'],
    [-0.0001, [1, 3], '0.0'],
    [-1.5, [1, 3], '-1.5'],
  ] as const)('%d with %j decimals is %j', (value, digits, text) => {
    expect(writeDecimal(value, digits)).toBe(text);
  });
});

describe('A step', () => {
  test.each([
    [140, 0.5, 1, 140.5],
    [140, 0.5, -10, 135],
    // off the steps: the first one lands on a whole step
    [58.8, 0.5, 1, 59],
    [58.8, 0.5, -1, 58.5],
    [0.1 + 0.2, 0.1, 1, 0.4],
    [0, 1, -1, -1],
  ])('from %d in steps of %d, %d of them, comes to %d', (value, step, by, next) => {
    expect(stepped(value, step, by)).toBe(next);
  });
});
