import type { LinkSpec } from '../links/cut.ts';
import type { Vec3 } from '../numerics/vec3.ts';
import type { Mm } from '../units/brand.ts';
import { rodsOf, slotBox } from './checks/clearance.ts';
import { tabBoxes } from './fin-tab.ts';
import type { Mouth } from './hole.ts';
import type { FixedHardware } from './placed.ts';

/** Where no lead may go: everything within `radius` of a box along the axes. A shank is a box of no width. */
export interface KeepOut {
  /** In words: `the shank of "belly, fore"`. */
  readonly name: string;
  readonly low: Vec3;
  readonly high: Vec3;
  readonly radius: Mm;
}

/** Shanks, pin bores, holes, slots and the tabs of fins of one link. */
export function keepOutsOf(spec: LinkSpec, hardware: FixedHardware): readonly KeepOut[] {
  const nameless = { eye: () => '', hole: () => '' };
  const rods = rodsOf(hardware, spec.index, nameless).map(({ name, segment: { from, to }, radius }): KeepOut => {
    const [low, high] = [Math.min, Math.max].map(
      (pick): Vec3 => [pick(from[0], to[0]), pick(from[1], to[1]), pick(from[2], to[2])],
    );
    return { name, low, high, radius };
  });
  const slots = spec.slots.map((slot): KeepOut => ({ name: 'a hinge slot', ...slotBox(spec, slot), radius: 0 }));
  const tabs = hardware.fins.flatMap(({ name, link, tab }) =>
    tab && link === spec.index
      ? tabBoxes(tab).map((box): KeepOut => ({ name: `the tab of "${name}"`, ...box, radius: 0 }))
      : [],
  );
  return [...rods, ...slots, ...tabs];
}

/**
 * How deep a hole may go, its point included, so that it stays `clear` away from every keep-out; Infinity where it comes
 * near none. The hole counts as flat-ended. Exact: every keep-out and every hole lies along an axis.
 */
export function depthClearOf(
  keepOuts: readonly KeepOut[],
  { at, inward, radius }: Pick<Mouth, 'at' | 'inward' | 'radius'>,
  clear: Mm,
): Mm {
  const upright = inward[2] !== 0;
  const [across, axis] = upright ? [1, 2] : [2, 1];
  let depth = Number.POSITIVE_INFINITY;
  for (const { low, high, radius: own } of keepOuts) {
    const room = clear + own;
    const dx = Math.max(low[0] - at[0], 0, at[0] - high[0]);
    if (dx >= radius + room) continue;
    const dy = Math.max(low[across] - at[across], 0, at[across] - high[across]);
    const lateral = Math.max(0, Math.sqrt(dx * dx + dy * dy) - radius);
    if (lateral >= room) continue;
    const near = inward[axis] > 0 ? low[axis] - at[axis] : at[axis] - high[axis];
    depth = Math.min(depth, Math.max(0, near - Math.sqrt(room * room - lateral * lateral)));
  }
  return depth;
}
