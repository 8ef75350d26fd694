import type { Target } from '../design/design.ts';
import { bodyOf } from '../hydro/bait-body.ts';
import { type Float, floatBody } from '../hydro/float.ts';
import { fillHole, holeMouth } from '../mass/hole.ts';
import type { Hardware, PlacedHole, PlacedHung } from '../mass/placed.ts';
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

export interface SettleParts extends AimedParts {
  readonly plan: Pick<BallastPlan, 'holes'>;
}

/** A bait with its aim: enough to float it once more with other parts in it. */
export interface AimedParts extends BallastParts {
  readonly target: Target;
  readonly linkTargets: Readonly<Record<string, Target>>;
  readonly length: Mm;
  readonly hung: readonly PlacedHung[];
}

/** What a bait is to have instead of what it has. */
export type OtherParts = Partial<Pick<Hardware, 'eyes' | 'holes' | 'hung'>>;

/** Floats the bait once more with other eyes, holes or hooks, on the meshes that it has. */
export function floatWith(parts: AimedParts, other: OtherParts): Pick<SettledPlan, 'floats' | 'assembled' | 'target'> {
  const { links, water, target, linkTargets, length } = parts;
  const hung = other.hung ?? parts.hung;
  const ledgers = links.map((each) => {
    const own = <Item extends { readonly link: number }>(items: readonly Item[]) =>
      items.filter(({ link }) => link === each.spec.index);
    const holes = other.holes ? own(other.holes) : each.hardware.holes;
    const eyes = other.eyes ? own(other.eyes) : each.hardware.eyes;
    return ledgerWith(parts, each, { ...each.hardware, holes, eyes });
  });
  const floats = links.map(({ trees, spec }, i) => {
    const own = hung.filter(({ link }) => link === spec.index);
    return floatBody(bodyOf([trees], [ledgers[i]], own, water));
  });
  const trees = links.map((each) => each.trees);
  const assembled = floatBody(bodyOf(trees, ledgers, hung, water));
  const aimed = checkTarget({
    target,
    linkTargets,
    names: links.map(({ spec }) => spec.name),
    spans: links.map(({ spec }) => spec.span),
    length,
    wetted: links.map(({ wetted }) => wetted),
    floats,
    assembled,
  });
  return { floats, assembled, target: aimed };
}

/**
 * Floats the bait once more with a plan's holes in place of its own, by the same ledger and the same kernel. Holes change
 * what a link weighs and never what it displaces, so its meshes stand.
 */
export function settlePlan(parts: SettleParts): SettledPlan {
  const { links, hull, plan } = parts;
  const ownerOf = new Map(links.flatMap(({ spec, hardware }) => hardware.holes.map((hole) => [hole.hole, spec.index])));
  const placed = plan.holes.map((hole) => {
    const link = ownerOf.get(hole) ?? links.findLastIndex(({ spec }) => spec.index === 0 || spec.span[0] <= hole.x);
    return fillHole(holeMouth(hull, hole), hole, link);
  });
  return {
    ...floatWith(parts, { holes: placed }),
    holes: placed.map((hole) => ({ hole, wall: wallOf(hull, hole) })),
  };
}
