import { compareJson, compareReport, compareSetups } from '../../sim/index.ts';
import type { Request } from './arguments.ts';
import { EXIT, type ExitCode } from './exit.ts';
import { readDesign } from './read-design.ts';
import type { Terminal } from './terminal.ts';
import { workOut } from './work-out.ts';

/** `compare`: two setups of a design side by side. Throws Refusal on a bad design or name. */
export async function compare(request: Request & { command: 'compare' }, terminal: Terminal): Promise<ExitCode> {
  const given = await readDesign(request.design, terminal.input);
  const [a, b] = request.setups.map((setup) => workOut(given, setup, '--setups'));
  const comparison = compareSetups(a, b);
  terminal.print(request.json ? `${JSON.stringify(compareJson(comparison), null, 2)}\n` : compareReport(comparison));
  return EXIT.done;
}
