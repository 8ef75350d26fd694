import {
  type Accuracy,
  type Amounts,
  aimAmount,
  bandWords,
  type OffMark,
  type TargetCheck,
  toleranceAmount,
} from '../../../sim/index.ts';
import { offMarkNumber } from '../../view/amounts.ts';

const WORDS: Readonly<Record<TargetCheck['what'], string>> = {
  proud: 'proud',
  waterline: 'waterline above the datum',
  net: 'net in water',
  sink: 'sinking speed',
  trim: 'trim, nose-down +',
  heel: 'heel, starboard down +',
};

/** What was wanted, what is got, and whether it is near enough, in one line. accuracy: undefined until it is known. */
export function aimWords(check: TargetCheck, amounts: Amounts, accuracy?: Accuracy): string {
  const { what, wanted, got } = check;
  const none = check.isInFall === true ? 'it does not sink' : 'wholly under';
  const reached = got === null ? none : `${aimAmount(what, got, amounts, accuracy?.digits)}${bandWords(check)}`;
  const near = check.met ? 'near enough' : `not within ${toleranceAmount(check, amounts)}`;
  return `${WORDS[what]}: ${aimAmount(what, wanted, amounts)} wanted, ${reached}; ${near}`;
}

/** How far the water stands over (+) or under (-) the line that is aimed for, nose to tail, in one line. */
export function offMarkWords(marks: readonly OffMark[], amounts: Amounts): string {
  const places = marks.map((mark, i) => {
    const number = i === marks.length - 1 ? amounts.length(mark.off, { signed: true }) : offMarkNumber(mark, amounts);
    return `${typeof mark.at === 'number' ? `joint ${mark.at}` : mark.at} ${number}`;
  });
  return `Water off its mark: ${places.join(', ')}; + is over it`;
}
