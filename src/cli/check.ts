import { checkJson, checkReport, foldedAt, foldFault, radianFromDegree } from '../../sim/index.ts';
import type { Request } from './arguments.ts';
import { EXIT, type ExitCode, refusal } from './exit.ts';
import { readDesign } from './read-design.ts';
import type { Terminal } from './terminal.ts';
import { workOut } from './work-out.ts';

/** `check`: the float state of every link and of the whole bait. Throws Refusal on a bad design. */
export async function check(request: Request & { command: 'check' }, terminal: Terminal): Promise<ExitCode> {
  const bait = workOut(await readDesign(request.design, terminal.input), request.setup);
  const yaws = request.fold?.map(radianFromDegree) ?? null;
  const fault = yaws && foldFault(bait, yaws);
  if (fault) throw refusal('--fold', fault);
  const folded = yaws && foldedAt(bait, yaws);
  terminal.print(request.json ? `${JSON.stringify(checkJson(bait, folded), null, 2)}\n` : checkReport(bait, folded));
  return request.strict && !bait.target.met ? EXIT.targetMissed : EXIT.done;
}
