import type { Outcome } from '../flow/outcome.ts';
import { failed, ok } from '../flow/outcome.ts';
import { combinationIssues } from './combinations.ts';
import { designFrom } from './derive.ts';
import type { Design } from './design.ts';
import type { DesignFile } from './file.ts';
import { deepFreeze } from './freeze.ts';
import { nameIssues } from './names.ts';
import { proportionIssues } from './proportions.ts';
import { rangeIssues } from './ranges.ts';
import { workOut } from './work-out.ts';

/**
 * A design file that has been read, to the design it means: expressions worked out, then every number, name and
 * combination checked, then defaults and house units. Gives every problem of the first of the two checks that finds
 * any. The design is frozen, all the way down. Whether parts fit into the wood needs the hull and is checked there.
 */
export function evaluateDesign(file: DesignFile): Outcome<Design> {
  const worked = workOut(file);
  if (worked.status !== 'ok') return worked;
  const ranges = rangeIssues(worked.value);
  const tooFar = new Set(ranges.map(({ path }) => path));
  const issues = [
    ...ranges,
    ...proportionIssues(worked.value).filter(({ path }) => !tooFar.has(path)),
    ...nameIssues(worked.value),
    ...combinationIssues(worked.value),
  ];
  return issues.length === 0 ? ok(deepFreeze(designFrom(worked.value))) : failed(issues);
}
