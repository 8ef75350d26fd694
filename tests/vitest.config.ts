import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { SummaryReporter } from './support/summary-reporter.ts';

const MINUTE_MS = 60_000;

/** Nothing these test is kept in a module: files may share one, which spares loading the engine for each of them. */
const TOGETHER = { isolate: false };

/** One project per question a test can ask; each is a folder of tests/. */
function project(name: string, settings: object = {}) {
  return {
    extends: true as const,
    test: { name, include: [`tests/${name}/**/*.test.{ts,tsx}`], ...settings },
  };
}

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    reporters: ['default', new SummaryReporter()],
    // both cores of a small machine: left to itself it keeps one free
    maxWorkers: 2,
    setupFiles: ['tests/support/frozen-seed.ts'],
    projects: [
      project('unit', { testTimeout: MINUTE_MS / 4, ...TOGETHER }),
      // random designs: the number of runs is set from outside, and a busy machine is slow
      project('property', { testTimeout: 30 * MINUTE_MS, ...TOGETHER }),
      project('reference', { testTimeout: MINUTE_MS, ...TOGETHER }),
      project('arch', { testTimeout: MINUTE_MS }),
      // after all others: a software-drawn page wants a core to itself
      project('e2e', {
        globalSetup: 'tests/support/global-setup.ts',
        testTimeout: 2 * MINUTE_MS,
        hookTimeout: 2 * MINUTE_MS,
        sequence: { groupOrder: 1 },
      }),
    ],
  },
});
