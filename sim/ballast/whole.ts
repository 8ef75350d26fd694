import type { Hole } from '../design/design.ts';
import { trimOf } from '../frames.ts';
import type { Float } from '../hydro/float.ts';
import { add, scale, type Vec3 } from '../numerics/vec3.ts';
import { upInFall } from '../sinking/drag-law.ts';
import type { Gram, Mm, Radian } from '../units/brand.ts';
import { LEAD_G } from './drilling.ts';
import { type BaitParts, isKept, type LinkParts, type LinkPlan, numbered, planLink } from './plan.ts';
import { TRIM_STEPS } from './search.ts';
import { floatWithHoles } from './settle.ts';

export interface BallastPlan {
  readonly links: readonly LinkPlan[];
  /** All holes of the setup with the plan in it: what is done stays, and what is planned takes the place of the rest. */
  readonly holes: readonly Hole[];
}

/** A whole bait that leaves less than this over, and less trim, is near enough. */
const LEFT_OVER_G: Gram = LEAD_G / 2;
const FINE_RAD: Radian = TRIM_STEPS[0];
/** What a link may leave of its weight where the rounding of all links together tells. */
const CLOSE_G: readonly Gram[] = [0.03, 0.015];
/** For that its lead may lie so much higher, and no more: steadiness is worth more than a hundredth of a gram. */
const HIGHER_MM: Mm = 1;

/**
 * The plans of all links as one; trim: what the setup asks for. Each link's lead is rounded, and what that leaves of their
 * weights adds up, or tips a bait that hangs; then the links that leave most are planned once more, to weights that come
 * closer, as long as that helps. A link that cannot be ballasted keeps the holes it has.
 */
export function planBallast(
  bait: BaitParts,
  links: readonly LinkParts[],
  trim: Radian,
  alone: readonly LinkPlan[],
): BallastPlan {
  let plans = keepingBearers(bait, links, trim, alone);
  let error = errorOf(bait, links, trim, plans);
  const byLeft = plans
    .filter(({ state }) => state === 'planned')
    .toSorted((a, b) => Math.abs(b.left?.net ?? 0) - Math.abs(a.left?.net ?? 0));
  for (const { link, left, leadHeight } of byLeft) {
    for (const spare of CLOSE_G) {
      if (error <= 1) break;
      const closer = planLink(bait, links[link], { net: 0, moment: 0 }, spare);
      const worst = Math.max(FINE_RAD, Math.abs(left?.trim ?? 0));
      const isLow = (closer.leadHeight ?? 0) <= (leadHeight ?? 0) + HIGHER_MM;
      if (closer.state !== 'planned' || !isLow || Math.abs(closer.left?.trim ?? worst) > worst) continue;
      const next = plans.with(link, closer);
      const nextError = errorOf(bait, links, trim, next);
      if (nextError < error) [plans, error] = [next, nextError];
    }
  }
  const named = namedApart(links, plans);
  return { links: named, holes: mergedHoles(links, named) };
}

/** A bait is level when its trim is no further off than that: what a float test asks. Common practice. */
const LEVEL_RAD: Radian = TRIM_STEPS[2];

/**
 * Where a link cannot be ballasted, the lead that its neighbours have may bear it over the pins already. Then they keep it:
 * planned for themselves alone they would put the whole bait out of level.
 */
function keepingBearers(
  bait: BaitParts,
  links: readonly LinkParts[],
  trim: Radian,
  alone: readonly LinkPlan[],
): readonly LinkPlan[] {
  const stuck = new Set(alone.filter(({ state }) => state === 'cannot').map(({ link }) => link));
  if (stuck.size === 0) return alone;
  const joints = links.flatMap(({ hardware }) => hardware.pins.map(({ joint }) => joint));
  const bearers = new Set(
    joints.flatMap((joint) => [...(stuck.has(joint) ? [joint + 1] : []), ...(stuck.has(joint + 1) ? [joint] : [])]),
  );
  const kept = alone.map((plan): LinkPlan => {
    if (!bearers.has(plan.link) || plan.state !== 'planned') return plan;
    const { holes } = links[plan.link].hardware;
    const lead = holes.reduce((sum, hole) => sum + (hole.lead?.mass ?? 0), 0);
    return { ...plan, state: 'kept', holes: [], lead, leadHeight: null, left: null, last: null };
  });
  const offBy = (plans: readonly LinkPlan[]) =>
    Math.abs(trimAsAimed(links, floatWithHoles({ ...bait, links }, mergedHoles(links, plans))) - trim);
  const off = offBy(kept);
  return off <= LEVEL_RAD && off < offBy(alone) ? kept : alone;
}

/** How far rounding puts the whole bait off: 1 is near enough. */
function errorOf(bait: BaitParts, links: readonly LinkParts[], trim: Radian, plans: readonly LinkPlan[]): number {
  const left = plans.reduce((sum, plan) => sum + (plan.left?.net ?? 0), 0);
  // a link that is not ballasted puts the bait further off than any rounding
  if (plans.some(({ state }) => state === 'cannot')) return Math.abs(left) / LEFT_OVER_G;
  const assembled = floatWithHoles({ ...bait, links }, mergedHoles(links, plans));
  return Math.max(Math.abs(left) / LEFT_OVER_G, Math.abs(trimAsAimed(links, assembled) - trim) / FINE_RAD);
}

/** Trim at rest; in the fall where that is what is aimed at: drag then bears the weights where it acts on the links. */
function trimAsAimed(links: readonly LinkParts[], float: Float): Radian {
  const pulls = links.flatMap(({ aim }) => (aim.drag && aim.netWet ? [{ at: aim.drag, weight: aim.netWet }] : []));
  const weight = pulls.reduce((sum, pull) => sum + pull.weight, 0);
  if (!(weight > 0)) return float.trim;
  const moment = pulls.reduce<Vec3>((sum, pull) => add(sum, scale(pull.at, pull.weight)), [0, 0, 0]);
  return trimOf(upInFall(float, scale(moment, 1 / weight)));
}

/** No planned hole is called as one that stays, in whichever link that is. */
export function namedApart(links: readonly LinkParts[], plans: readonly LinkPlan[]): readonly LinkPlan[] {
  const staying = plans.flatMap(({ link, state }) =>
    links[link].hardware.holes.filter(({ hole }) => isKept(hole) || keepsAll(state)),
  );
  const taken = new Set(staying.map(({ name }) => name));
  return plans.map((plan) => {
    const holes = numbered(plan.holes, plan.name, taken);
    for (const { name } of holes) taken.add(name);
    const last = plan.holes.findIndex(({ name }) => name === plan.last);
    return { ...plan, holes, last: holes[last]?.name ?? null };
  });
}

function keepsAll(state: LinkPlan['state']): boolean {
  return state === 'cannot' || state === 'kept';
}

/** In the order of the links; of each what stays first, then what is planned, or what it has. */
export function mergedHoles(links: readonly LinkParts[], plans: readonly LinkPlan[]): readonly Hole[] {
  return plans.flatMap(({ link, state, holes: planned }) => {
    const own = links[link].hardware.holes.map(({ hole }) => hole);
    return keepsAll(state) ? own : [...own.filter(isKept), ...planned];
  });
}
