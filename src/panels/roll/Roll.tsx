import { memo } from 'react';
import {
  type Accuracy,
  type Attitudes,
  type BaitRoll,
  baitOffCentreWords,
  type Float,
  type LinkRoll,
  leastLeadWords,
  linkOffCentreWords,
  type Roll as Rolled,
  rollWords,
  STEADINESS_MEANS,
  steadinessWords,
} from '../../../sim/index.ts';
import { floatingOf, type LastGood, useAnswers } from '../../engine/answers.ts';
import { show, useView, type View } from '../../view/view.ts';
import { inUnits } from '../numbers/rest-lines.ts';
import { ArmsFigure } from './ArmsFigure.tsx';
import { Rests } from './Rests.tsx';
import { rollState } from './roll-state.ts';

/**
 * How a link or the whole bait takes being rolled, and every way it can rest. It is of what the tub shows, and follows full
 * runs: while a hand is on a number it stays as it was, dimmed.
 */
export function Roll() {
  const settled = useAnswers((answers) => answers.settled);
  const state = useAnswers(rollState);
  const shown = useView((view) => view.shown);
  return (
    <section className={state === 'current' ? 'roll' : 'roll old'} aria-labelledby="roll">
      <h2 id="roll">Roll</h2>
      {state === 'blocked' && (
        <p className="blocked">Not worked out: what stands against the design is to be mended first.</p>
      )}
      {state === 'awaited' && settled.bait.assembledRoll === undefined && <p>Not worked out yet</p>}
      <Settled settled={settled} shown={shown} />
    </section>
  );
}

const Settled = memo(({ settled, shown }: { readonly settled: LastGood; readonly shown: View['shown'] }) => {
  const { bait, links } = settled;
  const { assembledRoll, links: specs } = bait;
  const own = shown === 'whole' ? assembledRoll : links[shown]?.roll;
  const { float, accuracy, attitudes } = floatingOf(settled, shown);
  if (assembledRoll === undefined || specs === undefined) return null;
  const name = shown === 'whole' ? 'the whole bait' : (specs[shown]?.name ?? '');
  return (
    <div className="roll-body">
      <fieldset className="roll-of">
        <legend className="visually-hidden">Roll of</legend>
        <Of pressed={shown === 'whole'} text="Whole bait" onPress={() => show('whole')} />
        {specs.map(({ index, name: link }) => (
          <Of key={index} pressed={shown === index} text={`${index + 1} ${link}`} onPress={() => show(index)} />
        ))}
      </fieldset>
      {own !== undefined && float !== undefined && attitudes !== undefined && (
        <Said
          of={shown}
          name={name}
          roll={own}
          bait={assembledRoll}
          float={float}
          attitudes={attitudes}
          accuracy={accuracy}
        />
      )}
    </div>
  );
});

function Of({ pressed, text, onPress }: { readonly pressed: boolean; readonly text: string; onPress(): void }) {
  return (
    <button type="button" aria-pressed={pressed} onClick={onPress}>
      {text}
    </button>
  );
}

interface SaidProps {
  readonly of: View['shown'];
  readonly name: string;
  readonly roll: LinkRoll | BaitRoll;
  readonly bait: BaitRoll;
  readonly float: Float;
  readonly attitudes: Attitudes;
  readonly accuracy: Accuracy | undefined;
}

function Said({ of, name, roll, bait, float, attitudes, accuracy }: SaidProps) {
  const units = useView((view) => view.units);
  const [first = '', ...more] = rollWords(roll, accuracy?.digits);
  const lead =
    'least' in roll
      ? [
          linkOffCentreWords(roll.offCentre, of === 'whole' ? null : (bait.offCentre?.links[of] ?? null)),
          leastLeadWords(roll),
        ]
      : [baitOffCentreWords(roll)];
  const sentences = [...more, ...lead].flatMap((sentence) =>
    sentence === null ? [] : [`${inUnits(sentence, units)}.`],
  );
  const says = inUnits(first.replace(/^Roll: /, ''), units);
  return (
    <div className="roll-parts">
      <div className="roll-arms">
        <p className="verdict">
          <StandMark roll={roll} />
          <span>
            {name.charAt(0).toUpperCase() + name.slice(1)}: {says}.
          </span>
        </p>
        {roll.steadiness !== null && roll.arms !== null && (
          <p className="note">
            {steadinessWords(roll)}: {STEADINESS_MEANS[roll.steadiness]}.
          </p>
        )}
        <ul>
          {sentences.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
        {roll.arms !== null && <ArmsFigure roll={roll} arms={roll.arms} name={name} says={says} />}
      </div>
      <Rests of={of} name={name} attitudes={attitudes} float={float} />
    </div>
  );
}

/** How it stands as a shape: a mast on a hull, upright, swaying or laid over. The words beside it say the same. */
function StandMark({ roll }: { readonly roll: Rolled }) {
  const lean = { 'lays over': 75, tender: 30, steady: 0, stiff: 0 }[roll.steadiness ?? 'lays over'];
  return (
    <svg className="state-mark" viewBox="0 0 18 18" width="18" height="18" aria-hidden="true">
      <path d="M0 11h18" />
      <g transform={`rotate(${lean} 9 11)`}>
        <path d="M4 11a5 5 0 0 0 10 0" />
        <path d={roll.steadiness === 'stiff' ? 'M9 11V3M7 11V3M11 11V3' : 'M9 11V3'} />
      </g>
    </svg>
  );
}
