import { describe, expect, it } from 'vitest';
import { EPOXY } from '../../../../sim/tables/finishes.ts';
import { METALS } from '../../../../sim/tables/metals.ts';
import { FILLINGS, PUTTY } from '../../../../sim/tables/stock.ts';

describe('what fills a hole', () => {
  it('is lighter than its metal where shot lies in epoxy, as loosely as balls lie and no tighter than they can', () => {
    // poured balls fill 0.55 to 0.64 of a vessel; the rest is epoxy
    for (const [name, metal] of [
      ['shot in epoxy', METALS.lead.value],
      ['tungsten shot in epoxy', METALS.tungsten.value],
    ] as const) {
      const share = (FILLINGS[name] - EPOXY.value.usual) / (metal - EPOXY.value.usual);
      expect(share).toBeGreaterThan(0.55);
      expect(share).toBeLessThan(0.64);
    }
  });

  it('is lead where it is poured', () => {
    expect(FILLINGS['poured lead']).toBe(METALS.lead.value);
  });

  it('differs by more than a tenth between makes of putty, so that it is to be weighed', () => {
    const { low, usual, high } = PUTTY.value;
    expect(Math.min(usual / low, high / usual)).toBeGreaterThan(1.1);
    expect(high).toBeLessThan(METALS.tungsten.value);
  });
});
