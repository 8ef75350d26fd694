import type { Assembled } from '../../chain/assemble.ts';
import type { Folded } from '../../chain/fold.ts';
import { foldedWords, jointWords, looseWords } from './words.ts';

/** What the joints carry and do, line by line: each of them held straight, then let go, then folded. */
export function jointLines(jointed: Assembled, folded: Folded): readonly string[] {
  return [
    ...jointed.straight.joints.map((joint, j) => `Joint ${j + 1}, held straight: ${jointWords(joint)}.`),
    looseWords(jointed),
    foldedWords(folded),
  ];
}
