import type { WorkedFile } from './work-out.ts';

type WorkedBody = WorkedFile['body'];

/** A bait is deepest and widest a little before its middle. Shares of the length: common practice. */
const DEEPEST_SHARE = 0.38;
const WIDEST_SHARE = 0.36;
/** The end of a stem is rounded over this many times its smaller half size: a blunt round end, no edge. */
const ROUND_PER_HALF = 1.5;
/** Without a stem nothing is rounded; this keeps a length that is divided by away from 0. */
const ROUND_OF_PLAIN_TIP = 1;

/** A blunt end with everything filled in, in mm as in the file. */
export interface FilledEnd {
  readonly depth: number;
  readonly width: number;
  readonly round: number;
}

/** A tail with everything filled in, in mm as in the file. */
export interface FilledTail extends FilledEnd {
  readonly z: number;
}

/** Back above the datum at the deepest station, in mm: half the height if left out. */
export function backOf(body: WorkedBody): number {
  return body.back_mm ?? body.height_mm / 2;
}

/** Stretch over which the side outline is deepest, in mm: the ends of a straight run, or one station twice. */
export function deepestOf(body: WorkedBody): readonly [number, number] {
  return stretch(body.deepest_x_mm ?? DEEPEST_SHARE * body.length_mm);
}

/** As `deepestOf`, for the widest station of the plan. */
export function widestOf(body: WorkedBody): readonly [number, number] {
  return stretch(body.widest_x_mm ?? WIDEST_SHARE * body.length_mm);
}

/** The tail in full; see `endOf` for its round. */
export function tailOf(body: WorkedBody): FilledTail {
  return { z: body.tail?.z_mm ?? 0, ...endOf(body.tail ?? {}, tailRun(body)) };
}

/** The nose in full; without one it comes to a round tip. */
export function noseOf(body: WorkedBody): FilledEnd {
  return endOf(body.nose ?? {}, noseRun(body));
}

/**
 * An end in full. round is 1.5 times the smaller of half depth and half width (of the other half where one is 0), and
 * never longer than the way from the peak to the end, or the rounding would eat into the peak.
 */
function endOf(
  end: { readonly depth_mm?: number; readonly width_mm?: number; readonly round_mm?: number },
  run: number,
): FilledEnd {
  const { depth_mm: depth = 0, width_mm: width = 0, round_mm: round } = end;
  const halves = [depth / 2, width / 2].filter((half) => half > 0);
  const usual = halves.length === 0 ? ROUND_OF_PLAIN_TIP : ROUND_PER_HALF * Math.min(...halves);
  return { depth, width, round: round ?? Math.min(usual, run) };
}

/** Length of the shorter of the quarters between a peak and the tail, in mm. */
export function tailRun(body: WorkedBody): number {
  return body.length_mm - Math.max(deepestOf(body)[1], widestOf(body)[1]);
}

/** Length of the shorter of the quarters between the nose and a peak, in mm. */
export function noseRun(body: WorkedBody): number {
  return Math.min(deepestOf(body)[0], widestOf(body)[0]);
}

function stretch(station: number | readonly [number, number]): readonly [number, number] {
  return typeof station === 'number' ? [station, station] : station;
}
