import { Matrix4, Vector3 } from 'three';
import { describe, expect, test } from 'vitest';
import { worldAxes } from '../../../../sim/frames.ts';
import { unit, type Vec3 } from '../../../../sim/numerics/vec3.ts';
import { toScene, worldFromBody } from '../../../../src/scene/frame.ts';

/** A few roundings of numbers below 100. */
const ROUNDING = 1e-12;

describe('the scene', () => {
  test('has the tail to the right of the nose, up upwards, and port towards the viewer of the side view', () => {
    expect(toScene(1, 0, 0, new Vector3()).toArray()).toEqual([1, 0, 0]);
    expect(toScene(0, 0, 1, new Vector3()).toArray()).toEqual([0, 1, 0]);
    expect(toScene(0, -1, 0, new Vector3()).toArray()).toEqual([0, 0, 1]);
  });
});

describe('an attitude', () => {
  const ups: readonly Vec3[] = [
    [0, 0, 1],
    unit([0.1, 0.05, 1]),
    unit([-0.4, 0.8, 0.2]),
    unit([0.3, -0.2, -1]),
    [0, 0, -1],
    [1, 0, 0],
    [-1, 0, 0],
  ];

  test.each(ups.map((up) => ({ up })))('is drawn along the axes that the sums use, up = $up', ({ up }) => {
    const offset = 7.5;
    const place: Vec3 = [31, -4, 12];
    const drawn = new Vector3(...place).applyMatrix4(worldFromBody(new Vector3(...up), offset, new Matrix4()));
    const axes = worldAxes(up);
    const along = (axis: Vec3) => axis[0] * place[0] + axis[1] * place[1] + axis[2] * place[2];
    expect(Math.abs(drawn.x - along(axes.along))).toBeLessThan(ROUNDING * 100);
    expect(Math.abs(drawn.y - along(axes.across))).toBeLessThan(ROUNDING * 100);
    expect(Math.abs(drawn.z - (along(up) - offset))).toBeLessThan(ROUNDING * 100);
  });

  test('turns the bait without stretching or mirroring it', () => {
    for (const up of ups) {
      const turned = worldFromBody(new Vector3(...up), 3, new Matrix4());
      expect(Math.abs(turned.determinant() - 1)).toBeLessThan(ROUNDING);
    }
  });
});
