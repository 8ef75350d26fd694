import { END_SHARE, NOTE_PX, UNDER_MM } from '../../view/tub-room.ts';
import type { Sheet } from '../../view/view.ts';

/** What has to find room in the tub, in millimetres. */
export interface Room {
  readonly length: number;
  /** How far fins reach past the tail tip. */
  readonly past: number;
  readonly height: number;
  /** From the belly down to the lowest hook point. */
  readonly hang: number;
  /** How much further up and down it reaches together with the bait in another setup; null: none is drawn beside it. */
  readonly beside: number | null;
}

/** What two baits of one shape need more than one: how far each stands proud (null: under water), and fins over the back. */
export function besideNeeds(proud: number | null, other: number | null, fins: number): number {
  const under = -UNDER_MM - fins;
  const apart = Math.abs((proud ?? under) - (other ?? under));
  // one that sinks has its room anyway
  return Math.max(0, apart - UNDER_MM) + fins;
}

/** Room for a bait that sinks (it is drawn 10 mm under), tilts a little, and has loops outside its skin. */
const UP_AND_DOWN_MM = UNDER_MM + 8;
/** Room at the top for the numbers over the links, and for the ruler under the hooks. */
const EDGES_PX = 66;

/** The one scale at which the bait fits the tub both ways, with the nose as far left as centring it allows. */
export function layOutTub(width: number, height: number, room: Room): Sheet {
  const long = room.length + room.past;
  const along = (width * (1 - 2 * END_SHARE)) / long;
  const edges = EDGES_PX + (room.beside === null ? 0 : NOTE_PX);
  const upAndDown = (height - edges) / (room.height + room.hang + (room.beside ?? 0) + UP_AND_DOWN_MM);
  const scale = Math.min(along, upAndDown);
  return { scale, left: (width - long * scale) / 2 };
}
