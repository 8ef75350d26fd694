import type { TargetCheck } from '../ballast/target.ts';
import { type Digits, MOST_DIGITS } from '../hydro/accuracy.ts';
import { amountsIn } from '../units/amounts.ts';
import { aimAmount, toleranceAmount } from './target-words.ts';

const METRIC = amountsIn('mm-g');

const TARGET_WORDS: Readonly<Record<TargetCheck['what'], string>> = {
  proud: 'proud',
  waterline: 'waterline above the datum',
  net: 'net weight under water',
  trim: 'trim',
  heel: 'heel',
};

/** What was wanted, what is got, and whether that is near enough. digits: how many decimals are meant. */
export function targetLine(check: TargetCheck, digits: Digits = MOST_DIGITS): string {
  const { what, wanted, got } = check;
  const reached = got === null ? 'it is wholly under water' : `${aimAmount(what, got, METRIC, digits)} got`;
  const near = `(within ${toleranceAmount(check, METRIC)})`;
  return `${check.met ? 'met' : 'missed'}: ${TARGET_WORDS[what]} ${aimAmount(what, wanted, METRIC)} wanted, ${reached} ${near}`;
}
