import { isOnEnd } from '../frames.ts';
import { type Digits, MOST_DIGITS } from '../hydro/accuracy.ts';
import type { Float } from '../hydro/float.ts';
import { type Amounts, amountsIn } from '../units/amounts.ts';
import type { Gram, Mm, Radian } from '../units/brand.ts';
import { radianFromDegree } from '../units/convert.ts';
import { formatAngle } from '../units/format.ts';

/** Under this trim the ends of a 100 mm bait are less than 1 mm apart in height: what hand shaping leaves. */
const LEVEL: Radian = radianFromDegree(0.5);
/** What the float test asks before pins are glued in. */
const UPRIGHT: Radian = radianFromDegree(2);
/** From here on one that upright would hold no longer leans: weight off its middle pulls it over. */
const LYING: Radian = radianFromDegree(30);
const BELLY_UP: Radian = radianFromDegree(135);
/** Less back than this above the water is lost in a ripple, and in what hand shaping leaves. */
const AWASH: Mm = 0.5;
/** Grams are given to this; less than half of it is balance. */
const BALANCE: Gram = 0.005;
const METRIC = amountsIn('mm-g');

/** Decimals of what a verdict says. */
type VerdictDigits = Pick<Digits, 'proud' | 'trim' | 'heel'>;

/**
 * How one link rests when it floats alone, hooks hung, as one sentence in the maker's words. digits: how many decimals
 * are meant, undefined until that is known.
 */
export function linkVerdict(name: string, float: Float, digits?: VerdictDigits, amounts: Amounts = METRIC): string {
  return verdict(capitalised(name), float, digits ?? MOST_DIGITS, amounts);
}

/** How the whole bait rests, held straight, hooks hung, likewise. */
export function baitVerdict(float: Float, digits?: VerdictDigits, amounts: Amounts = METRIC): string {
  return verdict('The bait', float, digits ?? MOST_DIGITS, amounts);
}

function verdict(subject: string, float: Float, digits: VerdictDigits, amounts: Amounts): string {
  const ride = [riding(float, digits, amounts), attitude(float, digits)].join(', ');
  return `${[`${subject} ${ride}`, ...reservations(float, amounts)].join('; ')}.`;
}

function riding(float: Float, digits: VerdictDigits, amounts: Amounts): string {
  const height = (length: Mm) => amounts.length(length, { digits: digits.proud });
  if (float.state === 'sinks') return `sinks, ${weight(float.netWet, amounts)} heavier than its water`;
  if (float.state === 'hangs') return `hangs, ${balance(float.netWet, amounts)}`;
  if (float.proud === null) return 'floats awash';
  // held up by a fin that stands out of the water
  if (float.proud < 0) return `floats awash, its wood ${height(-float.proud)} under`;
  return float.proud < AWASH ? `floats awash, ${height(float.proud)} proud` : `floats ${height(float.proud)} proud`;
}

function balance(netWet: Gram, amounts: Amounts): string {
  if (Math.abs(netWet) < BALANCE) return 'as heavy as its water';
  return `${weight(netWet, amounts)} ${netWet > 0 ? 'heavier' : 'lighter'} than its water`;
}

/** `level`, or what departs from it: trim first, then heel. */
function attitude(float: Float, digits: VerdictDigits): string {
  const trim = formatAngle(Math.abs(float.trim), { digits: digits.trim });
  if (isOnEnd(float.trim)) return float.trim > 0 ? `${trim} nose-down: on its nose` : `${trim} tail low: on its tail`;
  const parts = [trimWords(float.trim, trim), heelWords(float, digits.heel)].filter((words) => words !== null);
  return parts.length === 0 ? 'level' : parts.join(', ');
}

function trimWords(trim: Radian, amount: string): string | null {
  if (Math.abs(trim) < LEVEL) return null;
  return `${amount} ${trim > 0 ? 'nose-down' : 'tail low'}`;
}

function heelWords(float: Float, digits: number): string | null {
  const angle = Math.abs(float.heel);
  if (angle < UPRIGHT) return null;
  if (angle > BELLY_UP) return `belly up, ${formatAngle(angle, { digits })} over`;
  const to = `${formatAngle(angle, { digits })} to ${float.heel > 0 ? 'starboard' : 'port'}`;
  // upright is no rest at all: it lays over, however little
  if (float.laysOver) return `lays over ${to}`;
  return angle >= LYING ? `is pulled over ${to}` : `leans ${to}`;
}

/** What to keep in mind about the attitude, each as a clause. */
function reservations(float: Float, amounts: Amounts): readonly string[] {
  const clauses: string[] = [];
  if (float.neutral) clauses.push('no preferred way up');
  else if (float.tender) clauses.push('tender: a breath tips it');
  if (float.mirrored) clauses.push(mirrorWords(float));
  if (float.lyingHooks) clauses.push('a hook lies on it here, so take the angles as rough');
  if (!float.solver.converged) clauses.push(unsettled(float, amounts));
  return clauses;
}

function mirrorWords(float: Float): string {
  const heeled = Math.abs(float.heel) >= UPRIGHT && !isOnEnd(float.trim);
  return heeled || Math.abs(float.trim) < LEVEL
    ? 'rests as well on its other side'
    : 'rests as well the other end down';
}

function unsettled(float: Float, amounts: Amounts): string {
  const left = `${weight(float.solver.force, amounts)} and ${Math.abs(float.solver.moment).toPrecision(2)} g mm`;
  return `not settled after ${float.solver.steps} steps, the nearest found is ${left} out`;
}

function weight(mass: Gram, amounts: Amounts): string {
  return amounts.mass(Math.abs(mass), { digits: 2 });
}

/** The first letter as a sentence wants it, the rest of the name as the maker wrote it. */
function capitalised(name: string): string {
  const [first = ''] = name;
  return first.toUpperCase() + name.slice(first.length);
}
