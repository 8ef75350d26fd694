import { checkJson, checkReport } from '../../sim/index.ts';
import type { Request } from './arguments.ts';
import { EXIT, type ExitCode } from './exit.ts';
import { readDesign } from './read-design.ts';
import type { Terminal } from './terminal.ts';
import { workOut } from './work-out.ts';

/** `check`: the float state of every link and of the whole bait. Throws Refusal on a bad design. */
export async function check(request: Request & { command: 'check' }, terminal: Terminal): Promise<ExitCode> {
  const bait = workOut(await readDesign(request.design, terminal.input), request.setup);
  terminal.print(request.json ? `${JSON.stringify(checkJson(bait), null, 2)}\n` : checkReport(bait));
  return request.strict && !bait.target.met ? EXIT.targetMissed : EXIT.done;
}
