import { memo } from 'react';
import type { Reach } from '../../../sim/index.ts';
import { useAnswers } from '../../engine/answers.ts';
import { useView } from '../../view/view.ts';
import { foldWords } from './joint-words.ts';
import { jointsState } from './joints-state.ts';
import { Pins } from './Pins.tsx';
import { SwingDrawing } from './SwingDrawing.tsx';
import { SwingTable } from './SwingTable.tsx';

/**
 * How the bait bends: how far each joint swings before something touches, and how far all of them fold it. It follows full
 * runs: while a hand is on a number it stays as it was, dimmed.
 */
export function Joints() {
  const reach = useAnswers((answers) => answers.settled.bait.reach);
  const state = useAnswers(jointsState);
  return (
    <section className={state === 'current' ? 'joints' : 'joints old'} aria-labelledby="joints">
      <h2 id="joints">Joints</h2>
      {state === 'blocked' && (
        <p className="blocked">
          How far the joints swing is not known for this design: what stands against it comes first.
        </p>
      )}
      {state === 'awaited' && reach === undefined && <p>Not worked out yet</p>}
      {reach !== undefined && <Swings reach={reach} />}
      <Pins />
    </section>
  );
}

const Swings = memo(({ reach }: { readonly reach: Reach }) => {
  const units = useView((view) => view.units);
  if (reach.joints.length === 0) return <p>A bait in one piece has no joint.</p>;
  return (
    <div className="joints-body">
      <SwingDrawing reach={reach} />
      {foldWords(reach, units).map((line) => (
        <p key={line}>{line}</p>
      ))}
      <SwingTable reach={reach} />
      <p className="note">
        Coats counted as they go on. A joint turns about its pin, and about the middle of linked eyes, which is near the
        truth and no more. Play moves the links fore and aft on the pin, and the swing with it.
      </p>
    </div>
  );
});
