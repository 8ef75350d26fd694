import type { BufferGeometry } from 'three';
import { amountsIn, type Float, MOST_DIGITS } from '../../sim/index.ts';
import { floatingOf, useAnswers } from '../engine/answers.ts';
import { useView } from '../view/view.ts';
import { CentreSign, Follow, Label } from './Mark.tsx';
import { metacentreOf } from './metacentre.ts';

interface MetacentreProps {
  readonly float: Float;
  /** The plumb line through it. */
  readonly line: BufferGeometry;
}

/** M, when it is asked for, with how far it stands over G. */
export function Metacentre({ float, line }: MetacentreProps) {
  const asked = useView((view) => view.metacentre);
  const units = useView((view) => view.units);
  const shown = useView((view) => view.shown);
  const digits = useAnswers(({ lastGood }) => floatingOf(lastGood, shown).accuracy?.digits.gm ?? MOST_DIGITS.gm);
  const place = metacentreOf(float);
  if (!asked || place === null) return null;
  return (
    <Follow point={place} line={line}>
      <Label className="centre metacentre" rank={2} sign={SIGN}>
        M, GM {amountsIn(units).length(float.gm, { digits })}
      </Label>
    </Follow>
  );
}

/** A circle with its middle marked: what the bait swings about. */
function Sign() {
  return (
    <CentreSign>
      <circle r="2.4" className="filled" />
    </CentreSign>
  );
}

const SIGN = { drawn: <Sign />, wordsOn: 'right' } as const;
