import { memo, useEffect, useRef, useState } from 'react';
import { type Accuracy, type BallastPlan, baitVerdict, counted, type SettledPlan } from '../../../sim/index.ts';
import { keepTried, makeProposed, putBackTried, tryProposed } from '../../document/commands.ts';
import { documentStore, useDocument } from '../../document/store.ts';
import { answersStore, useAnswers } from '../../engine/answers.ts';
import { useAmounts } from '../../view/amounts.ts';
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
  const unplanned = ballast.links.flatMap(({ name, state }) => (state === 'cannot' ? [name] : []));
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
        {unplanned.length > 0 && <p>No plan for {unplanned.join(', ')}: what holes there are stay as they are.</p>}
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
  const isPlans = useAnswers(
    ({ settled: { bait } }) =>
      bait.setup !== undefined && bait.ballast !== undefined && isDrilled(bait.setup.holes, bait.ballast.holes),
  );
  // while it is worked out anew nothing is known, and what was said stays
  const [drilled, setDrilled] = useState(false);
  if (isCurrent && tried === null && drilled !== isPlans) setDrilled(isPlans);

  // the button that was pressed goes with the plan
  const pressed = useRef(false);
  const said = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    if (drilled && pressed.current) said.current?.focus({ preventScroll: true });
    if (drilled) pressed.current = false;
  }, [drilled]);

  const drill = () => {
    const edit = tried ?? proposed();
    if (edit === null) return;
    pressed.current = true;
    if (tried === null) makeProposed(edit);
    else keepTried();
  };
  const tryOrPutBack = () => {
    if (tried !== null) return putBackTried();
    const edit = proposed();
    if (edit !== null) tryProposed(edit);
  };

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
        <p className="tried" aria-live="polite">
          In the tub it is tried, and not kept yet. Changing anything else keeps it first.
        </p>
      )}
      <p className="acts">
        <button type="button" className="act" aria-disabled={isLate} onClick={drill}>
          Drill as planned
        </button>
        <button type="button" className="act lesser" aria-disabled={isLate} onClick={tryOrPutBack}>
          {tried === null ? 'Try it in the tub' : 'Put back'}
        </button>
      </p>
    </>
  );
}
