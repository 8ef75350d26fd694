import { METALS } from '../tables/metals.ts';
import { FILLINGS, PUTTY } from '../tables/stock.ts';
import type { GramPerMm3, Mm } from '../units/brand.ts';
import { gramPerCm3FromGramPerMm3, mmFromInch } from '../units/convert.ts';
import { formatRuler } from '../units/format-ruler.ts';
import type { DesignFile, DrillEntry, LeadEntry, Num } from './file.ts';
import { rangeAt } from './ranges.ts';
import type { WorkedFile } from './work-out.ts';

/** Something to put on the shop's list of lead. */
export interface StockChoice {
  readonly kind: 'rod' | 'filling' | 'putty';
  readonly entry: LeadEntry;
  /** Of a rod, the drill whose hole it goes into, and whether that is on the list. */
  readonly drill: { readonly name: string; readonly isThere: boolean } | null;
}

type Shop = Pick<DesignFile, 'shop'>;
/** What expressions came to, where that is known. */
type WorkedShop = Pick<WorkedFile, 'shop'> | undefined;

/** The inch drills of a hand workshop, in sixteenths. Common practice. */
const USUAL_SIXTEENTHS = [2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16];
/** A shop without drills begins with a quarter inch: it suits the links of most baits that are carved by hand. */
const FIRST_SIXTEENTHS = 4;
/** A drill so near to another does the same work: 1/4 in is there where 6 or 6.5 mm is. */
const ALIKE_MM: Mm = 0.5;
/** A rod is so much thinner than its drill, so that it drops in. Common practice. */
const THINNER_MM: Mm = 0.1;
/** A rod is loose in a wider hole than that, and no plan puts the two together. */
const LOOSEST_MM: Mm = 1;
/** Lead sits flat on the floor of such a hole. */
const FLAT_DEG = 180;

/**
 * The drill to add: the next usual size over the smallest on the list that is not there yet, else the next under it. Its
 * point is as that of the last drill on the list: a maker's drills are mostly of one make.
 */
export function nextDrill(file: Shop, worked: WorkedShop): DrillEntry {
  const { drills = [] } = file.shop ?? {};
  const size = nextSize(sizesOf(drills, worked?.shop?.drills).map(({ size }) => size));
  const last = drills.at(-1);
  const point = last === undefined ? FLAT_DEG : last.point_deg;
  return {
    name: freeName(formatRuler(size, 16), drills),
    diameter_mm: size,
    ...(point === undefined ? {} : { point_deg: point }),
  };
}

/** What may be added to the lead: a rod for a drill that has none yet, and what fills a hole of any width. */
export function stockChoices(file: Shop, worked: WorkedShop): readonly StockChoice[] {
  const { lead = [] } = file.shop ?? {};
  const filled = (kind: StockChoice['kind'], name: string, density: GramPerMm3): StockChoice => ({
    kind,
    entry: { name: freeName(name, lead), kind: 'filled', density_g_cm3: inFile(density) },
    drill: null,
  });
  return [
    rodChoice(file, worked),
    ...Object.entries(FILLINGS).map(([name, density]) => filled('filling', name, density)),
    filled('putty', 'putty', PUTTY.value.usual),
  ];
}

/** For the drill that was added last of those without a rod; where each has one, for the next drill to add. */
function rodChoice(file: Shop, worked: WorkedShop): StockChoice {
  const { drills = [], lead = [] } = file.shop ?? {};
  const known = sizesOf(drills, worked?.shop?.drills);
  const rods = sizesOf(lead, worked?.shop?.lead).map(({ size }) => size);
  const used = new Set(rods.map((rod) => narrowestFor(rod, known)?.name));
  const bare = known.findLast(({ name }) => !used.has(name));
  const next = nextSize(known.map(({ size }) => size));
  const drill = bare ?? { name: formatRuler(next, 16), size: next };
  return {
    kind: 'rod',
    entry: {
      name: freeName(`${drill.name} rod`, lead),
      kind: 'slug',
      diameter_mm: rodFor(drill.size),
      density_g_cm3: inFile(METALS.lead.value),
    },
    drill: { name: drill.name, isThere: bare !== undefined },
  };
}

/** As thick as may be written: a drill may be as thin as a rod may, or be wrong just now. */
function rodFor(drill: Mm): Mm {
  const { low, high } = rangeAt(['shop', 'lead', 0, 'diameter_mm']) ?? { low: drill, high: drill };
  return Number(Math.min(Math.max(drill - THINNER_MM, low), high).toFixed(6));
}

interface Sized {
  readonly name: string;
  readonly size: Mm;
}

/** Entries whose diameter is known; an expression is known once it has been worked out. */
function sizesOf(
  entries: readonly { readonly name: string; readonly diameter_mm?: Num }[],
  worked: readonly { readonly name: string; readonly diameter_mm?: number }[] | undefined,
): readonly Sized[] {
  return entries.flatMap(({ name, diameter_mm: written }) => {
    const size = typeof written === 'string' ? worked?.find((each) => each.name === name)?.diameter_mm : written;
    return size === undefined ? [] : [{ name, size }];
  });
}

/** The narrowest drill whose hole takes a rod, as a plan pairs them. */
function narrowestFor(rod: Mm, drills: readonly Sized[]): Sized | undefined {
  return drills
    .filter(({ size }) => size >= rod && size <= rod + LOOSEST_MM)
    .toSorted((a, b) => a.size - b.size)
    .at(0);
}

function nextSize(there: readonly Mm[]): Mm {
  const first = mmFromInch(FIRST_SIXTEENTHS / 16);
  if (there.length === 0) return first;
  const least = Math.min(...there);
  const usual = USUAL_SIXTEENTHS.map((sixteenths) => mmFromInch(sixteenths / 16));
  const inTurn = [...usual.filter((size) => size >= least), ...usual.filter((size) => size < least).reverse()];
  return inTurn.find((size) => there.every((each) => Math.abs(each - size) >= ALIKE_MM)) ?? first;
}

/** A name that no entry has: `1/4 in`, else `1/4 in (2)`. */
function freeName(wanted: string, entries: readonly { readonly name: string }[]): string {
  const taken = new Set(entries.map(({ name }) => name));
  let name = wanted;
  for (let count = 2; taken.has(name); count += 1) name = `${wanted} (${count})`;
  return name;
}

/** Without the noise of the binary form. */
function inFile(density: GramPerMm3): number {
  return Number(gramPerCm3FromGramPerMm3(density).toFixed(6));
}
