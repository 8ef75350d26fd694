import fc from 'fast-check';
import { waterHeight } from '../../sim/ballast/off-mark.ts';
import { fillingOf } from '../../sim/ballast/plan.ts';
import { floatWith } from '../../sim/ballast/refloat.ts';
import { type Lane, offersOf } from '../../sim/ballast/room.ts';
import type { Hole } from '../../sim/design/design.ts';
import type { DesignFile, DrillEntry, LeadEntry, SetupEntry, TargetEntry } from '../../sim/design/file.ts';
import { bodyOf } from '../../sim/hydro/bait-body.ts';
import { type Float, floatBody } from '../../sim/hydro/float.ts';
import { fillHole, holeMouth, pointHeight } from '../../sim/mass/hole.ts';
import { keepOutsOf } from '../../sim/mass/keep-out.ts';
import type { PlacedHole } from '../../sim/mass/placed.ts';
import { degreeFromRadian } from '../../sim/units/convert.ts';
import { arbitraryDesignFile, type Build } from './arbitrary-design.ts';
import { type BallastParts, ballastPartsOf } from './planned-bait.ts';
import { answersOf, partsOf, soundIssuesOf } from './worked-bait.ts';

const INCH = 25.4;
/** As long as half of the longest bait, and some more. */
const LONGEST_LINK_MM = 180;
/** Targets in grams go no further in a file, nor in percent and degrees. */
const MOST = { grams: 400, percent: 900, degrees: 30 } as const;

/** Drills of 1/8 to 3/4 inch by sixteenths, pointed and flat. Common practice. */
const DRILLS: readonly DrillEntry[] = [2, 3, 4, 5, 6, 7, 8, 10, 12].flatMap((sixteenths) =>
  ([118, 180] as const).map((point_deg) => ({
    name: `${sixteenths}/16 in, ${point_deg} degrees`,
    diameter_mm: (sixteenths / 16) * INCH,
    point_deg,
  })),
);

/** Stock of every kind that a shop has: a coil of wire, cut from bar, poured, shot, putty. Common practice. */
const STOCK: readonly LeadEntry[] = [
  { name: '1/8 in wire', kind: 'slug', diameter_mm: 3.1, density_g_cm3: 11.3 },
  { name: '3/16 in rod', kind: 'slug', diameter_mm: 4.7, density_g_cm3: 11.3 },
  { name: '5/16 in rod', kind: 'slug', diameter_mm: 7.8, density_g_cm3: 11.3 },
  { name: 'tungsten rod', kind: 'slug', diameter_mm: 6.2, density_g_cm3: 17.5 },
  { name: 'poured lead', kind: 'filled', density_g_cm3: 11.3 },
  { name: 'shot in epoxy', kind: 'filled', density_g_cm3: 7.3 },
  { name: 'tungsten putty', kind: 'filled', density_g_cm3: 9.5 },
];

/** Taller and leaner baits, and shorter links, hardly ever stand up, whatever lead is put into them. */
const STEADY: Build = { length: [100, 240], tallness: [0.16, 0.26], leanness: [0.75, 1.4], links: 4 };

/** Lead as somebody might have put it into a link, in shares of what there is; and how the target is then written. */
interface Wanted {
  readonly lane: number;
  readonly depth: number;
  readonly places: readonly number[];
  readonly fill: number;
  readonly as: 'proud' | 'waterline' | 'reserve' | 'percent' | 'net';
}

function wanted(): fc.Arbitrary<Wanted> {
  const share = fc.integer({ min: 0, max: 99 }).map((percent) => percent / 100);
  return fc.record({
    lane: share,
    depth: share,
    places: fc.array(share, { minLength: 1, maxLength: 3 }),
    fill: share,
    as: fc.constantFrom('proud', 'waterline', 'reserve', 'percent', 'net'),
  });
}

/** A bait for which lead may be planned, and which of its links some holes are known to bring to their aim. */
export interface ShopBait {
  readonly file: DesignFile;
  readonly known: readonly boolean[];
}

const LEAD_G = 0.1;
const TRIES = 24;

/** Holes in one lane of a link, on whole millimetres, to half millimetres of depth, with lead in tenths of a gram. */
function holesIn(
  parts: BallastParts,
  index: number,
  lane: Lane,
  { depth, places, fill }: Wanted,
): readonly PlacedHole[] {
  const { stock, drill, stations, spacing, row, from } = lane;
  const radius = (stock.kind === 'slug' ? stock.diameter : drill.diameter) / 2;
  const perMm = (Math.PI * radius ** 2 * stock.density) / LEAD_G;
  const inPoint = stock.kind === 'slug' ? 0 : (perMm * pointHeight(drill)) / 3;
  const least = Math.max(2, Math.ceil(inPoint + 1.5 * perMm));
  const deepest = Math.max(...stations.map(({ depthTo }) => depthTo));
  const shallowest = Math.min(...stations.map(({ leadFrom }) => leadFrom)) + 2;
  const deep = Math.floor(2 * (shallowest + depth * Math.max(0, deepest - shallowest))) / 2;
  const room = stations
    .map(({ x, leadFrom, depthTo }) => ({
      x,
      most: deep > depthTo ? 0 : Math.floor(inPoint + (deep - leadFrom) * perMm),
    }))
    .filter(({ most }) => most >= least);
  const chosen: { x: number; most: number }[] = [];
  for (const place of places) {
    const one = room[Math.floor(place * room.length)];
    if (one && chosen.every(({ x }) => Math.abs(x - one.x) >= spacing)) chosen.push(one);
  }
  return chosen.flatMap(({ x, most }) =>
    (from === 'belly' ? (['belly'] as const) : (['starboard', 'port'] as const)).map((side) => {
      const hole: Hole = {
        name: `known ${x} ${side}`,
        from: side,
        x,
        across: row,
        diameter: drill.diameter,
        depth: deep,
        point: drill.point,
        lead: { stock, mass: Math.round(least + fill * (most - least)) * LEAD_G },
        air: null,
        plugDensity: fillingOf(parts, parts.links[index]).plug,
        done: false,
      };
      return fillHole(holeMouth(parts.hull, hole), hole, index);
    }),
  );
}

/** How a link floats with some holes in it, and with which. */
interface Leaded {
  readonly holes: readonly PlacedHole[];
  readonly float: Float;
  readonly isUpright: boolean;
}

/** A link with lead somewhere in it; with more of it, and lower, until it stands upright, if it does. */
function leaded(parts: BallastParts, index: number, wish: Wanted): Leaded {
  const link = parts.links[index];
  const { hull, shop } = parts;
  const keepOuts = keepOutsOf(link.spec, link.hardware);
  const offers = offersOf({ hull, spec: link.spec, keepOuts, ...shop, across: 0 });
  let last: Leaded | null = null;
  for (let trial = 0; trial < TRIES; trial++) {
    const lane = offers[Math.floor(wish.lane * offers.length + trial) % offers.length]?.lane();
    const more = trial / TRIES;
    const places = trial < 4 ? wish.places : [...wish.places, 0.5, 0.1, 0.9].slice(0, 3);
    const holes = lane ? holesIn(parts, index, lane, { ...wish, places, fill: Math.max(wish.fill, more) }) : [];
    const { ledgers } = floatWith(parts, { holes });
    const float = floatBody(bodyOf([link.trees], [ledgers[index]], link.hung, parts.water));
    const isUpright =
      Math.abs(float.heel) < 0.1 && float.gm > 0 && Math.abs(degreeFromRadian(float.trim)) < MOST.degrees;
    last = { holes, float, isUpright: isUpright && holes.length > 0 };
    if (last.isUpright) break;
  }
  return last as Leaded;
}

/** A target as it may be written for what floats like that. */
function targetOf(
  { state, heel, trim, netWet, reserveShare, proud, ...float }: Float,
  as: Wanted['as'],
  length: number,
): TargetEntry {
  const isUpright = Math.abs(heel) < 0.3 && Math.abs(degreeFromRadian(trim)) < MOST.degrees;
  const trim_deg = isUpright ? degreeFromRadian(trim) : 0;
  const isInRange = Math.abs(netWet) < MOST.grams;
  const z = waterHeight(float, length / 2);
  if (!isInRange || (as === 'proud' && proud !== null)) return { proud_mm: proud ?? 0, trim_deg };
  if (as === 'waterline' && z !== null && Math.abs(z) < 150) return { waterline_z_mm: z, trim_deg };
  if (as === 'percent' && reserveShare < MOST.percent / 100) return { reserve_percent: 100 * reserveShare, trim_deg };
  if (as === 'reserve' || state !== 'sinks') return { reserve_g: -netWet, trim_deg };
  return { net_wet_g: netWet, trim_deg };
}

/**
 * Known lead stands in the middle row, and a search need not look there for a bait that leans over. Of one that lies far down
 * lead acts by its depth too; ways to place it are then so many that the search may stop before it has tried them all.
 */
function isNearlyLevel({ heel, trim }: Float): boolean {
  return Math.abs(heel) < 0.002 && Math.abs(trim) < 0.15;
}

/** The design with a target in its first setup that lead may meet: for all links together, or for each by itself. */
function aimed(file: DesignFile, whole: Wanted['as'], wishes: readonly Wanted[], by: 'whole' | 'each'): ShopBait {
  const answers = answersOf(file, { detail: 'drag' });
  const parts = ballastPartsOf(answers);
  const { length } = answers.bait.design.body;
  const links = parts.links.map((_link, i) => leaded(parts, i, wishes[i]));
  const { assembled } = floatWith(parts, { holes: links.flatMap(({ holes }) => holes) });
  const [setup, ...rest] = file.setups;
  const own = links.map(({ float }, i) => [parts.links[i].spec.name, targetOf(float, wishes[i].as, length)] as const);
  const first: SetupEntry = {
    ...setup,
    target: targetOf(assembled, whole, length),
    ...(by === 'each' ? { link_targets: Object.fromEntries(own) } : {}),
  };
  return {
    file: { ...file, setups: [first, ...rest] },
    known: links.map(({ isUpright, float }) => by === 'each' && isUpright && isNearlyLevel(float)),
  };
}

/**
 * A random bait of light wood that can be made, without ballast as yet, in a shop with some drills and stock. Of four
 * baits in five the target is how it floats, or each of its links alone, with some lead or other in it; of the rest it is any.
 */
export function arbitraryShopBait(): fc.Arbitrary<ShopBait> {
  return fc
    .record({
      file: arbitraryDesignFile(STEADY),
      drills: fc.subarray([...DRILLS], { minLength: 1, maxLength: 6 }),
      lead: fc.subarray([...STOCK], { minLength: 1, maxLength: 3 }),
      lacking: fc.integer({ min: 0, max: 9 }).map((die) => die === 0),
      wood: fc.integer({ min: 20, max: 45 }).map((hundredths) => hundredths / 100),
      wall: fc.constantFrom(2, 3, 4),
      aim: fc.constantFrom('any', 'whole', 'each', 'each', 'each'),
      whole: wanted(),
      each: fc.array(wanted(), { minLength: 5, maxLength: 5 }),
    })
    .map(({ file, drills: some, lead, lacking, wood, wall, aim, whole, each }) => {
      // a shop that has round stock has as a rule a drill for it
      const fitting = lead.flatMap(
        ({ diameter_mm: d }) => DRILLS.find(({ diameter_mm }) => d && diameter_mm >= d) ?? [],
      );
      const drills = lacking ? some : [...new Set([...fitting, ...some])];
      const setups = file.setups.map(
        ({ link_targets, ...setup }): SetupEntry => ({
          ...setup,
          ...(aim === 'any' && link_targets ? { link_targets } : {}),
          holes: [],
        }),
      );
      const links = file.links.map(({ name }) => ({ name }));
      const bait: DesignFile = {
        ...file,
        links,
        wood: { density_g_cm3: wood },
        shop: { drills, lead, wall_mm: wall },
        setups,
      };
      return { bait, aim, whole, each };
    })
    .filter(({ bait }) => soundIssuesOf(bait).length === 0)
    .filter(({ bait }) => partsOf(bait).links.every(({ span: [from, to] }) => to - from < LONGEST_LINK_MM))
    .map(({ bait, aim, whole, each }) =>
      aim === 'any'
        ? { file: bait, known: bait.links.map(() => false) }
        : aimed(bait, whole.as, each, aim === 'each' ? 'each' : 'whole'),
    );
}
