import type { Mm, PlacedHole, Vec3, Wall } from '../../sim/index.ts';
import { along } from './along.ts';

/** A hole with the least wood round what lies in it. */
export interface HoleWall {
  readonly hole: PlacedHole;
  readonly wall: Wall;
}

/** What a hole's wall is measured from: a cylinder as wide as the hole, and the tip of the drill's point. From the mouth. */
export interface Core {
  readonly from: Mm;
  readonly to: Mm;
  readonly apex: Mm;
}

/** The lead, or the chamber, or the bare floor of a hole that is all plug. */
export function coreOf({ lead, air, depth, pointDepth }: PlacedHole): Core {
  return { from: Math.min(lead?.from ?? air?.from ?? depth, depth), to: depth, apex: depth + pointDepth };
}

/** The point of a hole's core that is nearest to a place. A place inside is its own nearest. */
export function nearestOnCore(hole: PlacedHole, place: Vec3): Vec3 {
  const { mouth, inward, diameter } = hole;
  const { from, to, apex } = coreOf(hole);
  const away: Vec3 = [place[0] - mouth[0], place[1] - mouth[1], place[2] - mouth[2]];
  const t = away[0] * inward[0] + away[1] * inward[1] + away[2] * inward[2];
  const out: Vec3 = [away[0] - t * inward[0], away[1] - t * inward[1], away[2] - t * inward[2]];
  const beside = Math.hypot(...out);
  const foot = along(mouth, inward, Math.min(to, Math.max(from, t)));
  const share = beside === 0 ? 0 : Math.min(1, diameter / 2 / beside);
  const onShaft = along(foot, out, share);
  const tip = along(mouth, inward, apex);
  return apart(tip, place) < apart(onShaft, place) ? tip : onShaft;
}

/** The hole with the least wall; the first of several. null: no holes. */
export function tightest(walls: readonly HoleWall[]): HoleWall | null {
  return walls.reduce<HoleWall | null>(
    (least, next) => (least === null || next.wall.thickness < least.wall.thickness ? next : least),
    null,
  );
}

/**
 * Whose walls are marked: that of the picked hole, and the tightest of all where keep-outs are drawn. The tightest comes
 * first.
 */
export function markedWalls(
  walls: readonly HoleWall[],
  { keepOuts, selected }: { readonly keepOuts: boolean; readonly selected: string | null },
): readonly HoleWall[] {
  const least = keepOuts ? tightest(walls) : null;
  const picked = walls.find(({ hole }) => selected === `hole:${hole.name}`);
  return [...(least ? [least] : []), ...(picked && picked !== least ? [picked] : [])];
}

/** Half a tick across a dimension's end, and how far the line goes on out of the skin; CSS pixels. */
const TICK_PX = 4;
const LEADER_PX = 9;

/**
 * Ends of the segments of a dimension from the lead to the skin: the line, drawn on past the skin, and its ticks. scale:
 * CSS pixels to a millimetre.
 */
export function dimensionLines(from: Vec3, to: Vec3, scale: number): readonly Vec3[] {
  const long = apart(from, to);
  if (long === 0) return [];
  const [x, y, z]: Vec3 = [(to[0] - from[0]) / long, (to[1] - from[1]) / long, (to[2] - from[2]) / long];
  // two directions across, so that from any side at least one tick is seen
  const flat = Math.hypot(x, z);
  const across: Vec3 = flat === 0 ? [1, 0, 0] : [-z / flat, 0, x / flat];
  const other: Vec3 = [y * across[2] - z * across[1], z * across[0] - x * across[2], x * across[1] - y * across[0]];
  const ticks = [from, to].flatMap((end) =>
    [across, other].flatMap((direction) => [
      along(end, direction, -TICK_PX / scale),
      along(end, direction, TICK_PX / scale),
    ]),
  );
  return [from, along(to, [x, y, z], LEADER_PX / scale), ...ticks];
}

function apart(one: Vec3, other: Vec3): Mm {
  return Math.hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2]);
}
