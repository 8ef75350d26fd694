import { isOnEnd } from '../frames.ts';
import { type Attitudes, type OtherRest, shareError } from '../hydro/attitudes.ts';
import type { Gram } from '../units/brand.ts';
import { radianFromDegree } from '../units/convert.ts';
import { formatAngle, formatNumber, formatPercent } from '../units/format.ts';

const BELLY_UP = radianFromDegree(135);
const UPRIGHT = radianFromDegree(2);
/**
 * How easily it goes over, by the height to which the hump would lift the whole bait, mm: 1 mm is what a ripple in the
 * tub lifts it, 5 mm a wave or the pull of a line. Our own measure; no standard is known.
 */
export const EASY_MM = 1;
const PUSHED_MM = 5;

/** A resting attitude in the maker's words. */
export function restWords({ float, mirrorOf }: OtherRest): string {
  const rough = float.lyingHooks ? ' (roughly: hooks lie on it)' : '';
  const twin = mirrorOf === null ? '' : ', the mirror image of the other';
  return `${wayUpWords(float)}${twin}${rough}`;
}

/** Which way up a body rests: `upright`, `over to port by 68.8°`, `belly up, 180.0° over`. */
export function wayUpWords({ trim, heel, neutral }: OtherRest['float']): string {
  if (isOnEnd(trim)) return trim > 0 ? 'on its nose' : 'hanging by its tail';
  const side = heel > 0 ? 'starboard' : 'port';
  const tilt =
    Math.abs(trim) < UPRIGHT ? '' : `, ${formatAngle(Math.abs(trim))} ${trim > 0 ? 'nose-down' : 'tail low'}`;
  const any = neutral ? ', any way round' : '';
  if (Math.abs(heel) > BELLY_UP) return `belly up, ${formatAngle(Math.abs(heel))} over${tilt}${any}`;
  if (Math.abs(heel) < UPRIGHT) return `upright${tilt}${any}`;
  return `over to ${side} by ${formatAngle(Math.abs(heel))}${tilt}${any}`;
}

/** What it takes to get there and back, in words and in g mm. mass: of the bait. */
export function humpWords({ hump, back }: OtherRest, mass: Gram): string {
  if (hump === null || back === null) return 'what it takes to get there was not found';
  return `it takes ${gramMm(hump)} to get there (${ease(hump, mass)}) and ${gramMm(back)} to get back`;
}

/**
 * Share of the drops that end at a rest, with its sampling error: `in 23 % ± 3 % of drops`. Drops are evenly spread ways up
 * to be let go from, not a forecast of throws.
 */
export function dropWords(share: number, { starts }: Pick<Attitudes, 'starts'>): string {
  if (share === 0) return `in none of ${formatNumber(starts, { digits: 0 })} drops`;
  if (share === 1) return `in all of ${formatNumber(starts, { digits: 0 })} drops`;
  const [part, error] = [share, shareError(share, starts)].map((each) =>
    formatPercent(each, { digits: share < 0.1 ? 1 : 0 }),
  );
  return `in ${part} ± ${error} of drops`;
}

/** The hump against the work of lifting the whole bait by a millimetre. */
function ease(hump: number, mass: Gram): string {
  const lift = hump / mass;
  if (lift < EASY_MM) return 'less than lifting it a millimetre: a ripple does it';
  const height = `as lifting it ${formatNumber(lift)} mm`;
  return lift < PUSHED_MM ? `${height}: a wave or a tug does it` : `${height}: it has to be turned by hand`;
}

/** An energy to whole g mm, finer where it is small. */
export function gramMm(energy: number): string {
  return `${formatNumber(energy, { digits: energy < 10 ? 1 : 0 })} g mm`;
}
