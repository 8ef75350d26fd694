import { version } from '../../package.json';
import { readArguments } from './arguments.ts';
import { EXIT, type ExitCode, Refusal } from './exit.ts';
import { oneLine, type Terminal } from './terminal.ts';
import { helpText } from './usage.ts';

/** Runs one command line to its end. Never throws: what is wrong goes to standard error, a line for each reason. */
export async function run(words: readonly string[], terminal: Terminal): Promise<ExitCode> {
  try {
    return await follow(words, terminal);
  } catch (fault) {
    for (const reason of reasonsOf(fault)) terminal.complain(oneLine(reason));
    return EXIT.refused;
  }
}

/** The sums are loaded late: help and usage want none of them. */
async function follow(words: readonly string[], terminal: Terminal): Promise<ExitCode> {
  const request = readArguments(words);
  switch (request.command) {
    case 'help':
      terminal.print(helpText());
      return EXIT.done;
    case 'version':
      terminal.print(`${version}\n`);
      return EXIT.done;
    case 'check':
      return (await import('./check.ts')).check(request, terminal);
    case 'ballast':
      return (await import('./ballast.ts')).ballast(request, terminal);
    case 'compare':
      return (await import('./compare.ts')).compare(request, terminal);
    case 'export':
      return (await import('./export.ts')).exportFiles(request, terminal);
    case 'sums':
      return (await import('./sums.ts')).sums(request, terminal);
  }
}

function reasonsOf(fault: unknown): readonly string[] {
  if (fault instanceof Refusal) return fault.reasons;
  const words = fault instanceof Error ? fault.message : String(fault);
  return [`floatwright: a fault of the program, not of the design: ${words} (keep the design file and report this)`];
}
