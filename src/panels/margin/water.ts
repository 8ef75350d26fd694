import { type DesignFile, withValueAt } from '../../../sim/index.ts';
import type { Edit } from '../../document/commands.ts';

export type WaterChoice = 'fresh' | 'sea' | 'measured';

/** Grams of salt in a kilogram of open ocean, rounded: common practice. */
const SEA_G_KG = 35;
/** A summer lake, taken where the file gives no temperature: common practice. */
const USUAL_C = 20;

/** Which of the three the setup's water is. An expression for the salinity counts as sea: it may come to anything. */
export function waterChoice(file: DesignFile, setup: number): WaterChoice {
  const water = file.setups[setup]?.water;
  if (water === undefined) return 'fresh';
  if ('measured_g_cm3' in water) return 'measured';
  return water.salinity_g_kg === 0 ? 'fresh' : 'sea';
}

/** Changes the kind of water. density: of the water until now in g/cm³, where measuring starts from. */
export function changeWater(setup: number, choice: WaterChoice, density: number): Edit {
  return (file) => {
    if (waterChoice(file, setup) === choice) return file;
    const before = file.setups[setup]?.water;
    const temperature = before !== undefined && 'temperature_c' in before ? before.temperature_c : USUAL_C;
    const water =
      choice === 'measured'
        ? { measured_g_cm3: Number(density.toFixed(4)) }
        : { temperature_c: temperature, salinity_g_kg: choice === 'sea' ? SEA_G_KG : 0 };
    return withValueAt(file, `setups.${setup}.water`, water);
  };
}
