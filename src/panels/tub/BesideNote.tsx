import { type Digits, MOST_DIGITS } from '../../../sim/index.ts';
import { floatingOf, useAnswers } from '../../engine/answers.ts';
import { useBeside } from '../../engine/beside.ts';
import { useAmounts } from '../../view/amounts.ts';
import { useView } from '../../view/view.ts';
import { besideWords } from './beside-words.ts';

/** Names the setup that is drawn pale and says how it rests as against the first; as a mark it is in saved pictures too. */
export function BesideNote() {
  const shown = useView((view) => view.shown);
  const setup = useView((view) => view.beside);
  const own = useAnswers(({ lastGood }) => floatingOf(lastGood, shown).float);
  const other = useBeside(setup, ({ known }) => floatingOf(known, shown).float);
  const ownDigits = useAnswers(({ lastGood }) => floatingOf(lastGood, shown).accuracy?.digits);
  const otherDigits = useBeside(setup, ({ known }) => floatingOf(known, shown).accuracy?.digits);
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

/** As many decimals as are meant of both. */
function fewer(one: Digits, other: Digits): Digits {
  const least = (name: keyof Digits) => Math.min(one[name], other[name]);
  return { draft: least('draft'), proud: least('proud'), trim: least('trim'), heel: least('heel'), gm: least('gm') };
}
