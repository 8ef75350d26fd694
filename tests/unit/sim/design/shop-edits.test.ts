import { describe, expect, test } from 'vitest';
import type { DesignFile } from '../../../../sim/design/file.ts';
import { readDesignText } from '../../../../sim/design/read.ts';
import {
  fullShop,
  shopNameFault,
  stockUsers,
  withoutShopEntry,
  withShopEntry,
  withShopName,
} from '../../../../sim/design/shop-edits.ts';
import { evaluateDesign } from '../../../../sim/design/validate.ts';
import { goodOf } from '../../../support/change-file.ts';
import { makeDesignFile } from '../../../support/make-design.ts';

const plain = makeDesignFile();
const [pond] = plain.setups;
/** Two setups: a hole of each holds the rod, one of them glued; nothing holds the wire. */
const FILE: DesignFile = {
  ...plain,
  shop: {
    kerf_mm: 1,
    drills: [
      { name: '8 mm', diameter_mm: 8, point_deg: 180 },
      { name: '6 mm', diameter_mm: 6 },
    ],
    lead: [...(plain.shop?.lead ?? []), { name: '3 mm wire', kind: 'slug', diameter_mm: 2.9, density_g_cm3: 11.3 }],
  },
  setups: [
    pond,
    { ...pond, name: 'cold lake', holes: pond.holes.slice(0, 1).map((hole) => ({ ...hole, done: true })) },
  ],
};
const ROD = 0;
const WIRE = 2;

describe('Something added', () => {
  test('stands last on its list, and all else stays the same', () => {
    const added = withShopEntry(FILE, 'drills', { name: '5 mm', diameter_mm: 5 });
    expect(added.shop?.drills?.map(({ name }) => name)).toEqual(['8 mm', '6 mm', '5 mm']);
    expect(added.shop?.lead).toBe(FILE.shop?.lead);
    expect(added.setups).toBe(FILE.setups);
    expect(goodOf(readDesignText(JSON.stringify(added)))).toEqual(added);
  });

  test('begins a shop where the design has none', () => {
    const { shop: _, ...bare } = { ...plain, setups: [{ ...pond, holes: [] }] };
    const added = withShopEntry(bare as DesignFile, 'lead', { name: 'putty', kind: 'filled', density_g_cm3: 8 });
    expect(goodOf(evaluateDesign(added)).shop.lead).toHaveLength(1);
  });

  test('is refused where the list is full, as the file would be', () => {
    const drills = Array.from({ length: 200 }, (_, i) => ({ name: `drill ${i}`, diameter_mm: 5 }));
    const full = { ...FILE, shop: { ...FILE.shop, drills } };
    expect(withShopEntry(full, 'drills', { name: 'one more', diameter_mm: 5 })).toBe(full);
    expect(fullShop(full, 'drills')).toBe('at most 200 entries are allowed');
    expect(fullShop(full, 'lead')).toBeNull();
    expect(goodOf(readDesignText(JSON.stringify(full)))).toEqual(full);
    const over = { ...full, shop: { ...full.shop, drills: [...drills, { name: 'one more', diameter_mm: 5 }] } };
    expect(readDesignText(JSON.stringify(over))).toMatchObject({
      status: 'failed',
      issues: [{ path: 'shop.drills', message: 'at most 200 entries are allowed, got 201' }],
    });
  });
});

describe('Something taken away', () => {
  test('leaves a hole that was drilled with it as it was drilled', () => {
    const gone = withoutShopEntry(FILE, 'drills', 0);
    expect(gone.shop?.drills?.map(({ name }) => name)).toEqual(['6 mm']);
    expect(goodOf(evaluateDesign(gone)).setups).toEqual(goodOf(evaluateDesign(FILE)).setups);
  });

  test('may be the last drill: the list is empty then, and still a list', () => {
    const gone = withoutShopEntry(withoutShopEntry(FILE, 'drills', 1), 'drills', 0);
    expect(gone.shop?.drills).toEqual([]);
    expect(goodOf(evaluateDesign(gone)).shop.drills).toEqual([]);
  });

  test('may be stock that no hole holds', () => {
    expect(withoutShopEntry(FILE, 'lead', WIRE).shop?.lead?.map(({ name }) => name)).toEqual([
      '8 mm rod',
      'shot in epoxy',
    ]);
  });

  test('is never stock that a hole of any setup holds', () => {
    expect(withoutShopEntry(FILE, 'lead', ROD)).toBe(FILE);
    const onlyLater = { ...FILE, setups: [{ ...pond, holes: [] }, ...FILE.setups.slice(1)] };
    expect(withoutShopEntry(onlyLater, 'lead', ROD)).toBe(onlyLater);
  });

  test('is nothing where there is nothing', () => {
    expect(withoutShopEntry(FILE, 'drills', 7)).toBe(FILE);
    expect(withoutShopEntry(FILE, 'drills', -1)).toBe(FILE);
  });
});

describe('Who holds a stock', () => {
  test('is told hole by hole, with its setup and whether it is glued in', () => {
    expect(stockUsers(FILE, ROD)).toEqual([
      { setup: 'still pond', hole: 'head hole', isDone: false },
      { setup: 'cold lake', hole: 'head hole', isDone: true },
    ]);
    expect(stockUsers(FILE, WIRE)).toEqual([]);
  });

  test('is the first of two that are called alike, so that the second can go', () => {
    const twin = { name: '8 mm rod', kind: 'filled', density_g_cm3: 5 } as const;
    const twins = { ...FILE, shop: { ...FILE.shop, lead: [...(FILE.shop?.lead ?? []), twin] } };
    expect(stockUsers(twins, 3)).toEqual([]);
    expect(withoutShopEntry(twins, 'lead', 3)).toEqual(FILE);
    expect(withShopName(twins, 'lead', 3, 'poured').setups).toBe(twins.setups);
  });
});

describe('A name that is changed', () => {
  test('goes along into every hole that holds the stock, and no hole holds anything else', () => {
    const renamed = withShopName(FILE, 'lead', ROD, 'bar');
    expect(renamed.setups.map(({ holes }) => holes.map(({ lead }) => lead?.of))).toEqual([
      ['bar', 'shot in epoxy'],
      ['bar'],
    ]);
    expect(goodOf(evaluateDesign(renamed)).setups[0]?.holes[0]?.lead).toMatchObject({
      mass: 4,
      stock: { name: 'bar' },
    });
    expect(withShopName(renamed, 'lead', ROD, '8 mm rod')).toEqual(FILE);
  });

  test('of a drill changes that drill alone', () => {
    const renamed = withShopName(FILE, 'drills', 1, 'small');
    expect(renamed.shop?.drills?.map(({ name }) => name)).toEqual(['8 mm', 'small']);
    expect(renamed.setups).toBe(FILE.setups);
    expect(withShopName(FILE, 'drills', 1, '6 mm')).toBe(FILE);
  });

  test.each([
    ['6 mm', 'the name "6 mm" is taken: give each its own name'],
    ['toString', '"toString" cannot be a name: choose another name'],
    ['   ', 'a name on one line, with something to see in it, is wanted'],
    ['', 'a name on one line, with something to see in it, is wanted'],
    ['a\nb', 'a name on one line, with something to see in it, is wanted'],
    ['x'.repeat(61), 'at most 60 characters are allowed, got 61'],
  ])('is refused where the file would be: %j', (name, why) => {
    expect(shopNameFault(FILE, 'drills', 0, name)).toBe(why);
    const read = readDesignText(JSON.stringify(withShopName(FILE, 'drills', 0, name)));
    const outcome = read.status === 'ok' ? evaluateDesign(read.value) : read;
    expect(outcome.status).toBe('failed');
  });

  test('may be its own, or one of the other list', () => {
    expect(shopNameFault(FILE, 'drills', 0, '8 mm')).toBeNull();
    expect(shopNameFault(FILE, 'drills', 0, '8 mm rod')).toBeNull();
    expect(shopNameFault(FILE, 'drills', 0, 'x'.repeat(60))).toBeNull();
  });
});
