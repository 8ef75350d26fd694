import { describe, expect, test } from 'vitest';
import { readArguments } from '../../../../src/cli/arguments.ts';
import { Refusal } from '../../../../src/cli/exit.ts';

const BALLAST = { command: 'ballast', design: 'shad.json', setup: null, json: false, strict: false, write: null };
const COMPARE = { command: 'compare', design: 'shad.json', setups: ['topwater', 'slow-sink'], json: false };
const CHECK = { command: 'check', design: 'shad.json', setup: null, fold: null, json: false, strict: false } as const;

describe('what a maker types', () => {
  test.each([
    ['check shad.json', CHECK],
    ['check shad.json --json --strict', { ...CHECK, json: true, strict: true }],
    ['check --strict shad.json --setup topwater', { ...CHECK, strict: true, setup: 'topwater' }],
    ['check shad.json --setup=topwater', { ...CHECK, setup: 'topwater' }],
    ['check shad.json --setup=--odd', { ...CHECK, setup: '--odd' }],
    ['check shad.json --setup -1g', { ...CHECK, setup: '-1g' }],
    ['check shad.json --fold=-20,15.5', { ...CHECK, fold: [-20, 15.5] }],
    ['check shad.json --fold 30', { ...CHECK, fold: [30] }],
    ['check -', { ...CHECK, design: '-' }],
    ['check --json -- --shad.json', { ...CHECK, json: true, design: '--shad.json' }],
    ['export shad.json --out dir --solids', { command: 'export', design: 'shad.json', setup: null, out: 'dir' }],
    ['--help', { command: 'help' }],
    ['-h', { command: 'help' }],
    ['check --help', { command: 'help' }],
    ['sums shad.json', { command: 'sums', design: 'shad.json', setup: null, link: null }],
    ['sums - --setup pond --link tail', { command: 'sums', design: '-', setup: 'pond', link: 'tail' }],
    ['ballast shad.json', BALLAST],
    ['ballast shad.json --json --strict --setup topwater', { ...BALLAST, json: true, strict: true, setup: 'topwater' }],
    ['ballast --write new.json -', { ...BALLAST, design: '-', write: 'new.json' }],
    ['ballast --help', { command: 'help' }],
    ['compare shad.json --setups topwater,slow-sink', COMPARE],
    ['compare --json --setups=topwater,slow-sink shad.json', { ...COMPARE, json: true }],
    ['compare -h', { command: 'help' }],
    ['export shad.json -h', { command: 'help' }],
    ['--version', { command: 'version' }],
  ])('floatwright %s', (line, wanted) => {
    expect(readArguments(line.split(' '))).toEqual(wanted);
  });
});

test.each(['x', '20,', '1,,2', 'NaN', 'Infinity'])(
  'a fold of %j is no list of angles, and is refused with one',
  (fold) => {
    expect(() => readArguments(['check', 'shad.json', `--fold=${fold}`])).toThrow(
      /wants an angle in degrees for each joint, such as --fold=-20,15/,
    );
  },
);

describe('two setups to compare', () => {
  const setupsOf = (names: string) => readArguments(['compare', 'shad.json', '--setups', names]);

  test.each([
    ['topwater\\, sea,slow-sink', ['topwater, sea', 'slow-sink']],
    ['slow-sink,topwater\\, sea', ['slow-sink', 'topwater, sea']],
    ['topwater\\, sea,slow-sink\\, sea', ['topwater, sea', 'slow-sink, sea']],
    ['topwater, slow-sink', ['topwater', 'slow-sink']],
    ['a\\,b\\,c,d', ['a,b,c', 'd']],
  ])('%s', (names, setups) => {
    expect(setupsOf(names)).toEqual({ ...COMPARE, setups });
  });

  test.each([
    ['topwater', '--setups wants two names, got "topwater"'],
    ['topwater,', '--setups wants two names, got "topwater,"'],
    [',topwater', '--setups wants two names, got ",topwater"'],
    ['a,b,c', '--setups wants two names, got "a,b,c"'],
    // a comma that belongs to the name leaves one name
    ['topwater\\, sea', '--setups wants two names'],
    ['topwater,topwater', '--setups wants two different setups, got "topwater" twice'],
    ['topwater, topwater', '--setups wants two different setups, got "topwater" twice'],
    ['a\\,b,a\\,b', '--setups wants two different setups, got "a,b" twice'],
  ])('%s is refused', (names, reason) => {
    expect(() => setupsOf(names)).toThrow(reason);
    expect(() => setupsOf(names)).toThrow(Refusal);
    expect(() => setupsOf(names)).toThrow('usage: floatwright compare DESIGN --setups A,B [--json]');
  });
});

describe('what makes no sense is refused with what is allowed', () => {
  test.each([
    ['', 'floatwright: a command is wanted: check, ballast, compare, export, sums (see floatwright --help)'],
    [
      'balast shad.json',
      'floatwright: unknown command "balast", known: check, ballast, compare, export, sums (see floatwright --help)',
    ],
    [
      'toString',
      'floatwright: unknown command "toString", known: check, ballast, compare, export, sums (see floatwright --help)',
    ],
    ['--json check', 'floatwright: a command comes first, got "--json" (see floatwright --help)'],
    [
      'check',
      'floatwright check: a DESIGN is wanted: a design file, or - for standard input (usage: floatwright check DESIGN [--setup NAME] [--fold=DEG,DEG] [--json] [--strict])',
    ],
    [
      'check a.json b.json',
      'floatwright check: one DESIGN at a time, got "a.json" and "b.json" (usage: floatwright check DESIGN [--setup NAME] [--fold=DEG,DEG] [--json] [--strict])',
    ],
    [
      'check a.json --jsn',
      'floatwright check: unknown option "--jsn", known: --setup NAME, --fold DEG,DEG, --json, --strict (usage: floatwright check DESIGN [--setup NAME] [--fold=DEG,DEG] [--json] [--strict])',
    ],
  ])('floatwright %s', (line, reason) => {
    expect(() => readArguments(line === '' ? [] : line.split(' '))).toThrow(new Refusal([reason]));
  });

  test.each([
    ['check a.json --setup', '--setup wants a value: --setup NAME'],
    ['check a.json --setup --json', '--setup wants a value: --setup NAME'],
    ['check a.json --setup=', '--setup wants a value: --setup NAME'],
    ['check a.json --setup one --setup two', '--setup is given twice'],
    ['check a.json --json --json', '--json is given twice'],
    ['check a.json --json=yes', '--json takes no value, got "yes"'],
    ['check a.json --no-json', 'unknown option "--no-json"'],
    ['check a.json --constructor', 'unknown option "--constructor"'],
    ['check a.json -j', 'unknown option "-j"'],
    ['check a.json --out dir', 'unknown option "--out"'],
    ['sums a.json --link', '--link wants a value: --link NAME'],
    ['sums a.json --json', 'unknown option "--json", known: --setup NAME, --link NAME'],
    ['ballast a.json --write', '--write wants a value: --write FILE'],
    ['ballast a.json --write --json', '--write wants a value: --write FILE'],
    ['ballast a.json --write one --write two', '--write is given twice'],
    ['ballast a.json --out dir', 'unknown option "--out", known: --setup NAME, --json, --strict, --write FILE'],
    ['ballast', 'a DESIGN is wanted: a design file, or - for standard input'],
    ['compare a.json', '--setups A,B is wanted: the two setups'],
    ['compare a.json --setups', '--setups wants a value: --setups A,B'],
    ['compare a.json --setup one', 'unknown option "--setup", known: --setups A,B, --json'],
    ['compare a.json b.json --setups a,b', 'one DESIGN at a time, got "a.json" and "b.json"'],
    ['compare a.json --setups a,b --strict', 'unknown option "--strict"'],
    ['export a.json --out dir', 'say what to export: --solids'],
    ['export a.json --solids', '--out DIR is wanted: the folder to write to'],
    ['export a.json --solids --out', '--out wants a value: --out DIR'],
    [
      'export a.json --solids --out dir --strict',
      'unknown option "--strict", known: --out DIR, --setup NAME, --solids',
    ],
  ])('floatwright %s', (line, reason) => {
    expect(() => readArguments(line.split(' '))).toThrow(reason);
    expect(() => readArguments(line.split(' '))).toThrow(Refusal);
  });
});
