import type { Sinking } from '../../../sim/index.ts';

/** Inside of the chart, in its own units, which are about pixels. */
export const CHART = { width: 440, height: 216, left: 44, right: 430, top: 14, bottom: 184 } as const;
/** Depths that makers time to, in mm. */
export const MARKS = [
  { depth: 304.8, text: '1 ft' },
  { depth: 1000, text: '1 m' },
] as const;
/** Steps that a clock is read in: the first that leaves few enough. */
const STEPS_S = [0.5, 1, 2, 5, 10, 20, 50, 100];
const MOST_TICKS = 10;

/** A fall drawn as depth, downwards, over time. */
export interface FallChart {
  /** Between the slowest and the fastest that it may be. */
  readonly band: string;
  readonly middle: string;
  /** Whole steps of the clock. */
  readonly ticks: readonly number[];
  across(time: number): number;
  down(depth: number): number;
}

/** Lays a fall out to its first metre. */
export function fallChart({ curve }: Pick<Sinking, 'curve'>): FallChart {
  const until = curve[curve.length - 1]?.time ?? 1;
  const across = (time: number) => CHART.left + ((CHART.right - CHART.left) * time) / until;
  const down = (depth: number) => CHART.top + ((CHART.bottom - CHART.top) * Math.min(depth, 1000)) / 1000;
  const line = (which: 0 | 1 | 2) => {
    const inside = curve.filter(({ depth }) => depth[which] < 1000);
    const next = curve[inside.length];
    const last = inside[inside.length - 1];
    const end =
      next && last
        ? [
            {
              // where it crosses the metre
              time:
                last.time +
                ((next.time - last.time) * (1000 - last.depth[which])) / (next.depth[which] - last.depth[which]),
              depth: 1000,
            },
          ]
        : [];
    return [...inside.map(({ time, depth }) => ({ time, depth: depth[which] })), ...end].map(
      ({ time, depth }) => `${across(time).toFixed(1)} ${down(depth).toFixed(1)}`,
    );
  };
  const step = STEPS_S.find((each) => until / each <= MOST_TICKS) ?? until;
  return {
    band: `M${[...line(0), ...line(2).toReversed()].join('L')}Z`,
    middle: `M${line(1).join('L')}`,
    ticks: Array.from({ length: Math.floor(until / step) + 1 }, (_, i) => i * step),
    across,
    down,
  };
}
