import { sumsPage } from '../../sim/index.ts';
import type { Request } from './arguments.ts';
import { EXIT, type ExitCode, refusal } from './exit.ts';
import { readDesign } from './read-design.ts';
import type { Terminal } from './terminal.ts';
import { workOut } from './work-out.ts';

/** `sums`: the formulas behind the answers with this bait's numbers put in. Throws Refusal on a bad design or name. */
export async function sums(request: Request & { command: 'sums' }, terminal: Terminal): Promise<ExitCode> {
  const given = await readDesign(request.design, terminal.input);
  const names = given.file.links.map((link) => link.name);
  if (request.link !== null && !names.includes(request.link)) {
    const known = names.map((name) => JSON.stringify(name)).join(', ');
    throw refusal('--link', `the design has no link ${JSON.stringify(request.link)}`, `choose one of ${known}`);
  }
  terminal.print(await sumsPage(workOut(given, request.setup), request.link));
  return EXIT.done;
}
