import { useState } from 'react';
import { baitVerdict } from '../../../sim/index.ts';
import { useAnswers } from '../../engine/answers.ts';
import { useAmounts } from '../../view/amounts.ts';

/**
 * The whole bait's verdict at the head of the page, said aloud to those who listen. It changes only when the full sums
 * are done: a drag would chatter.
 */
export function Headline() {
  const amounts = useAmounts();
  const digits = useAnswers((answers) => answers.lastGood.bait.assembledAccuracy?.digits);
  const settled = useAnswers(({ bait, fresh, detail }) => {
    if (!fresh || detail !== 'full' || bait.assembled === undefined) return null;
    return bait.assembled.status === 'ok'
      ? baitVerdict(bait.assembled.value, digits, amounts)
      : 'Not worked out: something to mend.';
  });
  const [said, setSaid] = useState<string | null>(null);
  if (settled !== null && settled !== said) setSaid(settled);
  return (
    <p className="headline" role="status">
      {said}
    </p>
  );
}
