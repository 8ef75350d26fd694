import { describe, expect, it } from 'vitest';
import { METALS, STEEL } from '../../../../sim/tables/metals.ts';

describe('metals', () => {
  it('a steel hook in fresh water keeps 0.873 of its weight', () => {
    // common practice: 0.873; fresh water at 0.001 g/mm³
    expect((STEEL.value - 0.001) / STEEL.value).toBeCloseTo(0.873, 3);
  });

  it('a quarter-inch lead rod weighs about 0.358 g to the millimetre', () => {
    // common practice, with lead at 11.3 g/cm³; pure lead is half a percent heavier
    const perMm = (Math.PI / 4) * 6.35 ** 2 * METALS.lead.value;
    expect(Math.abs(perMm / 0.358 - 1)).toBeLessThan(0.006);
  });

  it('of the stand-ins for lead only tungsten is heavier', () => {
    const { lead, tungsten, bismuth, tin, steel, brass } = METALS;
    expect(tungsten.value).toBeGreaterThan(lead.value);
    for (const lighter of [bismuth.value, tin.value, steel.value, brass.value.high]) {
      expect(lighter).toBeLessThan(lead.value);
    }
  });
});
