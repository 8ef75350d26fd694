import { type BaitParts, fillingOf, type LinkParts, ledgerWith } from '../ballast/plan.ts';
import { isOnEnd } from '../frames.ts';
import { stationOf } from '../hull/hull.ts';
import { bodyOf } from '../hydro/bait-body.ts';
import { type FloatingBody, totalsOf } from '../hydro/body.ts';
import { restFrom } from '../hydro/equilibrium.ts';
import type { Float } from '../hydro/float.ts';
import { type Steadiness, steadinessOf, steadyFrom } from '../hydro/steadiness.ts';
import { angleBetween, SAME_RAD } from '../hydro/valleys.ts';
import type { Ledger } from '../mass/ledger.ts';
import type { PlacedHole } from '../mass/placed.ts';
import { add, scale, type Vec3 } from '../numerics/vec3.ts';
import type { Gram, GramPerMm3, Mm, Radian } from '../units/brand.ts';
import { type Arms, armsOf } from './arms.ts';
import { leastBallast } from './least-ballast.ts';
import { heelBy, ledgerOffCentre } from './off-centre.ts';

/** How a link alone, or the whole bait held straight, takes being rolled. */
export interface Roll {
  /** afloat: by its waterplane too; under water by its buoyancy over its weight alone. */
  readonly isAfloat: boolean;
  /** null: it stands on end or has gone over it, where roll means nothing. */
  readonly steadiness: Steadiness | null;
  /** Metacentric height held upright, free to trim; under water the height of buoyancy over weight there. */
  readonly gm: Mm;
  /** Greatest width, and the least GM at which it is steady. */
  readonly width: Mm;
  readonly steadyFrom: Mm;
  /** null: it stands on end, or has no preferred way up. */
  readonly arms: Arms | null;
  /** Angle of loll: the heel it comes to, upright not holding it; null: upright holds it. */
  readonly loll: Radian | null;
  /** Whether it comes back to its rest, or to the other side of it, let go belly up; null as for the arms. */
  readonly fromBellyUp: boolean | null;
}

/** The whole bait held straight. */
export interface BaitRoll extends Roll {
  /** Heel that lead adds 3 mm further to starboard: that of all links, and of each alone; null: there is none. */
  readonly offCentre: { readonly all: Radian; readonly links: readonly (Radian | null)[] } | null;
}

/** A link alone. */
export interface LinkRoll extends Roll {
  /** Heel that its lead adds 3 mm further to starboard; null: it has none. */
  readonly offCentre: Radian | null;
  /** null: it stands on end. */
  readonly least: LeastLead | null;
}

/** What lead at one place it takes to stand a link up that has none. */
export interface LeastLead {
  readonly at: Vec3;
  /** Where the place is from: the lead that it has, that of its plan, or its keel and the wall the maker wants. */
  readonly of: 'own' | 'plan' | 'keel';
  /** Until upright holds it, and until it is steady; null: no weight there does it. */
  readonly stands: LeadMass | null;
  readonly steady: LeadMass | null;
}

/** net: less the wood it takes the place of. lead: as weighed; null: the shop has none to reckon with. */
export interface LeadMass {
  readonly net: Gram;
  readonly lead: Gram | null;
}

/** How a link takes being rolled. planned: the holes of its ballast plan. */
export function rollOfLink(bait: BaitParts, link: LinkParts, float: Float, planned: readonly PlacedHole[]): LinkRoll {
  const moved = ledgerOffCentre(bait, link);
  const ledger = ledgerWith(bait, link, link.hardware);
  return {
    ...rollOf(bodyOf([link.trees], [ledger], link.hung, bait.water), float),
    offCentre: moved && heelBy(bait, [link], [moved], float),
    least: isPastEnd(float) ? null : leastLead(bait, link, planned, steadyFrom(float.width)),
  };
}

/** How the whole bait, held straight, takes it. */
export function rollOfBait(bait: BaitParts, links: readonly LinkParts[], assembled: Float): BaitRoll {
  const ledgers = links.map((link) => ledgerWith(bait, link, link.hardware));
  const moved = links.map((link) => ledgerOffCentre(bait, link));
  const trees = links.map((link) => link.trees);
  const hung = links.flatMap((link) => link.hung);
  const heelWith = (own: readonly Ledger[]) => heelBy(bait, links, own, assembled);
  const each = moved.map((ledger, i) => ledger && heelWith(ledgers.with(i, ledger)));
  return {
    ...rollOf(bodyOf(trees, ledgers, hung, bait.water), assembled),
    offCentre: each.every((heel) => heel === null)
      ? null
      : { all: heelWith(moved.map((ledger, i) => ledger ?? ledgers[i])), links: each },
  };
}

/** What follows from a body and its rest alone. */
export function rollOf(body: FloatingBody, float: Float): Roll {
  const { width, gmUpright, laysOver, heel } = float;
  const rolls = !isPastEnd(float);
  const arms = rolls ? armsOf(body, float) : null;
  return {
    isAfloat: float.state === 'floats',
    steadiness: rolls ? steadinessOf(float) : null,
    gm: gmUpright,
    width,
    steadyFrom: steadyFrom(width),
    arms,
    loll: laysOver ? heel : null,
    fromBellyUp: arms === null ? null : comesBack(body, float),
  };
}

/** Whether it stands on end, or has gone on over its nose or its tail: heel is no roll there. */
function isPastEnd({ trim, heel, laysOver }: Float): boolean {
  return isOnEnd(trim) || (Math.abs(heel) > Math.PI / 2 && !laysOver);
}

/** Longest turn in a step of the descent from belly up, which must not leave its valley. */
const SHORT_RAD: Radian = 0.08;

/** Under water a body has but one rest. */
function comesBack(body: FloatingBody, float: Float): boolean {
  if (float.state !== 'floats') return true;
  const { up } = restFrom(body, [0, 0, -1], { longest: SHORT_RAD });
  const homes: readonly Vec3[] = float.mirrored ? [float.up, [float.up[0], -float.up[1], float.up[2]]] : [float.up];
  return homes.some((home) => angleBetween(home, up) < SAME_RAD);
}

function leastLead(bait: BaitParts, link: LinkParts, planned: readonly PlacedHole[], steady: Mm): LeastLead {
  const own = link.hardware.holes;
  // a sealed chamber stays: it lifts whatever the lead
  const bare = ledgerWith(bait, link, { ...link.hardware, holes: own.filter(({ lead }) => lead === null) });
  const body = bodyOf([link.trees], [bare], link.hung, bait.water);
  const [ownAt, planAt] = [leadCentre(own), leadCentre(planned)];
  const at = ownAt ?? planAt ?? overKeel(bait, body);
  const stock = [...own, ...planned].flatMap(({ hole }) => hole.lead?.stock ?? [])[0] ?? bait.shop.lead[0];
  const { wood, soakShare } = fillingOf(bait, link);
  const needed = (gm: Mm, known?: LeadMass | null): LeadMass | null => {
    // what does not stand at any weight is not steady at any
    const net = known === null ? null : leastBallast(body, at, gm, known?.net);
    if (net === null) return null;
    return { net, lead: stock === undefined ? null : leadFor(net, stock.density, wood * (1 + soakShare)) };
  };
  const stands = needed(0);
  return { at, of: ownAt ? 'own' : planAt ? 'plan' : 'keel', stands, steady: needed(steady, stands) };
}

/** Mean place of the lead, on the middle plane; null: there is none. */
function leadCentre(holes: readonly PlacedHole[]): Vec3 | null {
  const leads = holes.flatMap(({ lead }) => lead ?? []);
  const mass = leads.reduce((sum, lead) => sum + lead.mass, 0);
  if (mass === 0) return null;
  const [x, , z] = leads.reduce<Vec3>((sum, lead) => add(sum, scale(lead.centre, lead.mass / mass)), [0, 0, 0]);
  return [x, 0, z];
}

/** Under the middle of all that the link displaces, as far over its keel as the maker wants wood round lead. */
function overKeel({ hull, shop }: BaitParts, body: FloatingBody): Vec3 {
  const [x] = totalsOf(body).volumeCentre;
  return [x, 0, stationOf(hull, x).belly + shop.wall];
}

/** In wood lead counts for what it weighs more than the wood it takes the place of. */
function leadFor(net: Gram, lead: GramPerMm3, wood: GramPerMm3): Gram | null {
  return lead > wood ? (net * lead) / (lead - wood) : null;
}
