/** Digits that are meant: a double carries 15 to 17, and the noise of factors sits in the last few. */
const MEANT_DIGITS = 12;

/** A number without the noise that a factor leaves in its last digits. Digits know no -0, so that it becomes 0. */
export function meant(value: number): number {
  return Number(value.toPrecision(MEANT_DIGITS));
}
