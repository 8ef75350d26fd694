import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Attitudes, findAttitudes } from '../../sim/hydro/attitudes.ts';
import type { FloatingBody } from '../../sim/hydro/body.ts';
import { draftAt } from '../../sim/hydro/draft.ts';
import { restFrom } from '../../sim/hydro/equilibrium.ts';
import { type Float, floatBody } from '../../sim/hydro/float.ts';
import { climb } from '../../sim/hydro/pass.ts';
import { planeAxes } from '../../sim/hydro/potential.ts';
import { sphereGrid } from '../../sim/numerics/sphere-grid.ts';
import { add, dot, length, scale, subtract, unit, type Vec3 } from '../../sim/numerics/vec3.ts';
import { arbitraryBody, arbitraryPlainBody, arbitraryUp, mirrored, weightOf } from '../support/arbitrary-body.ts';
import { bodyOf } from '../support/float-mesh.ts';

/** Many descents each: a quarter of the usual runs; and a body that fails is not made smaller, which takes hours. */
const RUNS = { numRuns: Math.ceil(Number(process.env.FLOATWRIGHT_RUNS ?? 100) / 4), endOnFailure: true };
const TENTH_DEGREE = Math.PI / 1800;

interface Settled {
  readonly first: Float;
  readonly attitudes: Attitudes;
}

function settle(body: FloatingBody): Settled {
  const first = floatBody(body);
  // laws about lists are for bodies that know how they stand
  fc.pre(first.state === 'floats' && first.gmMin > 0.1 && first.solver.converged);
  return { first, attitudes: findAttitudes(body, body, first) };
}

function upsOf({ first, attitudes }: Settled): readonly Vec3[] {
  return [first.up, ...attitudes.others.map(({ float }) => float.up)];
}

function arbitraryTurns(): fc.Arbitrary<readonly Vec3[]> {
  return fc.array(arbitraryUp(), { minLength: 203, maxLength: 203 });
}

/** The highest energy on a path of great circles, looked at every so many radians until one is over `enough`. */
function highestOn(body: FloatingBody, corners: readonly Vec3[], enough: number, every: number): number {
  let most = Number.NEGATIVE_INFINITY;
  for (const [i, from] of corners.slice(0, -1).entries()) {
    const to = corners[i + 1];
    const angle = 2 * Math.asin(Math.min(1, length(subtract(to, from)) / 2));
    const across = subtract(to, scale(from, dot(from, to)));
    if (angle < 1e-9) continue;
    // from a point to its very opposite there is no one way
    if (length(across) < 1e-6) return Number.POSITIVE_INFINITY;
    const steps = Math.ceil(angle / every);
    for (let k = 0; k <= steps; k++) {
      const turned = (angle * k) / steps;
      most = Math.max(most, energyAt(body, add(scale(from, Math.cos(turned)), scale(unit(across), Math.sin(turned)))));
      if (most > enough) return most;
    }
  }
  return most;
}

function energyAt(body: FloatingBody, up: Vec3): number {
  return draftAt(body, up, ...planeAxes(up), null, 1e-10 * weightOf(body)).potential.value;
}

test('no start of 642 ends anywhere but at a listed rest, and every listed rest is least all round', () => {
  let stray = 0;
  let ended = 0;
  let several = 0;
  fc.assert(
    fc.property(arbitraryBody(), (body) => {
      const settled = settle(body);
      const ups = upsOf(settled);
      if (ups.length > 1) several++;
      for (const start of sphereGrid(3).points) {
        const rest = restFrom(body, start);
        if (!rest.converged) continue;
        ended++;
        // soft rests are run together; to the stiff ones descents come to a tenth of a degree
        const near = Math.min(...ups.map((up) => length(subtract(up, rest.up))));
        if (near > TENTH_DEGREE && !settled.attitudes.others.some(({ float }) => float.neutral)) stray++;
      }
      for (const { float } of settled.attitudes.others) {
        if (float.gmMin < 0.1) continue;
        const here = energyAt(body, float.up);
        const [u, v] = planeAxes(float.up);
        for (let k = 0; k < 12; k++) {
          const towards = add(scale(u, Math.cos((k * Math.PI) / 6)), scale(v, Math.sin((k * Math.PI) / 6)));
          expect(energyAt(body, unit(add(float.up, scale(towards, 0.004))))).toBeGreaterThan(here);
        }
      }
    }),
    RUNS,
  );
  expect(several).toBeGreaterThan(RUNS.numRuns / 12);
  expect(stray / ended).toBeLessThan(1e-3);
});

test('no path of 200 drawn at random undercuts a hump, and the pass it leads over is balanced', () => {
  let unknown = 0;
  let known = 0;
  fc.assert(
    fc.property(arbitraryPlainBody(), arbitraryTurns(), ({ mesh, share }, turns) => {
      // of one density throughout, as a link without lead: most of these rest in more ways than one
      const body = bodyOf(mesh, share);
      const { first, attitudes } = settle(body);
      const home = energyAt(body, first.up);
      for (const { float, hump, over } of attitudes.others) {
        if (float.neutral || float.gmMin < 0.1) continue;
        if (hump === null || over === null) {
          unknown++;
          continue;
        }
        known++;
        expect(climb(body, over)?.moment ?? 1).toBeLessThan(1e-6 * body.mass * 100);
        expect(hump).toBeGreaterThanOrEqual(0);
        for (let path = 0; path < 200; path++) {
          const via = turns.slice(path, path + 1 + (path % 3));
          const corners = [first.up, ...via, float.up];
          const enough = home + hump - 1e-6 * body.mass * 100;
          // long steps may stride over a ridge: what seems to undercut is walked again in steps of a fiftieth of a degree
          if (highestOn(body, corners, enough, 0.05) >= enough) continue;
          expect(highestOn(body, corners, enough, 3e-4)).toBeGreaterThanOrEqual(enough);
        }
      }
    }),
    { ...RUNS, numRuns: Math.ceil(RUNS.numRuns / 2) },
  );
  expect(known).toBeGreaterThan(3);
  expect(unknown).toBeLessThanOrEqual(0.02 * known);
});

test('a body seen in a mirror rests in the mirror images of its rests, over the same humps', () => {
  fc.assert(
    fc.property(arbitraryPlainBody(), (plain) => {
      const one = settle(bodyOf(plain.mesh, plain.share, plain.centre));
      const image = mirrored(plain, 1);
      const other = settle(bodyOf(image.mesh, image.share, image.centre));
      const soft = [one, other].some(({ attitudes }) => attitudes.others.some(({ float }) => float.gmMin < 0.1));
      fc.pre(!soft && length(subtract(flip(one.first.up), other.first.up)) < 1e-5);
      expect(other.attitudes.others).toHaveLength(one.attitudes.others.length);
      for (const { float, hump } of one.attitudes.others) {
        const twin = other.attitudes.others.find(({ float: { up } }) => length(subtract(up, flip(float.up))) < 1e-4);
        expect(twin).toBeDefined();
        if (hump !== null && twin?.hump != null) expect(Math.abs(twin.hump / hump - 1)).toBeLessThan(1e-5);
      }
    }),
    RUNS,
  );
});

function flip([x, y, z]: Vec3): Vec3 {
  return [x, -y, z];
}
