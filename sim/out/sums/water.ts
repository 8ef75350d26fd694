import { freshWater, saltWater } from '../../equations/water.ts';
import { type Amount, putIn } from '../../equations/worked.ts';
import { freshWaterDensity, TANAKA, type WaterAnswer } from '../../tables/waters.ts';
import { type Block, given, worked, workedBlock } from './block.ts';

const TABLE = 'fitted by Tanaka et al. (2001), table 1';

/** The density of the water: the number that the whole page uses, and how it comes about. */
export function waterSums(water: WaterAnswer): { readonly density: Amount; readonly blocks: readonly Block[] } {
  const { temperature, salinity } = water;
  if (temperature === null || salinity === null) {
    const density = given('g/mm^3', water.density, 'measured by you');
    return { density, blocks: [{ kind: 'words', text: 'The density of the water was measured by you.' }] };
  }
  const fresh = worked('g/mm^3', freshWaterDensity(temperature));
  const [a_1, a_2, a_3, a_4] = [TANAKA.a1, TANAKA.a2, TANAKA.a3, TANAKA.a4].map((a) => given('1', a, TABLE));
  const a_5 = given('g/mm^3', TANAKA.a5 / 1e6, TABLE);
  const t = given('1', temperature);
  const blocks = workedBlock([putIn(freshWater, '', { t, a_1, a_2, a_3, a_4, a_5 }, fresh)]);
  if (salinity === 0) return { density: fresh, blocks };
  const density = worked('g/mm^3', water.density);
  const salt = given('g/mm^3', water.density - fresh.value, `for ${salinity} g/kg by UNESCO 44, equation 13`);
  return {
    density,
    blocks: [...blocks, ...workedBlock([putIn(saltWater, '', { rho_f: fresh, rho_s: salt }, density)])],
  };
}
