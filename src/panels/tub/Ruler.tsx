import { useAnswers } from '../../engine/answers.ts';
import { useView } from '../../view/view.ts';
import { rulerTicks, scaleBar } from './ruler.ts';
import { useIsApart } from './use-is-apart.ts';

const HEIGHT_PX = 22;
const TICK_PX = 5;
const NUMBERED_PX = 9;
const BAR_PX = 120;
const MARGIN_PX = 12;

/** Under the bait: a ruler from its nose tip in the side and top view, elsewhere a bar of a round length. */
export function Ruler() {
  const { scale, left } = useView((view) => view.sheet);
  const camera = useView((view) => view.camera);
  const units = useView((view) => view.units);
  const length = useAnswers((answers) => answers.lastGood.bait.design?.body.length);
  const apart = useIsApart();
  if (length === undefined || camera === 'free' || apart) return null;
  if (camera === 'side' || camera === 'top') {
    return (
      <svg className="ruler" height={HEIGHT_PX} aria-hidden="true">
        <path d={`M${left} 0.5H${left + length * scale}`} />
        {rulerTicks(length, scale, units).map(({ at, text }) => {
          const x = left + at * scale;
          return (
            <g key={at}>
              <path d={`M${x} 0V${text === null ? TICK_PX : NUMBERED_PX}`} />
              {text !== null && (
                <text x={x} y={HEIGHT_PX - 2}>
                  {text}
                </text>
              )}
            </g>
          );
        })}
      </svg>
    );
  }
  const bar = scaleBar(BAR_PX, scale, units);
  return (
    <svg className="ruler" height={HEIGHT_PX} aria-hidden="true">
      <path d={`M${MARGIN_PX} 0V${NUMBERED_PX}M${MARGIN_PX} 4.5h${bar.length * scale}m0 -4.5v${NUMBERED_PX}`} />
      <text x={MARGIN_PX + (bar.length * scale) / 2} y={HEIGHT_PX - 2}>
        {bar.text}
      </text>
    </svg>
  );
}
