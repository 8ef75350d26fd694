import { memo, useMemo } from 'react';
import type { PlacedHole, SettledPlan, Wetted } from '../../../sim/index.ts';
import { useAmounts } from '../../view/amounts.ts';
import { useView } from '../../view/view.ts';
import { holeSides, labelRows, type SidePoint, sideOutline } from './board.ts';
import { isSameHole } from './drill.ts';

interface BoardProps {
  readonly wetted: readonly Wetted[];
  readonly planned: SettledPlan;
  /** The holes there are now. */
  readonly own: readonly PlacedHole[] | undefined;
}

const NONE: readonly PlacedHole[] = [];
const BORDER_PX = 1.5;
const MARGIN_PX = 8;
const LABEL_PX = 17;
/** A figure of the labels is about so wide. */
const FIGURE_PX = 7;

/**
 * The planned holes from the side, under the bait in the tub and at the same scale, with their places from the nose tip;
 * dashed what is drilled now and would not be. The tables say the same in words.
 */
export const Board = memo(({ wetted, planned, own = NONE }: BoardProps) => {
  const { scale, left } = useView((view) => view.sheet);
  const amounts = useAmounts();
  const outlines = useMemo(() => wetted.map(({ mesh }) => sideOutline(mesh)), [wetted]);
  const heights = outlines.flatMap((points) => points.map(([, z]) => z));
  if (heights.length === 0) return null;
  const [low, high] = [Math.min(...heights), Math.max(...heights)];

  const across = (x: number) => BORDER_PX + left + x * scale;
  const down = (z: number) => MARGIN_PX + (high - z) * scale;
  const path = (points: readonly SidePoint[], end = '') =>
    points.length === 0
      ? ''
      : `M${points.map(([x, z]) => `${across(x).toFixed(1)} ${down(z).toFixed(1)}`).join('L')}${end}`;
  const isGone = ({ hole }: PlacedHole) => planned.holes.every((each) => !isSameHole(each.hole.hole, hole));
  const places = [...new Set(planned.holes.map(({ hole }) => hole.hole.x))].toSorted((a, b) => a - b);
  const labels = places.map((x) => {
    const text = amounts.ruled(x);
    return { x, text, at: across(x), width: (text.length + 1) * FIGURE_PX };
  });
  const rows = labelRows(labels);
  const foot = down(low) + MARGIN_PX;
  const height = foot + LABEL_PX * (1 + Math.max(0, ...rows));
  return (
    <svg className="board" height={height} aria-hidden="true">
      <path className="outline" d={outlines.map((points) => path(points, 'Z')).join('')} />
      {own.filter(isGone).map((hole) => (
        <HoleDrawing key={hole.name} hole={hole} kind="gone" across={across} down={down} path={path} scale={scale} />
      ))}
      {planned.holes.map(({ hole }) => (
        <HoleDrawing key={hole.name} hole={hole} kind="planned" across={across} down={down} path={path} scale={scale} />
      ))}
      {labels.map(({ x, text, at }, i) => (
        <text key={x} x={at} y={foot + LABEL_PX * (0.8 + (rows[i] ?? 0))}>
          {text}
        </text>
      ))}
    </svg>
  );
});

interface HoleDrawingProps {
  readonly hole: PlacedHole;
  readonly kind: 'planned' | 'gone';
  readonly scale: number;
  across(x: number): number;
  down(z: number): number;
  path(points: readonly SidePoint[], end?: string): string;
}

function HoleDrawing({ hole, kind, scale, across, down, path }: HoleDrawingProps) {
  const { mouth, inward, diameter, lead } = hole;
  if (inward[2] === 0) {
    const [x, y] = [across(mouth[0]), down(mouth[2])];
    return (
      <g className={kind}>
        <circle className="drilled" cx={x} cy={y} r={(diameter / 2) * scale} />
        {lead !== null && <circle className="lead" cx={x} cy={y} r={(lead.diameter / 2) * scale} />}
      </g>
    );
  }
  const sides = holeSides(hole);
  return (
    <g className={kind}>
      <path className="lead" d={path(sides.lead, 'Z')} />
      <path className="drilled" d={path(sides.drilled)} />
    </g>
  );
}
