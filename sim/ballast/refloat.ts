import type { Target } from '../design/design.ts';
import { bodyOf } from '../hydro/bait-body.ts';
import { type Float, floatBody } from '../hydro/float.ts';
import type { Hardware } from '../mass/placed.ts';
import type { Timed } from '../sinking/drag-law.ts';
import { type FallParts, fallPartsOf } from '../sinking/fall-parts.ts';
import { sinkBody } from '../sinking/sink.ts';
import type { Mm } from '../units/brand.ts';
import { type BaitParts, type LinkParts, ledgerWith } from './plan.ts';
import { checkTarget, type TargetAnswer } from './target.ts';

export interface BaitWithLinks extends BaitParts {
  readonly links: readonly LinkParts[];
}

/** A bait with its aim: enough to float it once more with other parts in it. */
export interface RefloatParts extends BaitWithLinks {
  readonly target: Target;
  readonly linkTargets: Readonly<Record<string, Target>>;
  readonly length: Mm;
  /** What a timed drop has made of its drag: it stays what it is, whatever is changed here. */
  readonly timed: Timed | null;
}

/** What a bait is to have instead of what it has. */
export type OtherParts = Partial<Pick<Hardware, 'eyes' | 'holes' | 'hung'>>;

export interface Refloated {
  /** Each link alone. */
  readonly floats: readonly Float[];
  readonly assembled: Float;
  readonly target: TargetAnswer;
  readonly fall: FallParts;
}

/**
 * The bait, its links held straight, with other parts, by the same ledger and the same kernel. Its meshes stand: holes,
 * eyes and hooks change what a link weighs and never its skin.
 */
export function floatWith(parts: BaitWithLinks, other: OtherParts) {
  const { links, water } = parts;
  const hung = other.hung ?? links.flatMap((each) => each.hung);
  const ledgers = links.map((each) => {
    const own = <Item extends { readonly link: number }>(items: readonly Item[]) =>
      items.filter(({ link }) => link === each.spec.index);
    const holes = other.holes ? own(other.holes) : each.hardware.holes;
    const eyes = other.eyes ? own(other.eyes) : each.hardware.eyes;
    return ledgerWith(parts, each, { ...each.hardware, holes, eyes });
  });
  const trees = links.map((each) => each.trees);
  return { ledgers, hung, assembled: floatBody(bodyOf(trees, ledgers, hung, water)) };
}

/** The same with every link alone too, held against what is aimed for. */
export function refloat(parts: RefloatParts, other: OtherParts): Refloated {
  const { links, water, target, linkTargets, length, timed } = parts;
  const { ledgers, hung, assembled } = floatWith(parts, other);
  const floats = links.map(({ trees, spec }, i) => {
    const own = hung.filter(({ link }) => link === spec.index);
    return floatBody(bodyOf([trees], [ledgers[i]], own, water));
  });
  const trees = links.map((each) => each.trees);
  const fall = fallPartsOf(trees, ledgers, hung, water, timed);
  return {
    floats,
    assembled,
    fall,
    target: checkTarget({
      target,
      linkTargets,
      names: links.map(({ spec }) => spec.name),
      spans: links.map(({ spec }) => spec.span),
      length,
      wetted: links.map(({ wetted }) => wetted),
      floats,
      assembled,
      fall,
      // a fall takes longer to work out than all the rest, and is asked for by few
      sinking: target.kind === 'sink' ? sinkBody(fall.whole, assembled) : null,
    }),
  };
}
