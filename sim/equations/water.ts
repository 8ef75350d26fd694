import { equation, mechanics } from './equation.ts';

/** Density of lake water from its temperature: the numbers of Tanaka's table 1, in house units. */
export const freshWater = equation({
  id: 'fresh-water',
  name: 'Density of fresh water',
  words: 'Heaviest near 4 °C, lighter the further from it.',
  gives: { symbol: 'rho_f', unit: 'g/mm^3', means: 'density of fresh water' },
  formula: 'a_5 * (1 - (t + a_1)^2 * (t + a_2) / (a_3 * (t + a_4)))',
  uses: {
    t: { unit: '1', means: 'temperature of the water in °C' },
    a_1: { unit: '1', means: 'minus the temperature of heaviest water, in °C' },
    a_2: { unit: '1', means: 'fitted number, in °C' },
    a_3: { unit: '1', means: 'fitted number, in °C²' },
    a_4: { unit: '1', means: 'fitted number, in °C' },
    a_5: { unit: 'g/mm^3', means: 'density of the heaviest water' },
  },
  source: { source: 'tanaka-2001', where: 'table 1' },
  code: 'sim/tables/waters.ts, freshWaterDensity',
});

export const saltWater = equation({
  id: 'salt-water',
  name: 'Density of the water with its salt',
  words: 'What fresh water weighs, and what its salt adds.',
  gives: { symbol: 'rho', unit: 'g/mm^3', means: 'density of the water' },
  formula: 'rho_f + rho_s',
  uses: {
    rho_f: { unit: 'g/mm^3', means: 'density of fresh water at that temperature' },
    rho_s: { unit: 'g/mm^3', means: 'what the salt adds' },
  },
  source: mechanics('a sum; the terms of the salt are equation 13 of UNESCO 44'),
  code: 'sim/tables/waters.ts, waterDensity',
});
