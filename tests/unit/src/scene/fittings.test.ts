import { describe, expect, test } from 'vitest';
import { eyeRadius } from '../../../../src/scene/Fittings.tsx';
import { flankAt } from '../../../../src/scene/skin.ts';
import { ellipsoidMesh } from '../../../support/meshes.ts';

describe('a place on a flank', () => {
  const [A, B, C] = [40, 10, 18];
  const mesh = ellipsoidMesh([A, B, C], 96, 96);

  test('lies on the skin straight abeam, to either side, its direction out of the wood', () => {
    for (const side of [1, -1] as const) {
      const [x, z] = [12, 5];
      const found = flankAt(mesh, x, z, side);
      const y = side * B * Math.sqrt(1 - (x / A) ** 2 - (z / C) ** 2);
      const gradient = [x / A ** 2, y / B ** 2, z / C ** 2];
      const long = Math.hypot(...gradient);
      expect(found?.at[1]).toBeCloseTo(y, 1);
      for (const axis of [0, 1, 2]) expect(found?.outward[axis]).toBeCloseTo((gradient[axis] ?? 0) / long, 1);
    }
  });

  test('is none where there is no skin abeam', () => {
    expect(flankAt(mesh, 41, 0, 1)).toBeNull();
  });
});

test('an eye of a quarter of a gram is drawn some 7 mm across, as glass of that weight is', () => {
  // half a ball of 2.5 g/cm³: 2/3 π r³ · 0.0025 = 0.25
  expect(2 * eyeRadius(0.25)).toBeCloseTo(2 * Math.cbrt(0.25 / ((2 / 3) * Math.PI * 0.0025)), 9);
  expect(2 * eyeRadius(0.25)).toBeGreaterThan(6.5);
  expect(2 * eyeRadius(0.25)).toBeLessThan(8);
});
