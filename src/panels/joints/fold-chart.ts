import { degreeFromRadian, type Folded } from '../../../sim/index.ts';

/** The figure's own units; it is drawn as wide as there is room. */
export const CHART = { width: 440, height: 150, left: 48, right: 424, top: 14, bottom: 112 } as const;
/** A curve of less than this, in degrees, has nothing to show. */
const LEAST_DEG = 0.5;

/** One fold of the curve: degrees of fold, to starboard positive, and of heel of the link that heels most. */
interface FoldAt {
  readonly fold: number;
  readonly heel: number;
}

export interface FoldChart {
  readonly path: string;
  /** Ends of the axes, whole degrees. */
  readonly folds: readonly [port: number, starboard: number];
  readonly heels: readonly [low: number, high: number];
  across(fold: number): number;
  down(heel: number): number;
}

/** Heel against fold from as far as it goes to port to as far to starboard; null where it never heels. */
export function foldChart({ port, starboard }: Folded): FoldChart | null {
  const at = ({ fold, heel }: FoldAt, sign: number): FoldAt => ({
    fold: sign * degreeFromRadian(fold),
    heel: degreeFromRadian(heel),
  });
  const points = [
    ...port.points.map((point) => at(point, -1)).toReversed(),
    // straight is told once
    ...starboard.points.slice(1).map((point) => at(point, 1)),
  ];
  const most = Math.max(...points.map(({ heel }) => Math.abs(heel)));
  if (!(most >= LEAST_DEG)) return null;
  const reach = Math.ceil(most / 5) * 5;
  const folds = [points[0]?.fold ?? 0, points.at(-1)?.fold ?? 0] as const;
  const { left, right, top, bottom } = CHART;
  const across = (fold: number) => left + ((fold - folds[0]) / (folds[1] - folds[0])) * (right - left);
  const down = (heel: number) => top + ((reach - heel) / (2 * reach)) * (bottom - top);
  const path = points.map(({ fold, heel }) => `${across(fold).toFixed(1)} ${down(heel).toFixed(1)}`).join('L');
  return { path: `M${path}`, folds, heels: [-reach, reach], across, down };
}
