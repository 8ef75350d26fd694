import { MM_PER_INCH, type Mm, type UnitSystem } from '../../../sim/index.ts';

/** A mark of the ruler. */
export interface Tick {
  /** From the nose tip. */
  readonly at: Mm;
  /** What is written at it; null at the lesser ones. */
  readonly text: string | null;
}

/** Steps of a ruler in its own unit, from fine to coarse: what a tick is worth, and what a number. */
const STEPS: Readonly<
  Record<UnitSystem, { readonly unit: Mm; readonly ticks: readonly number[]; readonly numbers: readonly number[] }>
> = {
  'mm-g': { unit: 1, ticks: [1, 5, 10, 50, 100], numbers: [10, 20, 50, 100, 200] },
  'in-oz': { unit: MM_PER_INCH, ticks: [1 / 8, 1 / 4, 1 / 2, 1, 2], numbers: [1, 2, 5, 10] },
};

/** Ticks closer than this run into a grey, numbers closer than that into each other; CSS pixels. */
const LEAST_TICK_PX = 5;
const LEAST_NUMBER_PX = 30;

/** The marks of a ruler from the nose tip to the tail tip, as fine as can be read. scale: CSS pixels to a millimetre. */
export function rulerTicks(length: Mm, scale: number, units: UnitSystem): readonly Tick[] {
  const { unit, ticks, numbers } = STEPS[units];
  const tick = ticks.find((step) => step * unit * scale >= LEAST_TICK_PX) ?? ticks[ticks.length - 1] ?? 1;
  const number =
    numbers.find((step) => step >= tick && step * unit * scale >= LEAST_NUMBER_PX) ?? numbers[numbers.length - 1] ?? 1;
  const count = Math.floor(length / (tick * unit) + 1e-9);
  return Array.from({ length: count + 1 }, (_, i) => {
    const value = i * tick;
    const isNumbered = Math.abs(value / number - Math.round(value / number)) < 1e-9;
    return { at: value * unit, text: isNumbered ? String(Math.round(value)) : null };
  });
}

/** The longest round length that fits: what a bar beside a view without a ruler stands for. */
export function scaleBar(
  most_px: number,
  scale: number,
  units: UnitSystem,
): { readonly length: Mm; readonly text: string } {
  const bars: readonly (readonly [Mm, string])[] =
    units === 'mm-g'
      ? [5, 10, 20, 50, 100, 200].map((length) => [length, `${length} mm`] as const)
      : (
          [
            ['1/4', 0.25],
            ['1/2', 0.5],
            ['1', 1],
            ['2', 2],
            ['5', 5],
          ] as const
        ).map(([text, inches]) => [inches * MM_PER_INCH, `${text} in`] as const);
  const [length, text] = bars.findLast(([long]) => long * scale <= most_px) ?? bars[0] ?? [1, '1 mm'];
  return { length, text };
}
