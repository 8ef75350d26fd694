import type { Coat, Design, Hole, Link, Setup, Shop, Wood } from '../design/design.ts';
import type { Hull } from '../hull/hull.ts';
import { bodyOf } from '../hydro/bait-body.ts';
import type { LinkTrees } from '../hydro/link-tree.ts';
import { type LinkSpec, ownerAt } from '../links/cut.ts';
import { fillHole, holeMouth } from '../mass/hole.ts';
import { keepOutsOf } from '../mass/keep-out.ts';
import { type Ledger, writeLedger } from '../mass/ledger.ts';
import type { FixedHardware, PlacedHung } from '../mass/placed.ts';
import type { BareSolid, Wetted } from '../mesh/wetted.ts';
import { dot, type Vec3 } from '../numerics/vec3.ts';
import { EPOXY } from '../tables/finishes.ts';
import type { WaterAnswer } from '../tables/waters.ts';
import type { Gram, GramMm, GramPerMm3, Mm, Radian } from '../units/brand.ts';
import { radianFromDegree } from '../units/convert.ts';
import { type Filling, LEAD_G, mostLead } from './drilling.ts';
import { type Need, needOf, placeOf } from './need.ts';
import { type Lane, type Offer, offersOf, pairsOf } from './room.ts';
import { type Pattern, searchHoles } from './search.ts';
import type { Aim } from './target.ts';

/** What one link's ballast is planned from. */
export interface LinkParts {
  readonly spec: LinkSpec;
  readonly link: Link;
  readonly solid: BareSolid;
  readonly wetted: Wetted;
  readonly trees: LinkTrees;
  /** What this link holds, its holes included. */
  readonly hardware: FixedHardware;
  readonly hung: readonly PlacedHung[];
  readonly aim: Aim;
  /** Holes of the setups before this one, at whose places it is drilled too where that does as well. */
  readonly likes: readonly Hole[];
}

/** Holes of the setups before one, in one link: they may stand in the wood already. The first setup that has any there tells. */
export function holesBefore(
  setups: readonly Setup[],
  setup: Setup,
  joints: Design['joints'],
  link: number,
): readonly Hole[] {
  const before = setups.slice(
    0,
    Math.max(
      0,
      setups.findIndex(({ name }) => name === setup.name),
    ),
  );
  const inLink = before.map(({ holes }) => holes.filter(({ x, air }) => air === null && ownerAt(joints, x) === link));
  return inLink.find((holes) => holes.length > 0) ?? [];
}

/** What all links share. */
export interface BaitParts {
  readonly hull: Hull;
  readonly wood: Wood;
  readonly coats: readonly Coat[];
  readonly water: WaterAnswer;
  readonly shop: Shop;
}

/** The ballast of one link: holes to drill, or why there are none. */
export interface LinkPlan {
  readonly link: number;
  readonly name: string;
  /** Without the holes that may still change. */
  readonly need: Need;
  /** Where all that is added must act together; null: there is nothing to add. */
  readonly place: Vec3 | null;
  /** enough: it rests as it should without any lead; kept: its holes stay, since they bear what a neighbour cannot. */
  readonly state: 'planned' | 'enough' | 'cannot' | 'kept';
  /** New holes, from nose to tail; on the flanks starboard before port. */
  readonly holes: readonly Hole[];
  readonly lead: Gram;
  /** Mean height of the planned lead along the aim's upright; null: there is none. */
  readonly leadHeight: Mm | null;
  /** What the rounding leaves: trim off the aim, nose-down positive, and weight still to add. */
  readonly left: { readonly trim: Radian; readonly net: Gram } | null;
  /** The hole nearest to the centre of buoyancy, to be filled last, when the sealed link has been weighed. */
  readonly last: string | null;
  readonly why: Obstacle | null;
}

/** Why a link cannot be ballasted to its aim on its own. */
export type Obstacle =
  /** It is over its weight without any lead; by next to nothing: it is right, but out of level. */
  | { readonly kind: 'too-heavy'; readonly over: Gram }
  /** Out of level, and so near its weight that no lead can be added to level it. */
  | { readonly kind: 'no-weight-left'; readonly net: Gram; readonly moment: GramMm }
  /** The lists of the shop have no drill, or no lead, or none that go together. */
  | { readonly kind: 'empty-shop'; readonly lacks: 'drills' | 'lead' | 'drills that take the lead' }
  /** Lead would have to stand at x; holes fit between from and to. */
  | { readonly kind: 'outside'; readonly x: Mm; readonly from: Mm; readonly to: Mm }
  /** No hole of any drill keeps its wall anywhere, or not enough of them. */
  | { readonly kind: 'no-room'; readonly wanted: Gram; readonly most: Gram }
  /** There is room, but no way to put it that comes level, or none that stands up. */
  | { readonly kind: 'not-level' };

/** So little lead is one small piece, and that has to stand where it levels the link to the millimetre. */
const LITTLE_G: Gram = 3 * LEAD_G;
/** Weight that the scale does not show. */
export const ENOUGH_G: Gram = 0.1;
const LEVEL_RAD: Radian = 0.005;
/** Heel that a float test does not show. Common practice. */
const UPRIGHT_RAD: Radian = radianFromDegree(2);

/**
 * Plans a link's ballast. carried: weight and moment about the need's point that it is to bring besides its own, for a
 * link beside it. spare: weight that it may leave at most, where a tenth of a gram is too coarse.
 */
export function planLink(
  bait: BaitParts,
  parts: LinkParts,
  carried: { readonly net: Gram; readonly moment: GramMm } = { net: 0, moment: 0 },
  spare?: Gram,
): LinkPlan {
  const { spec } = parts;
  const kept = keptHardware(parts.hardware);
  const ledger = keptLedger(bait, parts);
  const own = needOf(bodyOf([parts.trees], [ledger], parts.hung, bait.water), parts.aim);
  const need: Need = {
    ...own,
    net: own.net + carried.net,
    moment: { ...own.moment, along: own.moment.along + carried.moment },
  };
  const place = placeOf(need);
  const plain = {
    link: spec.index,
    name: spec.name,
    need,
    place,
    holes: [],
    lead: 0,
    leadHeight: null,
    left: null,
    last: null,
  };
  const off = Math.atan2(need.moment.along, need.stiffness.trim);
  const heel = Math.atan2(need.moment.across, need.stiffness.heel);
  // one that does not stand has a heel of more than 90 degrees
  if (Math.abs(need.net) <= ENOUGH_G && Math.abs(off) <= LEVEL_RAD && Math.abs(heel) <= UPRIGHT_RAD) {
    return { ...plain, state: 'enough', left: { trim: off, net: need.net }, why: null };
  }
  const cannot = (why: Obstacle): LinkPlan => ({ ...plain, state: 'cannot', why });
  if (need.net <= 0) return cannot({ kind: 'too-heavy', over: -need.net });
  if (need.net < 2 * LEAD_G || place === null) {
    return cannot({ kind: 'no-weight-left', net: need.net, moment: need.moment.along });
  }
  const lacks = lackOf(bait.shop);
  if (lacks) return cannot({ kind: 'empty-shop', lacks });

  const filling = fillingOf(bait, parts);
  const offers = offersFor(bait, parts, need);
  const pattern = searchHoles(offers, need, filling, { likes: parts.likes, ...(spare === undefined ? {} : { spare }) });
  if (!pattern) {
    const lanes = offers.flatMap((offer) => offer.lane() ?? []);
    return cannot(obstacleOf(lanes, need, place, filling));
  }
  const holes = numbered(holesOf(pattern, filling.plug), spec.name, takenNames(kept));
  if (Math.abs(heelWith(bait, parts, holes)) > UPRIGHT_RAD) return cannot({ kind: 'not-level' });
  return {
    ...plain,
    state: 'planned',
    holes,
    lead: holes.reduce((sum, { lead }) => sum + (lead?.mass ?? 0), 0),
    leadHeight: pattern.height,
    left: { trim: pattern.trim, net: pattern.net },
    last: lastOf(pattern, holes, need),
    why: null,
  };
}

/**
 * Heel by its slopes at the aim, starboard down positive, that a link with these holes keeps: they stand in one row on whole
 * half millimetres, and what that leaves tips one that hardly stands right over. The lead lies as low as it goes, so no other
 * holes would hold it up better.
 */
function heelWith(bait: BaitParts, parts: LinkParts, holes: readonly Hole[]): Radian {
  const kept = keptHardware(parts.hardware);
  const placed = holes.map((hole) => fillHole(holeMouth(bait.hull, hole), hole, parts.spec.index));
  const ledger = ledgerWith(bait, parts, { ...kept, holes: [...kept.holes, ...placed] });
  const { moment, stiffness } = needOf(bodyOf([parts.trees], [ledger], parts.hung, bait.water), parts.aim);
  return -Math.atan2(moment.across, stiffness.heel);
}

/** Where holes may go in a link, and where lead that balances it across would stand. */
export function offersFor(bait: BaitParts, link: LinkParts, need: Need): readonly Offer[] {
  const across = rowAt(placeOf(need)?.[1] ?? 0);
  const before = laidOut.get(link);
  if (before?.bait === bait && before.across === across) return before.offers;
  const keepOuts = keepOutsOf(link.spec, keptHardware(link.hardware));
  const offers = offersOf({ hull: bait.hull, spec: link.spec, keepOuts, ...bait.shop, across });
  laidOut.set(link, { bait, across, offers });
  return offers;
}

/** Offers lay their lanes out as they are asked for: whoever plans the same link again finds them done. */
const laidOut = new WeakMap<LinkParts, { bait: BaitParts; across: Mm; offers: readonly Offer[] }>();

/** Marked out across the belly to half a millimetre; nearer to the middle than half of that is the middle. */
const ROW_MM = 0.5;

function rowAt(y: Mm): Mm {
  // + 0 turns the -0 of a bait that is nearly even into 0
  return Math.round(y / ROW_MM) * ROW_MM + 0;
}

/** The ledger of a link without the holes that may still change. */
export function keptLedger(bait: BaitParts, parts: LinkParts): Ledger {
  return ledgerWith(bait, parts, keptHardware(parts.hardware));
}

/** What is drilled and glued stays, and so does a chamber, which no plan makes; all other holes are planned anew. */
function keptHardware(hardware: FixedHardware): FixedHardware {
  return { ...hardware, holes: hardware.holes.filter(({ hole }) => isKept(hole)) };
}

export function isKept(hole: Hole): boolean {
  return hole.done || hole.air !== null;
}

/** The ledger of a link with other hardware than it has. */
export function ledgerWith(
  { wood, coats }: BaitParts,
  { link, solid, wetted }: LinkParts,
  hardware: FixedHardware,
): Ledger {
  return writeLedger({ link, wood, coats, solid, wetted, hardware });
}

function lackOf(shop: Shop): 'drills' | 'lead' | 'drills that take the lead' | null {
  if (shop.drills.length === 0) return 'drills';
  if (shop.lead.length === 0) return 'lead';
  return pairsOf(shop).length === 0 ? 'drills that take the lead' : null;
}

/** What a hole in a link takes out and what is put in beside lead. */
export function fillingOf(bait: BaitParts, { link, solid, hardware }: LinkParts): Filling {
  const soakShare = bait.coats.reduce((sum, coat) => sum + (coat.kind === 'soak-share' ? coat.share : 0), 0);
  return {
    wood: link.density ?? bait.wood.density,
    plug: plugOf(hardware),
    soakShare,
    soakCentre: solid.soakCentre,
  };
}

/** The plug that the link's holes have now. */
export function plugOf({ holes }: FixedHardware): GramPerMm3 {
  return holes.find(({ hole }) => !hole.done)?.hole.plugDensity ?? EPOXY.value.usual;
}

function obstacleOf(lanes: readonly Lane[], need: Need, place: Vec3, filling: Filling): Obstacle {
  const wanted = need.net;
  const xs = lanes.flatMap(({ stations }) => stations.map(({ x }) => x));
  const most = mostLead(lanes, need, filling);
  if (xs.length === 0 || most < wanted) return { kind: 'no-room', wanted, most };
  if (wanted < LITTLE_G) return { kind: 'no-weight-left', net: wanted, moment: need.moment.along };
  const [from, to] = [Math.min(...xs), Math.max(...xs)];
  const x = place[0];
  return x < from || x > to ? { kind: 'outside', x, from, to } : { kind: 'not-level' };
}

function takenNames({ holes }: FixedHardware): ReadonlySet<string> {
  return new Set(holes.map(({ name }) => name));
}

/** The pattern as holes of the design, without names as yet. */
function holesOf({ lane, depth, holes }: Pattern, plugDensity: GramPerMm3): readonly Hole[] {
  const { stock, drill, from, row } = lane;
  return holes.flatMap(({ station, units }): readonly Hole[] => {
    const hole: Hole = {
      name: '',
      from: 'belly',
      x: station.x,
      across: row,
      diameter: drill.diameter,
      depth,
      point: drill.point,
      lead: { stock, mass: roundedLead(units) },
      air: null,
      plugDensity,
      done: false,
    };
    if (from === 'belly') return [hole];
    return (['starboard', 'port'] as const).map((side) => ({ ...hole, from: side }));
  });
}

/** Of a link's name, as much as leaves room for the rest: a name in the file has 60 letters at most. */
const STEM_LETTERS = 44;

/** Numbers holes by station, a pair from the flanks with one number, past all that is taken. */
export function numbered(holes: readonly Hole[], link: string, taken: ReadonlySet<string>): readonly Hole[] {
  const stem = [...link].reduce(
    (short, letter) => (short.length + letter.length > STEM_LETTERS ? short : short + letter),
    '',
  );
  const nameOf = (number: number, from: Hole['from']) =>
    from === 'belly' ? `${stem} ${number}` : `${stem} ${number}, ${from}`;
  const isTaken = (number: number) =>
    (['belly', 'starboard', 'port'] as const).some((from) => taken.has(nameOf(number, from)));
  let [number, x] = [0, Number.NaN];
  return holes.map((hole) => {
    if (hole.x !== x)
      do number += 1;
      while (isTaken(number));
    x = hole.x;
    return { ...hole, name: nameOf(number, hole.from) };
  });
}

/** Tenths of a gram without the dust of binary fractions. */
function roundedLead(units: number): Gram {
  return Math.round(units * LEAD_G * 10) / 10;
}

function lastOf({ holes }: Pattern, named: readonly Hole[], { buoyancy, along }: Need): string | null {
  const b = dot(buoyancy, along);
  const nearest = holes.toSorted((p, q) => Math.abs(p.station.x - b) - Math.abs(q.station.x - b))[0];
  return named.find(({ x }) => x === nearest?.station.x)?.name ?? null;
}
