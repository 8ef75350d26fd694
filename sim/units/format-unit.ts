import { formatDecimal } from './format-decimal.ts';
import { FINEST_RULER, formatRuler, rulerFraction } from './format-ruler.ts';
import { meant } from './meant.ts';
import type { TypedUnit } from './parse-units.ts';

/**
 * What a value comes to in a unit, with the sign before it that says whether that is all of it: `= 34.925 mm`, or
 * `≈ 7.087 g`. Inches are those of a ruler where they fall on a mark: `= 1 3/8 in`, else `≈ 1.378 in (≈ 1 3/8 in)`.
 * value: in the file's unit.
 */
export function formatInUnit(value: number, unit: TypedUnit): string {
  if (unit.symbol !== 'in') return decimalInUnit(value, unit);
  const fraction = rulerFraction(value, FINEST_RULER);
  if (fraction !== null) return `= ${fraction} in`;
  const nearest = formatRuler(value, FINEST_RULER);
  return nearest === '≈ 0 in' ? decimalInUnit(value, unit) : `${decimalInUnit(value, unit)} (${nearest})`;
}

function decimalInUnit(value: number, unit: TypedUnit): string {
  const amount = meant(value / unit.times + unit.zero);
  const text = formatDecimal(amount, [0, unit.digits]);
  return `${Number(text) === amount ? '=' : '≈'} ${text}${spaceBefore(unit)}${unit.symbol}`;
}

/** The marks of angles stand right behind their number; a ratio has no unit to stand anywhere. */
export function spaceBefore({ symbol }: TypedUnit): string {
  return /^[°′″]?$/.test(symbol) ? '' : ' ';
}
