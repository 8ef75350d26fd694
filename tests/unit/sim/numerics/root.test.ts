import { describe, expect, test } from 'vitest';
import { bracketedRoot } from '../../../../sim/numerics/root.ts';

describe('a bracketed root', () => {
  test.each([
    ['of a parabola', (x: number) => x * x - 2, 0, 2, Math.SQRT2],
    ['of a steep curve', (x: number) => Math.exp(20 * x) - 5, -1, 2, Math.log(5) / 20],
    ['of a flat one', (x: number) => (x - 0.3) ** 3, -1, 1.5, 0.3],
    ['of a falling one', (x: number) => Math.cos(x), 0, 3, Math.PI / 2],
  ])('%s is found', (_, f, a, b, wanted) => {
    const root = bracketedRoot(f, a, b, 1e-13);
    expect(Math.abs(root.residual)).toBeLessThanOrEqual(1e-13);
    expect(root.residual).toBe(f(root.x));
    // a triple root is only as sharp as its residual: its cube root
    expect(Math.abs(root.x - wanted)).toBeLessThan(1e-4);
    expect(root.steps).toBeLessThan(100);
  });

  test('is found between ends given the wrong way round', () => {
    expect(bracketedRoot((x) => x * x - 2, 2, 0, 1e-14).x).toBeCloseTo(Math.SQRT2, 12);
  });

  test('at an end costs no steps', () => {
    expect(bracketedRoot((x) => x - 1, 1, 5, 1e-12)).toEqual({ x: 1, residual: 0, steps: 0 });
    expect(bracketedRoot((x) => x - 5, 1, 5, 1e-12)).toEqual({ x: 5, residual: 0, steps: 0 });
  });

  test('never looks outside its bracket', () => {
    const seen: number[] = [];
    bracketedRoot(
      (x) => {
        seen.push(x);
        return Math.atan(50 * (x - 0.9));
      },
      0,
      1,
      1e-14,
    );
    expect(seen.length).toBeGreaterThan(3);
    expect(Math.min(...seen)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...seen)).toBeLessThanOrEqual(1);
  });

  test('that is not there gives the better end and says what is left over', () => {
    expect(bracketedRoot((x) => x * x + 1, -3, 1, 1e-12)).toEqual({ x: 1, residual: 2, steps: 0 });
    expect(bracketedRoot((x) => -x * x - 1, -1, 3, 1e-12)).toEqual({ x: -1, residual: -2, steps: 0 });
  });

  test('stops when it may take no more steps, with what is left over', () => {
    const root = bracketedRoot((x) => Math.exp(20 * x) - 5, -1, 2, 0, 3);
    expect(root.steps).toBe(3);
    expect(root.residual).not.toBe(0);
  });
});
