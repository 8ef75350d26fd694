import { memo } from 'react';
import { type Assembled, type Folded, foldedWords, formatNumber, jointWords, looseWords } from '../../../sim/index.ts';
import { useAnswers } from '../../engine/answers.ts';
import { useAmounts } from '../../view/amounts.ts';
import { useView } from '../../view/view.ts';
import { FoldCurve } from './FoldCurve.tsx';
import { pinLine } from './pin-drawing.ts';

/** What each pin carries while the bait is held straight, whether it curls let go, and how it heels folded. */
export function Pins() {
  const jointed = useAnswers((answers) => answers.settled.bait.jointed);
  const folded = useAnswers((answers) => answers.settled.bait.folded);
  const length = useAnswers((answers) => answers.settled.bait.design?.body.length);
  const reach = useAnswers((answers) => answers.settled.bait.reach);
  if (!jointed || !folded || length === undefined || reach === undefined) return null;
  const pins = reach.joints.map(({ pivot }) => pivot);
  return <PinLoads jointed={jointed} folded={folded} pins={pins} length={length} />;
}

interface PinLoadsProps {
  readonly jointed: Assembled;
  readonly folded: Folded;
  readonly pins: readonly number[];
  readonly length: number;
}

const PinLoads = memo(({ jointed, folded, pins, length }: PinLoadsProps) => {
  const amounts = useAmounts();
  return (
    <div className="pins">
      <h3>What the pins carry</h3>
      <PinDrawing jointed={jointed} pins={pins} length={length} />
      <ul>
        {jointed.straight.joints.map((joint, j) => (
          // joints have no name but their number
          // biome-ignore lint/suspicious/noArrayIndexKey: as above
          <li key={j}>
            Joint {j + 1}, held straight: {jointWords(joint, amounts)}.
          </li>
        ))}
      </ul>
      <p>{looseWords(jointed)}</p>
      <p>{foldedWords(folded)} “Fold” and “Let go” over the tub show it.</p>
      <FoldCurve folded={folded} />
    </div>
  );
});

const BORDER_PX = 1.5;
const HALF_PX = 26;
const LABEL_PX = 14;
const NO_MOMENT = 1;

/** The bait's line under its pins, sagging and arching as they let it, drawn larger; each with its moment. */
function PinDrawing({ jointed, pins, length }: Omit<PinLoadsProps, 'folded'>) {
  const { scale, left } = useView((view) => view.sheet);
  const { points, times } = pinLine(jointed.straight, pins, length, HALF_PX / scale);
  const across = (x: number) => BORDER_PX + left + x * scale;
  const middle = HALF_PX + LABEL_PX;
  const down = (up: number) => middle - up * scale;
  const line = points.map(([x, up]) => `${across(x).toFixed(1)} ${down(up).toFixed(1)}`).join('L');
  return (
    <svg className="swings pin-line" height={2 * middle} aria-hidden="true">
      <path className="centre" d={`M${across(0)} ${middle}H${across(length)}`} />
      <path className="rest" d={`M${line}`} />
      {jointed.straight.joints.map(({ load }, j) => {
        const [x, up] = points[j + 1] ?? [0, 0];
        const moment = Math.abs(load.moment);
        const says = moment < NO_MOMENT ? 'free' : `${formatNumber(moment, { digits: 0 })} g mm`;
        // over what arches, under what sags
        const at = load.moment < 0 ? down(up) - 6 : down(up) + LABEL_PX;
        return (
          <g key={x}>
            <circle className="pivot" cx={across(x)} cy={down(up)} r={2.5} />
            <text x={across(x)} y={at}>
              {says}
            </text>
          </g>
        );
      })}
      {times > 1 && (
        <text className="side" x={across(0)} y={LABEL_PX}>
          drawn {formatNumber(times, { digits: 0 })} times as much
        </text>
      )}
    </svg>
  );
}
