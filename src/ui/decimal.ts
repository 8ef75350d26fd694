/** A number as typed: plain decimals only, or why it is not one. */
export type Typed = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly message: string };

/** At most nine digits before the point and nine after: more is a slip of the hand, not a measurement. */
const PLAIN = /^[-+]?(?:\d{1,9}(?:[.,]\d{0,9})?|[.,]\d{1,9})$/;

/** Reads a plain decimal number with a point or a comma; no thousands, no fractions, no words. unit: as shown. */
export function readDecimal(text: string, unit: string): Typed {
  const bare = text.trim().replace('−', '-');
  if (bare === '') return { ok: false, message: `Nothing typed: type a number of ${unit}, such as 12.5` };
  if (!PLAIN.test(bare)) {
    return { ok: false, message: `"${bare}" is not a plain number: type ${unit} with a decimal point, such as 12.5` };
  }
  return { ok: true, value: Number(bare.replace(',', '.')) };
}

/** A number with at least so many decimals, and more only where it has them. */
export function writeDecimal(value: number, [least, most]: readonly [number, number]): string {
  const [whole = '', decimals = ''] = value.toFixed(most).split('.');
  const kept = decimals.replace(/0+$/, '').padEnd(least, '0');
  const text = kept === '' ? whole : `${whole}.${kept}`;
  return Number(text) === 0 ? text.replace('-', '') : text;
}

/** The next whole multiple of a step above (by = 1) or below (-1), or ten of them. */
export function stepped(value: number, step: number, by: number): number {
  const steps = value / step;
  const nearest = Math.round(steps);
  const onStep = Math.abs(steps - nearest) < 1e-6;
  const from = onStep ? nearest : by > 0 ? Math.floor(steps) : Math.ceil(steps);
  return Number(((from + by) * step).toPrecision(12));
}
