import { useThree } from '@react-three/fiber';
import { useLayoutEffect, useMemo } from 'react';
import { floatingOf } from '../engine/answers.ts';
import { useBeside } from '../engine/beside.ts';
import { useView } from '../view/view.ts';
import { Follow, Label } from './Mark.tsx';
import { setOtherWaterline } from './materials.ts';
import { type ShownBait, waterlineEnd } from './shown.ts';
import { useTub } from './tub.ts';

/** After all numbers. */
const RANK = 40;

/**
 * The waterline of the setup that is drawn beside, as a line on the wood of the bait in hand: both setups have one body
 * frame. None of a setup that goes under.
 */
export function BesideLine({ bait }: { readonly bait: ShownBait }) {
  const { shared } = useTub();
  const invalidate = useThree((state) => state.invalidate);
  const shown = useView((view) => view.shown);
  const setup = useView((view) => view.beside);
  const camera = useView((view) => view.camera);
  const apart = useView((view) => view.apart);
  const float = useBeside(setup, ({ known }) => floatingOf(known, shown).float) ?? null;
  useLayoutEffect(() => {
    setOtherWaterline(shared, float);
    invalidate();
    return () => setOtherWaterline(shared, null);
  }, [shared, float, invalidate]);
  const end = useMemo(
    () => (float === null || float.offset === null ? null : waterlineEnd(bait.links, float.up, float.offset)),
    [bait, float],
  );
  // the place is that of the bait in one piece; from the front it is behind the wood
  if (end === null || camera === 'front' || (apart && bait.links.length > 1)) return null;
  return (
    <Follow point={end}>
      <Label className="other-waterline" rank={RANK} sign={SIGN}>
        {`${setup}’s waterline`}
      </Label>
    </Follow>
  );
}

/** Nothing stands at the point but the end of the line; words beside it, out over the water. */
const SIGN = { drawn: null, wordsOn: 'right' } as const;
