import { parseArgs } from 'node:util';
import {
  COMMAND_NAMES,
  COMMANDS,
  type CommandName,
  type CommandUsage,
  isCommandName,
  misuse,
  optionName,
} from './usage.ts';

/** What the maker asks for on the command line. */
export type Request =
  | { readonly command: 'help' }
  | { readonly command: 'version' }
  | {
      readonly command: 'check';
      readonly design: string;
      /** null: the first. */
      readonly setup: string | null;
      /** Degrees of each joint, to starboard positive; null: it is not asked to be folded. */
      readonly fold: readonly number[] | null;
      readonly json: boolean;
      readonly strict: boolean;
    }
  | {
      readonly command: 'ballast';
      readonly design: string;
      readonly setup: string | null;
      readonly json: boolean;
      readonly strict: boolean;
      /** Where to save the design with the plan in it; null: nowhere. */
      readonly write: string | null;
    }
  | {
      readonly command: 'compare';
      readonly design: string;
      readonly setups: readonly [string, string];
      readonly json: boolean;
    }
  | { readonly command: 'export'; readonly design: string; readonly setup: string | null; readonly out: string }
  | {
      readonly command: 'sums';
      readonly design: string;
      readonly setup: string | null;
      /** null: every link. */
      readonly link: string | null;
    };

/** Reads the words after the program's name. Throws Refusal when they make no sense. */
export function readArguments(words: readonly string[]): Request {
  const [first, ...rest] = words;
  if (first === undefined) throw misuse(`a command is wanted: ${COMMAND_NAMES.join(', ')}`, null);
  if (first === '--help' || first === '-h') return { command: 'help' };
  if (first === '--version') return { command: 'version' };
  if (first.startsWith('-')) throw misuse(`a command comes first, got ${quoted(first)}`, null);
  if (!isCommandName(first)) {
    throw misuse(`unknown command ${quoted(first)}, known: ${COMMAND_NAMES.join(', ')}`, null);
  }
  const given = readOptions(first, rest);
  if (given.help) return { command: 'help' };
  const design = onlyDesign(first, given.positions);
  const setup = given.values.setup ?? null;
  const [json, strict] = [given.switches.has('json'), given.switches.has('strict')];
  if (first === 'check') return { command: 'check', design, setup, fold: foldOf(given.values.fold), json, strict };
  if (first === 'ballast') {
    return { command: 'ballast', design, setup, json, strict, write: given.values.write ?? null };
  }
  if (first === 'compare') return { command: 'compare', design, setups: twoSetups(given.values.setups), json };
  if (first === 'sums') return { command: 'sums', design, setup, link: given.values.link ?? null };
  if (!given.switches.has('solids')) throw misuse('say what to export: --solids', first);
  if (given.values.out === undefined) throw misuse('--out DIR is wanted: the folder to write to', first);
  return { command: 'export', design, setup, out: given.values.out };
}

/** Angles with a comma between them, in degrees. */
function foldOf(given: string | undefined): readonly number[] | null {
  if (given === undefined) return null;
  const angles = given.split(',').map((angle) => (angle.trim() === '' ? Number.NaN : Number(angle)));
  if (angles.every(Number.isFinite)) return angles;
  throw misuse(`--fold wants an angle in degrees for each joint, such as --fold=-20,15, got ${quoted(given)}`, 'check');
}

/** Two names with a comma between them; `\\,` is a comma that belongs to a name. */
function twoSetups(given: string | undefined): readonly [string, string] {
  if (given === undefined) throw misuse('--setups A,B is wanted: the two setups', 'compare');
  const names = given.split(/(?<!\\),/).map((name) => name.replaceAll('\\,', ',').trim());
  const [a, b] = names;
  if (names.length !== 2 || !a || !b) throw misuse(`--setups wants two names, got ${quoted(given)}`, 'compare');
  if (a === b) throw misuse(`--setups wants two different setups, got ${quoted(a)} twice`, 'compare');
  return [a, b];
}

interface Given {
  readonly help: boolean;
  readonly positions: readonly string[];
  readonly values: Readonly<Record<string, string>>;
  readonly switches: ReadonlySet<string>;
}

function readOptions(command: CommandName, words: readonly string[]): Given {
  const options: CommandUsage['options'] = COMMANDS[command].options;
  const { tokens } = parseArgs({
    args: [...words],
    options: {
      help: { type: 'boolean', short: 'h' },
      ...Object.fromEntries(
        Object.entries(options).map(([name, { value }]) => [name, { type: value === null ? 'boolean' : 'string' }]),
      ),
    },
    allowPositionals: true,
    // not strict: parseArgs would word the complaints itself, without what is allowed
    strict: false,
    tokens: true,
  });

  const positions: string[] = [];
  const values: Record<string, string> = {};
  const switches = new Set<string>();
  let help = false;
  for (const token of tokens) {
    if (token.kind === 'positional') positions.push(token.value);
    if (token.kind !== 'option') continue;
    if (token.name === 'help') {
      help = true;
      continue;
    }
    const option = Object.hasOwn(options, token.name) ? options[token.name] : undefined;
    if (option === undefined) throw unknownOption(command, token.rawName, options);
    if (switches.has(token.name) || token.name in values) throw misuse(`${token.rawName} is given twice`, command);
    if (option.value === null) {
      const { value } = token;
      if (value !== undefined) throw misuse(`${token.rawName} takes no value, got ${quoted(value)}`, command);
      switches.add(token.name);
    } else {
      values[token.name] = optionValue(token, option.value, command);
    }
  }
  return { help, positions, values, switches };
}

interface ValueToken {
  readonly rawName: string;
  readonly value?: string | undefined;
  readonly inlineValue?: boolean | undefined;
}

/** `--setup --json` is a forgotten name, not a setup called --json; `--setup=--json` says what it means. */
function optionValue(token: ValueToken, wanted: string, command: CommandName): string {
  const missing = token.value === undefined || token.value === '';
  if (missing || (token.inlineValue !== true && token.value?.startsWith('--'))) {
    throw misuse(`${token.rawName} wants a value: ${token.rawName} ${wanted}`, command);
  }
  return token.value ?? '';
}

function unknownOption(command: CommandName, name: string, options: CommandUsage['options']) {
  const known = Object.entries(options).map(([known, option]) => optionName(known, option));
  return misuse(`unknown option ${quoted(name)}, known: ${known.join(', ')}`, command);
}

function onlyDesign(command: CommandName, positions: readonly string[]): string {
  const [design, ...more] = positions;
  if (design === undefined || design === '') {
    throw misuse('a DESIGN is wanted: a design file, or - for standard input', command);
  }
  if (more.length > 0) throw misuse(`one DESIGN at a time, got ${positions.map(quoted).join(' and ')}`, command);
  return design;
}

function quoted(word: string): string {
  return JSON.stringify(word);
}
