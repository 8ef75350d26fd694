import type { Target } from '../design/design.ts';
import { bodyOf } from '../hydro/bait-body.ts';
import { type Float, floatBody } from '../hydro/float.ts';
import { fillHole, holeMouth } from '../mass/hole.ts';
import type { PlacedHole, PlacedHung } from '../mass/placed.ts';
import { type Wall, wallOf } from '../mass/wall.ts';
import type { Mm } from '../units/brand.ts';
import { type BallastParts, type BallastPlan, ledgerWith } from './plan.ts';
import { checkTarget, type TargetAnswer } from './target.ts';

/** How the bait floats with a plan in it, rounded as it will be drilled. */
export interface SettledPlan {
  /** Each link alone. */
  readonly floats: readonly Float[];
  readonly assembled: Float;
  readonly target: TargetAnswer;
  /** Every hole as it will stand, with the wood that it leaves, in the order of the plan. */
  readonly holes: readonly { readonly hole: PlacedHole; readonly wall: Wall }[];
}

export interface SettleParts extends BallastParts {
  readonly plan: Pick<BallastPlan, 'holes'>;
  readonly target: Target;
  readonly linkTargets: Readonly<Record<string, Target>>;
  readonly length: Mm;
  readonly hung: readonly PlacedHung[];
}

/**
 * Floats the bait once more with a plan's holes in place of its own, by the same ledger and the same kernel. Holes change
 * what a link weighs and never what it displaces, so its meshes stand.
 */
export function settlePlan(parts: SettleParts): SettledPlan {
  const { links, hull, water, plan, hung, target, linkTargets, length } = parts;
  const ownerOf = new Map(links.flatMap(({ spec, hardware }) => hardware.holes.map((hole) => [hole.hole, spec.index])));
  const placed = plan.holes.map((hole) => {
    const link = ownerOf.get(hole) ?? links.findLastIndex(({ spec }) => spec.index === 0 || spec.span[0] <= hole.x);
    return fillHole(holeMouth(hull, hole), hole, link);
  });
  const ledgers = links.map((each) => {
    const holes = placed.filter(({ link }) => link === each.spec.index);
    return ledgerWith(parts, each, { ...each.hardware, holes });
  });
  const floats = links.map((each, i) => floatBody(bodyOf([each.trees], [ledgers[i]], each.hung, water)));
  const trees = links.map((each) => each.trees);
  const assembled = floatBody(bodyOf(trees, ledgers, hung, water));
  return {
    floats,
    assembled,
    target: checkTarget({
      target,
      linkTargets,
      names: links.map(({ spec }) => spec.name),
      spans: links.map(({ spec }) => spec.span),
      length,
      wetted: links.map(({ wetted }) => wetted),
      floats,
      assembled,
    }),
    holes: placed.map((hole) => ({ hole, wall: wallOf(hull, hole) })),
  };
}
