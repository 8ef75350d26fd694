import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { caseOf, KINDS } from '../fuzz/cases.ts';
import { examine } from '../fuzz/examine.ts';

const KEPT = fileURLToPath(new URL('../fuzz/regressions/', import.meta.url));
const PRESETS = fileURLToPath(new URL('../../presets/', import.meta.url));
/** Of each kind; `npm run fuzz` does thousands. */
const SEEDS = 63;

const presets = readdirSync(PRESETS)
  .filter((name) => name.endsWith('.json'))
  .map((name) => readFileSync(`${PRESETS}${name}`, 'utf8'));

describe('a file that once was mishandled', () => {
  const names = readdirSync(KEPT);

  test('is kept', () => {
    expect(names.length).toBeGreaterThan(0);
  });

  test.each(names)('%s is refused in words or floats, as text and as bytes', (name) => {
    const bytes = readFileSync(`${KEPT}${name}`);
    for (const source of [new Uint8Array(bytes), bytes.toString('utf8')]) {
      for (const detail of ['drag', 'full'] as const) expect(examine(source, detail).faults).toEqual([]);
    }
  });
});

describe.each(KINDS)('random %s', (kind) => {
  test('are refused in words or float', () => {
    const found = Array.from({ length: SEEDS }, (_, seed) => {
      const { source, detail } = caseOf(kind, seed, presets);
      return { seed, ...examine(source, detail) };
    });
    expect(found.filter(({ faults }) => faults.length > 0)).toEqual([]);
    // a run that refuses everything, or nothing, tests half of what it should
    const reached = new Set(found.map((one) => one.reached));
    expect(reached).toContain('floats');
    expect(reached).toContain('shape refused');
  });

  test('are the same for the same seed', () => {
    for (const seed of [1, 2, 3]) expect(caseOf(kind, seed, presets)).toEqual(caseOf(kind, seed, presets));
  });
});
