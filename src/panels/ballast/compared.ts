import { type ComparedBait, type Comparison, compareSetups } from '../../../sim/index.ts';
import type { LastGood } from '../../engine/answers.ts';

/**
 * Two setups of one bait, as their last full runs left them. null: one of them is not there yet, or the two are not of
 * the same bait, while one of them is still being worked out.
 */
export function comparedAt(own: LastGood, other: LastGood, beside: string | null): Comparison | null {
  const [a, b] = [comparable(own), comparable(other)];
  if (a === null || b === null || b.setup.name !== beside || a.setup.name === beside) return null;
  const names = ({ design, links }: ComparedBait) => [design.name, ...links.map(({ spec }) => spec.name)].join('\n');
  return names(a) === names(b) ? compareSetups(a, b) : null;
}

function comparable({ bait, links: found }: LastGood): ComparedBait | null {
  const { design, setup, hardware, assembled, assembledSinking, links: specs } = bait;
  if (!(design && setup && hardware && assembled && specs) || assembledSinking === undefined) return null;
  const links = specs.flatMap((spec, i) => {
    const { float, sinking } = found[i] ?? {};
    return float === undefined || sinking === undefined ? [] : [{ spec, float, sinking }];
  });
  return links.length === specs.length ? { design, setup, hardware, assembled, assembledSinking, links } : null;
}
