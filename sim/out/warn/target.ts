import type { TargetAnswer, TargetCheck } from '../../ballast/target.ts';
import type { Digits } from '../../hydro/accuracy.ts';
import { amountsIn } from '../../units/amounts.ts';
import { degreeFromRadian } from '../../units/convert.ts';
import type { Warning } from '../../warnings.ts';
import { aimAmount } from '../target-words.ts';
import { WHOLE_BAIT } from './parts.ts';

const METRIC = amountsIn('mm-g');

/** What was wanted and is not got. limit: what was wanted. */
export function targetWarnings(target: TargetAnswer, digits: Digits): readonly Warning[] {
  return target.checks
    .filter((check) => !check.met)
    .map(({ what, wanted, got, isInFall }) => {
      const inWords = AIM_WORDS[what];
      const reached =
        got === null
          ? isInFall === true
            ? 'it does not sink'
            : 'it lies wholly under'
          : `it comes to ${inWords(aimAmount(what, got, METRIC, digits))}`;
      const unit = UNITS[what];
      const measured = (amount: number) => (unit === 'deg' ? degreeFromRadian(amount) : amount);
      return {
        code: 'target-missed',
        where: WHOLE_BAIT,
        text: `Wanted ${inWords(aimAmount(what, wanted, METRIC))}; ${reached}.`,
        at: null,
        number: got === null ? null : measured(got),
        limit: measured(wanted),
        unit,
        fix: null,
      };
    });
}

const AIM_WORDS: Readonly<Record<TargetCheck['what'], (amount: string) => string>> = {
  proud: (amount) => `${amount} proud`,
  waterline: (amount) => `a waterline at ${amount}`,
  net: (amount) => `${amount} net in the water`,
  sink: (amount) => `a sinking speed of ${amount}`,
  trim: (amount) => `${amount} of trim`,
  heel: (amount) => `${amount} of heel`,
};

const UNITS = { proud: 'mm', waterline: 'mm', net: 'g', sink: 'mm/s', trim: 'deg', heel: 'deg' } as const;
