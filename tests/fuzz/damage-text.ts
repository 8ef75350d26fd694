import type { Dice } from './dice.ts';

const MEGABYTE = 1_000_000;

/** Signs that matter to JSON, to numbers and to expressions, and some that should not be there. */
const SIGNS = [
  ...'{}[]",:\\0123456789.eE+-*/^()% \n\t_mgx',
  '\0',
  '\u001b',
  '\ufeff',
  'é',
  '🐟',
  '\ud800',
  '//',
  '1e999',
  '-0',
  'NaN',
  'null',
  '"__proto__":',
];

type Damage = (dice: Dice, text: string) => string;

/** Slips of a hand or an editor. */
const SLIPS: readonly Damage[] = [
  (dice, text) => spliced(text, dice.below(text.length), 1, dice.pick(SIGNS)),
  (dice, text) => spliced(text, dice.below(text.length), 0, dice.pick(SIGNS)),
  (dice, text) => spliced(text, dice.below(text.length), 1 + dice.below(12), ''),
  (dice, text) => {
    const from = dice.below(text.length);
    return spliced(text, from, 0, text.slice(from, from + 1 + dice.below(200)));
  },
  // one digit for another: the file stays whole, and so goes deepest
  (dice, text) => {
    const digits = [...text.matchAll(/\d/g)].map(({ index }) => index);
    return digits.length === 0 ? text : spliced(text, dice.pick(digits), 1, String(dice.below(10)));
  },
  (dice, text) => onLines(text, (lines) => lines.splice(dice.below(lines.length), 1)),
  (dice, text) =>
    onLines(text, (lines) => {
      const at = dice.below(lines.length);
      lines.splice(at, 0, lines[at]);
    }),
  (dice, text) =>
    onLines(text, (lines) => {
      const [a, b] = [dice.below(lines.length), dice.below(lines.length)];
      [lines[a], lines[b]] = [lines[b], lines[a]];
    }),
];

/** Files that are something else, or were saved by something else. */
const STRANGERS: readonly ((dice: Dice, text: string) => string | Uint8Array)[] = [
  (dice, text) => text.slice(0, dice.below(text.length)),
  () => '',
  () => ' \n\t ',
  (dice) => dice.pick(['null', 'true', '0', '""', '[]', '{}', '"design"', '[{}]', 'NaN']),
  (_, text) => `\ufeff${text}`,
  (_, text) => text.replaceAll('\n', '\r\n'),
  (_, text) => text.replaceAll('"', '”'),
  (_, text) => text.replaceAll('"', "'"),
  (_, text) => `${text}${text}`,
  (_, text) => new Uint8Array(Buffer.from(text, 'utf16le')),
  (_, text) => new Uint8Array(Buffer.from(text, 'latin1')),
  (dice, text) => {
    const bytes = new Uint8Array(Buffer.from(text));
    for (let i = 0; i < 3; i++) bytes[dice.below(bytes.length)] = dice.below(256);
    return bytes;
  },
  (dice) => Uint8Array.from({ length: dice.below(4000) }, () => dice.below(256)),
  // the head of a picture, then whatever
  (dice) =>
    Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, ...Array.from({ length: 500 }, () => dice.below(256))]),
  (dice) => dice.pick(['[', '{"a":', '[{"a":']).repeat(dice.pick([10, 21, 1000, 100_000])),
  (dice) => {
    const deep = dice.pick([19, 20, 21, 5000, 400_000]);
    return '['.repeat(deep) + ']'.repeat(deep);
  },
  (_, text) => text + ' '.repeat(2 * MEGABYTE),
  (_, text) => text.trimEnd().padEnd(MEGABYTE - 10, ' '),
  (dice) => new Uint8Array(2 * MEGABYTE).fill(dice.below(256)),
  (_, text) => `{"note": "${'a'.repeat(MEGABYTE - 100)}", ${text.trimStart().slice(1)}`.slice(0, MEGABYTE),
  (_, text) => text.replace('"dimensions"', `"${'d'.repeat(100_000)}"`),
];

/** A file as it comes out of an accident: mostly slips, now and then no design at all. */
export function damagedText(dice: Dice, text: string): string | Uint8Array {
  if (dice.share() < 0.2) return dice.pick(STRANGERS)(dice, text);
  let damaged = text;
  for (let times = 1 + dice.below(3); times > 0; times--) damaged = dice.pick(SLIPS)(dice, damaged);
  return damaged;
}

function spliced(text: string, at: number, take: number, put: string): string {
  return text.slice(0, at) + put + text.slice(at + take);
}

function onLines(text: string, change: (lines: string[]) => void): string {
  const lines = text.split('\n');
  change(lines);
  return lines.join('\n');
}
