import { describe, expect, test } from 'vitest';
import type { Hole, LeadStock } from '../../../../sim/design/design.ts';
import { buildHull, type Hull, skinHalfWidth, skinHeight } from '../../../../sim/hull/hull.ts';
import { DISC, placeHole, pointHeight } from '../../../../sim/mass/hole.ts';
import type { PlacedHole } from '../../../../sim/mass/placed.ts';
import type { Vec3 } from '../../../../sim/numerics/vec3.ts';
import { plankHull, SHAD } from '../../../support/bodies.ts';

const DEGREE = Math.PI / 180;
const ROD: LeadStock = { name: 'rod', kind: 'slug', diameter: 6, density: 0.0113 };
const SHOT: LeadStock = { name: 'shot in epoxy', kind: 'filled', density: 0.0073 };
const EPOXY = 0.00115;

const HULL = buildHull({
  ...SHAD,
  width: 22,
  fullness: { ...SHAD.fullness, belly: { nose: 0.8, tail: 0.74 } },
  section: { kind: 'oval', above: 2.6, below: 2.2, breadth: 0.55 },
});
/** Its belly at -50, its flanks at 50. */
const SLAB = plankHull(100, 100);

function hole(changes: Partial<Hole> = {}): Hole {
  return {
    name: 'hole',
    from: 'belly',
    x: 40,
    across: 0,
    diameter: 8,
    depth: 12,
    point: 118 * DEGREE,
    lead: null,
    air: null,
    plugDensity: EPOXY,
    done: false,
    ...changes,
  };
}

function inSlab(changes: Partial<Hole> = {}): PlacedHole {
  return placeHole(SLAB, hole({ x: 5e6, ...changes }), 0);
}

/** Wood between skin and shoulder, and its centre, over 60 rings of equal area by 90 turns. */
function denseShaft(hull: Hull, { from, x, across, diameter, depth }: Hole) {
  const skinAt = (a: number, b: number) =>
    from === 'belly' || from === 'back'
      ? (skinHeight(hull, from, x + a, across + b) ?? Number.NaN)
      : (skinHalfWidth(hull, x + a, across + b) ?? Number.NaN) * (from === 'port' ? -1 : 1);
  const inward = from === 'belly' || from === 'port' ? 1 : -1;
  const floor = skinAt(0, 0) + inward * depth;
  const radius = diameter / 2;
  const [rings, turns] = [60, 90];
  let volume = 0;
  const moment = [0, 0, 0];
  for (let i = 0; i < rings; i++) {
    const r = radius * Math.sqrt((i + 0.5) / rings);
    for (let k = 0; k < turns; k++) {
      const [a, b] = [r * Math.cos((2 * Math.PI * k) / turns), r * Math.sin((2 * Math.PI * k) / turns)];
      const skin = skinAt(a, b);
      const piece = (Math.PI * radius * radius * Math.abs(floor - skin)) / (rings * turns);
      const middle = (floor + skin) / 2;
      const at = from === 'belly' || from === 'back' ? [x + a, across + b, middle] : [x + a, middle, across + b];
      volume += piece;
      at.forEach((value, axis) => {
        moment[axis] += piece * value;
      });
    }
  }
  return { volume, centre: moment.map((value) => value / volume) };
}

describe('the points of a disc', () => {
  test('weigh as much as the disc, and have its moments', () => {
    const mean = (of: (a: number, b: number) => number) =>
      DISC.reduce((sum, { a, b, weight }) => sum + weight * of(a, b), 0);
    expect(mean(() => 1)).toBeCloseTo(1, 12);
    expect(mean((a) => a)).toBeCloseTo(0, 12);
    expect(mean((_, b) => b)).toBeCloseTo(0, 12);
    // over a disc of radius 1: mean a² = 1/4, a⁴ = 1/8, a² b² = 1/24, a⁶ = 5/64
    expect(mean((a) => a ** 2)).toBeCloseTo(1 / 4, 12);
    expect(mean((_, b) => b ** 4)).toBeCloseTo(1 / 8, 12);
    expect(mean((a, b) => a * a * b * b)).toBeCloseTo(1 / 24, 12);
    expect(mean((a) => a ** 6)).toBeCloseTo(5 / 64, 12);
  });
});

describe('a hole in a flat place', () => {
  test('with a flat bottom is a cylinder, its middle half way down', () => {
    const placed = inSlab({ point: Math.PI });
    expect(placed.volume).toBeCloseTo(Math.PI * 16 * 12, 6);
    expect(placed.pointDepth).toBe(0);
    expect(placed.mouth[2]).toBeCloseTo(-50, 9);
    expect(placed.inward).toEqual([0, 0, 1]);
    expect(placed.centre[2]).toBeCloseTo(-50 + 6, 6);
  });

  test.each([
    ['belly', [0, 0, 1], [0, -50]],
    ['back', [0, 0, -1], [0, 50]],
    ['port', [0, 1, 0], [-50, 0]],
    ['starboard', [0, -1, 0], [50, 0]],
  ] as const)('from the %s goes straight in', (from, inward, [y, z]) => {
    const placed = inSlab({ from });
    expect(placed.inward.map((part) => part + 0)).toEqual(inward);
    expect(placed.mouth[1]).toBeCloseTo(y, 9);
    expect(placed.mouth[2]).toBeCloseTo(z, 9);
  });

  test.each([60, 90, 118, 135])('by a drill of %d degrees ends in a point of that angle', (degrees) => {
    const height = 4 / Math.tan((degrees / 2) * DEGREE);
    expect(pointHeight(hole({ point: degrees * DEGREE }))).toBeCloseTo(height, 12);
    expect(inSlab({ point: degrees * DEGREE }).volume).toBeCloseTo(Math.PI * 16 * (12 + height / 3), 6);
  });
});

describe.each([
  ['belly', 0, 40],
  ['belly', 3, 100],
  ['back', -2, 25],
  ['port', 4, 60],
  ['starboard', -6, 85],
] as const)('a hole in the curved %s at %d across and %d along', (from, across, x) => {
  const asked = hole({ from, across, x, diameter: 7, depth: 9, point: Math.PI });

  test('takes out the wood between skin and floor, as dense adding up finds it', () => {
    const placed = placeHole(HULL, asked, 0);
    const dense = denseShaft(HULL, asked);
    expect(Math.abs(placed.volume / dense.volume - 1)).toBeLessThan(1e-4);
    for (const axis of [0, 1, 2]) expect(Math.abs(placed.centre[axis] - dense.centre[axis])).toBeLessThan(2e-3);
    // less than a cylinder, by far more than that tolerance: the skin does fall away here
    expect(placed.volume).toBeLessThan((Math.PI / 4) * 49 * 9 * 0.998);
  });
});

describe('a sealed air chamber', () => {
  test('leaves its plug the length it was given, and the rest empty to the tip of the point', () => {
    const placed = inSlab({ air: { plug: 4 } });
    const section = Math.PI * 16;
    expect(placed.plug.volume).toBeCloseTo(section * 4, 6);
    expect(placed.plug.mass).toBeCloseTo(section * 4 * EPOXY, 9);
    expect(placed.air?.volume).toBeCloseTo(placed.volume - section * 4, 6);
    expect(placed.air?.from).toBe(4);
    expect(placed.lead).toBeNull();
  });

  test('and its plug are the wood that went out, on a round belly too', () => {
    const placed = placeHole(HULL, hole({ air: { plug: 5 } }), 0);
    const air = placed.air ?? { volume: 0, centre: placed.mouth };
    expect(air.volume + placed.plug.volume).toBeCloseTo(placed.volume, 9);
    for (const axis of [0, 1, 2]) {
      const moment = air.volume * air.centre[axis] + placed.plug.volume * placed.plug.centre[axis];
      expect(moment / placed.volume).toBeCloseTo(placed.centre[axis], 9);
    }
  });
});

describe('what fills a hole', () => {
  const fillings: readonly (readonly [string, Hole['lead']])[] = [
    ['nothing but the plug', null],
    ['a slug', { stock: ROD, mass: 2 }],
    ['a slug of no weight', { stock: ROD, mass: 0 }],
    ['shot up into the shaft', { stock: SHOT, mass: 3 }],
    ['shot in the point only', { stock: SHOT, mass: 0.2 }],
    ['shot of no weight', { stock: SHOT, mass: 0 }],
  ];

  test.each(fillings)('is the wood that went out: %s', (_, lead) => {
    for (const point of [118 * DEGREE, Math.PI]) {
      for (const from of ['belly', 'back', 'port', 'starboard'] as const) {
        const placed = placeHole(HULL, hole({ lead, point, from }), 0);
        const [wood, metal, plug] = [placed, placed.lead ?? { volume: 0, centre: placed.mouth }, placed.plug];
        expect(metal.volume + plug.volume).toBeCloseTo(wood.volume, 9);
        for (const axis of [0, 1, 2]) {
          const moment = metal.volume * metal.centre[axis] + plug.volume * plug.centre[axis];
          expect(moment / wood.volume).toBeCloseTo(wood.centre[axis], 9);
        }
        expect(plug.volume).toBeGreaterThan(0);
        expect(plug.mass).toBe(plug.volume * EPOXY);
      }
    }
  });

  test('as a slug stands on the shoulder, over a point that the plug fills', () => {
    const placed = inSlab({ lead: { stock: ROD, mass: 2 } });
    const tall = 2 / 0.0113 / (Math.PI * 9);
    expect(placed.lead).toMatchObject({ mass: 2, diameter: 6, to: 12, fillsPoint: false });
    expect(placed.lead?.from).toBeCloseTo(12 - tall, 9);
    expect(placed.lead?.centre[2]).toBeCloseTo(-50 + 12 - tall / 2, 6);
  });

  test('as shot fills the point first and then the shaft, as wide as the hole', () => {
    const placed = inSlab({ lead: { stock: SHOT, mass: 3 } });
    const point = 4 / Math.tan(59 * DEGREE);
    const [volume, cone] = [3 / 0.0073, (Math.PI * 16 * point) / 3];
    const tall = (volume - cone) / (Math.PI * 16);
    expect(placed.lead).toMatchObject({ diameter: 8, fillsPoint: true });
    expect(placed.lead?.from).toBeCloseTo(12 - tall, 9);
    expect(placed.lead?.to).toBeCloseTo(12 + point, 12);
    const centre = ((volume - cone) * (12 - tall / 2) + cone * (12 + point / 4)) / volume;
    expect(placed.lead?.centre[2]).toBeCloseTo(-50 + centre, 6);
  });

  test('as a little shot lies in the tip of the point: half as tall is an eighth of it', () => {
    const point = 4 / Math.tan(59 * DEGREE);
    const eighth = ((Math.PI * 16 * point) / 3 / 8) * 0.0073;
    const placed = inSlab({ lead: { stock: SHOT, mass: eighth } });
    expect(placed.lead?.to).toBeCloseTo(12 + point, 12);
    expect(placed.lead?.from).toBeCloseTo(12 + point / 2, 9);
    expect(placed.lead?.centre[2]).toBeCloseTo(-50 + 12 + point - (3 / 4) * (point / 2), 6);
  });

  test('joins without a jump where the point is just full', () => {
    const full = ((Math.PI * 16 * 4) / Math.tan(59 * DEGREE) / 3) * 0.0073;
    const [under, over] = [full * (1 - 1e-9), full * (1 + 1e-9)].map((mass) => inSlab({ lead: { stock: SHOT, mass } }));
    expect(under.lead?.from).toBeCloseTo(over.lead?.from ?? Number.NaN, 6);
    expect(under.lead?.centre[2]).toBeCloseTo(over.lead?.centre[2] ?? Number.NaN, 6);
  });

  test('as shot on a flat bottom is a disc of the hole’s own width', () => {
    const placed = inSlab({ point: Math.PI, lead: { stock: SHOT, mass: 2 } });
    expect(placed.lead).toMatchObject({ diameter: 8, to: 12, fillsPoint: false });
    expect(placed.lead?.from).toBeCloseTo(12 - 2 / 0.0073 / (Math.PI * 16), 9);
  });
});

test('a hole beside the body takes nothing out, and no number of it is wild', () => {
  const missed: readonly Vec3[] = [
    [40, 30, 0],
    [200, 0, 0],
  ];
  for (const [x, across] of missed) {
    for (const from of ['belly', 'starboard'] as const) {
      const placed = placeHole(HULL, hole({ x, across, from }), 0);
      expect(placed.volume).toBe(0);
      expect(placed.plug.mass).toBe(0);
      expect([...placed.centre, ...placed.plug.centre].every(Number.isFinite)).toBe(true);
    }
  }
});
