import { describe, expect, it } from 'vitest';
import type { Cited, Spread } from '../../../../sim/sources/cite.ts';
import { SOURCES } from '../../../../sim/sources/sources.ts';

// every table there is, so that a new one cannot be forgotten
const tables = import.meta.glob<Record<string, unknown>>('../../../../sim/tables/*.ts', { eager: true });

/** House units in one of the printed unit; written out here so that convert.ts is checked too. */
const PRINTED_UNITS: Readonly<Record<string, number>> = {
  '': 1,
  '%': 1e-2,
  'g/cm³': 1e-3,
  'kg/m³': 1e-6,
};

const cited = Object.values(tables).flatMap(citedWithin);

describe('every number from outside', () => {
  it('is found by this test', () => {
    expect(Object.keys(tables).length).toBeGreaterThanOrEqual(4);
    expect(cited.length).toBeGreaterThan(30);
  });

  it.each(cited.map(named))('%s names a source we list, and a place in it', (_name, row) => {
    expect(Object.keys(SOURCES)).toContain(row.source);
    expect(row.where.trim()).not.toBe('');
  });

  it.each(cited.map(named))('%s is stored as it is printed', (_name, row) => {
    const expected = printedNumbers(row.asPrinted);
    const stored = typeof row.value === 'number' ? [row.value] : [row.value.low, row.value.high, row.value.usual];
    // a range printed without a usual value is worked with at its middle
    if (stored.length === 3 && expected.length === 2) expected.push((expected[0] + expected[1]) / 2);
    expect(expected).toHaveLength(stored.length);
    stored.forEach((value, index) => {
      // the same digits in another unit: only the last bits of the double may differ
      expect(Math.abs(value / expected[index] - 1)).toBeLessThan(1e-14);
    });
  });

  it.each(cited.filter((row) => typeof row.value !== 'number').map(named))('%s is a range in order', (_name, row) => {
    const { low, usual, high } = row.value as Spread<number>;
    expect(low).toBeLessThan(usual);
    expect(usual).toBeLessThan(high);
  });
});

type Row = Cited<number | Spread<number>>;

function citedWithin(thing: unknown): Row[] {
  if (typeof thing !== 'object' || thing === null) return [];
  if ('asPrinted' in thing) return [thing as Row];
  return Object.values(thing).flatMap(citedWithin);
}

function named(row: Row): [string, Row] {
  return [`${row.where}, ${row.asPrinted}`, row];
}

/** `8,400–8,600 kg/m³` or `0.37` or `1.10–1.20 g/cm³, usually 1.15` as numbers in house units. */
function printedNumbers(text: string): number[] {
  const unit = /(?<=\d )(g\/cm³|kg\/m³|%)/.exec(text)?.[0] ?? '';
  return [...text.matchAll(/\d[\d,]*(\.\d+)?/g)].map(
    ([digits]) => Number(digits.replaceAll(',', '')) * PRINTED_UNITS[unit],
  );
}
