import {
  type Attitudes,
  type Float,
  formatNumber,
  humpWords,
  inchFromMm,
  ounceFromGram,
  restated,
  restWords,
  type UnitSystem,
} from '../../../sim/index.ts';

/** More ways than these are said only in number. */
const SHOWN = 2;

/** One other way a bait can rest: where, and what it takes to get there. */
export interface RestLine {
  /** Its number among the others, as the sums have them. */
  readonly rest: number;
  readonly where: string;
  readonly push: string;
}

/** The other ways that a bait or a link can rest, and how many more there are than are told. */
export interface RestLines {
  readonly lines: readonly RestLine[];
  /** It has no preference among a run of attitudes, in words; null where it has one or its verdict says so already. */
  readonly neutral: string | null;
  readonly more: number;
  /** The number of the same rest on its other side, which its verdict has told of; null where there is none. */
  readonly otherSide: number | null;
}

/** In the maker's words and in the order of the sums, lowest first. */
export function restLines({ others, firstIsNeutral }: Attitudes, float: Float, units: UnitSystem): RestLines {
  // the other side of a bait that lays over is said with its verdict
  const otherSide = float.mirrored ? others.findIndex(({ mirrorOf }) => mirrorOf === 0) : -1;
  const told = others.filter((_, i) => i !== otherSide);
  const lines = told.slice(0, SHOWN).map((rest) => ({
    rest: others.indexOf(rest),
    where: `Can also rest ${restWords(rest)}`,
    push: inUnits(humpWords(rest, float.mass), units),
  }));
  const neutral = told.length === 0 ? 'No preferred way up' : 'No preference among the ways up near this one';
  return {
    lines,
    neutral: firstIsNeutral && !float.neutral ? neutral : null,
    more: told.length - lines.length,
    otherSide: otherSide < 0 ? null : otherSide,
  };
}

/** A sentence of the engine in the units that are shown, its works too. */
export function inUnits(sentence: string, units: UnitSystem): string {
  return restated(inPushes(sentence, units), units);
}

/** Works in g mm as oz in. */
function inPushes(words: string, units: UnitSystem): string {
  if (units === 'mm-g') return words;
  return words.replace(/(\d+(?:\.\d+)?) g mm\b/g, (_, work: string) => {
    const inches = inchFromMm(ounceFromGram(Number(work)));
    return `${formatNumber(inches, { digits: inches < 0.1 ? 4 : 3 })} oz in`;
  });
}
