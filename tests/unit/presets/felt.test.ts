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

/** What a bait is made with, and not what it is: no float depends on it. */
const UNFELT = /^(version|shop\.kerf_mm|shop\.drills\.#\.diameter_mm)$/;

/** All that is answered about a bait but the design itself, which of course has the number as it was typed. */
function answered(file: (typeof files)[number], setup: string): string {
  const { bait, links } = outcomesOf(file, { setup, detail: 'drag' });
  const { design: _, setup: __, ...rest } = bait;
  return JSON.stringify([rest, links], (key, value) => (key === 'positions' ? Array.from(value as Float64Array) : value));
}

/** One place of each kind of number in the demo baits, in a setup of its own where it belongs to one. */
const places = (() => {
  const found = new Map<string, { readonly file: (typeof files)[number]; readonly path: string; readonly setup: string }>();
  for (const file of files) {
    for (const path of numbersIn(file)) {
      const kind = path.replace(/\.\d+(?=\.|$)/g, '.#');
      const own = /^setups\.(\d+)\./.exec(path)?.[1];
      const setup = file.setups[Number(own ?? 0)]?.name ?? '';
      if (!UNFELT.test(kind) && !found.has(kind)) found.set(kind, { file, path, setup });
    }
  }
  return [...found].map(([kind, place]) => ({ kind, ...place }));
})();

test('the demo baits have some seventy kinds of number between them', () => {
  expect(places.length).toBeGreaterThan(60);
});

test.each(places)('a hundredth more of $kind is felt by some answer', ({ file, path, setup }) => {
  const written = valueAt(file, path);
  const changed = typeof written === 'number' ? (written === 0 ? 0.01 : written * 1.01) : `(${written}) * 1.01`;
  expect(answered(withValueAt(file, path, changed), setup)).not.toBe(answered(file, setup));
});
