import { memo } from 'react';
import { formatNumber, type Sinking, timeBandWords } from '../../../sim/index.ts';
import { CHART, fallChart, MARKS } from './chart.ts';
import type { DropNumbers } from './drop.ts';

/** Depth over time from rest to a metre, with the band it may lie in, and the timed drop where there is one. */
export const FallCurve = memo(({ sinking, drop }: { readonly sinking: Sinking; readonly drop: DropNumbers | null }) => {
  const { band, middle, ticks, across, down } = fallChart(sinking);
  const { width, height, left, right, top, bottom } = CHART;
  const label = `Depth over time: a foot in ${timeBandWords(sinking.firstFoot)}, a metre in ${timeBandWords(sinking.firstMetre)}`;
  const isShown = drop !== null && drop.distance_mm <= 1000 && across(drop.time_s) <= right;
  return (
    <svg className="fall-curve" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={label}>
      <path className="axis" d={`M${left} ${top}V${bottom}H${right}`} />
      {MARKS.map(({ depth, text }) => (
        <g key={text}>
          <path className="depth-line" d={`M${left} ${down(depth)}H${right}`} />
          <text x={left - 6} y={down(depth) + 4} className="depth">
            {text}
          </text>
        </g>
      ))}
      <path className="band" d={band} />
      <path className="middle" d={middle} />
      {ticks.map((time) => (
        <g key={time}>
          <path className="tick" d={`M${across(time)} ${bottom}v5`} />
          <text x={across(time)} y={bottom + 19}>
            {formatNumber(time, { digits: Number.isInteger(time) ? 0 : 1 })}
            {time === ticks[ticks.length - 1] ? ' s' : ''}
          </text>
        </g>
      ))}
      {isShown && <circle className="timed" cx={across(drop.time_s)} cy={down(drop.distance_mm)} r={4.5} />}
    </svg>
  );
});
