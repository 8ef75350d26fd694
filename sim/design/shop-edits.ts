import type { DesignFile, DrillEntry, LeadEntry, SetupEntry } from './file.ts';
import { quoted } from './given.ts';
import { NAME_RULE } from './name-rule.ts';
import { withValueAt } from './place.ts';
import { SHOP_LIMITS } from './shop-limits.ts';

export type ShopList = keyof typeof SHOP_LIMITS;

/** A hole that holds a stock, and the setup that it is in. */
export interface StockUser {
  readonly setup: string;
  readonly hole: string;
  readonly isDone: boolean;
}

type Entry<List extends ShopList> = List extends 'drills' ? DrillEntry : LeadEntry;

/** Why no more can be put on a list of the shop; null where there is room. */
export function fullShop(file: DesignFile, list: ShopList): string | null {
  const most = SHOP_LIMITS[list];
  return entriesOf(file, list).length < most ? null : `at most ${most} entries are allowed`;
}

/** The file with one more on a list of the shop; the file itself where the list is full. */
export function withShopEntry<List extends ShopList>(file: DesignFile, list: List, entry: Entry<List>): DesignFile {
  return fullShop(file, list) === null ? withValueAt(file, `shop.${list}`, [...entriesOf(file, list), entry]) : file;
}

/**
 * The file with one less on a list of the shop. Holes have the diameter and the point of their drill themselves, so any
 * drill may go; but they know their lead only by its name, so stock that a hole holds stays: then this is the file itself.
 */
export function withoutShopEntry(file: DesignFile, list: ShopList, index: number): DesignFile {
  const entries = entriesOf(file, list);
  if (entries[index] === undefined || (list === 'lead' && stockUsers(file, index).length > 0)) return file;
  return withValueAt(file, `shop.${list}`, entries.toSpliced(index, 1));
}

/** The file with another name on a list of the shop. What holds that stock knows it by its new name. */
export function withShopName(file: DesignFile, list: ShopList, index: number, name: string): DesignFile {
  const before = entriesOf(file, list)[index]?.name;
  if (before === undefined || before === name) return file;
  const renamed = withValueAt(file, `shop.${list}.${index}.name`, name);
  if (list === 'drills' || stockUsers(file, index).length === 0) return renamed;
  return { ...renamed, setups: renamed.setups.map((setup) => refilled(setup, before, name)) };
}

/** Every hole of any setup that holds this stock. Of two that are called alike, the first is what is in the holes. */
export function stockUsers({ shop, setups }: Pick<DesignFile, 'shop' | 'setups'>, index: number): readonly StockUser[] {
  const { lead = [] } = shop ?? {};
  const stock = lead[index]?.name;
  if (lead.findIndex(({ name }) => name === stock) !== index) return [];
  return setups.flatMap((setup) =>
    setup.holes
      .filter(({ lead }) => lead?.of === stock)
      .map(({ name, done }) => ({ setup: setup.name, hole: name, isDone: done === true })),
  );
}

/** Why something on a list of the shop cannot be called so; null where it can. */
export function shopNameFault(file: DesignFile, list: ShopList, index: number, name: string): string | null {
  const { characters, pattern } = NAME_RULE;
  if (name.length > characters) return `at most ${characters} characters are allowed, got ${name.length}`;
  if (!pattern.test(name)) return 'a name on one line, with something to see in it, is wanted';
  if (name in {}) return `${quoted(name)} cannot be a name: choose another name`;
  const isTaken = entriesOf(file, list).some((entry, i) => i !== index && entry.name === name);
  return isTaken ? `the name ${quoted(name)} is taken: give each its own name` : null;
}

function entriesOf({ shop }: DesignFile, list: ShopList): readonly (DrillEntry | LeadEntry)[] {
  return shop?.[list] ?? [];
}

/** A setup that holds nothing of it stays the same object. */
function refilled(setup: SetupEntry, before: string, name: string): SetupEntry {
  if (!setup.holes.some(({ lead }) => lead?.of === before)) return setup;
  const holes = setup.holes.map((hole) =>
    hole.lead?.of === before ? { ...hole, lead: { ...hole.lead, of: name } } : hole,
  );
  return { ...setup, holes };
}
