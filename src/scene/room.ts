import { reachAlong, type ShownBait } from './shown.ts';
import type { Room } from './stand.ts';

/** What the shown bait takes up in still water, hooks hanging plumb. */
export function roomOf({ links, pose, hung, fins }: ShownBait): Room {
  const { up, offset } = pose;
  const [x, y, z] = up;
  const lowestHook = Math.max(
    0,
    ...hung.map((item) => item.hang + offset - (x * item.eye[0] + y * item.eye[1] + z * item.eye[2])),
  );
  const aft = reachAlong(links, [1, 0, 0], fins);
  const fore = -reachAlong(links, [-1, 0, 0], fins);
  return {
    above: Math.max(0, reachAlong(links, up, fins) - offset),
    below: Math.max(lowestHook, reachAlong(links, [-x, -y, -z], fins) + offset),
    middle: (fore + aft) / 2,
    length: aft - fore,
  };
}
