import { describe, expect, test } from 'vitest';
import { buildHull } from '../../../sim/hull/hull.ts';
import { buildRing } from '../../../sim/hull/section.ts';
import { totalsOf } from '../../../sim/hydro/body.ts';
import { cutLinks } from '../../../sim/links/cut.ts';
import { loftLink } from '../../../sim/mesh/loft.ts';
import { measureVolume } from '../../../sim/mesh/measure.ts';
import type { Mesh } from '../../../sim/mesh/mesh.ts';
import { linkTopology } from '../../../sim/mesh/topology.ts';
import type { Vec3 } from '../../../sim/numerics/vec3.ts';
import { ellipsoidBody } from '../../support/bodies.ts';
import { bodyOf } from '../../support/float-mesh.ts';
import { tubeMesh } from '../../support/meshes.ts';
import { bait, mesh as shapes } from './case.json';

/** A bait with ellipses for outlines and superellipses for sections, as the mesher makes it. */
function baitMesh(exponent: number, fineness: number): Mesh {
  const [a, b, c] = bait.given.semi_axes_mm;
  const section = { kind: 'oval' as const, above: exponent, below: exponent, breadth: 0.5 };
  const hull = buildHull({ ...ellipsoidBody(a, b, c), section });
  const [whole] = cutLinks(2 * a, [{ name: 'whole', density: null }], []);
  const counts = { bands: 15 * fineness, steps: 8 * fineness, foreTip: true, aftTip: true, slots: 0 };
  const ring = buildRing(hull.section, counts.steps);
  return { topology: linkTopology(counts), positions: loftLink(hull, ring, whole, counts, { skin: 0, face: 0 }) };
}

/** cos or sin to a power, with its sign. */
const power = (value: number, exponent: number) => Math.sign(value) * Math.abs(value) ** exponent;

/** Unit semi-axes, points on the true surface; tiny rings stand for the poles. */
function surfaceMesh(e1: number, e2: number, bands: number): Mesh {
  const rings = Array.from({ length: bands + 1 }, (_, i) => {
    const turn = (Math.PI * Math.min(bands - 1e-3, Math.max(1e-3, i))) / bands - Math.PI / 2;
    return Array.from({ length: 2 * bands }, (_unused, k): Vec3 => {
      const angle = (Math.PI * k) / bands;
      const out = power(Math.cos(turn), e1);
      return [power(Math.sin(turn), e1), out * power(Math.cos(angle), e2), out * power(Math.sin(angle), e2)];
    });
  });
  return tubeMesh(rings);
}

/** Orders by which errors of meshes each twice as fine fall. */
const ordersOf = (errors: readonly number[]) => errors.slice(1).map((error, i) => Math.log2(errors[i] / error));
const errorsOf = (volumes: readonly number[], wanted: number) => volumes.map((volume) => Math.abs(volume / wanted - 1));

describe.each(bait.given.e2.map((e2, i) => ({ exponent: 2 / e2, wanted: bait.expect.volume_over_abc.value[i] })))(
  'a bait with sections of exponent $exponent between elliptic outlines',
  ({ exponent, wanted }) => {
    test('has the volume of the superquadric that it is, closing in by more than the square of the step', () => {
      const [a, b, c] = bait.given.semi_axes_mm;
      const volumes = [4, 8, 16].map((fineness) => measureVolume(baitMesh(exponent, fineness)).volume / (a * b * c));
      const errors = errorsOf(volumes, wanted);
      for (const order of ordersOf(errors)) expect(order).toBeGreaterThan(bait.order.low);
      expect(errors[2]).toBeLessThan(bait.expect.tolerance);
    });
  },
);

describe.each(shapes.given.e1_e2.map(([e1, e2], i) => ({ e1, e2, wanted: shapes.expect.volume_over_abc.value[i] })))(
  'a superquadric of $e1 and $e2',
  ({ e1, e2, wanted }) => {
    test('measures and displaces the volume of its formula, closing in by the square of the step', () => {
      const meshes = [24, 48, 96].map((bands) => surfaceMesh(e1, e2, bands));
      const volumes = meshes.map((mesh) => measureVolume(mesh).volume);
      const errors = errorsOf(volumes, wanted);
      for (const order of ordersOf(errors)) {
        expect(order).toBeGreaterThan(shapes.order.low);
        expect(order).toBeLessThan(shapes.order.high);
      }
      const settled = volumes[2] + (volumes[2] - volumes[1]) / 3;
      expect(Math.abs(settled / wanted - 1)).toBeLessThan(shapes.expect.tolerance);
      expect(totalsOf(bodyOf(meshes[2], 0.5)).volume / measureVolume(meshes[2]).volume).toBeCloseTo(1, 12);
    });
  },
);
