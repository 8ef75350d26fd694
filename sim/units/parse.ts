import { formatInUnit, spaceBefore } from './format-unit.ts';
import { meant } from './meant.ts';
import { NO_THOUSANDS, normalised, PRIMED_THOUSANDS, readNumber, type TypedNumber } from './parse-number.ts';
import { type QuantityKind, type TypedUnit, UNITS, unitAt, unitList, unitNamed } from './parse-units.ts';

/*
 * What a maker types into a box, read without any evaluator of expressions: one of those takes 1-3/8 for a subtraction
 * and `in` for a word of its own. The tests hold the factors against such a library instead.
 */

/** How a quantity is to be read. unit: as shown beside the box; a bare number is in it. */
export interface QuantityStyle {
  readonly kind: QuantityKind;
  readonly unit: string;
}

/** A quantity as it was understood, or why it was not: what was typed, and what is allowed. */
export type Quantity =
  | {
      readonly ok: true;
      /** In the file's unit, the first of its kind. */
      readonly value: number;
      /** `1 3/8 in = 34.925 mm`. */
      readonly understood: string;
      /** A decimal in the unit shown, with a point: it says itself what it is. */
      readonly plain: boolean;
    }
  | { readonly ok: false; readonly message: string };

/** More is no measurement, and too long to be read back. */
const MOST_CHARACTERS = 60;

/**
 * Reads `1 3/8`, `1-3/8`, `1⅜ in`, `1.375"`, `35 mm`, `0,092`, `1' 2"`, `1/4 oz`, `35 lb/ft³`, `2° 30'`, `68 °F` and their
 * like. What could be read in two ways is refused, and the message names both.
 */
export function parseQuantity(typed: string, { kind, unit }: QuantityStyle): Quantity {
  const shown = unitNamed(kind, unit);
  if (shown === undefined) throw new Error(`${unit} is no unit of ${kind}; there are ${unitList(kind)}`);
  const refuse = (because: string): Quantity => ({
    ok: false,
    message: `"${shortened(typed)}" is not read: ${because}`,
  });
  if (typed.trim().length > MOST_CHARACTERS) return refuse(`at most ${MOST_CHARACTERS} characters are read`);
  const text = normalised(typed);
  if (text === '') return { ok: false, message: `Nothing typed: type ${WHAT[kind]}, such as ${EXAMPLES[kind]}` };
  const sign = /^[-−+] ?/.exec(text)?.[0] ?? '';
  const parts = readParts(text.slice(sign.length), kind, shown);
  if ('because' in parts) return refuse(parts.because);
  const minus = /^[-−]/.test(sign);
  const value = valueIn(parts, minus);
  const [{ number, unit: first }] = parts;
  const plain = parts.length === 1 && first === shown && number.plain;
  return { ok: true, value, understood: understood({ value, parts, minus, file: UNITS[kind][0], shown }), plain };
}

const WHAT: Readonly<Record<QuantityKind, string>> = {
  length: 'a length',
  mass: 'a mass',
  density: 'a density',
  angle: 'an angle',
  temperature: 'a temperature',
  salinity: 'a salinity',
  percent: 'a percentage',
  spread: 'grams on a square metre',
  volume: 'a volume',
  speed: 'a speed',
  time: 'a time',
  ratio: 'a number',
};

const EXAMPLES: Readonly<Record<QuantityKind, string>> = {
  length: '35, 1 3/8 in or 3.5 cm',
  mass: '2.1, 1/4 oz or 30 grains',
  density: '0.42 or 26 lb/ft³',
  angle: "2.5 or 2° 30'",
  temperature: '20 or 68 °F',
  salinity: '35 or 3.5 %',
  percent: '5 or 5 %',
  spread: '40',
  volume: '120 or 0.12 cm³',
  speed: '120 or 5 in/s',
  time: '3.2 or 1 min',
  ratio: '0.8 or 80 %',
};

interface Refusal {
  readonly because: string;
}

/** One number with its unit. */
interface Part {
  readonly number: TypedNumber;
  readonly unit: TypedUnit;
}

/** The numbers with their units: one, or a larger unit followed by smaller ones, as feet by inches. */
function readParts(text: string, kind: QuantityKind, shown: TypedUnit): readonly [Part, ...Part[]] | Refusal {
  if (PRIMED_THOUSANDS.test(text)) return { because: NO_THOUSANDS };
  const first = readPart(text, kind, shown);
  if ('because' in first) return first;
  const parts: [Part, ...Part[]] = [first.part];
  let larger = first.part;
  let rest = first.rest;
  while (rest !== '') {
    const divided = larger.unit.parts;
    const smaller = divided === undefined ? undefined : unitNamed(kind, divided.symbol);
    if (divided === undefined || smaller === undefined) return { because: nothingAfter(larger) };
    // 5'-3 1/2" is how a drawing joins feet and inches, and 1 lb, 2 oz a sentence pounds and ounces
    const next = readPart(rest.replace(/^-(?=\d)|^, /, ''), kind, smaller);
    if ('because' in next) return next;
    if (next.part.unit !== smaller) return { because: nothingAfter(larger, smaller) };
    if (larger.number.fraction || !Number.isInteger(larger.number.value)) {
      return {
        because: `${larger.number.text} ${larger.unit.symbol} is not whole, so that no ${smaller.symbol} can follow`,
      };
    }
    if (next.part.number.value >= divided.count) {
      return { because: `${divided.count} ${smaller.symbol} make one ${larger.unit.symbol}; fewer can follow it` };
    }
    parts.push(next.part);
    larger = next.part;
    rest = next.rest;
  }
  return parts;
}

function nothingAfter({ unit }: Part, smaller?: TypedUnit): string {
  return smaller === undefined
    ? `nothing more is read after ${unit.symbol}; type one number and one unit`
    : `only ${smaller.symbol} can follow ${unit.symbol}`;
}

/** The first number of a text and the unit after it. bare: what it is in when no unit follows. */
function readPart(
  text: string,
  kind: QuantityKind,
  bare: TypedUnit,
): { readonly part: Part; readonly rest: string } | Refusal {
  const digits = /^[\d.,](?:[\d.,/ +−-]*[\d.,/])?/.exec(text)?.[0];
  if (digits === undefined) return { because: `no number stands where one should; type ${EXAMPLES[kind]}` };
  const number = readNumber(digits);
  if ('because' in number) return number;
  const after = text.slice(digits.length).trimStart();
  if (after === '') return { part: { number, unit: bare }, rest: '' };
  const found = unitAt(after, kind, bare);
  if (found.unit === null) return found;
  return { part: { number, unit: found.unit }, rest: after.slice(found.length).trimStart() };
}

/** In the file's unit. A decimal in that very unit stays the number it reads as, to its last digit. */
function valueIn(parts: readonly [Part, ...Part[]], minus: boolean): number {
  const [{ number, unit }] = parts;
  if (parts.length === 1 && unit.times === 1 && unit.zero === 0 && !number.fraction) {
    return minus && number.value !== 0 ? -number.value : number.value;
  }
  const sum = parts.reduce((total, { number: { value }, unit: { times, zero } }) => {
    return total + ((minus ? -value : value) - zero) * times;
  }, 0);
  return meant(sum);
}

interface Understood {
  readonly value: number;
  readonly parts: readonly [Part, ...Part[]];
  readonly minus: boolean;
  readonly file: TypedUnit;
  readonly shown: TypedUnit;
}

/** What was read, in plain form, and what it comes to in the unit shown, or in the file's where it is in that shown. */
function understood({ value, parts, minus, file, shown }: Understood): string {
  const read = parts.map(({ number, unit }) => `${number.text}${spaceBefore(unit)}${unit.symbol}`).join(' ');
  const written = minus && value !== 0 ? `-${read}` : read;
  const [{ number, unit }] = parts;
  const inShown = parts.length === 1 && unit === shown;
  if (inShown && shown === file && !number.fraction) return written;
  return `${written} ${formatInUnit(value, inShown ? file : shown)}`;
}

function shortened(text: string): string {
  return text.length > MOST_CHARACTERS ? `${text.slice(0, MOST_CHARACTERS)}…` : text.trim();
}
