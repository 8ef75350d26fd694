import { expect, test } from 'vitest';
import { planeAxes, potentialAt } from '../../../sim/hydro/potential.ts';
import { measureVolume } from '../../../sim/mesh/measure.ts';
import type { Vec3 } from '../../../sim/numerics/vec3.ts';
import { treeOf, WATER } from '../../support/float-mesh.ts';
import { tubeMesh } from '../../support/meshes.ts';
import book from './case.json' with { type: 'json' };

const { length: L, width: B, draught: T } = book.given;
const { tolerance, ...wanted } = book.expect;
const DECK = 3;

/** Sections from keel to deck and back down the other side; wall-sided over the waterline. */
function hull(stations: number, levels: number) {
  const rings = Array.from({ length: stations + 1 }, (_, i) => {
    const x = L * (i / stations - 0.5);
    const half = (B / 2) * (1 - (2 * x) ** 2 / L ** 2);
    const side = Array.from({ length: levels + 1 }, (_unused, k) => T * (k / levels - 1)).map(
      (z) => [half * (1 - (z / T) ** 2), z] as const,
    );
    const right = [...side, [half, DECK] as const];
    const left = right.toReversed().map(([y, z]) => [-y, z] as const);
    return [...right, ...left].map(([y, z]): Vec3 => [x, y, z]);
  });
  return tubeMesh(rings);
}

function waterplaneAt(stations: number) {
  const mesh = hull(stations, stations / 2);
  const up: Vec3 = [0, 0, 1];
  const [u, v] = planeAxes(up);
  const afloat = (mass: number, centre: Vec3) =>
    potentialAt({ trees: [treeOf(mesh)], waterDensity: WATER, mass, centre, outside: [], hung: [] }, up, u, v, 0);
  const first = afloat(1, measureVolume(mesh).centre);
  // with its weight at its centre of buoyancy, curvature over weight is the metacentric radius
  const balanced = afloat(WATER * first.displaced, first.buoyancyCentre);
  const weight = WATER * first.displaced;
  const [alongX, alongY] =
    Math.abs(u[0]) > 0.5 ? [balanced.curveUU, balanced.curveVV] : [balanced.curveVV, balanced.curveUU];
  return {
    volume: first.displaced,
    KB: first.buoyancyCentre[2] + T,
    area: first.area,
    BM_transverse: alongY / weight,
    BM_longitudinal: alongX / weight,
  };
}

const [coarse, middle, fine] = [16, 32, 64].map(waterplaneAt);

test.each(Object.keys(wanted) as (keyof typeof wanted)[])('the Wigley hull has the %s of its closed form', (name) => {
  const [a, b, c] = [coarse, middle, fine].map((row) => row[name]);
  const extrapolated = c + (c - b) / 3;
  expect(Math.abs(extrapolated / wanted[name] - 1)).toBeLessThan(tolerance.value);
  const order = Math.log2(Math.abs((a - wanted[name]) / (b - wanted[name])));
  expect(order).toBeGreaterThan(1.8);
  expect(order).toBeLessThan(2.2);
});
