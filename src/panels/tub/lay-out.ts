import type { Sheet } from '../../view/view.ts';

/** What has to find room in the tub, in millimetres. */
export interface Room {
  readonly length: number;
  /** How far fins reach past the tail tip. */
  readonly past: number;
  readonly height: number;
  /** From the belly down to the lowest hook point. */
  readonly hang: number;
}

/** Share of the tub's width kept free at each end: the line tie's eye, a nose-down bait's corners. */
const END_SHARE = 0.05;
/** Room for a bait that sinks (it is drawn 10 mm under), tilts a little, and has loops outside its skin. */
const UP_AND_DOWN_MM = 18;
/** Room at the top for the numbers over the links, and for the ruler under the hooks. */
const EDGES_PX = 66;

/** The one scale at which the bait fits the tub both ways, with the nose as far left as centring it allows. */
export function layOutTub(width: number, height: number, room: Room): Sheet {
  const long = room.length + room.past;
  const along = (width * (1 - 2 * END_SHARE)) / long;
  const upAndDown = (height - EDGES_PX) / (room.height + room.hang + UP_AND_DOWN_MM);
  const scale = Math.min(along, upAndDown);
  return { scale, left: (width - long * scale) / 2 };
}
