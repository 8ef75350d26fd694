import { memo, useRef } from 'react';
import { type Accuracy, type BallastPlan, baitVerdict, type SettledPlan } from '../../../sim/index.ts';
import { keepTried, makeProposed, putBackTried, tryProposed } from '../../document/commands.ts';
import { documentStore, useDocument } from '../../document/store.ts';
import { answersStore, useAnswers } from '../../engine/answers.ts';
import { useAmounts } from '../../view/amounts.ts';
import { counted } from '../numbers/float-rows.ts';
import { StateMark } from '../numbers/StateMark.tsx';
import { AimLines } from '../whole/AimLines.tsx';
import { drillEdit, isDrilled, leadIn } from './drill.ts';
import { planState } from './plan-state.ts';

interface WholePlanProps {
  readonly ballast: BallastPlan;
  readonly planned: SettledPlan;
  readonly accuracy: Accuracy | undefined;
}

/** How the whole bait rests with its plan, and the two ways to take it: drilled, or tried first. */
export const WholePlan = memo(({ ballast, planned, accuracy }: WholePlanProps) => {
  const amounts = useAmounts();
  const { holes } = ballast;
  const { assembled, target } = planned;
  return (
    <section className="plan-whole" aria-labelledby="plan-whole">
      <div>
        <h3 id="plan-whole">The whole bait with this plan</h3>
        <p className="verdict">
          <StateMark state={assembled.state} />
          <span>{baitVerdict(assembled, accuracy?.digits, amounts)}</span>
        </p>
        <AimLines target={target} accuracy={accuracy} />
      </div>
      <div>
        <p>
          {holes.length === 0
            ? 'No hole is wanted.'
            : `${amounts.mass(leadIn(holes))} of lead in ${counted(holes.length, 'hole')}.`}
        </p>
        <Take />
        <p className="note">
          Lead is poisonous: gloves, no dust, wash before you eat, and your local rules before you fish with it. Never
          let a drill near a screw eye; go by the data sheets of what you glue and plug with.
        </p>
      </div>
    </section>
  );
});

/** The edit that the page proposes now; null while it is out of date, or where there is nothing to drill. */
function proposed() {
  const answers = answersStore.getState();
  const { file } = documentStore.getState();
  const { design, setup, ballast } = answers.settled.bait;
  if (planState(answers) !== 'current' || !(file && design && setup && ballast)) return null;
  return drillEdit(file, design, setup.name, ballast);
}

function Take() {
  const tried = useDocument((document) => document.tried);
  const isCurrent = useAnswers((answers) => planState(answers) === 'current');
  const drilled = useAnswers(
    ({ settled: { bait } }) => bait.setup && bait.ballast && isDrilled(bait.setup.holes, bait.ballast.holes),
  );
  const said = useRef<HTMLParagraphElement>(null);
  if (tried === null && drilled) {
    return (
      <p className="taken" ref={said} tabIndex={-1}>
        Drilled as planned.
      </p>
    );
  }
  const isLate = tried === null && !isCurrent;
  return (
    <>
      {tried !== null && (
        <p aria-live="polite">In the tub it is tried, and not kept yet. Changing anything else keeps it first.</p>
      )}
      <p className="acts">
        <button
          type="button"
          className="act"
          aria-disabled={isLate}
          onClick={() => {
            const edit = tried ?? proposed();
            if (edit === null) return;
            if (tried === null) makeProposed(edit);
            else keepTried();
          }}
        >
          Drill as planned
        </button>
        <button
          type="button"
          className="act lesser"
          aria-disabled={isLate}
          onClick={() => {
            const edit = tried === null ? proposed() : null;
            if (tried !== null) putBackTried();
            else if (edit !== null) tryProposed(edit);
          }}
        >
          {tried === null ? 'Try it in the tub' : 'Put back'}
        </button>
      </p>
    </>
  );
}
