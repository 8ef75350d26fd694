import { describe, expect, test } from 'vitest';
import { worldAxes } from '../../../sim/frames.ts';
import type { Vec3 } from '../../../sim/numerics/vec3.ts';
import { addedVolume, spheroidAddedShare } from '../../../sim/sinking/added-mass.ts';
import { cutStrips } from '../../../sim/sinking/strips.ts';
import { SOURCES } from '../../../sim/sources/sources.ts';
import { treeOf } from '../../support/float-mesh.ts';
import { ellipsoidMesh } from '../../support/meshes.ts';
import given from './case.json';

const { spheroids, ellipsoid } = given;
const rows = spheroids.slender.map((slender, i) => ({
  slender,
  exact: spheroids.exact[i],
  printed: spheroids.printed[i],
}));

test('the sources are listed', () => {
  for (const { source } of [spheroids, ellipsoid]) expect(Object.keys(SOURCES)).toContain(source);
});

describe.each(rows)('a spheroid $slender times as long as thick', ({ slender, exact, printed }) => {
  test('carries the share of its water that Lamb gives, and that Munk prints', () => {
    expect(Math.abs(spheroidAddedShare(slender) - exact)).toBeLessThan(spheroids.tolerance.exact);
    expect(Math.abs(spheroidAddedShare(slender) - printed)).toBeLessThan(spheroids.tolerance.printed);
  });

  test('does so by its slices too, up to its facets', () => {
    const volume = (4 / 3) * Math.PI * 1000 * slender;
    const strips = cutStrips(treeOf(ellipsoidMesh([10 * slender, 10, 10], 100, 64)), worldAxes([0, 0, 1]));
    expect(Math.abs(addedVolume(strips, 20 * slender) / volume / exact - 1)).toBeLessThan(2e-3);
  });
});

test('a disc on edge carries less the thinner it is, and a ball is neither', () => {
  expect(spheroidAddedShare(0.9999)).toBeCloseTo(spheroidAddedShare(1.0001), 3);
  expect(spheroidAddedShare(0.5)).toBeLessThan(0.4);
  expect(spheroidAddedShare(0.05)).toBeLessThan(0.05);
});

test.each([
  { axis: 'y', up: [0, 1, 0] as Vec3, ratio: ellipsoid.ratios.along_y },
  { axis: 'z', up: [0, 0, 1] as Vec3, ratio: ellipsoid.ratios.along_z },
])('an ellipsoid of three axes carries $ratio of its water along $axis', ({ up, ratio }) => {
  const [a, b, c] = ellipsoid.semi_axes_mm;
  const strips = cutStrips(treeOf(ellipsoidMesh([a, b, c], 100, 64)), worldAxes(up));
  const share = addedVolume(strips, 2 * a) / ((4 / 3) * Math.PI * a * b * c);
  expect(Math.abs(share / ratio - 1)).toBeLessThan(ellipsoid.tolerance);
});
