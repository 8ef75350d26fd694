import { END_SHARE, NOTE_PX } from '../view/tub-room.ts';
import type { Camera, Sheet } from '../view/view.ts';

/** Size of the tub on the page, CSS pixels. */
export interface TubSize {
  readonly width: number;
  readonly height: number;
}

/** What must fit into the tub: heights over and under still water, and x of the middle and length of what is shown, in mm. */
export interface Room {
  readonly above: number;
  readonly below: number;
  readonly middle: number;
  readonly length: number;
  /** A note stands in the tub's upper corner. */
  readonly noted?: boolean;
}

/** From what is shown towards the viewer, world frame. */
type Direction = readonly [number, number, number];

/** A hair off the upright, so that the picture knows which way round it lies: starboard up, as turned from the side. */
const ALMOST = 1e-4;

export const STANDS: Readonly<Record<Exclude<Camera, 'free'>, Direction>> = {
  side: [0, -1, 0],
  top: [0, -ALMOST, 1],
  front: [-1, 0, 0],
  // the eye a hand over the surface and a little before the bait: over and under water in one view
  waterline: [-0.35, -0.93, 0.1],
  // from port and below: x stays the sheet's
  below: [0, -0.6, -0.8],
};

/** Share of the tub's height from the top to the water, where there is room enough. */
const WATER_SHARE = 0.4;
/** For the numbers over the links, and for the ruler under the hooks; CSS pixels. */
const OVERHEAD_PX = 30;
const UNDERNEATH_PX = 34;

/** CSS pixels from the top of the tub to still water in a level view: steady, unless what is shown would not fit. */
export function waterAt(size: TubSize, room: Room, scale: number): number {
  const above = room.above * scale + overheadPx(room);
  const below = room.below * scale + UNDERNEATH_PX;
  if (above + below > size.height) return (size.height * above) / (above + below);
  return Math.min(size.height - below, Math.max(above, WATER_SHARE * size.height));
}

/** The largest scale at which all that is shown fits, its middle this far from the tub's left edge; CSS pixels to a mm. */
export function scaleToFit(size: TubSize, room: Room, middlePx: number): number {
  const halfPx = Math.min(middlePx, size.width - middlePx) - END_SHARE * size.width;
  const highPx = size.height - overheadPx(room) - UNDERNEATH_PX;
  return Math.min((2 * halfPx) / room.length, highPx / (room.above + room.below));
}

function overheadPx({ noted = false }: Room): number {
  return OVERHEAD_PX + (noted ? NOTE_PX : 0);
}

/** Height over still water of the point that the view turns about: half way between the back and the hooks. */
export function pivotHeight(room: Room): number {
  return (room.above - room.below) / 2;
}

/**
 * How far the picture is shifted so that the middle of what is shown, around which the view turns, stands where the
 * sheet has it: pixels right and down from the middle of the tub.
 */
export function shiftOf(
  camera: Exclude<Camera, 'free'>,
  size: TubSize,
  sheet: Sheet,
  room: Room,
): readonly [number, number] {
  const right = camera === 'front' ? 0 : sheet.left + room.middle * sheet.scale - size.width / 2;
  const down =
    camera === 'top' || camera === 'below'
      ? 0
      : waterAt(size, room, sheet.scale) - pivotHeight(room) * sheet.scale - size.height / 2;
  return [right, down];
}
