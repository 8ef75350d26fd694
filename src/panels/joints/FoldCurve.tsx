import { memo } from 'react';
import { type Folded, foldedWords, formatNumber } from '../../../sim/index.ts';
import { CHART, foldChart } from './fold-chart.ts';

/** How the bait heels as it is folded to either side; nothing where it stays upright. */
export const FoldCurve = memo(({ folded }: { readonly folded: Folded }) => {
  const chart = foldChart(folded);
  if (chart === null) return null;
  const { path, folds, heels, across, down } = chart;
  const { width, height, left, right, top, bottom } = CHART;
  const degrees = (of: number) => `${formatNumber(Math.abs(of), { digits: 0 })}°`;
  return (
    <svg className="fold-curve" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={foldedWords(folded)}>
      <path d={`M${left} ${top}V${bottom}M${left} ${down(0)}H${right}M${across(0)} ${top}V${bottom}`} />
      <path className="middle" d={path} />
      {heels.map((heel) => (
        <text key={heel} className="heel" x={left - 6} y={down(heel) + 4}>
          {degrees(heel)}
        </text>
      ))}
      <text className="heel" x={left - 6} y={down(0) + 4}>
        0°
      </text>
      {[folds[0], 0, folds[1]].map((fold) => (
        <text key={fold} x={across(fold)} y={bottom + 18}>
          {degrees(fold)}
        </text>
      ))}
      <text x={(left + right) / 2} y={bottom + 34}>
        ← folded to port · heel, up to starboard · folded to starboard →
      </text>
    </svg>
  );
});
