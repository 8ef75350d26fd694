import { memo, useMemo } from 'react';
import type { Reach } from '../../../sim/index.ts';
import { useView } from '../../view/view.ts';
import { drawingWords, limitWords } from './joint-words.ts';
import { type DrawnJoint, drawnJoint, extentOf, type PlanPoint } from './swing-drawing.ts';

const BORDER_PX = 1.5;
/** Room for the angles past the furthest link. */
const MARGIN_PX = 22;
const CONTACT_PX = 4;
/** Angles stand this far from the end of their link. */
const LABEL_PX = 13;
/** Under so many pixels to a millimetre angles are written in whole degrees. */
const NARROW_SCALE = 3;

/**
 * The bait from above, under the bait in the tub and at the same scale: each link at rest and turned about the joint
 * before it to port and to starboard, as far as it goes, on the level that stops it, with its angle and the place that
 * touches. Starboard is up, as it is for who looks down on a bait that points left.
 */
export const SwingDrawing = memo(({ reach }: { readonly reach: Reach }) => {
  const { scale, left } = useView((view) => view.sheet);
  const joints = useMemo(() => reach.joints.map(drawnJoint), [reach]);
  const { side } = useMemo(() => extentOf(joints), [joints]);
  const across = (x: number) => BORDER_PX + left + x * scale;
  const middle = MARGIN_PX + side * scale;
  const down = (y: number) => middle - y * scale;
  const path = (outlines: readonly (readonly PlanPoint[])[]) =>
    outlines
      .filter((points) => points.length > 0)
      .map((points) => `M${points.map(([x, y]) => `${across(x).toFixed(1)} ${down(y).toFixed(1)}`).join('L')}Z`)
      .join('');
  return (
    <svg className="swings" height={2 * middle} role="img" aria-label={drawingWords(reach)}>
      <path className="centre" d={`M${across(0)} ${middle}H${across(Math.max(...joints.map(endOf)))}`} />
      {joints.map(({ joint, limits }) =>
        limits.map((limit) => <path key={`${joint}${limit.side}`} className="limit" d={path(limit.outlines)} />),
      )}
      {joints.map(({ joint, fore, aft }) => (
        <path key={joint} className="rest" d={path(joint === 0 ? [...fore, ...aft] : aft)} />
      ))}
      {joints.map(({ joint, pivot, limits }) => (
        <g key={joint}>
          <circle className="pivot" cx={across(pivot[0])} cy={middle} r={2.5} />
          {limits.map(({ side: to, contact, end }) => (
            <g key={to}>
              {contact && <circle className="contact" cx={across(contact[0])} cy={down(contact[1])} r={CONTACT_PX} />}
              <text x={across(end[0]) + LABEL_PX} y={down(end[1]) + (to === 'starboard' ? -2 : LABEL_PX)}>
                {limitWords(reach.joints[joint]?.[to] ?? { angle: 0, touch: null, at: null }, scale < NARROW_SCALE)}
              </text>
            </g>
          ))}
        </g>
      ))}
      <text className="side" x={across(0)} y={LABEL_PX}>
        starboard
      </text>
      <text className="side" x={across(0)} y={2 * middle - 4}>
        port
      </text>
    </svg>
  );
});

function endOf({ aft }: DrawnJoint): number {
  return Math.max(0, ...aft.flat().map(([x]) => x));
}
