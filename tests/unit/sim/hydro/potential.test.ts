import { describe, expect, test } from 'vitest';
import type { FloatingBody } from '../../../../sim/hydro/body.ts';
import { type Potential, planeAxes, potentialAt } from '../../../../sim/hydro/potential.ts';
import { add, cross, dot, length, scale, subtract, unit, type Vec3 } from '../../../../sim/numerics/vec3.ts';
import { clipByHand } from '../../../support/clip-by-hand.ts';
import { bodyOf, WATER } from '../../../support/float-mesh.ts';
import { barMesh, ellipsoidMesh, mapMesh } from '../../../support/meshes.ts';

const mesh = mapMesh(ellipsoidMesh([40, 9, 17], 12, 17), ([x, y, z]) => [x + 70, y, z + 2]);
const plain = bodyOf(mesh, 0.6, [68, 0.7, -3]);
/** Balls cut by the surface, wet and dry; things hanging clear, half in and under. */
const dressed: FloatingBody = {
  ...plain,
  outside: [
    { volume: 200, at: [40, 5, 1] },
    { volume: 90, at: [80, 0, -30] },
    { volume: 60, at: [60, 0, 40] },
    { volume: 0, at: [60, 0, 0] },
  ],
  hung: [
    { mass: 2, volume: 250, eye: [50, 0, 8], hang: 25 },
    { mass: 1.5, volume: 190, eye: [90, 0, -20], hang: 30 },
    { mass: 1, volume: 120, eye: [100, 2, 60], hang: 10 },
    { mass: 0.5, volume: 60, eye: [75, -3, -12], hang: 0 },
  ],
};

/** Attitudes with the surface through the body, its balls and its hooks. */
const PLACES = [
  { name: 'upright', n: [0, 0, 1] as Vec3, d: 3 },
  { name: 'heeled', n: unit([0.1, -0.4, 1]), d: 8 },
  { name: 'on its side', n: unit([0.05, -1, 0.1]), d: 5 },
  { name: 'nose down', n: unit([0.8, 0.1, 0.5]), d: 55 },
  { name: 'belly-up', n: unit([-0.1, 0.2, -1]), d: -9 },
];

/** n turned about the pivot by an angle towards e: the plane keeps its distance from the pivot. */
function turned(body: FloatingBody, n: Vec3, d: number, pivot: Vec3, e: Vec3, angle: number) {
  const next = add(scale(n, Math.cos(angle)), scale(e, Math.sin(angle)));
  const offset = d - dot(n, pivot) + dot(next, pivot);
  const axes = planeAxes(next);
  const forward = subtract(scale(e, Math.cos(angle)), scale(n, Math.sin(angle)));
  return { potential: potentialAt(body, next, ...axes, offset), axes, forward };
}

/** Slope along the turn, about a pivot that is not the potential's own centre. */
function slopeAlong({ potential, axes, forward }: ReturnType<typeof turned>, pivot: Vec3): number {
  const own = potential.slopeU * dot(axes[0], forward) + potential.slopeV * dot(axes[1], forward);
  return own - potential.force * dot(subtract(potential.centre, pivot), forward);
}

describe.each([
  ['a bare body', plain],
  ['a body with balls and hung items', dressed],
] as const)('the potential of %s', (_, body) => {
  describe.each(PLACES)('$name', ({ n, d }) => {
    const [u, v] = planeAxes(n);
    const here = potentialAt(body, n, u, v, d);
    const weight = body.hung.reduce((sum, item) => sum + item.mass, body.mass);
    /** g mm: what slopes and curvatures are measured by. */
    const scaleOf = weight * 50;

    test('is that of the pressure on the wet part and of the weight', () => {
      // a bare body: m (n·G - d) + ρ ∫ (d - n·p) dV
      const wet = clipByHand(mesh, n, u, v, d);
      const bare = potentialAt(plain, n, u, v, d);
      const wanted = plain.mass * (dot(n, plain.centre) - d) + WATER * (d * wet.volume - dot(n, wet.moment));
      expect(Math.abs(bare.value - wanted)).toBeLessThan(1e-11 * scaleOf);
    });

    test('has the force as its slope over the offset, and the waterplane as its curvature', () => {
      const step = 1e-4;
      const [less, more] = [-step, step].map((by) => potentialAt(body, n, u, v, d + by));
      // steps leave the square of 1e-4 and rounding over 1e-4
      expect(Math.abs((more.value - less.value) / (2 * step) - here.force)).toBeLessThan(1e-8 * weight);
      expect(Math.abs((more.force - less.force) / (2 * step) - here.curveDD)).toBeLessThan(1e-6 * weight);
      expect(here.curveDD).toBeGreaterThan(0);
    });

    test.each([
      ['u', u, here.slopeU, here.curveUU],
      ['v', v, here.slopeV, here.curveVV],
      [
        'both',
        unit(add(u, v)),
        (here.slopeU + here.slopeV) / Math.SQRT2,
        (here.curveUU + here.curveVV) / 2 + here.curveUV,
      ],
    ] as const)('has its slope and curvature over a turn along %s', (_way, e, slope, curve) => {
      const step = 1e-5;
      const [less, more] = [-step, step].map((by) => turned(body, n, d, here.centre, e, by));
      const value = (more.potential.value - less.potential.value) / (2 * step);
      expect(Math.abs(value - slope)).toBeLessThan(1e-8 * scaleOf);
      const change = (slopeAlong(more, here.centre) - slopeAlong(less, here.centre)) / (2 * step);
      expect(Math.abs(change - curve)).toBeLessThan(1e-6 * scaleOf);
    });

    test('turns about a point of the surface where draft and attitude do not mix', () => {
      expect(dot(n, here.centre)).toBeCloseTo(d, 9);
      const step = 1e-5;
      for (const e of [u, v]) {
        const [less, more] = [-step, step].map((by) => turned(body, n, d, here.centre, e, by).potential);
        expect(Math.abs((more.force - less.force) / (2 * step))).toBeLessThan(1e-6 * scaleOf);
      }
    });
  });
});

test('the axes of a plane are square, of length 1 and right-handed, along the axes too', () => {
  const ways: readonly Vec3[] = [
    [1, 0, 0],
    [-1, 0, 0],
    [0, 1, 0],
    [0, -1, 0],
    [0, 0, 1],
    [0, 0, -1],
    unit([0.9, 0.436, 0]),
    unit([0.90001, -0.436, 1e-9]),
    unit([1, 1, 1]),
  ];
  for (const n of ways) {
    const [u, v] = planeAxes(n);
    for (const axis of [u, v]) expect(length(axis)).toBeCloseTo(1, 14);
    expect(length(subtract(cross(u, v), n))).toBeLessThan(1e-14);
  }
});

test('a pass adds over the meshes of a body', () => {
  const other = mapMesh(barMesh(30, 8, 12), ([x, y, z]) => [x, y, z - 3]);
  const n = unit([0.2, -0.3, 1]);
  const axes = planeAxes(n);
  const both: FloatingBody = { ...plain, trees: [...plain.trees, ...bodyOf(other, 1).trees] };
  const alone = potentialAt(plain, n, ...axes, 4);
  const beside = potentialAt({ ...plain, trees: bodyOf(other, 1).trees }, n, ...axes, 4);
  const together = potentialAt(both, n, ...axes, 4);
  const sum = (name: 'displaced' | 'area') => alone[name] + beside[name];
  expect(together.displaced).toBeCloseTo(sum('displaced'), 8);
  expect(together.area).toBeCloseTo(sum('area'), 8);
});

describe('outside parts and hung items', () => {
  const up: Vec3 = [0, 0, 1];
  const at = (more: Partial<FloatingBody>, d: number): Potential =>
    potentialAt({ ...plain, trees: [], ...more }, up, ...planeAxes(up), d);

  test('a ball is wet by its cap: half at its middle, none below, all above', () => {
    const volume = (4 / 3) * Math.PI * 5 ** 3;
    const ball = { outside: [{ volume, at: [0, 0, 20] as Vec3 }] };
    expect(at(ball, 20).displaced).toBeCloseTo(volume / 2, 9);
    expect(at(ball, 14.9).displaced).toBe(0);
    expect(at(ball, 25.1).displaced).toBeCloseTo(volume, 9);
    // π h² (3 r - h)/3 with h = 2, r = 5
    expect(at(ball, 17).displaced).toBeCloseTo((Math.PI * 4 * 13) / 3, 9);
    expect(at(ball, 17).area).toBeCloseTo(Math.PI * (25 - 9), 9);
  });

  test('a hung item is wet by the share of its length under water', () => {
    const item = { hung: [{ mass: 2, volume: 100, eye: [0, 0, 20] as Vec3, hang: 10 }] };
    expect(at(item, 9).hungDisplaced).toBe(0);
    expect(at(item, 13).hungDisplaced).toBeCloseTo(30, 12);
    expect(at(item, 20).hungDisplaced).toBe(100);
    expect(at(item, 99).hungDisplaced).toBe(100);
    expect(at(item, 13).displaced).toBe(0);
  });

  test('one of no length is wet all at once', () => {
    const item = { hung: [{ mass: 2, volume: 100, eye: [0, 0, 20] as Vec3, hang: 0 }] };
    expect(at(item, 19.999).hungDisplaced).toBe(0);
    expect(at(item, 20.001).hungDisplaced).toBe(100);
  });

  test('with nothing in the water all is finite', () => {
    for (const part of Object.values(at({}, 0)).flat()) expect(Number.isFinite(part)).toBe(true);
  });
});
