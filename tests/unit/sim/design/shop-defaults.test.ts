import { describe, expect, test } from 'vitest';
import type { DesignFile, DrillEntry, LeadEntry } from '../../../../sim/design/file.ts';
import { nextDrill, stockChoices } from '../../../../sim/design/shop-defaults.ts';
import { withShopEntry } from '../../../../sim/design/shop-edits.ts';
import { evaluateDesign } from '../../../../sim/design/validate.ts';
import { workOut } from '../../../../sim/design/work-out.ts';
import { goodOf } from '../../../support/change-file.ts';
import { makeDesignFile } from '../../../support/make-design.ts';

const drill = (name: string, diameter: number | string, point?: number): DrillEntry => ({
  name,
  diameter_mm: diameter,
  ...(point === undefined ? {} : { point_deg: point }),
});
const rod = (name: string, diameter: number | string): LeadEntry => ({
  name,
  kind: 'slug',
  diameter_mm: diameter,
  density_g_cm3: 11.3,
});
const shopOf = (drills: readonly DrillEntry[], lead: readonly LeadEntry[] = []): DesignFile =>
  makeDesignFile({ shop: { drills, lead } });
/** Nothing is drilled, so that any stock may be on the list or missing. */
const undrilled = (file: DesignFile): DesignFile => ({
  ...file,
  setups: file.setups.map((setup) => ({ ...setup, holes: [] })),
});
const QUARTER = drill('1/4 in', 6.35);

describe('The next drill', () => {
  test('of an empty list, or of no list at all, is a quarter inch with a flat bottom', () => {
    const { shop: _, ...bare } = makeDesignFile();
    for (const file of [shopOf([]), bare as DesignFile]) {
      expect(nextDrill(file, undefined)).toEqual({ name: '1/4 in', diameter_mm: 6.35, point_deg: 180 });
    }
  });

  test('fills the first gap in the usual sizes, then goes on upwards, then under the smallest', () => {
    expect(nextDrill(shopOf([drill('1/2 in', 12.7), drill('3/8 in', 9.525), QUARTER]), undefined).name).toBe('5/16 in');
    expect(nextDrill(shopOf([QUARTER, drill('5/16 in', 7.9375)]), undefined).name).toBe('3/8 in');
    // 3/4, 7/8 and 1 in
    const large = [drill('3/4 in', 19.05), drill('7/8 in', 22.225), drill('1 in', 25.4)];
    expect(nextDrill(shopOf(large), undefined).name).toBe('5/8 in');
  });

  test('takes a metric drill of nearly that size for it', () => {
    expect(nextDrill(shopOf([drill('6 mm', 6)]), undefined).name).toBe('5/16 in');
  });

  test('has the point of the last one, left out where that one leaves it out', () => {
    expect(nextDrill(shopOf([drill('1/2 in', 12.7, 180), drill('1/4 in', 6.35, 135)]), undefined).point_deg).toBe(135);
    expect(nextDrill(shopOf([QUARTER]), undefined)).not.toHaveProperty('point_deg');
  });

  test('knows a diameter that is written as an expression once it has been worked out', () => {
    const file = shopOf([QUARTER, drill('wide', 'width_mm * 0.4')]);
    // 0.4 of 20 mm is 8 mm, as good as 5/16 in
    expect(nextDrill(file, goodOf(workOut(file))).name).toBe('3/8 in');
    expect(nextDrill(file, undefined).name).toBe('5/16 in');
  });

  test('has a name that is free, though the name may belong to another size', () => {
    expect(nextDrill(shopOf([drill('5/16 in', 6.35)]), undefined)).toMatchObject({
      name: '5/16 in (2)',
      diameter_mm: 7.9375,
    });
  });

  test('can be added over and over: every list that comes of it can be read as a design', () => {
    let file = undrilled(shopOf([]));
    for (let count = 0; count < 15; count += 1) file = withShopEntry(file, 'drills', nextDrill(file, undefined));
    const { drills } = goodOf(evaluateDesign(file)).shop;
    expect(new Set(drills.map(({ name }) => name)).size).toBe(15);
    // all twelve usual sizes, each once, before any comes again
    expect(new Set(drills.slice(0, 12).map(({ diameter }) => diameter)).size).toBe(12);
  });
});

describe('The stock to choose from', () => {
  const rodFor = (file: DesignFile) => stockChoices(file, undefined)[0];

  test('has a rod a tenth of a millimetre thinner than the last drill that has none', () => {
    const file = shopOf([QUARTER, drill('3/8 in', 9.525), drill('7/16 in', 11.1125)], [rod('3/8 in rod', 9.425)]);
    expect(rodFor(file)).toEqual({
      kind: 'rod',
      entry: { name: '7/16 in rod', kind: 'slug', diameter_mm: 11.0125, density_g_cm3: 11.35 },
      drill: { name: '7/16 in', isThere: true },
    });
  });

  test('counts a rod for the narrowest drill that takes it, as a plan does', () => {
    // 8 mm goes into both; 8.5 mm is what a plan drills for it
    const file = shopOf([drill('9 mm', 9), drill('8.5 mm', 8.5)], [rod('8 mm rod', 8)]);
    expect(rodFor(file)?.entry.name).toBe('9 mm rod');
  });

  test('has the rod of the next drill where each has one, and says that the drill is wanted too', () => {
    expect(rodFor(shopOf([QUARTER], [rod('1/4 in rod', 6.25)]))).toMatchObject({
      entry: { name: '5/16 in rod' },
      drill: { name: '5/16 in', isThere: false },
    });
    expect(rodFor(shopOf([]))).toMatchObject({ entry: { name: '1/4 in rod' }, drill: { isThere: false } });
  });

  test('has fillings at their usual densities, each under a name that is free', () => {
    const file = shopOf([QUARTER], [{ name: 'putty', kind: 'filled', density_g_cm3: 9.4 }]);
    // six tenths of metal, the rest epoxy: 0.6 * 11.35 + 0.4 * 1.15 = 7.27, 0.6 * 19.3 + 0.4 * 1.15 = 12.04
    expect(stockChoices(file, undefined).slice(1)).toEqual([
      { kind: 'filling', entry: { name: 'shot in epoxy', kind: 'filled', density_g_cm3: 7.3 }, drill: null },
      { kind: 'filling', entry: { name: 'poured lead', kind: 'filled', density_g_cm3: 11.35 }, drill: null },
      { kind: 'filling', entry: { name: 'tungsten shot in epoxy', kind: 'filled', density_g_cm3: 12 }, drill: null },
      { kind: 'putty', entry: { name: 'putty (2)', kind: 'filled', density_g_cm3: 8 }, drill: null },
    ]);
  });

  test('can be added, whatever it is, and is read as a design', () => {
    let file = undrilled(shopOf([drill('thin', 0.3), drill('thick', 40)], [rod('8 mm rod', 7.8)]));
    for (let count = 0; count < 4; count += 1) {
      for (const { entry } of stockChoices(file, undefined)) {
        expect(goodOf(evaluateDesign(withShopEntry(file, 'lead', entry))).shop.lead.at(-1)?.name).toBe(entry.name);
      }
      const [next] = stockChoices(file, undefined);
      if (next !== undefined) file = withShopEntry(file, 'lead', next.entry);
    }
  });
});
