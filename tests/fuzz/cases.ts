import fc from 'fast-check';
import { writeDesignText } from '../../sim/design/write.ts';
import type { Detail } from '../../sim/mesh/wetted.ts';
import { arbitraryDesignFile } from '../support/arbitrary-design.ts';
import { damagedText } from './damage-text.ts';
import { damagedValues } from './damage-values.ts';
import { diceOf } from './dice.ts';

/** designs: random ones whose numbers make sense; files: good files that something happened to. */
export const KINDS = ['designs', 'files'] as const;
export type Kind = (typeof KINDS)[number];

export interface Case {
  readonly source: string | Uint8Array;
  readonly detail: Detail;
}

/** Every so many are worked out in full, and written out as the command line does. Odd, so that two threads share them. */
const FULL_EVERY = 21;
const anyDesign = arbitraryDesignFile();

/** The case of a seed; presets: texts of good files. */
export function caseOf(kind: Kind, seed: number, presets: readonly string[]): Case {
  const detail = seed % FULL_EVERY === 0 ? 'full' : 'drag';
  if (kind === 'designs') return { source: randomDesign(seed), detail };
  const dice = diceOf(seed);
  const text = dice.share() < 0.75 ? dice.pick(presets) : randomDesign(seed);
  return { source: dice.share() < 0.35 ? damagedText(dice, text) : damagedValues(dice, text), detail };
}

function randomDesign(seed: number): string {
  // the first draws of a seed keep to the ends of every range, so later ones are wanted too
  const draws = fc.sample(anyDesign, { seed, numRuns: 1 + (Math.abs(seed) % 4) });
  return writeDesignText(draws[draws.length - 1]);
}
