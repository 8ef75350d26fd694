import { type Amounts, FINEST_RULER, mmFromInch } from '../../../sim/index.ts';
import { useAnswers } from '../../engine/answers.ts';
import { useAmounts } from '../../view/amounts.ts';
import { cutAt, cutWithin, useView } from '../../view/view.ts';

/** One press of an arrow key, mm. */
const STEP_MM = 0.5;

/** Moves the plane that the bait is cut at, from flank to flank. */
export function CutSlider() {
  const cut = useView((view) => view.cut);
  const units = useView((view) => view.units);
  const amounts = useAmounts();
  const width = useAnswers(({ lastGood }) => lastGood.bait.design?.body.width);
  if (cut === null || width === undefined) return null;
  const step = units === 'mm-g' ? STEP_MM : mmFromInch(1 / FINEST_RULER);
  // whole steps, so that the middle is one of them
  const steps = Math.floor(width / 2 / step);
  const at = cutWithin(cut, width);
  const words = cutInWords(at, amounts);
  return (
    <label>
      <span className="visually-hidden">Cut at</span>
      <input
        type="range"
        min={-steps}
        max={steps}
        value={Math.round(at / step)}
        aria-valuetext={words}
        onChange={(event) => cutAt(Number(event.target.value) * step)}
      />
      <output>{words}</output>
    </label>
  );
}

/** Where the plane is, in mm to starboard of the centre plane, as a maker would say it. */
function cutInWords(cut: number, amounts: Amounts): string {
  if (cut === 0) return 'at the middle';
  return `${amounts.length(Math.abs(cut))} to ${cut < 0 ? 'port' : 'starboard'}`;
}
