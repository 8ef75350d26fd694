import type { Assembled } from '../../chain/assemble.ts';
import type { Folded } from '../../chain/fold.ts';
import { foldedWords, looseWords, pinLoadWords, postureWords } from './words.ts';

/** What the joints carry and do, line by line: each of them held straight, then let go, then folded. */
export function jointLines(jointed: Assembled, folded: Folded): readonly string[] {
  return [
    ...jointed.straight.joints.map(
      (joint, j) => `Joint ${j + 1}, held straight: ${postureWords(joint)}; it carries ${pinLoadWords(joint.load)}.`,
    ),
    looseWords(jointed),
    foldedWords(folded),
  ];
}
