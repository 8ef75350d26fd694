import type { Accuracy } from '../hydro/accuracy.ts';
import type { Attitudes, OtherRest } from '../hydro/attitudes.ts';
import type { Float } from '../hydro/float.ts';
import type { Gram } from '../units/brand.ts';
import { formatMass } from '../units/format.ts';
import type { Warning } from '../warnings.ts';
import { humpWords, restWords } from './other-rest.ts';
import { type WarnParts, warn } from './warn.ts';

interface Judged {
  readonly float: Float;
  readonly accuracy: Accuracy;
  readonly attitudes: Attitudes;
}

export interface AllWarningParts {
  /** What is warned of before accuracy and attitudes are known. */
  readonly parts: WarnParts;
  readonly whole: Judged;
  readonly links: readonly (Judged & { readonly name: string })[];
}

/**
 * All warnings, worst first: where the film of the water decides, no number of the bait stands; then what was found
 * before, now with the decimals that are meant; then the links alone, and the other ways it can come to rest.
 */
export function warnOfAll({ parts, whole, links }: AllWarningParts): readonly Warning[] {
  const alone = links.length > 1 ? links : [];
  const meant = { links: links.map(({ accuracy }) => accuracy.digits), whole: whole.accuracy.digits };
  return [
    ...filmWarnings(whole),
    ...warn(parts, meant),
    ...linkFilmWarnings(alone),
    ...restWarnings('the whole bait', whole),
    ...alone.flatMap((link) => restWarnings(link.name, link)),
  ];
}

/** Grams are given to this. */
const LEAST_G: Gram = 0.01;
const CURE = 'Push it under, wet its back, let go; a drop of soap in the tub takes the skin away.';

function filmWarnings({ float, accuracy }: Judged): readonly Warning[] {
  const { film } = accuracy;
  if (!film.tooClose) return [];
  const where = 'the whole bait';
  const text = `Too close to the film to call: ${where} is ${nearly(float.netWet)} from hanging, and the skin of the water can hold ${mass(film.force)}. ${CURE}`;
  return [{ code: 'film', where, text }];
}

/** One for all links, each with what it is short of and what the film can hold. */
function linkFilmWarnings(links: AllWarningParts['links']): readonly Warning[] {
  const close = links.filter(({ accuracy }) => accuracy.film.tooClose);
  if (close.length === 0) return [];
  const each = close.map(
    ({ name, float, accuracy }) => `${name} ${nearly(float.netWet)} of ${mass(accuracy.film.force)}`,
  );
  const text = `Alone, too close to the film to call (from hanging, of what the skin can hold): ${each.join(', ')}. ${CURE}`;
  return [{ code: 'film', where: close.map(({ name }) => name).join(', '), text }];
}

/** What rounds to nothing is not nothing. */
function nearly(weight: Gram): string {
  return Math.abs(weight) < LEAST_G / 2 ? `less than ${mass(LEAST_G)}` : mass(weight);
}

function mass(weight: Gram): string {
  return formatMass(Math.abs(weight), 'g', { digits: 2 });
}

function restWarnings(where: string, { float, attitudes }: Judged): readonly Warning[] {
  // the other side of a bait that lays over is said with its verdict
  const isNews = ({ mirrorOf }: OtherRest) => !(mirrorOf === 0 && float.mirrored);
  return attitudes.others.filter(isNews).map((rest) => ({
    code: 'other-rest',
    where,
    text: `Once over, ${where} may stay ${restWords(rest)}: ${humpWords(rest, float.mass)}.`,
  }));
}
