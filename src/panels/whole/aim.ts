import { type Amounts, formatAngle, type OffMark, type TargetCheck } from '../../../sim/index.ts';
import { offMarkNumber } from '../../view/amounts.ts';

const WORDS: Readonly<Record<TargetCheck['what'], string>> = {
  proud: 'proud',
  waterline: 'waterline above the datum',
  net: 'net in water',
  trim: 'trim, nose-down +',
  heel: 'heel, starboard down +',
};

/** What was wanted, what is got, and whether it is near enough, in one line. */
export function aimWords(check: TargetCheck, amounts: Amounts): string {
  const amount = (value: number) => {
    if (check.what === 'net') return amounts.mass(value, { digits: 2, signed: true });
    return check.what === 'proud' || check.what === 'waterline' ? amounts.length(value) : formatAngle(value);
  };
  const got = check.got === null ? 'wholly under' : amount(check.got);
  const near = check.met ? 'near enough' : `not within ${within(check, amounts)}`;
  return `${WORDS[check.what]}: ${amount(check.wanted)} wanted, ${got}; ${near}`;
}

function within({ what, tolerance }: TargetCheck, amounts: Amounts): string {
  if (what === 'net') return amounts.mass(tolerance, { digits: 2 });
  return what === 'proud' || what === 'waterline' ? amounts.length(tolerance) : formatAngle(tolerance);
}

/** How far the water stands over (+) or under (-) the line that is aimed for, nose to tail, in one line. */
export function offMarkWords(marks: readonly OffMark[], amounts: Amounts): string {
  const places = marks.map((mark, i) => {
    const number = i === marks.length - 1 ? amounts.length(mark.off, { signed: true }) : offMarkNumber(mark, amounts);
    return `${typeof mark.at === 'number' ? `joint ${mark.at}` : mark.at} ${number}`;
  });
  return `Water off its mark: ${places.join(', ')}; + is over it`;
}
