import { useStillness } from '../../platform/reduced-motion.ts';
import { letSink, useView } from '../../view/view.ts';

/** Lets the bait, or the link that is shown alone, sink in the tub, and brings the tub into sight. */
export function LetSink() {
  const isSinking = useView((view) => view.sinking);
  const still = useStillness();
  const letGo = () => {
    document.querySelector('.tub')?.scrollIntoView({ block: 'start', behavior: still ? 'auto' : 'smooth' });
    letSink(!isSinking);
  };
  return (
    <button type="button" className="act" aria-pressed={isSinking} onClick={letGo}>
      Let it sink
    </button>
  );
}
