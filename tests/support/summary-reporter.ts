import { writeSync } from 'node:fs';
import type { Reporter, SerializedError, TestModule } from 'vitest/node';

/**
 * Closes the output with one plain line: `N passed, N failed, N skipped`.
 *
 * A file that cannot be loaded, a group whose preparation fails and an error outside any test have no test to count,
 * so each counts as a failure of its own: a broken run never reads "0 failed". The line is written as the process
 * leaves, after all other reports.
 */
export class SummaryReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandledErrors: readonly SerializedError[]): void {
    const tests = modules.flatMap((module) => [...module.children.allTests()]);
    const count = (state: string) => tests.filter((test) => test.result().state === state).length;
    const groups = modules.flatMap((module) => [module, ...module.children.allSuites()]);
    const broken = groups.filter((group) => group.errors().length > 0).length;
    const failed = count('failed') + broken + unhandledErrors.length;
    const skipped = count('skipped') + count('pending');
    process.once('exit', (code) => {
      // a run that fails before its first test, say as the app does not build, has failed all the same
      const failures = Math.max(failed, code === 0 ? 0 : 1);
      writeSync(1, `${count('passed')} passed, ${failures} failed, ${skipped} skipped\n`);
    });
  }
}
