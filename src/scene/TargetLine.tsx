import { useThree } from '@react-three/fiber';
import { useLayoutEffect } from 'react';
import { useAnswers } from '../engine/answers.ts';
import { offMarkNumber, useAmounts } from '../view/amounts.ts';
import { useView } from '../view/view.ts';
import { Follow, Label } from './Marks.tsx';
import { setMark } from './materials.ts';
import { useTub } from './tub.ts';

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
  return target?.offMark.map((place) => (
    <Follow key={place.at} point={[place.x, 0, place.mark]}>
      <Label className="off-mark">{offMarkNumber(place, amounts)}</Label>
    </Follow>
  ));
}
