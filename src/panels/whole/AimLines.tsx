import type { Accuracy, AdvisedBaitAnswers } from '../../../sim/index.ts';
import { useAmounts } from '../../view/amounts.ts';
import { aimWords, offMarkWords } from './aim.ts';

/** What the setup aims for, line by line met or missed. accuracy: undefined until it is known. */
export function AimLines({
  target,
  accuracy,
}: {
  readonly target: AdvisedBaitAnswers['target'];
  readonly accuracy: Accuracy | undefined;
}) {
  const amounts = useAmounts();
  if (target.checks.length === 0) return null;
  return (
    <div className="aim">
      <h3>Aim {target.met ? 'met' : 'missed'}</h3>
      <ul>
        {target.checks.map((check) => (
          <li key={check.what} className={check.met ? 'met' : 'missed'}>
            {aimWords(check, amounts, accuracy)}
          </li>
        ))}
        {target.offMark.length > 0 && <li>{offMarkWords(target.offMark, amounts)}</li>}
      </ul>
    </div>
  );
}
