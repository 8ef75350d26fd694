import { type Digits, MOST_DIGITS } from '../../../sim/index.ts';
import { floatOf, type LastGood, useAnswers } from '../../engine/answers.ts';
import { useBeside } from '../../engine/beside.ts';
import { useAmounts } from '../../view/amounts.ts';
import { useView, type View } from '../../view/view.ts';
import { besideWords } from './beside-words.ts';

/** Names the setup that is drawn pale and says how it rests as against the first; as a mark it is in saved pictures too. */
export function BesideNote() {
  const shown = useView((view) => view.shown);
  const setup = useView((view) => view.beside);
  const own = useAnswers(({ lastGood }) => floatOf(lastGood, shown));
  const other = useBeside(setup, ({ known }) => floatOf(known, shown));
  const ownDigits = useAnswers(({ lastGood }) => digitsOf(lastGood, shown));
  const otherDigits = useBeside(setup, ({ known }) => digitsOf(known, shown));
  const amounts = useAmounts();
  const isBroken = useBeside(setup, ({ broken }) => broken);
  if (isBroken) {
    return (
      <p className="mark beside-note" role="status">
        <span>{`${setup}: not worked out, choose it to see what is to be mended`}</span>
      </p>
    );
  }
  if (own === undefined || other === undefined) return null;
  const digits = fewer(ownDigits ?? MOST_DIGITS, otherDigits ?? MOST_DIGITS);
  return (
    <p className="mark beside-note" role="status">
      <svg viewBox="-9 -6 18 12" aria-hidden="true">
        <ellipse rx="8" ry="5" />
      </svg>
      <span>{`${setup}: ${besideWords(own, other, digits, amounts)}`}</span>
    </p>
  );
}

function digitsOf({ bait, links }: LastGood, shown: View['shown']): Digits | undefined {
  return (shown === 'whole' ? bait.assembledAccuracy : links[shown]?.accuracy)?.digits;
}

/** As many decimals as are meant of both. */
function fewer(one: Digits, other: Digits): Digits {
  const least = (name: keyof Digits) => Math.min(one[name], other[name]);
  return { draft: least('draft'), proud: least('proud'), trim: least('trim'), heel: least('heel'), gm: least('gm') };
}
