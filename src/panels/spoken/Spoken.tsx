import { baitVerdict } from '../../../sim/index.ts';
import { useAnswers } from '../../engine/answers.ts';

/** Says the bait's verdict aloud, to those who listen to the page, when it has changed and the sums are done. */
export function Spoken() {
  const verdict = useAnswers(({ bait, fresh, detail }) => {
    if (!fresh || detail !== 'full' || bait.assembled === undefined) return null;
    return bait.assembled.status === 'ok' ? baitVerdict(bait.assembled.value) : 'Not worked out: something to mend.';
  });
  return (
    <p className="visually-hidden" role="status">
      {verdict}
    </p>
  );
}
