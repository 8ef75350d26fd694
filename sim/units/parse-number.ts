/** A number as a maker writes it, without its sign. */
export interface TypedNumber {
  readonly value: number;
  /** As it is written back: 1 3/8, or a decimal with a point. */
  readonly text: string;
  /** A decimal with a point, or no point at all. */
  readonly plain: boolean;
  readonly fraction: boolean;
}

/** The number, or words for why there is none. */
export type NumberRead = TypedNumber | { readonly because: string };

/** More before or after the point, or above or below the line, is a slip of the hand and no measurement. */
const MOST_DIGITS = 9;
const MOST_FRACTION_DIGITS = 4;

const DECIMAL = /^(\d*)(?:([.,])(\d*))?$/;
const FRACTION = /^(\d+)\/(\d+)$/;
/** The dash of 1-3/8 is how a shop drawing joins inches and eighths; with room around it, it might be a minus. */
const MIXED = /^(\d+)(?: |-)(\d+)\/(\d+)$/;
const MIXED_OR_LESS = /^(\d+) ?[-−] ?(\d+\/\d+)$/;
const COMMA_OR_THOUSANDS = /^([1-9]\d{0,2}),(\d{3})$/;
const THOUSANDS = /^\d{1,3}(?:([ ,.])\d{3})(?:\1\d{3})*(?:[.,]\d*)?$/;
/** 1'000, as some write thousands; no one writes inches or minutes with three digits. */
export const PRIMED_THOUSANDS = /^\d{1,3}(?:['’ʼ]\d{3})+(?!\d)/;
export const NO_THOUSANDS = 'thousands want no mark between them; type a number such as 1234.5';

/** Reads a decimal, a fraction or a whole number with a fraction, after `normalised`; no sign, no unit. */
export function readNumber(text: string): NumberRead {
  const fraction = FRACTION.exec(text);
  if (fraction !== null) return withFraction('', fraction[1], fraction[2]);
  const mixed = MIXED.exec(text);
  if (mixed !== null) return withFraction(mixed[1], mixed[2], mixed[3]);
  const dashed = MIXED_OR_LESS.exec(text);
  if (dashed !== null) {
    const joined = `${dashed[1]} ${dashed[2]}`;
    return { because: `it could be ${joined}, or ${dashed[1]} less ${dashed[2]}; type ${joined}, or what it comes to` };
  }
  const either = COMMA_OR_THOUSANDS.exec(text);
  if (either !== null) {
    const [, before, after] = either;
    return { because: `it could be ${before}.${after} or ${before}${after}; type the one that is meant` };
  }
  const decimal = DECIMAL.exec(text);
  if (decimal !== null) return decimalOf(decimal[1], decimal[2], decimal[3] ?? '');
  if (THOUSANDS.test(text)) return { because: NO_THOUSANDS };
  return { because: 'it is not one number; type 12.5, 3/8 or 1 3/8' };
}

function decimalOf(before: string, mark: string | undefined, after: string): NumberRead {
  if (before === '' && after === '') return { because: 'it is not a number; type 12.5, 3/8 or 1 3/8' };
  if (before.length > MOST_DIGITS || after.length > MOST_DIGITS) {
    return { because: `at most ${MOST_DIGITS} digits stand before the point and ${MOST_DIGITS} after it` };
  }
  const whole = before.replace(/^0+(?=\d)/, '') || '0';
  const text = after === '' ? whole : `${whole}.${after}`;
  const value = Number(text);
  return { value, text, plain: mark !== ',', fraction: false };
}

/** A whole number, which may be nothing, and a fraction. */
function withFraction(before: string, above: string, below: string): NumberRead {
  if (Math.max(before.length, above.length, below.length) > MOST_FRACTION_DIGITS) {
    return { because: `a fraction has at most ${MOST_FRACTION_DIGITS} digits on either side of its line` };
  }
  const [whole, top, bottom] = [Number(before), Number(above), Number(below)];
  if (bottom === 0) return { because: `${above}/${below} has nothing below the line; type a fraction such as 3/8` };
  if (before !== '' && top >= bottom) {
    return { because: `${above}/${below} is no part of one, to stand after a whole number; type one such as 1 3/8` };
  }
  const text = before === '' ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
  return { value: (whole * bottom + top) / bottom, text, plain: false, fraction: true };
}

/**
 * Typed text in plain signs: one kind of space, dash and slash, fractions written out, powers as digits, small letters.
 * A ⅜ that follows a whole number gets the space between, so that 1⅜ can never read as 13/8.
 */
export function normalised(text: string): string {
  return (
    text
      // zero-width signs and marks of writing direction come along with pasted text
      .replace(/[\u200b-\u200f\u202a-\u202e\u2060-\u2069\u00ad]/g, '')
      // a keyboard for full-width signs writes １２, ＂ and ㎜
      .replace(/[\uff01-\uff5e\u3300-\u33ff]/g, (wide) => wide.normalize('NFKC'))
      .replace(/[\u2010-\u2013\ufe63]/g, '-')
      .replace(SMALL_FRACTION, (small, offset: number, whole: string) => {
        const after = whole.slice(offset + small.length, offset + small.length + 1);
        const gap = /[-−\s]$|^$/.test(whole.slice(0, offset)) ? '' : ' ';
        // ⅟ is a top alone: the bottom follows it in plain digits
        return gap + small.normalize('NFKC') + (small !== '⅟' && /\d/.test(after) ? ' ' : '');
      })
      .replace(/[⁄∕／÷]/g, '/')
      .replace(/[℃℉]/g, (sign) => sign.normalize('NFKC'))
      .toLowerCase()
      .replace(/(?<=[a-z])\^?³|(?<=[a-z])\^3/g, '3')
      .replace(/[º˚]/g, '°')
      .replace(/° (?=[cf](?![a-z]))/g, '°')
      .replace(/\s+/g, ' ')
      .replace(/ ?\/ ?| per (?=[a-z])/g, '/')
      .trim()
  );
}

/** ½ and its kin, ⅟, or small digits on either side of a slash, as a word processor sets ³⁄₈. */
const SMALL_FRACTION = /[¼-¾⅐-⅟↉]|[⁰¹²³⁴-⁹]+[⁄/∕][₀-₉]+/g;
