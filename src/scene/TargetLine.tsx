import { useThree } from '@react-three/fiber';
import { useLayoutEffect } from 'react';
import { useAnswers } from '../engine/answers.ts';
import { offMarkNumber, useAmounts } from '../view/amounts.ts';
import { useView } from '../view/view.ts';
import { Follow, Label } from './Mark.tsx';
import { setMark } from './materials.ts';
import { useTub } from './tub.ts';

/** After all that names a part. */
const RANK = 20;
/** Over the two lines. */
const OVER_PX = 14;
/** Water this near to its mark is on it: a 0.0 at the line would only be in the way. */
const NOTHING_MM = 0.05;

/** The waterline aimed for on the wood, and in the side view how far the water is off it, where the numbers say it. */
export function TargetLine() {
  const { shared } = useTub();
  const invalidate = useThree((state) => state.invalidate);
  const target = useAnswers((answers) => answers.lastGood.bait.target);
  const shown = useView((view) => view.shown);
  const camera = useView((view) => view.camera);
  const apart = useView((view) => view.apart);
  const amounts = useAmounts();
  const aim = (shown === 'whole' ? target?.assembled : target?.links[shown]) ?? null;
  useLayoutEffect(() => {
    setMark(shared, aim);
    invalidate();
  }, [shared, aim, invalidate]);
  // the places are those of the bait in one piece
  if (camera !== 'side' || shown !== 'whole' || apart) return null;
  return target?.offMark
    .filter(({ off }) => Math.abs(off) >= NOTHING_MM)
    .map((place) => (
      <Follow key={place.at} point={[place.x, 0, place.mark]}>
        <Label className="off-mark" rank={RANK} rise={OVER_PX}>
          {offMarkNumber(place, amounts)}
        </Label>
      </Follow>
    ));
}
