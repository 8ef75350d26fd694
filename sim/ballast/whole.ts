import type { Hole } from '../design/design.ts';
import type { Gram, Radian } from '../units/brand.ts';
import { type BaitParts, isKept, type LinkParts, type LinkPlan, planLink } from './plan.ts';
import { LEAD_G, TRIM_STEPS } from './search.ts';
import { floatWith } from './settle.ts';

/** What the planner needs of the whole bait, with every link's parts from nose to tail. */
export interface BallastParts extends BaitParts {
  readonly links: readonly LinkParts[];
  /** What the setup asks for. */
  readonly trim: Radian;
}

export interface BallastPlan {
  readonly links: readonly LinkPlan[];
  /** All holes of the setup with the plan in it: what is done stays, and what is planned takes the place of the rest. */
  readonly holes: readonly Hole[];
}

/** A whole bait that leaves less than this over, and less trim, is near enough. */
const LEFT_OVER_G: Gram = LEAD_G / 2;
const FINE_RAD: Radian = TRIM_STEPS[0];
/** What a link may leave of its weight where the rounding of all links together tells. */
const CLOSE_G: Gram = 0.015;

/**
 * The plans of all links as one. Each link's lead is rounded, and what that leaves of their weights adds up, or tips a bait
 * that hangs; then the links that leave most are planned once more, to weights that come closer, as long as that helps. A
 * link that cannot be ballasted keeps the holes it has.
 */
export function planBallast(parts: BallastParts, alone: readonly LinkPlan[]): BallastPlan {
  let plans = alone;
  let error = errorOf(parts, plans);
  const byLeft = alone
    .filter(({ state }) => state === 'planned')
    .toSorted((a, b) => Math.abs(b.left?.net ?? 0) - Math.abs(a.left?.net ?? 0));
  for (const { link, left } of byLeft) {
    if (error <= 1) break;
    const closer = planLink(parts, parts.links[link], { net: 0, moment: 0 }, CLOSE_G);
    const worst = Math.max(FINE_RAD, Math.abs(left?.trim ?? 0));
    if (closer.state !== 'planned' || Math.abs(closer.left?.trim ?? worst) > worst) continue;
    const next = plans.with(link, closer);
    const nextError = errorOf(parts, next);
    if (nextError < error) [plans, error] = [next, nextError];
  }
  return { links: plans, holes: mergedHoles(parts.links, plans) };
}

/** How far rounding puts the whole bait off: 1 is near enough. */
function errorOf(parts: BallastParts, plans: readonly LinkPlan[]): number {
  const left = plans.reduce((sum, plan) => sum + (plan.left?.net ?? 0), 0);
  // a link that is not ballasted puts the bait further off than any rounding
  if (plans.some(({ state }) => state === 'cannot')) return Math.abs(left) / LEFT_OVER_G;
  const { assembled } = floatWith(parts, mergedHoles(parts.links, plans));
  return Math.max(Math.abs(left) / LEFT_OVER_G, Math.abs(assembled.trim - parts.trim) / FINE_RAD);
}

/** In the order of the links; of each what stays first, then what is planned, or what it has. */
export function mergedHoles(links: readonly LinkParts[], plans: readonly LinkPlan[]): readonly Hole[] {
  return plans.flatMap(({ link, state, holes: planned }) => {
    const own = links[link].hardware.holes.map(({ hole }) => hole);
    return state === 'cannot' ? own : [...own.filter(isKept), ...planned];
  });
}
