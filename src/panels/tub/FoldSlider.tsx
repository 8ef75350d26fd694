import { useAnswers } from '../../engine/answers.ts';
import { foldTo, useView } from '../../view/view.ts';
import { bendWords } from './bend-words.ts';

/** Steps to either side: one press of an arrow key. */
const STEPS = 20;

/** Folds the bait in the tub, from as far as it goes to port to as far to starboard. */
export function FoldSlider() {
  const bend = useView((view) => view.bend);
  const folded = useAnswers(({ lastGood }) => lastGood.bait.folded);
  const jointed = useAnswers(({ lastGood }) => lastGood.bait.jointed);
  if (bend === null || !folded || !jointed) return null;
  const words = bendWords(bend, jointed, folded);
  if (bend === 'loose') {
    return (
      <span className="told">
        <output>{words}</output>
      </span>
    );
  }
  return (
    <label>
      <span className="visually-hidden">Folded by</span>
      <input
        type="range"
        min={-STEPS}
        max={STEPS}
        value={Math.round(bend * STEPS)}
        aria-valuetext={words}
        onChange={(event) => foldTo(Number(event.target.value) / STEPS)}
      />
      <output>{words}</output>
    </label>
  );
}
