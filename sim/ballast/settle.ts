import type { Hole, Target } from '../design/design.ts';
import { bodyOf } from '../hydro/bait-body.ts';
import { type Float, floatBody } from '../hydro/float.ts';
import { fillHole, holeMouth } from '../mass/hole.ts';
import type { PlacedHole } from '../mass/placed.ts';
import { type Wall, wallOf } from '../mass/wall.ts';
import type { Mm } from '../units/brand.ts';
import { type BaitParts, type LinkParts, ledgerWith } from './plan.ts';
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

interface BaitWithLinks extends BaitParts {
  readonly links: readonly LinkParts[];
}

export interface SettleParts extends BaitWithLinks {
  readonly holes: readonly Hole[];
  readonly target: Target;
  readonly linkTargets: Readonly<Record<string, Target>>;
  readonly length: Mm;
}

/** The bait with these holes for its own, by the same ledger and the same kernel: every link alone, and all of them held straight. */
export function floatWith(parts: BaitWithLinks, holes: readonly Hole[]) {
  const { links, hull, water } = parts;
  const placed = holes.map((hole) => {
    const known = links.flatMap(({ hardware }) => hardware.holes).find((each) => each.hole === hole);
    return known ?? fillHole(holeMouth(hull, hole), hole, ownerOf(links, hole.x));
  });
  const ledgers = links.map((each) => {
    const own = placed.filter(({ link }) => link === each.spec.index);
    return ledgerWith(parts, each, { ...each.hardware, holes: own });
  });
  const trees = links.map((each) => each.trees);
  const hung = links.flatMap((each) => each.hung);
  return { placed, ledgers, assembled: floatBody(bodyOf(trees, ledgers, hung, water)) };
}

/** The last link that begins before x. */
function ownerOf(links: readonly LinkParts[], x: Mm): number {
  return Math.max(
    0,
    links.findLastIndex(({ spec }) => spec.span[0] <= x),
  );
}

/**
 * Floats the bait once more with a plan's holes in place of its own. Holes change what a link weighs and never what it
 * displaces, so its meshes stand.
 */
export function settlePlan(parts: SettleParts): SettledPlan {
  const { links, hull, water, holes, target, linkTargets, length } = parts;
  const { placed, ledgers, assembled } = floatWith(parts, holes);
  const floats = links.map((each, i) => floatBody(bodyOf([each.trees], [ledgers[i]], each.hung, water)));
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
