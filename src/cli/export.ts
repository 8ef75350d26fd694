import { join } from 'node:path';
import { linkSolids } from '../../sim/index.ts';
import type { Request } from './arguments.ts';
import { EXIT, type ExitCode } from './exit.ts';
import { readDesign } from './read-design.ts';
import type { Terminal } from './terminal.ts';
import { workOut } from './work-out.ts';
import { writeTogether } from './write-files.ts';

/** `export`: files made from a design, all of them or none. Throws Refusal on a bad design or folder. */
export async function exportFiles(request: Request & { command: 'export' }, terminal: Terminal): Promise<ExitCode> {
  const files = linkSolids(workOut(await readDesign(request.design, terminal.input), request.setup));
  await writeTogether(request.out, files);
  terminal.print(files.map((file) => `${join(request.out, file.name)}: ${file.what}\n`).join(''));
  return EXIT.done;
}
