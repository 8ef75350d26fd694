import type { Assembled } from '../chain/assemble.ts';
import type { Folded } from '../chain/fold.ts';
import type { Accuracy } from '../hydro/accuracy.ts';
import type { Attitudes, OtherRest } from '../hydro/attitudes.ts';
import type { Float } from '../hydro/float.ts';
import type { Reach } from '../reach/reach.ts';
import type { Gram } from '../units/brand.ts';
import { formatMass } from '../units/format.ts';
import { type Warning, WORDS_ALONE } from '../warnings.ts';
import { dropWords, EASY_MM, humpWords, restWords } from './other-rest.ts';
import { jointWarnings } from './warn/joints.ts';
import { type Late, type Refloat, type WarnParts, WHOLE_BAIT } from './warn/parts.ts';
import { reachWarnings } from './warn/reach.ts';
import { warn } from './warn.ts';

interface Judged {
  readonly float: Float;
  readonly accuracy: Accuracy;
  readonly attitudes: Attitudes;
}

export interface AllWarningParts {
  /** What is warned of before accuracy and attitudes are known. */
  readonly parts: WarnParts;
  readonly refloat: Refloat;
  readonly reach: Reach;
  /** null: the bait has no joints. */
  readonly jointed: Assembled | null;
  readonly folded: Folded | null;
  readonly whole: Judged;
  readonly links: readonly (Judged & { readonly name: string })[];
}

/**
 * All warnings, worst first: where the film of the water decides, no number of the bait stands; then joints that
 * make it roll, curl or sag, and those that swing little, what was found before, now with the decimals that are meant and with cures; then the links alone, and the other ways it can come to rest.
 */
export function warnOfAll({
  parts,
  refloat,
  reach,
  jointed,
  folded,
  whole,
  links,
}: AllWarningParts): readonly Warning[] {
  const alone = links.length > 1 ? links : [];
  const meant = { links: links.map(({ accuracy }) => accuracy.digits), whole: whole.accuracy.digits };
  return [
    ...filmWarnings(whole),
    ...jointWarnings(parts, jointed, folded),
    ...reachWarnings(parts, reach),
    ...warn(parts, { meant, refloat: clearOfFilm(whole, refloat) }),
    ...linkFilmWarnings(alone),
    ...otherRestWarnings(WHOLE_BAIT, whole),
    ...alone.flatMap((link) => otherRestWarnings(link.name, link)),
  ];
}

/** Leaves out floats that come within the film's pull where the bait was clear of it; its edge hardly changes. */
function clearOfFilm({ accuracy: { film } }: Judged, refloat: Refloat): Late['refloat'] {
  return (other) => {
    const next = refloat(other);
    return !film.tooClose && Math.abs(next.assembled.netWet) < film.force ? null : next;
  };
}

/** Grams are given to this. */
const LEAST_G: Gram = 0.01;
const CURE = 'Push it under, wet its back, let go; a drop of soap in the tub takes the skin away.';

function filmWarnings({ float, accuracy }: Judged): readonly Warning[] {
  const { film } = accuracy;
  if (!film.tooClose) return [];
  const text = `Too close to the film to call: ${WHOLE_BAIT} is ${nearly(float.netWet)} from hanging, and the skin of the water can hold ${mass(film.force)}. ${CURE}`;
  return [{ ...WORDS_ALONE, code: 'film', where: WHOLE_BAIT, text, ...measured({ float, film }) }];
}

/** What is left to hanging, against what the skin of the water can hold. */
function measured({ float, film }: { readonly float: Float; readonly film: Accuracy['film'] }) {
  return { number: Math.abs(float.netWet), limit: film.force, unit: 'g' } as const;
}

/** One for all links, each with what it is short of and what the film can hold; its number is that of the closest. */
function linkFilmWarnings(links: AllWarningParts['links']): readonly Warning[] {
  const close = links.filter(({ accuracy }) => accuracy.film.tooClose);
  if (close.length === 0) return [];
  const each = close.map(
    ({ name, float, accuracy }) => `${name} ${nearly(float.netWet)} of ${mass(accuracy.film.force)}`,
  );
  const text = `Alone, too close to the film to call (from hanging, of what the skin can hold): ${each.join(', ')}. ${CURE}`;
  const [closest] = close
    .map(({ float, accuracy: { film } }) => measured({ float, film }))
    .toSorted((a, b) => a.number / a.limit - b.number / b.limit);
  return [{ ...WORDS_ALONE, code: 'film', where: close.map(({ name }) => name).join(', '), text, ...closest }];
}

/** What rounds to nothing is not nothing. */
function nearly(weight: Gram): string {
  return Math.abs(weight) < LEAST_G / 2 ? `less than ${mass(LEAST_G)}` : mass(weight);
}

function mass(weight: Gram): string {
  return formatMass(Math.abs(weight), 'g', { digits: 2 });
}

/** Common practice: of ten ways it may land on the water one is as good as sure to come. */
const LIKELY_SHARE = 0.1;

/** Those that a drop is likely to end in are said so; the others only come once it has been turned over. */
function otherRestWarnings(where: string, { float, attitudes }: Judged): readonly Warning[] {
  // the other side of a bait that lays over is said with its verdict
  const isNews = ({ mirrorOf }: OtherRest) => !(mirrorOf === 0 && float.mirrored);
  return attitudes.others.filter(isNews).map((rest) => {
    const drops = dropWords(rest.share, attitudes);
    const lift = rest.hump === null ? null : rest.hump / float.mass;
    const text =
      rest.share >= LIKELY_SHARE
        ? `Likely: ${drops} ${where} comes to rest ${restWords(rest)}; ${humpWords(rest, float.mass)}.`
        : `Once over, ${where} may stay ${restWords(rest)}: ${humpWords(rest, float.mass)}; ${drops} it ends there.`;
    return {
      ...WORDS_ALONE,
      code: 'other-rest',
      where,
      text,
      // the lift of the whole weight that the way there is worth, against that of a ripple
      ...(lift === null ? {} : ({ number: lift, limit: EASY_MM, unit: 'mm' } as const)),
    };
  });
}
