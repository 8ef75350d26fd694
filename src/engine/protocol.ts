import type { DesignFile, Step } from '../../sim/index.ts';

/** drag: coarse, while a hand is on a number; full: what the page stands by. */
export type Detail = 'drag' | 'full';

/** A design to be worked out. */
export interface Ask {
  /** Numbers the design, not the run: a coarse and a full run of one design share it, and it rises with every edit. */
  readonly seq: number;
  readonly file: DesignFile;
  /** A setup's name; null: the first. */
  readonly setup: string | null;
  readonly detail: Detail;
}

/**
 * A run, sent when body, waterline and numbers are all there, so that a new body never stands at an old waterline. A
 * full run is sent again as what takes longer comes: the ballast that is planned, how good the sums are and how else it can
 * rest, and what cures or changes the bait.
 */
export interface Report {
  readonly seq: number;
  readonly detail: Detail;
  /** false: more of this run is to come, and until then what the last run of this detail had of it stays known. */
  readonly done: boolean;
  /** Every answer of the run so far, as `stepKey` names it; one that is not listed is gone, or yet to come. */
  readonly present: readonly string[];
  /** Only the answers that are not the same object as in the last run of this detail. */
  readonly changed: readonly Step[];
}

/** What the engine tells the page. fault: a bug in the sums, not in the design. */
export type Told =
  | { readonly kind: 'report'; readonly report: Report }
  | { readonly kind: 'fault'; readonly message: string };

/** A worker is told by its name whether advice is wanted after the answers: cures and what-ifs. */
export type EngineWork = 'advise' | 'answer';

/** What the page may ask of the worker. */
export interface EngineDoor {
  listen(tell: (told: Told) => void): void;
  ask(ask: Ask): void;
}

/** One name for each answer of a run: `float/2` for the third link's, `hull/` for the bait's. */
export function stepKey(step: Step): string {
  return `${step.name}/${step.link ?? ''}`;
}
