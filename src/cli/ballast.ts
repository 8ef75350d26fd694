import { basename, dirname } from 'node:path';
import { acceptHoles, ballastJson, ballastReport, withEdit, writeDesignText } from '../../sim/index.ts';
import type { Request } from './arguments.ts';
import { EXIT, type ExitCode } from './exit.ts';
import { readDesign } from './read-design.ts';
import type { Terminal } from './terminal.ts';
import { workOut } from './work-out.ts';
import { writeNew } from './write-files.ts';

/**
 * `ballast`: holes and lead for every link, floated as rounded, and cures where a link cannot be ballasted. With --write
 * the design is saved with the plan in it. Throws Refusal on a bad design, or when the file is there already.
 */
export async function ballast(request: Request & { command: 'ballast' }, terminal: Terminal): Promise<ExitCode> {
  const given = await readDesign(request.design, terminal.input);
  const bait = workOut(given, request.setup);
  if (request.write !== null) {
    const edit = acceptHoles(given.file, bait.design, bait.setup, bait.ballast.holes);
    const bytes = new TextEncoder().encode(writeDesignText(withEdit(given.file, edit)));
    await writeNew(dirname(request.write), { name: basename(request.write), bytes }, '--write');
  }
  terminal.print(request.json ? `${JSON.stringify(ballastJson(bait), null, 2)}\n` : ballastReport(bait));
  return request.strict && !bait.planned.target.met ? EXIT.targetMissed : EXIT.done;
}
