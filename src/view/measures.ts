import { gramFromOunce, inchFromMm, mmFromInch, ounceFromGram, type UnitSystem } from '../../sim/index.ts';

/** The kinds of number that a maker types. */
export type MeasureKind = 'length' | 'mass' | 'density' | 'temperature' | 'salinity';

/** How a kind of number is shown and typed. The file's own units are mm, g, g/cm³, °C and g/kg. */
export interface Measure {
  readonly unit: string;
  /** The number as shown, from the file's unit. */
  shown(stored: number): number;
  /** The number in the file's unit, without the noise that a factor leaves in the last places. */
  stored(shown: number): number;
  /** Decimals that always stand, and the most that are shown. */
  readonly digits: readonly [least: number, most: number];
  /** What one press of an arrow key or a stepper adds, in the unit shown. */
  readonly step: number;
}

/** Digits that are meant: a double carries 15 to 17, and the factors' noise sits in the last few. */
const MEANT_DIGITS = 12;

const asStored = (number: number): number => number;

function measure(unit: string, digits: Measure['digits'], step: number): Measure {
  return { unit, shown: asStored, stored: asStored, digits, step };
}

const METRIC: Readonly<Record<MeasureKind, Measure>> = {
  length: measure('mm', [1, 3], 0.5),
  mass: measure('g', [1, 3], 0.1),
  density: measure('g/cm³', [2, 5], 0.01),
  temperature: measure('°C', [0, 1], 1),
  salinity: measure('g/kg', [0, 2], 1),
};

const INCH_OUNCE: Readonly<Record<MeasureKind, Measure>> = {
  ...METRIC,
  length: {
    unit: 'in',
    shown: inchFromMm,
    stored: (inch) => Number(mmFromInch(inch).toPrecision(MEANT_DIGITS)),
    digits: [4, 4],
    step: 1 / 64,
  },
  mass: {
    unit: 'oz',
    shown: ounceFromGram,
    stored: (ounce) => Number(gramFromOunce(ounce).toPrecision(MEANT_DIGITS)),
    digits: [4, 4],
    step: 0.005,
  },
};

/** How this kind of number is shown in these units. Densities and the water are metric in both. */
export function measureOf(kind: MeasureKind, units: UnitSystem): Measure {
  return (units === 'mm-g' ? METRIC : INCH_OUNCE)[kind];
}
