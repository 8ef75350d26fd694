import type { Issue } from '../flow/outcome.ts';
import { SimError } from '../flow/outcome.ts';
import type { WorkedFile } from './work-out.ts';

/*
 * Parts of the file that this version reads, keeps and writes, but cannot float. Refused one by one: a bait floated
 * without one of them would be a wrong answer that looks like a right one.
 */

const WHY = {
  sinkSpeed: 'targets by sinking speed are not built yet; this version takes net_wet_g, the weight under water',
} as const;

type Part = keyof typeof WHY;

/** Every part of the design that this version cannot float. */
export function notBuiltIssues(file: WorkedFile): readonly Issue[] {
  const { setups } = file;
  return [
    ...setups.flatMap(({ target, link_targets: targets = {} }, index) => [
      ...refuseIf('sink_mm_s' in target, 'sinkSpeed', `setups.${index}.target.sink_mm_s`),
      ...Object.entries(targets).flatMap(([link, one]) =>
        refuseIf('sink_mm_s' in one, 'sinkSpeed', `setups.${index}.link_targets.${link}.sink_mm_s`),
      ),
    ]),
  ];
}

/** The refusal of one such part, for code that meets it where it takes a built one. */
export function notBuilt(part: Part, path = ''): SimError {
  return new SimError([issueOf(part, path)]);
}

function refuseIf(isThere: boolean, part: Part, path: string): readonly Issue[] {
  return isThere ? [issueOf(part, path)] : [];
}

function issueOf(part: Part, path: string): Issue {
  return { code: 'design/not-built-yet', path, message: WHY[part] };
}
