import { describe, expect, it } from 'vitest';
import { EPOXY, FINISHES } from '../../../../sim/tables/finishes.ts';
import { freshWaterDensity } from '../../../../sim/tables/waters.ts';

describe('finishes', () => {
  it('every finish is heavier than the water its film takes the place of', () => {
    for (const finish of Object.values(FINISHES)) {
      expect(finish.value.low).toBeGreaterThan(freshWaterDensity(4));
    }
  });

  it('3.6 g of epoxy costs 0.47 g of reserve', () => {
    // common practice: the film takes the place of water, so only the difference counts
    const film = 3.6;
    const lifted = (film / EPOXY.value.usual) * freshWaterDensity(20);
    expect(film - lifted).toBeCloseTo(0.475, 2);
  });

  it('says of all of them that no document stands behind them', () => {
    for (const finish of Object.values(FINISHES)) expect(finish.source).toBe('common-practice');
  });
});
