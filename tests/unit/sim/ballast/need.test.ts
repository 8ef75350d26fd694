import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Need, needOf, placeOf } from '../../../../sim/ballast/need.ts';
import type { Aim } from '../../../../sim/ballast/target.ts';
import type { TargetEntry } from '../../../../sim/design/file.ts';
import { upFrom } from '../../../../sim/frames.ts';
import { bodyOf } from '../../../../sim/hydro/bait-body.ts';
import { type FloatingBody, totalsOf } from '../../../../sim/hydro/body.ts';
import { type Float, floatBody } from '../../../../sim/hydro/float.ts';
import { measureReach, measureVolume } from '../../../../sim/mesh/measure.ts';
import { add, dot, length, scale, subtract, type Vec3 } from '../../../../sim/numerics/vec3.ts';
import { arbitraryMesh, arbitraryPlainBody, number } from '../../../support/arbitrary-body.ts';
import { bodyOf as bodyOfMesh, treeOf, WATER } from '../../../support/float-mesh.ts';
import { makeDesignFile } from '../../../support/make-design.ts';
import { barMesh } from '../../../support/meshes.ts';
import { ballastPartsOf } from '../../../support/planned-bait.ts';
import { answersOf } from '../../../support/worked-bait.ts';

const DEGREE = Math.PI / 180;

/** The body with a point of this mass put in. */
function weighted(body: FloatingBody, mass: number, at: Vec3): FloatingBody {
  const whole = body.mass + mass;
  return { ...body, mass: whole, centre: scale(add(scale(body.centre, body.mass), scale(at, mass)), 1 / whole) };
}

/** The place of the ballast, so far under the line of `about` that it stands firmly; plumb under it no moment changes. */
function lowPlaceOf(need: Need, mass: number): Vec3 {
  const place = placeOf(need);
  if (!place) throw new Error('there is nothing to add');
  const lacks = Math.max(0, -need.stiffness.trim, -need.stiffness.heel);
  return subtract(place, scale(need.up, (lacks + 30 * mass) / need.net));
}

/** The body ballasted as needed, let go. */
function ballasted(body: FloatingBody, aim: Aim): { readonly need: Need; readonly float: Float } {
  const need = needOf(body, aim);
  return { need, float: floatBody(weighted(body, need.net, lowPlaceOf(need, body.mass))) };
}

/** Light bodies with their weight off their middle, a ball outside and something hung. */
function lightBody(): fc.Arbitrary<FloatingBody> {
  return fc
    .record({ plain: arbitraryPlainBody(), share: number(0.1, 0.4), heavy: number(0.2, 3), hang: number(2, 30) })
    .map(({ plain: { mesh, centre }, share, heavy, hang }) => {
      const { centre: middle } = measureVolume(mesh);
      return bodyOfMesh(mesh, share, centre, {
        outside: [{ volume: 40, at: add(middle, [5, 3, 0]) }],
        hung: [{ mass: heavy, volume: heavy / 0.00785, eye: add(middle, [-8, 0, -4]), hang }],
      });
    });
}

describe('a body given the ballast that it needs, where it needs it', () => {
  test('rests at the waterline that was aimed for, level or trimmed', () => {
    let tried = 0;
    fc.assert(
      fc.property(lightBody(), number(-12, 12), number(0.35, 0.8), fc.boolean(), (body, trim, deep, level) => {
        const up = upFrom(level ? 0 : trim * DEGREE, 0);
        const [low, high] = reachOf(body, up);
        const aim: Aim = { up, offset: low + deep * (high - low), netWet: null };
        const { net } = needOf(body, aim);
        const { volume, mass } = totalsOf(body);
        // what shows so little counts as hanging
        fc.pre(net > 0.05 * body.mass && WATER * volume - mass - net > 0.2);
        tried++;
        const { float } = ballasted(body, aim);
        expect(length(subtract(float.up, up))).toBeLessThan(1e-6);
        expect(Math.abs((float.offset ?? Number.NaN) - (aim.offset ?? 0))).toBeLessThan(1e-6);
      }),
      { numRuns: 150 },
    );
    expect(tried).toBeGreaterThan(100);
  });

  test.each([
    ['with so much reserve as was aimed for', [-0.4, -0.02]],
    ['hanging', [0, 0]],
    ['so heavy in water as was aimed for', [0.001, 0.3]],
  ] as const)('rests %s, at the trim that was aimed for', (_, shares) => {
    fc.assert(
      fc.property(lightBody(), number(-12, 12), number(shares[0], shares[1]), (body, trim, share) => {
        const { volume, mass } = totalsOf(body);
        // a share of what can be added: none is too heavy without ballast
        const netWet = share * (WATER * volume - mass);
        const up = upFrom(trim * DEGREE, 0);
        const { need, float } = ballasted(body, { up, offset: null, netWet });
        expect(need.net).toBeCloseTo(WATER * volume + netWet - mass, 7);
        expect(float.netWet).toBeCloseTo(netWet, 6);
        expect(length(subtract(float.up, up))).toBeLessThan(1e-6);
      }),
      { numRuns: 60 },
    );
  });

  test('put h higher loses its mass times h of what rights it', () => {
    fc.assert(
      fc.property(arbitraryMesh(), number(0.1, 0.4), number(0, 20), (mesh, share, low) => {
        const body = bodyOfMesh(mesh, share);
        const [from, to] = reachOf(body, [0, 0, 1]);
        const aim: Aim = { up: [0, 0, 1], offset: from + 0.6 * (to - from), netWet: null };
        const need = needOf(body, aim);
        fc.pre(need.net > 0.05 * body.mass && body.mass * (1 / share - 1) - need.net > 0.2);
        const at = subtract(lowPlaceOf(need, body.mass), [0, 0, low]);
        const { gm, gmLong, mass } = floatBody(weighted(body, need.net, at));
        const rise = need.net * (at[2] - need.about[2]);
        expect((gm * mass) / (need.stiffness.heel - rise)).toBeCloseTo(1, 6);
        expect((gmLong * mass) / (need.stiffness.trim - rise)).toBeCloseTo(1, 6);
      }),
      { numRuns: 60 },
    );
  });
});

/** Lowest and highest point of the mesh of a body. */
function reachOf({ trees: [{ points, origin }] }: FloatingBody, up: Vec3): readonly [number, number] {
  const [low, high] = measureReach(points, up);
  const middle = dot(origin, up);
  return [middle + low, middle + high];
}

describe('every link of a bait with the ballast that it needs', () => {
  test.each<readonly [string, TargetEntry]>([
    ['proud', { proud_mm: 3 }],
    ['proud and nose-down', { proud_mm: 4, trim_deg: 6 }],
    ['at a waterline, tail-down', { waterline_z_mm: 8, trim_deg: -5 }],
    ['with reserve', { reserve_g: 3 }],
    ['with a tenth of its weight as reserve', { reserve_percent: 10, trim_deg: 2 }],
    ['heavier than water', { net_wet_g: 1.5, trim_deg: 3 }],
  ])('lies as was aimed for: %s', (_, target) => {
    const plain = makeDesignFile();
    const answers = answersOf({ ...plain, setups: [{ ...plain.setups[0], target }] }, { detail: 'drag' });
    const { links, water } = ballastPartsOf(answers);
    links.forEach(({ trees, hung, aim }, i) => {
      const body = bodyOf([trees], [answers.links[i].ledger], hung, water);
      const { float } = ballasted(body, aim);
      expect(length(subtract(float.up, aim.up))).toBeLessThan(1e-6);
      if (aim.offset !== null) {
        expect(float.offset).toBeCloseTo(aim.offset, 6);
        // by the water in whichever link the highest point of the bait is
        const top = Math.max(...links.map(({ wetted }) => measureReach(wetted.mesh.positions, aim.up)[1]));
        if ('proud_mm' in target) expect(top - (float.offset ?? Number.NaN)).toBeCloseTo(Number(target.proud_mm), 6);
      } else expect(float.netWet).toBeCloseTo(aim.netWet ?? Number.NaN, 6);
    });
    if ('reserve_percent' in target) {
      let [mass, lifted] = [0, 0];
      links.forEach(({ trees, hung, aim }, i) => {
        const body = bodyOf([trees], [answers.links[i].ledger], hung, water);
        const totals = totalsOf(body);
        mass += needOf(body, aim).net + totals.mass;
        lifted += water.density * totals.volume;
      });
      expect(mass - lifted).toBeCloseTo(-0.1 * mass, 6);
    }
  });
});

// closed form of a box with point masses, worked out in tests/reference/ballast-blocks/README.md
describe('a block of 60 by 20 by 30 mm, half as dense as water', () => {
  const [LONG, WIDE, HIGH] = [60, 20, 30];
  const RHO = 0.000998206746;
  const wood = 0.0005 * LONG * WIDE * HIGH;
  const KEEL = -HIGH / 2;
  const block: FloatingBody = {
    trees: [treeOf(barMesh(LONG, WIDE, HIGH))],
    waterDensity: RHO,
    mass: wood,
    centre: [0, 0, 0],
    outside: [],
    hung: [],
  };
  const LEVEL: Vec3 = [0, 0, 1];

  test('is stood up by 6.44 g at 3 mm over its keel and by no less (R5)', () => {
    /** What rights it when it has so much there. */
    const rights = (mass: number) => {
      const aim: Aim = { up: LEVEL, offset: null, netWet: wood + mass - RHO * LONG * WIDE * HIGH };
      const need = needOf(block, aim);
      expect(need.net).toBeCloseTo(mass, 12);
      return need.stiffness.heel - mass * (KEEL + 3 - need.about[2]);
    };
    let [low, high] = [1, 10];
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (rights(middle) > 0) high = middle;
      else low = middle;
    }
    expect(Math.abs(low - 6.44)).toBeLessThan(0.005);
  });

  test.each([0, 2, 6.4, 8, 11])('with %d g to add is righted by (KB + BM - KG) times its weight', (mass) => {
    const weight = wood + mass;
    const draught = weight / (RHO * LONG * WIDE);
    const need = needOf(block, { up: LEVEL, offset: draught - HIGH / 2, netWet: null });
    expect(need.net).toBeCloseTo(mass, 9);
    // with the ballast at the surface, where `about` is
    expect(need.about[2]).toBeCloseTo(draught - HIGH / 2, 9);
    const KG = ((wood * HIGH) / 2 + mass * draught) / weight;
    const GM = draught / 2 + WIDE ** 2 / (12 * draught) - KG;
    const long = draught / 2 + LONG ** 2 / (12 * draught) - KG;
    expect(need.stiffness.heel).toBeCloseTo(weight * GM, 8);
    expect(need.stiffness.trim).toBeCloseTo(weight * long, 8);
  });

  test('with a hook of 2 g at the keel 15 mm forward needs 8 g 3.3 mm aft (R7)', () => {
    const hook = { mass: 2, volume: 2 / 0.00785, eye: [-15, 0, KEEL] as Vec3, hang: 25 };
    const counts = hook.mass - RHO * hook.volume;
    const offset = (wood + counts + 8) / (RHO * LONG * WIDE) - HIGH / 2;
    const need = needOf({ ...block, hung: [hook] }, { up: LEVEL, offset, netWet: null });
    expect(need.net).toBeCloseTo(8, 9);
    const place = placeOf(need) ?? [Number.NaN, 0, 0];
    expect(place[0]).toBeCloseTo((counts * 15) / 8, 9);
    expect(Math.abs(place[0] - 3.3)).toBeLessThan(0.05);
    expect(place[1]).toBeCloseTo(0, 12);
  });

  test('wholly under, with ballast that it needs, has B plumb over G', () => {
    const heavy: FloatingBody = { ...block, centre: [2, 1, 0] };
    const need = needOf(heavy, { up: LEVEL, offset: null, netWet: 1 });
    const whole = RHO * LONG * WIDE * HIGH + 1;
    expect(need.net).toBeCloseTo(whole - wood, 12);
    expect(need.about).toEqual([0, 0, 0]);
    const place = placeOf(need) ?? [Number.NaN, 0, 0];
    expect(place[0]).toBeCloseTo((-2 * wood) / (whole - wood), 12);
    expect(place[1]).toBeCloseTo((-1 * wood) / (whole - wood), 12);
    expect(dot(place, LEVEL)).toBe(0);
  });

  test('that weighs what it should has no place for ballast', () => {
    const need = needOf(block, { up: LEVEL, offset: wood / (RHO * LONG * WIDE) - HIGH / 2, netWet: null });
    expect(Math.abs(need.net)).toBeLessThan(1e-12);
    expect(placeOf(need)).toBeNull();
  });
});
