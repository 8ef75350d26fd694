import { type Refusal, refusal } from './exit.ts';

/** An option of a command. value: its name in the usage line; null for a plain switch. */
export interface OptionUsage {
  readonly value: string | null;
  readonly says: string;
}

export interface CommandUsage {
  readonly line: string;
  readonly says: string;
  readonly options: Readonly<Record<string, OptionUsage>>;
}

const SETUP: OptionUsage = { value: 'NAME', says: "one of the design's setups; the first if left out" };

export const COMMANDS = {
  check: {
    line: 'check DESIGN [--setup NAME] [--fold=DEG,DEG] [--json] [--strict]',
    says: 'how every link and the whole bait float, with the weight behind it',
    options: {
      setup: SETUP,
      fold: {
        value: 'DEG,DEG',
        says: 'how it lies folded: an angle for each joint, to port negative, as in --fold=-20,15',
      },
      json: { value: null, says: 'the same answers as JSON, for other programs' },
      strict: { value: null, says: 'end with 1 when the setup misses its target' },
    },
  },
  ballast: {
    line: 'ballast DESIGN [--setup NAME] [--json] [--strict] [--write FILE]',
    says: 'how much lead goes where in each link, or what stands in its way and would cure it',
    options: {
      setup: SETUP,
      json: { value: null, says: 'the same plan as JSON, for other programs' },
      strict: { value: null, says: 'end with 1 when the setup misses its target even with the plan' },
      write: { value: 'FILE', says: 'save the design with the plan in it; FILE must not be there yet' },
    },
  },
  compare: {
    line: 'compare DESIGN --setups A,B [--json]',
    says: 'two setups side by side: at the bench, in grams, in the water',
    options: {
      setups: { value: 'A,B', says: 'two names; a comma in a name is written \\,' },
      json: { value: null, says: 'the same as JSON, for other programs' },
    },
  },
  export: {
    line: 'export DESIGN --out DIR [--setup NAME] --solids',
    says: 'files made from a design',
    options: {
      out: { value: 'DIR', says: 'the folder to write to, made if need be' },
      setup: SETUP,
      solids: { value: null, says: 'each link as binary STL in mm, and the water in its slots' },
    },
  },
  sums: {
    line: 'sums DESIGN [--setup NAME] [--link NAME]',
    says: 'the sums behind the answers, worked with its numbers, to check with a pocket calculator',
    options: {
      setup: SETUP,
      link: { value: 'NAME', says: 'one link, then the whole bait; every link if left out' },
    },
  },
} as const satisfies Readonly<Record<string, CommandUsage>>;

export type CommandName = keyof typeof COMMANDS;

export const COMMAND_NAMES = Object.keys(COMMANDS) as readonly CommandName[];

export function isCommandName(word: string): word is CommandName {
  return Object.hasOwn(COMMANDS, word);
}

/** What `--help` prints. */
export function helpText(): string {
  const commands = COMMAND_NAMES.flatMap((name) => commandHelp(COMMANDS[name]));
  return `${[
    'floatwright: how a jointed wooden bait floats, before it is cut',
    '',
    ...commands,
    'floatwright --help, floatwright --version',
    '',
    'DESIGN is a design file (JSON), or - for standard input.',
    'Ends with 0 when done, 1 when --strict was given and a target is missed, 2 when something is wrong with the',
    'design or the command: the reasons are then on standard error.',
  ].join('\n')}\n`;
}

function commandHelp(command: CommandUsage): readonly string[] {
  const options = Object.entries(command.options).map(
    ([name, option]) => [optionName(name, option), option.says] as const,
  );
  const width = Math.max(...options.map(([name]) => name.length));
  return [
    `floatwright ${command.line}`,
    `  ${command.says}`,
    ...options.map(([name, says]) => `    ${name.padEnd(width)}  ${says}`),
    '',
  ];
}

/** An option as it is typed: `--setup NAME`. */
export function optionName(name: string, option: OptionUsage): string {
  return option.value === null ? `--${name}` : `--${name} ${option.value}`;
}

/** A command line that cannot be followed, with the way it goes. */
export function misuse(what: string, command: CommandName | null): Refusal {
  const usage = command === null ? 'see floatwright --help' : `usage: floatwright ${COMMANDS[command].line}`;
  return refusal(command === null ? 'floatwright' : `floatwright ${command}`, what, usage);
}
