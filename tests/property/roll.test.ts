import fc from 'fast-check';
import { expect, test } from 'vitest';
import { floatBody } from '../../sim/hydro/float.ts';
import { rightingCurve } from '../../sim/hydro/righting-arm.ts';
import type { Vec3 } from '../../sim/numerics/vec3.ts';
import { leastBallast } from '../../sim/roll/least-ballast.ts';
import { arbitraryPlainBody, mirrored, number } from '../support/arbitrary-body.ts';
import { bodyOf } from '../support/float-mesh.ts';
import { barMesh, ellipsoidMesh } from '../support/meshes.ts';

/** A curve right round each: a quarter of the usual runs; and a body that fails is not made smaller, which takes hours. */
const RUNS = { numRuns: Math.ceil(Number(process.env.FLOATWRIGHT_RUNS ?? 100) / 4), endOnFailure: true };
const DEGREE = Math.PI / 180;
const UP: Vec3 = [0, 0, 1];

/** Alike to port and starboard and fore and aft, boxes and ellipsoids. */
function arbitrarySymmetric() {
  return fc
    .record({
      isBox: fc.boolean(),
      length: number(30, 100),
      width: number(8, 40),
      height: number(8, 50),
      share: number(0.3, 0.9),
    })
    .map(({ isBox, length, width, height, share }) => {
      const mesh = isBox ? barMesh(length, width, height) : ellipsoidMesh([length / 2, width / 2, height / 2], 16, 24);
      return { mesh, share, height };
    });
}

test('a body seen in a mirror has the mirror image of the curve', () => {
  fc.assert(
    fc.property(arbitraryPlainBody(), (plain) => {
      const image = mirrored(plain, 1);
      const [one, other] = [plain, image].map(({ mesh, share, centre }) =>
        rightingCurve(bodyOf(mesh, share, centre), UP, 5 * DEGREE),
      );
      fc.pre(one.mismatch < 0.5 && other.mismatch < 0.5);
      const half = Math.min(one.points.length, other.points.length);
      fc.pre(half > 20);
      for (const { heel, arm } of one.points) {
        // past half a turn either way the curve may have ended for one at a trim that the other just passes
        const twin = other.points.find((point) => Math.abs(point.heel + heel) < 1e-9);
        if (twin && Math.abs(heel) < 60 * DEGREE) expect(twin.arm).toBeCloseTo(-arm, 4);
      }
    }),
    RUNS,
  );
});

test('arms add up to the energy, in whatever steps', () => {
  fc.assert(
    fc.property(arbitrarySymmetric(), number(-6, 2), ({ mesh, share, height }, off) => {
      const body = bodyOf(mesh, share, [0, 0, off]);
      const { points } = rightingCurve(body, UP, DEGREE);
      // a trim that jumps from one valley to the next gives energy away that no arm has told of
      const isSmooth = points.every((point, i) => i === 0 || Math.abs(point.trim - (points[i - 1]?.trim ?? 0)) < 0.2);
      fc.pre(isSmooth && points.length > 300);
      const sum = points.slice(1).reduce((all, { arm }, i) => all + (DEGREE * (arm + (points[i]?.arm ?? 0))) / 2, 0);
      const [first, last] = [points[0], points[points.length - 1]];
      // trapezia a degree wide leave a ten-thousandth of the longest arm there can be
      expect(Math.abs(sum - ((last?.energy ?? 0) - (first?.energy ?? 0)))).toBeLessThan(1e-3 * height);
    }),
    RUNS,
  );
});

test('the curve of a body alike on both sides is odd', () => {
  fc.assert(
    fc.property(arbitrarySymmetric(), number(-6, 2), number(-3, 3), ({ mesh, share }, off, along) => {
      const { points } = rightingCurve(bodyOf(mesh, share, [along, 0, off]), UP, 5 * DEGREE);
      for (const { heel, arm } of points) {
        const twin = points.find((point) => Math.abs(point.heel + heel) < 1e-9);
        if (twin && Math.abs(heel) < 80 * DEGREE) expect(twin.arm).toBeCloseTo(-arm, 5);
      }
    }),
    RUNS,
  );
});

test('lead that lies lower, as heavy as before, raises GM by its share of the weight times the way', () => {
  fc.assert(
    fc.property(
      arbitrarySymmetric(),
      number(0.05, 0.4),
      number(0, 0.4),
      number(0.01, 0.4),
      ({ mesh, share, height }, lead, at, down) => {
        const gmAt = (z: number) => floatBody(bodyOf(mesh, share, [0, 0, lead * z])).gmUpright;
        const high = -at * height;
        const low = high - down * height;
        // whatever the lead, the body has its level plane: held upright it does not trim
        fc.pre(gmAt(high) > 0.2);
        expect(gmAt(low) - gmAt(high)).toBeCloseTo(lead * down * height, 5);
      },
    ),
    RUNS,
  );
});

test('the least ballast stands a body up, and a hundredth less does not', () => {
  fc.assert(
    fc.property(arbitrarySymmetric(), ({ mesh, share, height }) => {
      const body = bodyOf(mesh, share / 2);
      const at: Vec3 = [0, 0, -0.4 * height];
      const least = leastBallast(body, at, 0);
      fc.pre(least !== null && least > 0);
      const loaded = (ballast: number) => {
        const mass = body.mass + ballast;
        return floatBody({ ...body, mass, centre: [0, 0, (ballast * at[2]) / mass] });
      };
      const enough = loaded((least ?? 0) * 1.01);
      const short = loaded((least ?? 0) * 0.99);
      fc.pre(enough.state === 'floats' && short.state === 'floats' && enough.gmLong > 0);
      expect(enough.gmUpright).toBeGreaterThan(0);
      expect(short.gmUpright).toBeLessThan(0);
    }),
    RUNS,
  );
});
