import type { Mm } from '../../sim/index.ts';
import { reachAlong, type ShownBait } from './shown.ts';
import type { Room } from './stand.ts';

/** What two baits in one water take up together, with the note that names the second. */
export function roomForBoth(one: Room, other: Room): Room {
  const fore = Math.min(one.middle - one.length / 2, other.middle - other.length / 2);
  const aft = Math.max(one.middle + one.length / 2, other.middle + other.length / 2);
  return {
    above: Math.max(one.above, other.above),
    below: Math.max(one.below, other.below),
    middle: (fore + aft) / 2,
    length: aft - fore,
    noted: true,
  };
}

/**
 * What the shown bait takes up in still water, hooks hanging plumb. shifts: how far each shown link stands off its place
 * along the body's x; none for a bait in one piece.
 */
export function roomOf({ links, pose, hung, fins }: ShownBait, shifts: readonly Mm[] = []): Room {
  const { up, offset } = pose;
  const [x, y, z] = up;
  const shiftOf = (link: number) => shifts[links.findIndex(({ index }) => index === link)] ?? 0;
  const reach = (direction: typeof up) =>
    Math.max(
      ...links.map(
        (link) =>
          reachAlong(
            [link],
            direction,
            fins.filter((fin) => fin.link === link.index),
          ) +
          direction[0] * shiftOf(link.index),
      ),
    );
  const lowestHook = Math.max(
    0,
    ...hung.map(({ hang, eye, link }) => hang + offset - (x * (eye[0] + shiftOf(link)) + y * eye[1] + z * eye[2])),
  );
  const aft = reach([1, 0, 0]);
  const fore = -reach([-1, 0, 0]);
  return {
    above: Math.max(0, reach(up) - offset),
    below: Math.max(lowestHook, reach([-x, -y, -z]) + offset),
    middle: (fore + aft) / 2,
    length: aft - fore,
  };
}
