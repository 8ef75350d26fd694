import type { Dice } from './dice.ts';

type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

/** One value of the file and where it hangs. */
interface Place {
  readonly parent: Json[] | { [key: string]: Json };
  readonly key: string;
  readonly value: Json;
}

/** Numbers that JSON text can hold and JavaScript cannot write: put in as marks, taken out of their quotes at the end. */
const RAW = ['1e999', '-1e999', '1e-400', '-0', '0.1e-320', '123456789012345678901234567890', '1.0000000000000000001'];
const MARK = /"raw:([^"]*)"/g;

const NUMBERS = [0, -1, 1e-9, 5e-324, 1e-300, 1e300, -1e300, Number.MAX_VALUE, 1e21, 2 ** 53, 0.1 + 0.2, 25.4, 90, 180];

/** Expressions that are none, that never end, that leave the numbers, that reach for what is not theirs. */
const TEXTS = [
  ...['', ' ', 'NaN', 'Infinity', '-Infinity', 'undefined', 'null', 'true', '1e999', '1/0', '0/0', '-(1/0)'],
  ...['9^9^9^9', '2^1024', '1e308 * 10', '(-8)^(1/3)', 'sqrt(-1)', '5!', '170!', 'factorial(200)', '1e', '5 mm', '3/8'],
  ...['length_mm', 'length_mm / 0', 'length_mm - length_mm', 'height_mm ^ 99', 'half_mm', 'nothing_mm', 'mass_g'],
  ...['import("fs")', 'process.exit()', 'f(x) = x', 'x = 5', '__proto__', 'constructor', 'toString', 'a.b', 'a["b"]'],
  ...['[1, 2]', '1; 2', '1 to 2', 'pi', 'e', 'i', 'random()', '1 > 2', '1 ? 2 : 3', '"5"', "'", '\\', '\u0000', '١٢'],
  ...['('.repeat(199), `${'-'.repeat(150)}1`, `1${'+1'.repeat(99)}`, '9'.repeat(200), `2${'^2'.repeat(90)}`],
  ...['a'.repeat(201), 'a'.repeat(10_000), '🐟'.repeat(40), 'line\nbreak', 'ſ', '\ud800'],
];

const KEYS = [
  ...['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', 'valueOf', '', '0', '-1', 'length'],
  ...['x_mm', 'mass_g', 'name', 'kind', 'density_g_cm3', 'k'.repeat(1000), 'with space', 'é', '$ref'],
];

const DEPTHS = [3, 12, 20, 25, 3000];

type Change = (dice: Dice, place: Place, places: readonly Place[]) => void;

/** A wrong slope of the chisel: numbers that stay numbers, so that most of them reach the geometry. */
const NUDGES: readonly Change[] = [
  (dice, place) => onNumber(place, (value) => value * 2 ** (dice.share() - 0.5)),
  (dice, place) => onNumber(place, (value) => value * 2 ** (6 * dice.share() - 3)),
  (dice, place) => onNumber(place, (value) => value + 4 * (dice.share() - 0.5)),
  (dice, place) => onNumber(place, (value) => Math.round(value) + dice.below(3) - 1),
  (_, place) => onNumber(place, (value) => -value),
  (_, place) => onNumber(place, () => 0),
];

const BREAKS: readonly Change[] = [
  (dice, place) => put(place, dice.pick(NUMBERS)),
  (dice, place) => put(place, `raw:${dice.pick(RAW)}`),
  (dice, place) => put(place, dice.pick(TEXTS)),
  (dice, place) => put(place, dice.pick([null, true, false, [], {}, [0], [[1, 2]], { kind: 'pin' }])),
  (dice, place) => put(place, nested(dice.pick(DEPTHS), dice.share() < 0.5)),
  (dice, place) => put(place, dice.share() < 0.5 ? [place.value] : { value: place.value }),
  (_, place) => put(place, typeof place.value === 'number' ? String(place.value) : `${place.value}`),
  (dice, place, places) => put(place, structuredClone(dice.pick(places).value)),
  (_, place) => remove(place),
  (dice, place) => onObject(place, (object) => own(object, dice.pick(KEYS), dice.pick([1, 'a', null, {}]))),
  (dice, place) => {
    if (Array.isArray(place.parent)) return;
    remove(place);
    own(place.parent, dice.pick([...KEYS, place.key.toUpperCase(), `${place.key}_`]), place.value);
  },
  (_, place) => onList(place, (list) => list.reverse()),
  (_, place) => onList(place, (list) => list.splice(0)),
  (_, place) => onList(place, (list) => list.push(structuredClone(list[0] ?? null))),
  (_, place) => onList(place, (list) => list.splice(0, 1)),
  (dice, place) =>
    onList(place, (list) => {
      for (let copies = dice.pick([10, 300]); copies > 0; copies--) list.push(structuredClone(list[0] ?? null));
    }),
];

/** A file whose text is whole JSON and whose values are not what they were: half of them only by their numbers. */
export function damagedValues(dice: Dice, text: string): string {
  const whole: Json = JSON.parse(text);
  const changes = dice.share() < 0.5 ? NUDGES : BREAKS;
  for (let times = 1 + dice.below(3); times > 0; times--) {
    const places = placesOf(whole);
    const numbers = places.filter(({ value }) => typeof value === 'number');
    const among = changes === NUDGES && numbers.length > 0 ? numbers : places;
    if (among.length > 0) dice.pick(changes)(dice, dice.pick(among), places);
  }
  const written = JSON.stringify(whole, null, 2).replace(MARK, '$1');
  return dice.share() < 0.1 ? twiceNamed(dice, written) : written;
}

/** One field written twice, first with another value: JSON takes the last. */
function twiceNamed(dice: Dice, text: string): string {
  const lines = text.split('\n');
  const single = lines.flatMap((line, at) => (/^\s*"[^"]*": [^[{]*,?$/.test(line) ? [at] : []));
  if (single.length === 0) return text;
  const at = dice.pick(single);
  lines.splice(at, 0, lines[at].replace(/: .*$/, `: ${JSON.stringify(dice.pick([...NUMBERS, ...TEXTS]))},`));
  return lines.join('\n');
}

function placesOf(part: Json): readonly Place[] {
  if (typeof part !== 'object' || part === null) return [];
  const parent = part;
  const found: Place[] = [];
  for (const [key, value] of Object.entries(parent)) found.push({ parent, key, value }, ...shallow(value));
  return found;
}

/** Damage on top of deep nesting would look for places in it level by level. */
function shallow(value: Json): readonly Place[] {
  const nestedTwice = JSON.stringify(value)?.includes('[[[') ?? false;
  return nestedTwice ? [] : placesOf(value);
}

function own(object: object, key: string, value: Json): void {
  Object.defineProperty(object, key, { value, enumerable: true, configurable: true, writable: true });
}

function put({ parent, key }: Place, value: Json): void {
  own(parent, key, value);
}

function remove({ parent, key }: Place): void {
  if (Array.isArray(parent)) parent.splice(Number(key), 1);
  else delete parent[key];
}

function onNumber(place: Place, change: (value: number) => number): void {
  if (typeof place.value === 'number') put(place, Math.round(change(place.value) * 1000) / 1000 + 0);
}

function onList({ value }: Place, change: (list: Json[]) => void): void {
  if (Array.isArray(value)) change(value);
}

function onObject({ value }: Place, change: (object: object) => void): void {
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) change(value);
}

function nested(depth: number, lists: boolean): Json {
  let value: Json = 1;
  for (let level = 0; level < depth; level++) value = lists ? [value] : { a: value };
  return value;
}
