import type { Hole } from '../design/design.ts';
import { fillHole, holeMouth, pointHeight } from '../mass/hole.ts';
import type { Gram, GramMm, Mm } from '../units/brand.ts';
import { DEPTH_MM } from './drilling.ts';
import { type BaitParts, isKept, type LinkParts, type LinkPlan, offersFor, planLink, plugOf } from './plan.ts';

/** Steps in which lead that cannot stand where it should is let stand further off. */
const NEARER_MM: Mm = 2;

/** What a pin has to carry between two links that rest together and not each alone. */
export interface PinLoad {
  /** Of the link's weight, so much that the neighbour bears. */
  readonly force: Gram;
  /** About the joint, turning the link's tail down. */
  readonly moment: GramMm;
}

/** Plans of a link and its neighbour that balance together. */
export interface CarriedPlan {
  readonly own: LinkPlan;
  readonly neighbour: LinkPlan;
  readonly pin: PinLoad;
}

/**
 * Lead for a link that cannot be levelled alone: as near to where it should stand as it goes, and the rest in a
 * neighbour, with the pin carrying what is left between them. null where that has no room either.
 */
export function planTogether(
  bait: BaitParts,
  link: LinkParts,
  alone: LinkPlan,
  beside: LinkParts,
  joint: Mm,
): CarriedPlan | null {
  const { why, place, need } = alone;
  if (why === null) return null;
  let own = alone;
  let [force, moment]: readonly number[] = [need.net, need.moment.along];
  if (why.kind === 'outside' && place !== null) {
    // as near as one lane of holes can hold it
    const [nearest, inward] = why.x < why.from ? [why.from, 1] : [why.to, -1];
    for (let off = 0; off <= why.to - why.from && own === alone; off += NEARER_MM) {
      const shift = need.net * (nearest + inward * off - place[0]) * need.along[0];
      const tried = planLink(bait, link, { net: 0, moment: shift });
      if (tried.state !== 'planned' || !tried.left) continue;
      own = { ...tried, need, place };
      [force, moment] = [tried.left.net, -shift];
    }
  }
  // nothing of it can be put into the link itself
  if (own.state === 'cannot') own = { ...alone, state: 'planned', holes: [], left: { trim: 0, net: need.net } };
  const base = planLink(bait, beside).need;
  const lever = (need.about[0] - base.about[0]) * need.along[0];
  const neighbour = planLink(bait, beside, { net: force, moment: moment + force * lever });
  if (neighbour.state === 'cannot') return null;
  const atJoint = moment + force * (need.about[0] - joint) * need.along[0];
  return { own, neighbour, pin: { force, moment: -atJoint } };
}

/**
 * A sealed chamber at the heavy end of a link that is too heavy, or whose lead would have to stand outside it, and the
 * lead that the link then wants: the widest drill first. null where none does it.
 */
export function planChamber(bait: BaitParts, link: LinkParts, alone: LinkPlan): LinkPlan | null {
  const { why, place } = alone;
  if (why === null || (why.kind !== 'outside' && why.kind !== 'too-heavy')) return null;
  const lanes = offersFor(bait, link, alone.need)
    .flatMap((offer) => (offer.row === null ? (offer.lane() ?? []) : []))
    .toSorted((a, b) => b.drill.diameter - a.drill.diameter);
  const tried = new Set<number>();
  for (const { drill, stations, row } of lanes) {
    if (tried.has(drill.diameter)) continue;
    tried.add(drill.diameter);
    const xs = stations.map(({ x }) => x);
    const [from, to] = [Math.min(...xs), Math.max(...xs)];
    const wanted =
      why.kind === 'outside' ? (why.x < why.from ? to : from) : Math.min(Math.max(place?.[0] ?? from, from), to);
    const [station] = stations.toSorted((a, b) => Math.abs(a.x - wanted) - Math.abs(b.x - wanted));
    if (!station) continue;
    const plug = Math.ceil(station.leadFrom / DEPTH_MM) * DEPTH_MM;
    const deepest = Math.floor(station.depthTo / DEPTH_MM) * DEPTH_MM;
    for (let depth = deepest; depth > plug + 2; depth -= 2) {
      const hole: Hole = {
        name: `${link.spec.name}, air`,
        from: 'belly',
        x: station.x,
        across: row,
        diameter: drill.diameter,
        depth,
        point: drill.point,
        lead: null,
        air: { plug },
        plugDensity: plugOf(link.hardware),
        done: false,
      };
      if (plug >= depth + pointHeight(drill)) continue;
      const placed = fillHole(holeMouth(bait.hull, hole), hole, link.spec.index);
      const holes = [...link.hardware.holes.filter((each) => isKept(each.hole)), placed];
      const plan = planLink(bait, { ...link, hardware: { ...link.hardware, holes } });
      if (plan.state !== 'cannot') return { ...plan, holes: [hole, ...plan.holes] };
    }
  }
  return null;
}
