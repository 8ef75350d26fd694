import { describe, expect, test } from 'vitest';
import type { FloatingBody } from '../../../sim/hydro/body.ts';
import { floatBody } from '../../../sim/hydro/float.ts';
import { planeAxes, potentialAt } from '../../../sim/hydro/potential.ts';
import type { Vec3 } from '../../../sim/numerics/vec3.ts';
import { leastBallast } from '../../../sim/roll/least-ballast.ts';
import { rollOf } from '../../../sim/roll/roll.ts';
import { treeOf } from '../../support/float-mesh.ts';
import { barMesh } from '../../support/meshes.ts';
import blocks from './case.json' with { type: 'json' };

const { length, width, height, wood_g_cm3, water_g_mm3: water, steel_g_mm3: steel, ballast_over_keel } = blocks.given;
const { tolerance, tolerance_deg, R1, R2, R3, R4, R5, R6, R7, R8 } = blocks.expect;
const trees = [treeOf(barMesh(length, width, height))];
const wood = (wood_g_cm3 / 1000) * length * width * height;
/** The sums of README.md come out to rounding and to what the solver leaves over, degrees. */
const EXACT = 1e-6;

function degrees(radians: number): number {
  return (radians * 180) / Math.PI;
}

/** The block with net ballast near its keel, moved aft by so much, and things hung from it. */
function blockWith(ballast: number, aft = 0, hung: FloatingBody['hung'] = []): FloatingBody {
  const mass = wood + ballast;
  const z = (ballast * (ballast_over_keel - height / 2)) / mass;
  return { trees, waterDensity: water, mass, centre: [(ballast * aft) / mass, 0, z], outside: [], hung };
}

/** Draught and stability of the block held upright, by the formulas of README.md. */
function sums(mass: number, ballast: number) {
  const draught = mass / (water * length * width);
  const BM = width ** 2 / (12 * draught);
  const KG = ((wood * height) / 2 + ballast * ballast_over_keel) / (wood + ballast);
  return { draught, KB: draught / 2, BM, KG, GM: draught / 2 + BM - KG };
}

/** The same from the engine's potential. */
function held(body: FloatingBody) {
  const up: Vec3 = [0, 0, 1];
  const [u, v] = planeAxes(up);
  const draught = body.mass / (water * length * width);
  const potential = potentialAt(body, up, u, v, draught - height / 2);
  const curve = Math.abs(v[1]) > 0.5 ? potential.curveVV : potential.curveUU;
  expect(Math.abs(potential.force)).toBeLessThan(1e-12 * body.mass);
  const KB = potential.buoyancyCentre[2] + height / 2;
  return { draught, KB, GM: curve / body.mass, BM: curve / body.mass - KB + body.centre[2] + height / 2 };
}

describe('a block without ballast (R1, R2)', () => {
  test.each(['draught', 'KB', 'BM', 'GM'] as const)('held upright it has the %s of the sums', (name) => {
    const found = held(blockWith(0))[name];
    expect(Math.abs(found - R1[name])).toBeLessThan(tolerance.value);
    expect(Math.abs(found - sums(wood, 0)[name])).toBeLessThan(1e-9);
  });

  test('lies down on its wide side, starboard, and says that port would do as well', () => {
    const float = floatBody(blockWith(0));
    expect(Math.abs(degrees(float.heel) - 90)).toBeLessThan(EXACT);
    expect(float.mirrored).toBe(true);
    expect(Math.abs((float.draft ?? Number.NaN) - R2.draught)).toBeLessThan(tolerance.value);
    expect(Math.abs(float.gm - R2.GM)).toBeLessThan(tolerance.value);
  });
});

describe('a block with ballast over its keel (R3, R4, R5)', () => {
  test('leans at its angle of loll with 6 g', () => {
    const body = blockWith(R3.ballast);
    const { BM, GM } = sums(R3.mass, R3.ballast);
    const float = floatBody(body);
    expect(float.mass).toBeCloseTo(R3.mass, 12);
    expect(Math.abs(held(body).GM - R3.GM)).toBeLessThan(tolerance.value);
    expect(Math.abs(degrees(float.heel) - R3.heel_deg)).toBeLessThan(tolerance_deg.value);
    expect(Math.abs(degrees(float.heel) - degrees(Math.atan(Math.sqrt((-2 * GM) / BM))))).toBeLessThan(EXACT);
    expect(float.mirrored).toBe(true);
  });

  test('stands upright with 8 g', () => {
    const float = floatBody(blockWith(R4.ballast));
    expect(float.mass).toBeCloseTo(R4.mass, 12);
    expect(float.up).toEqual([0, 0, 1]);
    expect(float.mirrored).toBe(false);
    expect(Math.abs((float.draft ?? Number.NaN) - R4.draught)).toBeLessThan(tolerance.value);
    expect(Math.abs(float.gm - R4.GM)).toBeLessThan(tolerance.value);
  });

  test('stands from 6.44 g on', () => {
    expect(floatBody(blockWith(R5.ballast + 0.005)).mirrored).toBe(false);
    expect(floatBody(blockWith(R5.ballast - 0.005)).mirrored).toBe(true);
  });
});

describe('how the block takes being rolled', () => {
  const rolled = (ballast: number, across = 0) => {
    const body = blockWith(ballast);
    const moved = { ...body, centre: [0, (ballast * across) / body.mass, body.centre[2]] as Vec3 };
    return { roll: rollOf(moved, floatBody(moved)), float: floatBody(moved), mass: body.mass };
  };

  test('is said by the word for its GM: laid over without ballast and with 6 g, steady with 8 g (R1, R3, R4)', () => {
    expect([0, R3.ballast, R4.ballast].map((ballast) => rolled(ballast).roll.steadiness)).toEqual([
      'lays over',
      'lays over',
      'steady',
    ]);
    const { roll } = rolled(R3.ballast);
    expect(Math.abs(roll.gm - R3.GM)).toBeLessThan(tolerance.value);
    expect(Math.abs(degrees(roll.loll ?? 0) - R3.heel_deg)).toBeLessThan(tolerance_deg.value);
    expect(Math.abs(rolled(0).roll.gm - R1.GM)).toBeLessThan(tolerance.value);
  });

  test('takes 6.44 g to be stood up at all, and what makes GM a hundredth of its width to be steady (R5)', () => {
    const at: Vec3 = [0, 0, ballast_over_keel - height / 2];
    const stands = leastBallast(blockWith(0), at, 0) ?? 0;
    expect(Math.abs(stands - R5.ballast)).toBeLessThan(tolerance.value);
    expect(sums(wood + stands, stands).GM).toBeCloseTo(0, 6);
    const steady = leastBallast(blockWith(0), at, width / 100) ?? 0;
    expect(sums(wood + steady, steady).GM).toBeCloseTo(width / 100, 6);
  });

  test('with its 8 g 3 mm off the middle leans until the wall-sided arm meets theirs', () => {
    const { float, mass } = rolled(R4.ballast, 3);
    const { BM, GM } = sums(mass, R4.ballast);
    const tan = Math.tan(float.heel);
    // arms (GM + BM/2 tan²) sin and 8·3/26 cos
    expect(GM * tan + (BM / 2) * tan ** 3).toBeCloseTo((R4.ballast * 3) / mass, 8);
    expect(10 * tan).toBeLessThan(height - mass / (water * length * width));
  });
});

describe('a hook at the keel of the 8 g block (R6, R7)', () => {
  const hook = { mass: R6.hook, volume: R6.hook / steel, eye: [-R6.forward, 0, -height / 2] as Vec3, hang: 25 };
  const counts = R6.hook - water * hook.volume;

  test('counts 1.75 g and pulls the nose down by 3.9 degrees', () => {
    const float = floatBody(blockWith(R4.ballast, 0, [hook]));
    expect(Math.abs(counts - R6.counts)).toBeLessThan(tolerance.value);
    expect(Math.abs(degrees(float.trim) - R6.trim_deg)).toBeLessThan(tolerance_deg.value);
    const weight = R4.mass + counts;
    const draught = weight / (water * length * width);
    const BM = length ** 2 / (12 * draught);
    const KG = ((wood * height) / 2 + R4.ballast * ballast_over_keel) / weight;
    const tan = Math.tan(float.trim);
    expect((draught / 2 + BM - KG) * tan + (BM / 2) * tan ** 3).toBeCloseTo((counts * R6.forward) / weight, 9);
  });

  test('is balanced by moving the 8 g aft by 3.3 mm', () => {
    const aft = (counts * R6.forward) / R4.ballast;
    expect(Math.abs(aft - R7.aft)).toBeLessThan(R7.tolerance);
    expect(Math.abs(degrees(floatBody(blockWith(R4.ballast, aft, [hook])).trim))).toBeLessThan(EXACT);
  });
});

describe('a block wholly under water (R8)', () => {
  test.each(R8.over.map((over, i) => ({ over, trim: R8.trim_deg[i] })))(
    'with B $over mm over G hangs $trim degrees nose-down',
    ({ over, trim }) => {
      const mass = water * length * width * height;
      const centre: Vec3 = [-R8.ahead, 0, -over];
      const float = floatBody({ trees, waterDensity: water, mass, centre, outside: [], hung: [] });
      expect(float.state).toBe('hangs');
      expect(Math.abs(degrees(float.trim) - trim)).toBeLessThan(tolerance_deg.value);
      expect(float.trim).toBeCloseTo(Math.atan(R8.ahead / over), 12);
      expect(float.heel).toBeCloseTo(0, 12);
      expect(float.gmMin).toBeCloseTo(Math.hypot(R8.ahead, over), 12);
    },
  );
});
