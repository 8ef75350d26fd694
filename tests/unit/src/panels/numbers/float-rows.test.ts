import { expect, test } from 'vitest';
import type { Accuracy, DesignFile, Digits, Float } from '../../../../../sim/index.ts';
import { createPipeline } from '../../../../../sim/pipeline.ts';
import { floatRows } from '../../../../../src/panels/numbers/float-rows.ts';
import { makeDesignFile } from '../../../../support/make-design.ts';

function floatOf(file: DesignFile): Float {
  for (const { name, outcome } of createPipeline().steps(file, { setup: null, detail: 'drag' })) {
    if (name === 'assembled' && outcome.status === 'ok') return outcome.value;
  }
  throw new Error('the test bait is not worked out');
}

const FLOATER = floatOf(makeDesignFile());

/** A bait that floats so, at these angles. */
function turned(changes: Partial<Float>): Readonly<Record<string, string>> {
  return rowsOf({ ...FLOATER, ...changes });
}

function rowsOf(float: Float, units: 'mm-g' | 'in-oz' = 'mm-g', accuracy?: Accuracy): Readonly<Record<string, string>> {
  return Object.fromEntries(floatRows(float, units, accuracy).map(({ label, value }) => [label, value]));
}

test('A bait at the surface has a draft and stands proud; its reserve is what it could still carry', () => {
  const rows = rowsOf(FLOATER);
  expect(Object.keys(rows)).toEqual(['Weighs', 'Draft', 'Proud', 'Trim', 'Heel', 'Steadiness, GM', 'Reserve']);
  expect(rows.Weighs).toBe(`${FLOATER.mass.toFixed(1)} g`);
  expect(rows.Reserve).toBe(`${(-FLOATER.netWet).toFixed(2)} g, ${(FLOATER.reserveShare * 100).toFixed(1)} %`);
});

test('A bait that is wholly under has a net weight instead, with its sign', () => {
  const rows = turned({ state: 'sinks', offset: null, draft: null, proud: null, netWet: 1.2, reserveShare: -0.015 });
  expect(rows).toMatchObject({ 'Net in water': '+1.20 g', Reserve: '-1.20 g, -1.5 %' });
  expect(Object.keys(rows)).toContain('Buoyancy over weight');
  expect(Object.keys(rows)).not.toContain('Draft');
});

test('Angles are said in words, with no sign to remember', () => {
  const degree = Math.PI / 180;
  expect(turned({ trim: 1.8 * degree, heel: 0 })).toMatchObject({ Trim: '1.8° nose-down', Heel: 'upright' });
  expect(turned({ trim: -0.6 * degree, heel: -3 * degree })).toMatchObject({
    Trim: '0.6° tail low',
    Heel: '3.0° to port',
  });
  expect(turned({ trim: 0.04 * degree, heel: 2 * degree })).toMatchObject({ Trim: 'level', Heel: '2.0° to starboard' });
});

test('In inches and ounces the same bait weighs the same', () => {
  // 1 oz is 28.349523125 g: International Yard and Pound Agreement (1959)
  expect(rowsOf({ ...FLOATER, mass: 28.349523125 }, 'in-oz').Weighs).toBe('1.000 oz');
  expect(rowsOf({ ...FLOATER, proud: 12.7 }, 'in-oz').Proud).toBe('0.500 in');
});

/** Sums that are good for these decimals. */
function goodFor(digits: Partial<Digits>): Accuracy {
  return {
    mesh: { draft: 0.2, proud: 0.2, trim: 0, heel: 0, gm: 0 },
    solver: { draft: 0, angle: 0 },
    film: { edge: 200, force: 1.5, draft: 1, heel: 0.1, trim: 0.01, tooClose: false },
    digits: { draft: 1, proud: 1, trim: 1, heel: 1, gm: 2, ...digits },
  };
}

test('No more decimals are shown than the sums are good for, and all of them until that is known', () => {
  const float = { ...FLOATER, draft: 17.26, proud: 3.34, gm: 1.256, trim: (1.8 * Math.PI) / 180 };
  expect(rowsOf(float)).toMatchObject({ Draft: '17.3 mm', Proud: '3.3 mm', Trim: '1.8° nose-down' });
  expect(rowsOf(float)['Steadiness, GM']).toBe('1.26 mm');
  const rough = rowsOf(float, 'mm-g', goodFor({ draft: 0, trim: 0, gm: 1 }));
  expect(rough).toMatchObject({ Draft: '17 mm', Proud: '3.3 mm', Trim: '2° nose-down', 'Steadiness, GM': '1.3 mm' });
});

test('In inches a length good to no decimal of a millimetre is given to a hundredth', () => {
  const float = { ...FLOATER, draft: 12.7, proud: 12.7 };
  expect(rowsOf(float, 'in-oz', goodFor({ draft: 0 }))).toMatchObject({ Draft: '0.50 in', Proud: '0.500 in' });
});

test('An angle under half of the last decimal that is meant is none', () => {
  const float = { ...FLOATER, trim: (0.4 * Math.PI) / 180, heel: (0.4 * Math.PI) / 180 };
  expect(rowsOf(float, 'mm-g', goodFor({ trim: 0 }))).toMatchObject({ Trim: 'level', Heel: '0.4° to starboard' });
});
