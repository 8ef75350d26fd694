import {
  type Accuracy,
  type Amounts,
  amountsIn,
  degreeFromRadian,
  type Float,
  formatAngle,
  formatPercent,
  MOST_DIGITS,
  type UnitSystem,
} from '../../../sim/index.ts';

/** A number in plain words. */
export interface Row {
  readonly label: string;
  readonly value: string;
}

/** Grams that are differences of weights: a hundredth shows what a coat or a ring does. */
const FINE = { digits: 2 } as const;

/**
 * The few numbers of a bait or a link at rest, in the maker's words, to as many decimals as the sums are good for.
 * accuracy: undefined until it is known.
 */
export function floatRows(float: Float, units: UnitSystem, accuracy: Accuracy | undefined): readonly Row[] {
  const amounts = amountsIn(units);
  const digits = accuracy?.digits ?? MOST_DIGITS;
  const length = (name: 'draft' | 'proud' | 'gm', value: number) => amounts.length(value, { digits: digits[name] });
  return [
    { label: 'Weighs', value: amounts.mass(float.mass) },
    ...(float.draft === null || float.proud === null
      ? [{ label: 'Net in water', value: amounts.mass(float.netWet, { ...FINE, signed: true }) }]
      : [
          { label: 'Draft', value: length('draft', float.draft) },
          { label: 'Proud', value: length('proud', float.proud) },
        ]),
    { label: 'Trim', value: trimWords(float, digits.trim) },
    { label: 'Heel', value: heelWords(float, digits.heel) },
    // under water what rights a body is how far its buoyancy sits over its weight
    { label: float.offset === null ? 'Buoyancy over weight' : 'Steadiness, GM', value: length('gm', float.gm) },
    { label: 'Reserve', value: `${amounts.mass(-float.netWet, FINE)}, ${formatPercent(float.reserveShare)}` },
  ];
}

function trimWords({ trim }: Float, digits: number): string {
  if (isNone(trim, digits)) return 'level';
  return `${formatAngle(Math.abs(trim), { digits })} ${trim > 0 ? 'nose-down' : 'tail low'}`;
}

function heelWords({ heel }: Float, digits: number): string {
  if (isNone(heel, digits)) return 'upright';
  return `${formatAngle(Math.abs(heel), { digits })} to ${heel > 0 ? 'starboard' : 'port'}`;
}

/** Less than half of the last decimal is no turn. */
function isNone(angle: number, digits: number): boolean {
  return Math.abs(degreeFromRadian(angle)) < 0.5 / 10 ** digits;
}

/** A place along the bait: `37.8 mm`, or in the unit shown. */
export function placeWords(x: number, amounts: Amounts): string {
  return `${amounts.ruled(x)} from the nose`;
}
