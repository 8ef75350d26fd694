import type { AdvisedBaitAnswers } from '../../../sim/index.ts';

/**
 * The warnings to list: all of them where they have come, else those that come with the picture. How else a bait can
 * rest stands with its verdict already.
 */
export function warningsToMind({
  allWarnings,
  warnings = [],
}: Pick<Partial<AdvisedBaitAnswers>, 'allWarnings' | 'warnings'>): AdvisedBaitAnswers['warnings'] {
  return (allWarnings ?? warnings).filter(({ code }) => code !== 'other-rest');
}
