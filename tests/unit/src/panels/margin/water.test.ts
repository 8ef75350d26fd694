import { expect, test } from 'vitest';
import type { DesignFile } from '../../../../../sim/index.ts';
import { changeWater, waterChoice } from '../../../../../src/panels/margin/water.ts';
import { makeDesignFile } from '../../../../support/make-design.ts';

function inWater(water: DesignFile['setups'][number]['water']): DesignFile {
  const plain = makeDesignFile();
  return { ...plain, setups: plain.setups.map((setup) => ({ ...setup, water })) };
}

const waterOf = (file: DesignFile) => file.setups[0]?.water;

test('A lake without salt is fresh, any salt is sea, a density of its own is measured', () => {
  expect(waterChoice(inWater({ temperature_c: 15, salinity_g_kg: 0 }), 0)).toBe('fresh');
  expect(waterChoice(inWater({ temperature_c: 15, salinity_g_kg: 8 }), 0)).toBe('sea');
  expect(waterChoice(inWater({ measured_g_cm3: 1.004 }), 0)).toBe('measured');
});

test('From lake to sea the temperature stays', () => {
  const sea = changeWater(0, 'sea', 0.9991)(inWater({ temperature_c: 12, salinity_g_kg: 0 }));
  expect(waterOf(sea)).toEqual({ temperature_c: 12, salinity_g_kg: 35 });
  expect(waterOf(changeWater(0, 'fresh', 1.026)(sea))).toEqual({ temperature_c: 12, salinity_g_kg: 0 });
});

test('Measuring starts from the density that the water had', () => {
  const file = inWater({ temperature_c: 20, salinity_g_kg: 0 });
  expect(waterOf(changeWater(0, 'measured', 0.998207)(file))).toEqual({ measured_g_cm3: 0.9982 });
});

test('The kind it already is changes nothing: brackish water keeps its salt', () => {
  const brackish = inWater({ temperature_c: 15, salinity_g_kg: 8 });
  expect(changeWater(0, 'sea', 1.005)(brackish)).toBe(brackish);
});
