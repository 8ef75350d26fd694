import type { TargetCheck } from '../ballast/target.ts';
import { type Digits, MOST_DIGITS } from '../hydro/accuracy.ts';
import { amountsIn } from '../units/amounts.ts';
import { aimAmount, bandWords, missingWords, toleranceAmount } from './target-words.ts';

const METRIC = amountsIn('mm-g');

const TARGET_WORDS: Readonly<Record<TargetCheck['what'], string>> = {
  proud: 'proud',
  waterline: 'waterline above the datum',
  net: 'net weight under water',
  sink: 'sinking speed',
  trim: 'trim',
  heel: 'heel',
};

/** What was wanted, what is got, and whether that is near enough. digits: how many decimals are meant. */
export function targetLine(check: TargetCheck, digits: Digits = MOST_DIGITS): string {
  const { what, wanted, got } = check;
  const reached = got === null ? missingWords(check) : `${aimAmount(what, got, METRIC, digits)} got${bandWords(check)}`;
  const near = `(within ${toleranceAmount(check, METRIC)})`;
  return `${check.met ? 'met' : 'missed'}: ${TARGET_WORDS[what]} ${aimAmount(what, wanted, METRIC)} wanted, ${reached} ${near}`;
}
