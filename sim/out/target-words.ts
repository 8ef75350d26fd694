import type { TargetCheck } from '../ballast/target.ts';
import { type Digits, MOST_DIGITS } from '../hydro/accuracy.ts';
import type { Amounts } from '../units/amounts.ts';
import { formatAngle } from '../units/format.ts';
import { speedBandWords, speedWords } from './sinking/words.ts';

/** Grams of net weight are differences of weights: a hundredth shows what a coat or a ring does. */
const NET_DIGITS = 2;

/** What a target asks for or what is got, in its unit. digits: how many decimals are meant; what is wanted has them all. */
export function aimAmount(what: TargetCheck['what'], value: number, amounts: Amounts, digits = MOST_DIGITS): string {
  if (what === 'sink') return speedWords(value);
  if (what === 'net') return amounts.mass(value, { digits: NET_DIGITS, signed: true });
  if (what === 'proud' || what === 'waterline') return amounts.length(value, { digits: lengthDigits(what, digits) });
  return formatAngle(value, { digits: digits[what] });
}

/** How near is near enough, in the unit of what is wanted: a size, so without a sign. */
export function toleranceAmount({ what, tolerance }: TargetCheck, amounts: Amounts): string {
  return what === 'net' ? amounts.mass(tolerance, { digits: NET_DIGITS }) : aimAmount(what, tolerance, amounts);
}

/** A waterline's height is known as well as the draft. */
function lengthDigits(what: 'proud' | 'waterline', digits: Digits): number {
  return what === 'proud' ? digits.proud : digits.draft;
}

/** Why nothing is got. */
export function missingWords({ isInFall }: TargetCheck): string {
  return isInFall === true ? 'it does not sink' : 'it is wholly under water';
}

/** What a sinking speed may be instead: `, 98 to 126 mm/s`. */
export function bandWords({ band }: TargetCheck): string {
  return band === undefined ? '' : `, ${speedBandWords(band)}`;
}
