import { describe, expect, test } from 'vitest';
import { massTotal } from '../../../../sim/equations/balance.ts';
import { BM, restHeel, tipAngle } from '../../../../sim/equations/floating.ts';
import { massVolume, pointHeight } from '../../../../sim/equations/parts.ts';
import { render } from '../../../../sim/equations/render.ts';
import { type Amount, type Case, putIn } from '../../../../sim/equations/worked.ts';

function amount(unit: Amount['unit'], value: number, column: object | null = null): Amount {
  return { unit, value, origin: 'any', column };
}

function textOf(...cases: readonly Case[]): readonly string[] {
  const decimals = render.settleDecimals(cases);
  return cases.map((each) => render.workedText(each, decimals));
}

describe('an equation in print', () => {
  test('has its symbols, and signs as a maker writes them', () => {
    expect(render.formulaText(pointHeight)).toBe('p = d / 2 / tan(alpha / 2)');
    expect(render.formulaText(massTotal)).toBe('m = sum(m_i)');
  });

  test('has a number that was typed as it was typed', () => {
    // 9.8 / 0.0113 = 867.2566…
    const result = amount('mm^3', 9.8 / 0.0113);
    expect(textOf(putIn(massVolume, '', { m: amount('g', 9.8), rho_i: amount('g/mm^3', 0.0113) }, result))).toEqual([
      'v = 9.8 / 0.0113 = 867.3 mm³',
    ]);
  });

  test('has as many digits as it takes to get the result', () => {
    // 1/3 over 1/700 is 700/3 = 233.333…; 0.333 over 0.001428571 would give 233.1
    const case_ = putIn(
      massVolume,
      '',
      { m: amount('g', 1 / 3), rho_i: amount('g/mm^3', 1 / 700) },
      amount('mm^3', 700 / 3),
    );
    expect(textOf(case_)).toEqual(['v = 0.3333 / 0.001428571 = 233.3 mm³']);
  });

  test('has degrees for angles, in and out', () => {
    const d = amount('mm', 10);
    // 5 / tan 59° = 3.0043
    const p = amount('mm', 5 / Math.tan((59 * Math.PI) / 180));
    expect(textOf(putIn(pointHeight, '', { d, alpha: amount('deg', 118) }, p))).toEqual([
      'p = 10 / 2 / tan(118° / 2) = 3.00 mm',
    ]);
    const tip = putIn(
      tipAngle,
      '',
      { w: amount('g', 1), d: amount('mm', 20), m: amount('g', 20), R: amount('mm', 1) },
      amount('deg', 45),
    );
    expect(textOf(tip)).toEqual(['tip = atan(1 × 20 / (20 × 1)) = 45°']);
  });

  test('has what is below nothing in brackets', () => {
    const [y_B, y_G, z_B, z_G] = [0, -1, -2, -3].map((value) => amount('mm', value));
    expect(textOf(putIn(restHeel, '', { y_B, y_G, z_B, z_G }, amount('deg', -45)))).toEqual([
      'heel = atan(((-1) - 0) / ((-2) - (-3))) = -45°',
    ]);
  });

  test('has all numbers of a sum, those of a column to one count of digits', () => {
    const column = {};
    const list = [1.25, 2.5].map((value) => amount('g', value, column));
    expect(textOf(putIn(massTotal, '', { m_i: list }, amount('g', 3.75)))).toEqual(['m = 1.25 + 2.50 = 3.75 g']);
  });
});

test('a number has the same digits as a result and where it is put in', () => {
  const v = amount('mm^3', 9.8 / 0.0113);
  const first = putIn(massVolume, '', { m: amount('g', 9.8), rho_i: amount('g/mm^3', 0.0113) }, v);
  const second = putIn(BM, '', { I: amount('mm^4', 123456.789), V: v }, amount('mm', 123456.789 / v.value));
  const [one, two] = textOf(first, second);
  const digits = /= ([\d.]+) mm³/.exec(one)?.[1];
  expect(two).toContain(`/ ${digits} =`);
});

test('a formula that does not give what the tool has is no page but an error', () => {
  const off = putIn(massVolume, 'slug', { m: amount('g', 10), rho_i: amount('g/mm^3', 0.01) }, amount('mm^3', 1001));
  expect(() => render.settleDecimals([off])).toThrow('mass-volume (slug) gives 1000, the tool has 1001');
});
