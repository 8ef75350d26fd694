import type { Mm } from './brand.ts';
import { inchFromMm, mmFromInch } from './convert.ts';
import { meant } from './meant.ts';

/** Into how many parts a maker's ruler divides the inch. */
export type RulerParts = 16 | 32 | 64;

/** The finest that a maker's ruler shows. */
export const FINEST_RULER: RulerParts = 64;

/**
 * A length as it is found on a ruler: `1 3/8 in`, in lowest terms. The nearest mark stands in for what lies between two
 * and says so: `≈ 1 3/8 in`.
 */
export function formatRuler(length: Mm, parts: RulerParts): string {
  const marks = nearestMark(length, parts);
  return `${isMark(length, marks, parts) ? '' : '≈ '}${markText(marks, parts)} in`;
}

/** The inches of a length that falls on a mark of the ruler, without the unit: `1 3/8`; null where it does not. */
export function rulerFraction(length: Mm, parts: RulerParts): string | null {
  const marks = nearestMark(length, parts);
  return isMark(length, marks, parts) ? markText(marks, parts) : null;
}

function nearestMark(length: Mm, parts: RulerParts): number {
  return Math.round(inchFromMm(length) * parts) + 0;
}

function isMark(length: Mm, marks: number, parts: RulerParts): boolean {
  return meant(mmFromInch(marks) / parts) === meant(length);
}

function markText(marks: number, parts: RulerParts): string {
  const size = Math.abs(marks);
  const sign = marks < 0 ? '-' : '';
  const whole = Math.floor(size / parts);
  let top = size % parts;
  if (top === 0) return `${sign}${whole}`;
  let bottom: number = parts;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return `${sign}${whole === 0 ? '' : `${whole} `}${top}/${bottom}`;
}
