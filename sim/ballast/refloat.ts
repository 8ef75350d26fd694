import type { Target } from '../design/design.ts';
import { bodyOf } from '../hydro/bait-body.ts';
import { type Float, floatBody } from '../hydro/float.ts';
import type { Hardware } from '../mass/placed.ts';
import type { Mm } from '../units/brand.ts';
import { type BaitParts, type LinkParts, ledgerWith } from './plan.ts';
import { checkTarget, type TargetAnswer } from './target.ts';

/** A bait with its aim: enough to float it once more with other parts in it. */
export interface RefloatParts extends BaitParts {
  readonly links: readonly LinkParts[];
  readonly target: Target;
  readonly linkTargets: Readonly<Record<string, Target>>;
  readonly length: Mm;
}

/** What a bait is to have instead of what it has. */
export type OtherParts = Partial<Pick<Hardware, 'eyes' | 'holes' | 'hung'>>;

export interface Refloated {
  readonly floats: readonly Float[];
  readonly assembled: Float;
  readonly target: TargetAnswer;
}

/** Floats the bait once more with other eyes, holes or hooks, on the meshes that it has. */
export function refloat(parts: RefloatParts, other: OtherParts): Refloated {
  const { links, water, target, linkTargets, length } = parts;
  const hung = other.hung ?? links.flatMap((each) => each.hung);
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
  };
}
