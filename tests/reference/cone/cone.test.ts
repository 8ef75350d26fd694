import { describe, expect, test } from 'vitest';
import { floatHomogeneous } from '../../support/float-mesh.ts';
import { turnedMesh } from '../../support/meshes.ts';
import book from './case.json' with { type: 'json' };

const { height } = book.given;
const { least_half_angle_deg: least, draught, order } = book.expect;
const rows = book.given.density.map((density, i) => ({ density, angle: least.value[i] }));
/** In place of the tip a ring this share of the way up. */
const TIP = 1e-6;

function cone(halfAngle_deg: number, sides = 48) {
  const radius = height * Math.tan((halfAngle_deg * Math.PI) / 180);
  const profile = [
    [TIP * radius, TIP * height],
    [radius, height],
  ] as const;
  return turnedMesh(profile, sides);
}

describe.each(rows)('a cone of relative density $density', ({ density, angle }) => {
  test('stands on its apex from a half-angle of $angle degrees on', () => {
    expect(floatHomogeneous(cone(angle + least.tolerance), density).up[2]).toBeCloseTo(1, 12);
    // it leans at once: tilt grows as the root of what is missing
    expect(floatHomogeneous(cone(angle - least.tolerance), density).up[2]).toBeLessThan(Math.cos(Math.PI / 360));
  });

  test('lies as deep as the cube root of its density', () => {
    const float = floatHomogeneous(cone(angle + 5), density);
    const wanted = height * Math.cbrt(density);
    expect(Math.abs((float.draft ?? Number.NaN) - wanted)).toBeLessThan(2 * draught.tolerance * height);
  });

  test('is as stiff as its formula says, nearing it by the fourth power of its facets', () => {
    const tan = Math.tan(((angle + 5) * Math.PI) / 180);
    const wanted = 0.75 * (height * Math.cbrt(density) * (1 + tan ** 2) - height);
    const errors = [24, 48, 96].map((sides) => floatHomogeneous(cone(angle + 5, sides), density).gm - wanted);
    for (const [coarse, fine] of [errors.slice(0, 2), errors.slice(1)]) {
      expect(Math.log2(coarse / fine)).toBeGreaterThan(order.low);
      expect(Math.log2(coarse / fine)).toBeLessThan(order.high);
    }
    // what is left when the order is used up, of a GM of millimetres
    expect(Math.abs(errors[2] + (errors[2] - errors[1]) / 15)).toBeLessThan(1e-6 * wanted);
  });
});
