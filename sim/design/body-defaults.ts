import type { WorkedFile } from './work-out.ts';

type WorkedBody = WorkedFile['body'];

/** A bait is deepest and widest a little before its middle. Shares of the length: common practice. */
const DEEPEST_SHARE = 0.38;
const WIDEST_SHARE = 0.36;
/** The end of a stem is rounded over this many times its smaller half size: a blunt round end, no edge. */
const ROUND_PER_HALF = 1.5;
/** Without a stem nothing is rounded; this keeps a length that is divided by away from 0. */
const ROUND_OF_PLAIN_TIP = 1;

/** A tail with everything filled in, in mm as in the file. */
export interface FilledTail {
  readonly z: number;
  readonly depth: number;
  readonly width: number;
  readonly round: number;
}

/** Back above the datum at the deepest station, in mm: half the height if left out. */
export function backOf(body: WorkedBody): number {
  return body.back_mm ?? body.height_mm / 2;
}

/** Stretch over which the side outline is deepest, in mm: twice the same station for a plain peak. */
export function deepestOf(body: WorkedBody): readonly [number, number] {
  return stretch(body.deepest_x_mm ?? DEEPEST_SHARE * body.length_mm);
}

/** As `deepestOf`, for the widest station of the plan. */
export function widestOf(body: WorkedBody): readonly [number, number] {
  return stretch(body.widest_x_mm ?? WIDEST_SHARE * body.length_mm);
}

/**
 * The tail in full. round is 1.5 times the smaller of half depth and half width (of the other half where one is 0), and
 * never longer than the way from the peak to the tail, or the rounding would eat into the peak.
 */
export function tailOf(body: WorkedBody): FilledTail {
  const { z_mm: z = 0, depth_mm: depth = 0, width_mm: width = 0, round_mm: round } = body.tail ?? {};
  const halves = [depth / 2, width / 2].filter((half) => half > 0);
  const usual = halves.length === 0 ? ROUND_OF_PLAIN_TIP : ROUND_PER_HALF * Math.min(...halves);
  return { z, depth, width, round: round ?? Math.min(usual, tailRun(body)) };
}

/** Length of the shorter of the quarters between a peak and the tail, in mm. */
export function tailRun(body: WorkedBody): number {
  return body.length_mm - Math.max(deepestOf(body)[1], widestOf(body)[1]);
}

function stretch(station: number | readonly [number, number]): readonly [number, number] {
  return typeof station === 'number' ? [station, station] : station;
}
