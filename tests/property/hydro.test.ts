import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FloatingBody } from '../../sim/hydro/body.ts';
import { draftAt } from '../../sim/hydro/draft.ts';
import { principalAxes, restFrom } from '../../sim/hydro/equilibrium.ts';
import { floatBody } from '../../sim/hydro/float.ts';
import { planeAxes, potentialAt } from '../../sim/hydro/potential.ts';
import { submerge, WET } from '../../sim/hydro/submerge.ts';
import type { Mesh } from '../../sim/mesh/mesh.ts';
import { add, cross, dot, length, scale, subtract, unit, type Vec3 } from '../../sim/numerics/vec3.ts';
import {
  arbitraryBody,
  arbitraryMesh,
  arbitraryPlainBody,
  arbitraryUp,
  mirrored,
  moved,
  number,
  type PlainBody,
  reachOf,
  scaled,
  weightOf,
} from '../support/arbitrary-body.ts';
import { clipByHand } from '../support/clip-by-hand.ts';
import { bodyOf, treeOf, WATER } from '../support/float-mesh.ts';
import { pointsOf } from '../support/meshes.ts';

/** A failure names its seed; shrinking a mesh of random numbers takes ages and tells nothing. */
const RUNS = { numRuns: Number(process.env.FLOATWRIGHT_RUNS ?? 500), endOnFailure: true };
const UP: Vec3 = [0, 0, 1];
const HALF_DEGREE = Math.PI / 360;

function floating({ mesh, share, centre }: PlainBody): FloatingBody {
  return bodyOf(mesh, share, centre);
}

function expectHandClip(mesh: Mesh, n: Vec3, d: number): void {
  const [u, v] = planeAxes(n);
  const found = new Float64Array(WET.size);
  submerge(treeOf(mesh), n, u, v, d, [0, 0, 0], found);
  const wanted = clipByHand(mesh, n, u, v, d);
  const far = Math.max(...pointsOf(mesh).map(length));
  // both lose digits in proportion to the distance from the nose, by the power of the integral
  const near = (value: number, other: number, power: number, name: string) =>
    expect(Math.abs(value - other), name).toBeLessThan(1e-12 * far ** power);
  near(found[WET.volume], wanted.volume, 3, 'volume');
  wanted.moment.forEach((part, axis) => {
    near(found[WET.moment + axis], part, 4, `moment ${axis}`);
  });
  // on a face, or all but, rounding decides how much of it is waterplane; volume and moment do not care
  if (liesOnFace(mesh, n, d, 1e-3 * far)) return;
  wanted.plane.forEach((part, i) => {
    near(found[WET.area + i], part, 2 + Math.min(2, Math.ceil(i / 2)), `plane ${i}`);
  });
}

function liesOnFace(mesh: Mesh, n: Vec3, d: number, near: number): boolean {
  const close = pointsOf(mesh).map((p) => Math.abs(dot(n, p) - d) < near);
  const { index } = mesh.topology;
  for (let i = 0; i < index.length; i += 3)
    if (close[index[i]] && close[index[i + 1]] && close[index[i + 2]]) return true;
  return false;
}

describe('the pass over any mesh equals clipping it by hand', () => {
  test('at any plane, or one that misses', () => {
    fc.assert(
      fc.property(arbitraryMesh(), arbitraryUp(), number(-1.2, 1.2), (mesh, n, share) => {
        const middle = pointsOf(mesh)[mesh.topology.vertexCount - 1];
        expectHandClip(mesh, n, dot(n, middle) + share * reachOf(mesh));
      }),
      RUNS,
    );
  });

  test('at a plane through one corner', () => {
    fc.assert(
      fc.property(arbitraryMesh(), arbitraryUp(), fc.nat(), (mesh, n, pick) => {
        const points = pointsOf(mesh);
        expectHandClip(mesh, n, dot(n, points[pick % points.length]));
      }),
      RUNS,
    );
  });

  test('at a plane along an edge', () => {
    fc.assert(
      fc.property(arbitraryMesh(), arbitraryUp(), fc.nat(), (mesh, towards, pick) => {
        const points = pointsOf(mesh);
        const { index } = mesh.topology;
        const i = 3 * (pick % (index.length / 3));
        const [a, b] = [points[index[i]], points[index[i + 1]]];
        const across = cross(subtract(b, a), towards);
        fc.pre(length(across) > 1e-3);
        const n = unit(across);
        expectHandClip(mesh, n, dot(n, a));
      }),
      RUNS,
    );
  });

  test('at a plane on a face, and one through any three corners', () => {
    fc.assert(
      fc.property(arbitraryMesh(), fc.tuple(fc.nat(), fc.nat(), fc.nat()), fc.boolean(), (mesh, picks, onFace) => {
        const points = pointsOf(mesh);
        const { index } = mesh.topology;
        const first = 3 * (picks[0] % (index.length / 3));
        const [a, b, c] = onFace
          ? [points[index[first]], points[index[first + 1]], points[index[first + 2]]]
          : picks.map((pick) => points[pick % points.length]);
        const normal = cross(subtract(b, a), subtract(c, a));
        fc.pre(length(normal) > 1e-3);
        for (const n of [unit(normal), scale(unit(normal), -1)]) expectHandClip(mesh, n, dot(n, a));
      }),
      RUNS,
    );
  });
});

describe('any body afloat', () => {
  test('displaces its weight, and rests where its energy is least by half a degree all round', () => {
    let lost = 0;
    fc.assert(
      fc.property(arbitraryBody(), (body) => {
        const rest = restFrom(body, UP);
        const weight = weightOf(body);
        expect(rest.potential.force).toBe(rest.force);
        expect(Object.values(rest.potential).flat().every(Number.isFinite)).toBe(true);
        if (!rest.converged) {
          lost++;
          return;
        }
        const found = WATER * (rest.potential.displaced + rest.potential.hungDisplaced);
        expect(Math.abs(found / weight - 1)).toBeLessThan(1e-8);
        for (let k = 0; k < 12; k++) {
          const angle = (Math.PI * k) / 6;
          const e = add(scale(rest.axes[0], Math.cos(angle)), scale(rest.axes[1], Math.sin(angle)));
          const n = unit(add(rest.up, scale(e, Math.tan(HALF_DEGREE))));
          const { potential } = draftAt(body, n, ...planeAxes(n), null, 1e-12 * weight);
          // rounding of energies of weight times 100 mm
          expect(potential.value - rest.potential.value).toBeGreaterThan(-1e-12 * weight * 100);
        }
      }),
      RUNS,
    );
    // a rest that was not settled says so; hardly any may be like that
    expect(lost / RUNS.numRuns).toBeLessThanOrEqual(0.002);
  });

  test('built a little heavier and off its centre, comes from the drawn rest to where it comes from level', () => {
    let passes = 0;
    let fromLevel = 0;
    fc.assert(
      fc.property(arbitraryBody(), number(-0.01, 0.01), number(-0.3, 0.3), (drawn, heavier, off) => {
        const build = { ...drawn, mass: drawn.mass * (1 + heavier), centre: add(drawn.centre, [off, 0.2 * off, -off]) };
        const rest = restFrom(drawn, UP);
        const [cold, warm] = [restFrom(build, UP), restFrom(build, rest.up, rest)];
        // another rest than from level is no fault: that is another valley's
        fc.pre(cold.converged && warm.converged && dot(cold.up, warm.up) > 1 - 1e-6);
        passes += warm.passes;
        fromLevel += cold.passes;
        const gm = Math.max(principalAxes(cold.potential).low / weightOf(build), 1e-3);
        expect(length(subtract(warm.up, cold.up))).toBeLessThan(1e-8 / gm);
        expect(Math.abs(warm.potential.value - cold.potential.value)).toBeLessThan(1e-11 * weightOf(build) * 100);
      }),
      RUNS,
    );
    expect(passes).toBeLessThan(0.7 * fromLevel);
  });

  test('never climbs on its way to rest', () => {
    fc.assert(
      fc.property(arbitraryBody(), arbitraryUp(), (body, start) => {
        const weight = weightOf(body);
        const { potential } = draftAt(body, start, ...planeAxes(start), null, 1e-12 * weight);
        expect(restFrom(body, start).potential.value).toBeLessThan(potential.value + 1e-11 * weight * 100);
      }),
      RUNS,
    );
  });

  test('has slopes and curvatures that finite steps find too', () => {
    fc.assert(
      fc.property(arbitraryBody(), arbitraryUp(), number(0.1, 0.9), (body, n, share) => {
        // a face that lies in the surface has no curvature to speak of; only these meshes' faces square to an axis can
        fc.pre(n.every((part) => Math.abs(part) > 0.01));
        const axes = planeAxes(n);
        const weight = weightOf(body);
        const { boxes, origin } = body.trees[0];
        const reach = Math.abs(n[0]) * boxes[3] + Math.abs(n[1]) * boxes[4] + Math.abs(n[2]) * boxes[5];
        const d = dot(n, origin) + (2 * share - 1) * reach;
        const here = potentialAt(body, n, ...axes, d);
        const step = 1e-5;
        // how large the terms are whose rounding a step divides by, g and g mm
        const size =
          (weight + WATER * (here.displaced + here.hungDisplaced)) *
          (reach + length(subtract(origin, here.centre)) + 100);
        const at = (e: Vec3, angle: number) => {
          const next = add(scale(n, Math.cos(angle)), scale(e, Math.sin(angle)));
          return potentialAt(body, next, ...planeAxes(next), d + dot(subtract(next, n), here.centre));
        };
        const deeper = [-step, step].map((by) => potentialAt(body, n, ...axes, d + by).value);
        expect(Math.abs((deeper[1] - deeper[0]) / (2 * step) - here.force)).toBeLessThan(1e-8 * size);
        for (const [e, slope] of [
          [axes[0], here.slopeU],
          [axes[1], here.slopeV],
        ] as const) {
          const values = [-step, step].map((by) => at(e, by).value);
          expect(Math.abs((values[1] - values[0]) / (2 * step) - slope)).toBeLessThan(1e-7 * size);
        }
      }),
      RUNS,
    );
  });

  test('at one attitude lies the deeper the heavier it is', () => {
    fc.assert(
      fc.property(arbitraryBody(), arbitraryUp(), number(0.01, 0.99), (body, n, share) => {
        const axes = planeAxes(n);
        const light = { ...body, mass: share * body.mass };
        const [deep, proud] = [body, light].map((one) => draftAt(one, n, ...axes, null, 1e-11 * weightOf(one)).offset);
        expect(deep).toBeGreaterThanOrEqual(proud - 1e-6);
      }),
      RUNS,
    );
  });
});

/** Laws that compare two bodies hold where descent from upright cannot go one way in one and another way in the other. */
function settles(plain: PlainBody) {
  const float = floatBody(floating(plain));
  fc.pre(float.state === 'floats' && !float.mirrored && float.gmMin > 0.1);
  expect(float.solver.converged).toBe(true);
  return float;
}

describe('the law of', () => {
  test('scale: lengths by three, volumes by 27, angles as they were', () => {
    fc.assert(
      fc.property(arbitraryPlainBody(), number(1, 5), (plain, by) => {
        const small = settles(plain);
        const large = floatBody(floating(scaled(plain, by)));
        expect(large.state).toBe('floats');
        expect(length(subtract(large.up, small.up))).toBeLessThan(1e-6);
        expect(large.displaced / by ** 3 / small.displaced).toBeCloseTo(1, 8);
        for (const name of ['gm', 'gmLong', 'gmMin', 'draft', 'proud'] as const) {
          expect((large[name] ?? Number.NaN) / by).toBeCloseTo(small[name] ?? Number.NaN, 4);
        }
      }),
      RUNS,
    );
  });

  test('mirrors: heel turns over with port and starboard, trim with bow and stern', () => {
    fc.assert(
      fc.property(arbitraryPlainBody(), fc.constantFrom(0, 1), (plain, axis: 0 | 1) => {
        const one = settles(plain);
        const other = floatBody(floating(mirrored(plain, axis)));
        const wanted = one.up.map((part, i) => (i === axis ? -part : part));
        other.up.forEach((part, i) => {
          expect(Math.abs(part - wanted[i])).toBeLessThan(1e-6);
        });
        expect(other.trim).toBeCloseTo(axis === 0 ? -one.trim : one.trim, 5);
        expect(other.draft ?? Number.NaN).toBeCloseTo(one.draft ?? Number.NaN, 5);
        expect(other.gmMin).toBeCloseTo(one.gmMin, 4);
      }),
      RUNS,
    );
  });

  test('place: a body moved along the drawing floats as it did', () => {
    fc.assert(
      fc.property(arbitraryPlainBody(), number(-500, 500), (plain, x) => {
        const one = settles(plain);
        const other = floatBody(floating(moved(plain, [x, -x / 7, x / 3])));
        expect(length(subtract(other.up, one.up))).toBeLessThan(1e-6);
        for (const name of ['draft', 'proud', 'gm', 'gmLong', 'gmMin', 'displaced'] as const) {
          expect(other[name] ?? Number.NaN).toBeCloseTo(one[name] ?? Number.NaN, 4);
        }
      }),
      RUNS,
    );
  });

  // E. N. Gilbert, How things float, American Mathematical Monthly 98 (1991) 201, theorem 2
  test('complements: a homogeneous body of density s rests as one of 1 - s does upside down', () => {
    fc.assert(
      fc.property(arbitraryMesh(), number(0.05, 0.95), (mesh, share) => {
        const one = bodyOf(mesh, share);
        const rest = restFrom(one, UP);
        fc.pre(rest.converged);
        const other = bodyOf(mesh, 1 - share);
        const n = scale(rest.up, -1);
        const turned = potentialAt(other, n, ...planeAxes(n), -rest.offset);
        const size = (one.mass + other.mass) * reachOf(mesh);
        expect(Math.abs(turned.force)).toBeLessThan(1e-8 * size);
        expect(Math.hypot(turned.slopeU, turned.slopeV)).toBeLessThan(1e-7 * size);
        const sum = (p: typeof turned) => p.curveUU + p.curveVV;
        expect(Math.abs(sum(turned) - sum(rest.potential))).toBeLessThan(1e-7 * size);
      }),
      RUNS,
    );
  });
});
