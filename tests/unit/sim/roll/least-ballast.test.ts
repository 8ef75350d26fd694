import { describe, expect, test } from 'vitest';
import { floatBody } from '../../../../sim/hydro/float.ts';
import { heldUpright } from '../../../../sim/hydro/righting-arm.ts';
import { leastBallast } from '../../../../sim/roll/least-ballast.ts';
import { bodyOf } from '../../../support/float-mesh.ts';
import { barMesh } from '../../../support/meshes.ts';

/** 60 × 20 × 30 mm of wood of half the water's density. */
const BLOCK = bodyOf(barMesh(60, 20, 30), 0.5);

describe('the least ballast', () => {
  test('is none for what stands as it is', () => {
    expect(leastBallast(bodyOf(barMesh(60, 30, 10), 0.5), [0, 0, -4], 0)).toBe(0);
  });

  test('is the less, the lower it lies', () => {
    const [low, middle] = [-12, -8].map((z) => leastBallast(BLOCK, [0, 0, z], 0) ?? 99);
    expect(low).toBeLessThan(middle);
  });

  test('stands the body up by as much as was asked', () => {
    const ballast = leastBallast(BLOCK, [0, 0, -12], 0.7) ?? 0;
    const mass = BLOCK.mass + ballast;
    expect(floatBody({ ...BLOCK, mass, centre: [0, 0, (-12 * ballast) / mass] }).gm).toBeCloseTo(0.7, 6);
  });

  test('may be found only when it hangs: then buoyancy stands over weight', () => {
    // a slab of 5.4 g that 10.8 g drown: afloat its GM is never more than 2·5.4/10.8 + 6²/(12·30) mm, under water 2 m/M
    const slab = bodyOf(barMesh(60, 6, 30), 0.5);
    expect(leastBallast(slab, [0, 0, -2], 1.105)).toBeCloseTo((1.105 * 5.4) / (2 - 1.105), 5);
  });

  test('is not there where no weight would do: over the middle, or for more than its height gives', () => {
    expect(leastBallast(BLOCK, [0, 0, 5], 0)).toBeNull();
    expect(leastBallast(BLOCK, [0, 0, -2], 3)).toBeNull();
  });

  test('does not take a body on its end for one that stands', () => {
    const stick = bodyOf(barMesh(80, 10, 10), 0.6, [28, 0, 0]);
    const ballast = leastBallast(stick, [-30, 0, -4], 0) ?? 0;
    const mass = stick.mass + ballast;
    const x = (28 * stick.mass - 30 * ballast) / mass;
    const { trim } = heldUpright({ ...stick, mass, centre: [x, 0, (-4 * ballast) / mass] });
    expect(ballast).toBeGreaterThan(0.1);
    expect(Math.abs(trim)).toBeLessThan((81 * Math.PI) / 180);
  });

  test('of nothing that floats is null, never a number that is none', () => {
    expect(leastBallast({ ...BLOCK, mass: 0, centre: [0, 0, 0] }, [0, 0, -12], 0)).toBeNull();
  });
});
