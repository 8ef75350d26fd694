import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { withValueAt } from '../../../sim/design/place.ts';
import { readDesignText } from '../../../sim/design/read.ts';
import { valueAt } from '../../../sim/index.ts';
import { goodOf } from '../../support/change-file.ts';
import { numbersIn } from '../../support/numbers-in.ts';
import { outcomesOf } from '../../support/worked-bait.ts';

const FOLDER = new URL('../../../presets/', import.meta.url);
const files = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.json'))
  .map((name) => goodOf(readDesignText(readFileSync(new URL(name, FOLDER), 'utf8'))));

/** What no answer depends on. */
const UNFELT = /^(version|shop\.kerf_mm)$/;
/** What a bait is made with, and not what it is: only a plan of its ballast depends on it. */
const FELT_BY_PLAN = /^shop\.(wall_mm|drills\.#\.(diameter_mm|point_deg))$/;

/** All that is answered about a bait but the design itself, which of course has the number as it was typed. */
function answered(file: (typeof files)[number], setup: string): string {
  const { bait, links } = outcomesOf(file, { setup, detail: 'drag' });
  const { design: _, setup: __, ...rest } = bait;
  return JSON.stringify([rest, links], (key, value) =>
    key === 'positions' ? Array.from(value as Float64Array) : value,
  );
}

/** One place of each kind of number in the demo baits, in a setup of its own where it belongs to one. */
const places = (() => {
  const found = new Map<
    string,
    { readonly file: (typeof files)[number]; readonly path: string; readonly setup: string }
  >();
  for (const file of files) {
    for (const path of numbersIn(file)) {
      const kind = path.replace(/\.\d+(?=\.|$)/g, '.#');
      const own = /^setups\.(\d+)\./.exec(path)?.[1];
      const setup = file.setups[Number(own ?? 0)]?.name ?? '';
      if (!UNFELT.test(kind) && !FELT_BY_PLAN.test(kind) && !found.has(kind)) found.set(kind, { file, path, setup });
    }
  }
  return [...found].map(([kind, place]) => ({ kind, ...place }));
})();

test('the demo baits have some seventy kinds of number between them', () => {
  expect(places.length).toBeGreaterThan(60);
});

test.each(places)('a hundredth more of $kind is felt by some answer', ({ file, path, setup }) => {
  expect(answered(withMore(file, path), setup)).not.toBe(answered(file, setup));
});

function withMore(file: (typeof files)[number], path: string, times = 1.01) {
  const written = valueAt(file, path);
  const changed = typeof written === 'number' ? (written === 0 ? 0.01 : written * times) : `(${written}) * ${times}`;
  return withValueAt(file, path, changed);
}

/** Every number of the shop that plans are made by, of each kind all there are. */
const planned = new Map<string, { readonly file: (typeof files)[number]; readonly path: string }[]>();
for (const file of files) {
  for (const path of numbersIn(file)) {
    const kind = path.replace(/\.\d+(?=\.|$)/g, '.#');
    if (FELT_BY_PLAN.test(kind)) planned.set(kind, [...(planned.get(kind) ?? []), { file, path }]);
  }
}

test('the shop of some demo baits says walls, drills and their points', () => {
  expect([...planned.keys()].toSorted()).toEqual([
    'shop.drills.#.diameter_mm',
    'shop.drills.#.point_deg',
    'shop.wall_mm',
  ]);
});

// holes are planned in whole and half millimetres: a hundredth may be lost in the rounding
test.each([...planned])('a fifth more of %s is felt by the plan of some demo', (_, all) => {
  const planOf = (file: (typeof files)[number]) => JSON.stringify(outcomesOf(file).bait.ballast);
  expect(all.some(({ file, path }) => planOf(withMore(file, path, 1.2)) !== planOf(file))).toBe(true);
});
