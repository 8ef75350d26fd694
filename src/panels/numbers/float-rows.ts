import type { Amounts } from '../../../sim/index.ts';
import { degreeFromRadian, type Float, formatAngle, formatNumber, formatPercent } from '../../../sim/index.ts';

/** A number in plain words. */
export interface Row {
  readonly label: string;
  readonly value: string;
}

/** Angles are given to a tenth of a degree; less than half of it is none. */
const NO_TURN_DEG = 0.05;

/** Grams that are differences of weights: a hundredth shows what a coat or a ring does. */
const FINE = { digits: 2 } as const;

/** The few numbers of a bait or a link at rest, in the maker's words. */
export function floatRows(float: Float, amounts: Amounts): readonly Row[] {
  return [
    { label: 'Weighs', value: amounts.mass(float.mass) },
    ...(float.draft === null || float.proud === null
      ? [{ label: 'Net in water', value: amounts.mass(float.netWet, { ...FINE, signed: true }) }]
      : [
          { label: 'Draft', value: amounts.length(float.draft) },
          { label: 'Proud', value: amounts.length(float.proud) },
        ]),
    { label: 'Trim', value: trimWords(float) },
    { label: 'Heel', value: heelWords(float) },
    steadiness(float, amounts),
    { label: 'Reserve', value: `${amounts.mass(-float.netWet, FINE)}, ${formatPercent(float.reserveShare)}` },
  ];
}

function trimWords({ trim }: Float): string {
  if (Math.abs(degreeFromRadian(trim)) < NO_TURN_DEG) return 'level';
  return `${formatAngle(Math.abs(trim))} ${trim > 0 ? 'nose-down' : 'tail low'}`;
}

function heelWords({ heel }: Float): string {
  if (Math.abs(degreeFromRadian(heel)) < NO_TURN_DEG) return 'upright';
  return `${formatAngle(Math.abs(heel))} to ${heel > 0 ? 'starboard' : 'port'}`;
}

/** Under water what rights a body is how far its buoyancy sits over its weight. */
function steadiness(float: Float, amounts: Amounts): Row {
  const label = float.offset === null ? 'Buoyancy over weight' : 'Steadiness, GM';
  return { label, value: amounts.length(float.gm, FINE) };
}

/** A place along the bait: `37.8 mm`, or in the unit shown. */
export function placeWords(x: number, amounts: Amounts): string {
  return `${amounts.ruled(x)} from the nose`;
}

/** How many of what: `2 eyes`. */
export function counted(count: number, noun: string): string {
  return `${formatNumber(count, { digits: 0 })} ${noun}${count === 1 ? '' : 's'}`;
}
