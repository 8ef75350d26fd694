import { createPipeline, type DesignFile } from '../../../../sim/index.ts';
import type { BaitOutcomes, LinkOutcomes } from '../../../../src/engine/answers.ts';

/** The answers to a design as the page would hold them after its first run. */
export function workedOut(
  file: DesignFile,
  setup: string | null = null,
): { readonly bait: BaitOutcomes; readonly links: readonly LinkOutcomes[] } {
  const bait: Record<string, unknown> = {};
  const links: Record<string, unknown>[] = [];
  for (const { name, link, outcome } of createPipeline().steps(file, { setup, detail: 'full' })) {
    if (link === null) {
      bait[name] = outcome;
    } else {
      links[link] ??= {};
      links[link][name] = outcome;
    }
  }
  return { bait, links };
}
