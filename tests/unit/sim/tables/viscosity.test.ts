import { expect, test } from 'vitest';
import { freshViscosity, kinematicViscosity, saltThickens } from '../../../../sim/tables/viscosity.ts';

test('salt thickens water by about a twelfth in the sea', () => {
  expect(saltThickens(20, 0)).toBe(1);
  // standard sea water at 20 °C: 1.077 mPa·s against 1.0016 of fresh water (from memory)
  expect(saltThickens(20, 35.17)).toBeCloseTo(1.075, 2);
});

test('a water is as thick as its temperature says, and as one of 20 °C where its density was measured', () => {
  const water = { density: 0.0009982, temperature: 20, salinity: 0, source: '' };
  expect(kinematicViscosity(water)).toBeCloseTo(1.0034, 3);
  expect(kinematicViscosity({ ...water, temperature: 4 })).toBeGreaterThan(1.5);
  expect(kinematicViscosity({ ...water, temperature: null, salinity: null })).toBe(kinematicViscosity(water));
  expect(kinematicViscosity(water)).toBe(freshViscosity(20) / 0.0009982);
});
