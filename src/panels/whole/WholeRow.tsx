import { type AdvisedBaitAnswers, baitVerdict, restated } from '../../../sim/index.ts';
import { useAnswers } from '../../engine/answers.ts';
import { useAmounts } from '../../view/amounts.ts';
import { useView } from '../../view/view.ts';
import { Numbers } from '../numbers/Numbers.tsx';
import { OtherRests } from '../numbers/OtherRests.tsx';
import { StateMark } from '../numbers/StateMark.tsx';
import { AimLines } from './AimLines.tsx';
import { warningsToMind } from './warnings-to-mind.ts';

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

/** More than three and none is read. */
const SHOWN_WARNINGS = 3;

function Warnings() {
  const all = useAnswers((answers) => answers.lastGood.bait.allWarnings);
  const early = useAnswers((answers) => answers.lastGood.bait.warnings);
  const warnings = warningsToMind({ ...(all && { allWarnings: all }), ...(early && { warnings: early }) });
  if (warnings.length === 0) return null;
  const lesser = warnings.slice(SHOWN_WARNINGS);
  return (
    <div className="warnings">
      <h3>Mind</h3>
      <WarningList warnings={warnings.slice(0, SHOWN_WARNINGS)} />
      {lesser.length > 0 && (
        <details>
          <summary>{lesser.length === 1 ? 'A lesser one' : `${lesser.length} lesser ones`}</summary>
          <WarningList warnings={lesser} />
        </details>
      )}
    </div>
  );
}

function WarningList({ warnings }: { readonly warnings: AdvisedBaitAnswers['warnings'] }) {
  const units = useView((view) => view.units);
  return (
    <ul>
      {warnings.map(({ code, where, text }) => (
        <li key={`${code} ${where} ${text}`}>{restated(text, units)}</li>
      ))}
    </ul>
  );
}
