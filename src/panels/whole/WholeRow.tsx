import { baitVerdict } from '../../../sim/index.ts';
import { useAnswers } from '../../engine/answers.ts';
import { useAmounts } from '../../view/amounts.ts';
import { Numbers } from '../numbers/Numbers.tsx';
import { OtherRests } from '../numbers/OtherRests.tsx';
import { StateMark } from '../numbers/StateMark.tsx';
import { AimLines } from './AimLines.tsx';
import { Warnings } from './Warnings.tsx';

/** What the whole bait does, held straight, hooks hung: verdict, numbers, aim and warnings. */
export function WholeRow() {
  const outcome = useAnswers((answers) => answers.bait.assembled);
  const amounts = useAmounts();
  const before = useAnswers((answers) => answers.lastGood.bait.assembled);
  const known = useAnswers((answers) => answers.lastGood.bait.assembledAccuracy);
  const attitudes = useAnswers((answers) => answers.lastGood.bait.assembledAttitudes);
  const isAwaited = useAnswers((answers) => answers.bait.assembledAttitudes?.status !== 'ok');
  const float = outcome?.status === 'ok' ? outcome.value : before;
  return (
    <section className={outcome?.status === 'ok' ? 'whole' : 'whole old'} aria-labelledby="whole">
      <h2 id="whole">Whole bait</h2>
      {float === undefined ? (
        <p className="verdict">Not worked out yet</p>
      ) : (
        <>
          <p className="verdict">
            <StateMark state={float.state} />
            <span>{baitVerdict(float, known?.digits, amounts)}</span>
          </p>
          <OtherRests of="whole" attitudes={attitudes} float={float} isOld={isAwaited} />
          <Numbers float={float} accuracy={known} />
        </>
      )}
      <Aim />
      <Warnings />
    </section>
  );
}

function Aim() {
  const target = useAnswers((answers) => answers.lastGood.bait.target);
  const known = useAnswers((answers) => answers.lastGood.bait.assembledAccuracy);
  return target === undefined ? null : <AimLines target={target} accuracy={known} />;
}
