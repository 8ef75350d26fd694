import {
  FINEST_RULER,
  formatDecimal,
  gramFromOunce,
  inchFromMm,
  meant,
  mmFromInch,
  ounceFromGram,
  parseQuantity,
  type Quantity,
  type QuantityKind,
  rulerFraction,
  type UnitSystem,
} from '../../sim/index.ts';
import { stepped } from '../ui/stepped.ts';

/** The kinds of number that a maker types. */
export type MeasureKind = QuantityKind;

/** How a kind of number is shown and typed. Values are in the file's units. */
export interface Measure {
  /** As shown behind the number. */
  readonly unit: string;
  /** The number as it stands in its box, without the unit. */
  write(value: number): string;
  /** What was typed, in this or any other unit. */
  read(text: string): Quantity;
  /** The next value above (by = 1) or below (-1) that is a whole number of steps, or ten of them. */
  stepped(value: number, by: number): number;
}

/** What a measure is made of. The two ways between the file's unit and that shown undo each other. */
interface Making {
  readonly kind: MeasureKind;
  readonly unit: string;
  /** Decimals that always stand, and the most that are shown. */
  readonly digits: readonly [least: number, most: number];
  /** What one press of an arrow key or a stepper adds, in the unit shown. */
  readonly step: number;
  shown?(value: number): number;
  stored?(shown: number): number;
  /** Another way to write a value, where it can be written so. */
  instead?(value: number): string | null;
}

const same = (number: number): number => number;

function measure(making: Making): Measure {
  const { kind, unit, digits, step, shown = same, stored = same, instead } = making;
  return {
    unit,
    write: (value) => instead?.(value) ?? formatDecimal(shown(value), digits),
    read: (text) => parseQuantity(text, { kind, unit }),
    stepped: (value, by) => meant(stored(stepped(meant(shown(value)), step, by))),
  };
}

const METRIC: Readonly<Record<MeasureKind, Measure>> = {
  length: measure({ kind: 'length', unit: 'mm', digits: [1, 3], step: 0.5 }),
  mass: measure({ kind: 'mass', unit: 'g', digits: [1, 3], step: 0.1 }),
  density: measure({ kind: 'density', unit: 'g/cm³', digits: [2, 5], step: 0.01 }),
  angle: measure({ kind: 'angle', unit: '°', digits: [1, 3], step: 0.5 }),
  temperature: measure({ kind: 'temperature', unit: '°C', digits: [0, 1], step: 1 }),
  salinity: measure({ kind: 'salinity', unit: 'g/kg', digits: [0, 2], step: 1 }),
  percent: measure({ kind: 'percent', unit: '%', digits: [0, 2], step: 1 }),
  spread: measure({ kind: 'spread', unit: 'g/m²', digits: [0, 1], step: 5 }),
  volume: measure({ kind: 'volume', unit: 'mm³', digits: [0, 1], step: 10 }),
  speed: measure({ kind: 'speed', unit: 'mm/s', digits: [0, 1], step: 5 }),
  time: measure({ kind: 'time', unit: 's', digits: [1, 2], step: 0.1 }),
  ratio: measure({ kind: 'ratio', unit: '', digits: [1, 4], step: 0.01 }),
};

const INCH_OUNCE: Readonly<Record<MeasureKind, Measure>> = {
  ...METRIC,
  length: measure({
    kind: 'length',
    unit: 'in',
    digits: [4, 4],
    step: 1 / FINEST_RULER,
    shown: inchFromMm,
    stored: mmFromInch,
    instead: (length) => rulerFraction(length, FINEST_RULER),
  }),
  mass: measure({
    kind: 'mass',
    unit: 'oz',
    digits: [4, 4],
    step: 0.005,
    shown: ounceFromGram,
    stored: gramFromOunce,
  }),
};

/** How this kind of number is shown in these units. Densities, the water and speeds are metric in both. */
export function measureOf(kind: MeasureKind, units: UnitSystem): Measure {
  return (units === 'mm-g' ? METRIC : INCH_OUNCE)[kind];
}
