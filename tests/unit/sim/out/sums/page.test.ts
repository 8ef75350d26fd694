import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readDesignText } from '../../../../../sim/design/read.ts';
import { EQUATIONS } from '../../../../../sim/equations/equations.ts';
import type { DesignFile } from '../../../../../sim/index.ts';
import { sumsPage } from '../../../../../sim/out/sums/page.ts';
import { changed, goodOf } from '../../../../support/change-file.ts';
import { KNUCKLE_DESIGN, LINKED_DESIGN, makeDesignFile } from '../../../../support/make-design.ts';
import { printedSums, ROUNDED } from '../../../../support/printed-sums.ts';
import { casesOf, checkedBaitOf, withUnits } from '../../../../support/sums-of.ts';

const FOLDER = new URL('../../../../../presets/', import.meta.url);
const presets = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.json'))
  .map((name) => goodOf(readDesignText(readFileSync(new URL(name, FOLDER), 'utf8'))));

const plain = makeDesignFile();
const first = (file: DesignFile) => file.setups[0].name;
const withField = (place: string, value: unknown, file = plain) => changed(file, place, value) as DesignFile;

const PLATE = { thickness_mm: 1.5, density_g_cm3: 1.3 } as const;
const FINS = [
  {
    name: 'back fin',
    on: 'back',
    edge_mm: [
      [45, 24],
      [75, 24],
    ],
    tab_mm: 3,
    ...PLATE,
  },
  {
    name: 'tail fin',
    on: 'tail',
    edge_mm: [
      [112, 8],
      [130, 20],
      [130, -20],
      [112, -8],
    ],
    ...PLATE,
  },
];

/** Baits that between them need every formula. */
const BAITS: readonly (readonly [what: string, file: DesignFile, setup: string])[] = [
  ...presets.flatMap((file) => file.setups.map(({ name }) => [`${file.name}, ${name}`, file, name] as const)),
  ['the plain bait', plain, first(plain)],
  ['a bait in one piece', makeDesignFile({ pieces: 1 }), first(plain)],
  ['in the sea', withField('setups.0.water', { temperature_c: 12, salinity_g_kg: 35 }), first(plain)],
  ['in water of measured density', withField('setups.0.water', { measured_g_cm3: 1.0012 }), first(plain)],
  ['of heavy wood, sinking', withField('wood.density_g_cm3', 1.2), first(plain)],
  ['with sealer by the area', withField('coats.0', { name: 'sealer', soak_g_m2: 30 }), first(plain)],
  ['with lead that leaves the drill point half empty', withField('setups.0.holes.1.lead.mass_g', 0.1), first(plain)],
  ['with a hole that holds no lead', withField('setups.0.holes.1.lead', undefined), first(plain)],
  [
    'with a sealed air chamber',
    withField('setups.0.holes.1.air', { plug_mm: 2 }, withField('setups.0.holes.1.lead', undefined)),
    first(plain),
  ],
  [
    'with painted eyes and a limp tail',
    withField(
      'tails',
      [{ name: 'tail', x_mm: 121, z_mm: 0, mass_g: 1.2, density_g_cm3: 1.05, air_mm3: [0, 200] }],
      withField('fittings', [{ name: 'eye', x_mm: 12, y_mm: 5, z_mm: 2, mass_g: 0.2, outside_mm3: 30, pair: true }]),
    ),
    first(plain),
  ],
  ['on a knuckle', KNUCKLE_DESIGN, first(plain)],
  ['on linked eyes', LINKED_DESIGN, first(plain)],
  ['without holes', withField('setups.0.holes', []), first(plain)],
  ['with nothing hung', withField('setups.0.hung', []), first(plain)],
  ['with a lead off the middle', withField('setups.0.holes.1.across_mm', 1.5), first(plain)],
  ['with an eye that was weighed', withField('hangers.1.mass_g', 0.6), first(plain)],
  ['asked for a trim', withField('setups.0.target', { proud_mm: 3, trim_deg: 4 }), first(plain)],
  ['asked for a sinking speed', withField('setups.0.target', { sink_mm_s: 110 }), first(plain)],
  ['with a fin glued on and one let in', withField('fins', FINS), first(plain)],
  ['of two woods', withField('links.1.density_g_cm3', 0.3), first(plain)],
];

describe.each(BAITS)('the sums of %s', (_, file, setup) => {
  const bait = checkedBaitOf(file, setup);

  test('add up as printed, for whoever has a pocket calculator and nothing but the page', async () => {
    const sums = printedSums(await sumsPage(bait, null));
    expect(sums.length).toBeGreaterThan(40 * bait.links.length);
    expect(sums.filter(({ missed }) => !(missed <= ROUNDED))).toEqual([]);
  });

  test('give what the tool has, worked out by mathjs with units', () => {
    for (const { equation, label, values, result } of casesOf(bait)) {
      const got = withUnits(equation.formula, values, result.unit);
      // the solver leaves 1e-11 of the weight, and angles come from the difference of two near points
      const tolerance = 1e-6 + 1e-8 * Math.abs(result.value);
      expect(Math.abs(got - result.value), `${equation.id} ${label}`).toBeLessThan(tolerance);
    }
  });

  test('are readable: lines of at most 100 characters, nothing that is no number', async () => {
    const page = await sumsPage(bait, null);
    for (const line of page.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(100);
    expect(page).not.toMatch(/NaN|undefined|null|Infinity|\[object/);
    expect(page).not.toMatch(/ $/m);
  });
});

test('between them they use every formula there is', { timeout: 60_000 }, () => {
  const used = new Set(
    BAITS.flatMap(([, file, setup]) => casesOf(checkedBaitOf(file, setup)).map((each) => each.equation.id)),
  );
  expect(EQUATIONS.map(({ id }) => id).filter((id) => !used.has(id))).toEqual([]);
});

test('a page of one link leaves the others out, and still ends with the whole bait', async () => {
  const page = await sumsPage(checkedBaitOf(plain), 'tail');
  expect(page).toContain('Link 2 of 2, alone: tail');
  expect(page).not.toContain('Link 1 of 2');
  expect(page).toContain('The whole bait, held straight');
});

test('a bait in one piece is told once', async () => {
  const page = await sumsPage(checkedBaitOf(makeDesignFile({ pieces: 1 })), null);
  expect(page).toContain('The bait, in one piece: whole');
  expect(page).not.toContain('held straight');
});

test.each(['KB: height of B', 'BM: how far', 'G: the point', 'B: the middle', 'GM: height of M'])(
  'the page says what "%s" is where it first stands',
  async (gloss) => {
    expect((await sumsPage(checkedBaitOf(plain), null)).split(gloss).length).toBeGreaterThan(1);
  },
);

test('where a number is given for some parts and assumed for others, the page says for which', async () => {
  const text = (await sumsPage(checkedBaitOf(plain), 'head')).replace(/\s+/g, ' ');
  const steel = 'assumed unless given: plain steel, Callister, table B.1, steel alloy 1040: 7.85 g/cm³';
  const said = text.includes(`where m, rho_i (head hole) as given in the design; rho_i (fore treble) ${steel}`);
  expect(said).toBe(true);
});

test('a stock that fills two holes of a link is named once', async () => {
  const twice = presets.find(({ name }) => name === 'Barn Door 180') ?? plain;
  const page = await sumsPage(checkedBaitOf(twice), 'head');
  const names = (page.match(/^ +(.*): k = /m)?.[1] ?? '').split('; ');
  expect(names).toEqual([...new Set(names)]);
  expect(names[0]).not.toBe('');
});

test('an arithmetic slip on the page would be noticed', async () => {
  const page = await sumsPage(checkedBaitOf(plain), null);
  const slipped = page.replace(
    /(BM = \d+ \/ [\d.]+ = )(\d)/,
    (_, before: string, digit: string) => `${before}${(Number(digit) + 3) % 10}`,
  );
  expect(slipped).not.toBe(page);
  expect(printedSums(slipped).filter(({ missed }) => missed > ROUNDED)).not.toEqual([]);
});
