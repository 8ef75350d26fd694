import { afterAll, describe, expect, test } from 'vitest';
import type { Float } from '../../../sim/hydro/float.ts';
import { dot, type Vec3 } from '../../../sim/numerics/vec3.ts';
import { SETUPS, workOut } from './baits.ts';
import { mouthSlack } from './displaced.ts';
import { release, slackOf } from './solids.ts';
import { type Afloat, afloat, drowned, energyAt, weighed } from './still-water.ts';

const TURN = Math.PI / 360;
const DIRECTIONS = 12;
/** Facets of the coarse mesh stand off four times as far as those of the full one. */
const COARSER = 4;
/**
 * A rest that is off by d makes the energy rise as (turn ± d)²: the difference of two opposite gains over their sum is
 * 2 d/turn, so this is a fortieth of a degree. A waterplane that widens towards one end takes a third of it.
 */
const LOPSIDED = 0.1;
/** Half a degree lifts the ends of the longest bait by 1 mm, where the waterplane is no longer quite the same. */
const BENT = 0.005;

/** Up-vectors half a degree off, all the way round, each with the GM that the engine gives for that way. */
function turned({ up, gm, gmLong }: Float): readonly { readonly up: Vec3; readonly gm: number }[] {
  const size = Math.sqrt(1 - up[0] ** 2);
  const along: Vec3 = [(1 - up[0] ** 2) / size, (-up[0] * up[1]) / size, (-up[0] * up[2]) / size];
  const across: Vec3 = [0, up[2] / size, -up[1] / size];
  return Array.from({ length: DIRECTIONS }, (_, k) => {
    const angle = (2 * Math.PI * k) / DIRECTIONS;
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const at = (axis: 0 | 1 | 2) => Math.cos(TURN) * up[axis] + Math.sin(TURN) * (c * across[axis] + s * along[axis]);
    return { up: [at(0), at(1), at(2)], gm: gm * c * c + gmLong * s * s };
  });
}

/** Energy of the body held at an attitude, draft let go: one step of Newton and what the next would still gain. */
function relaxed(body: Afloat, up: Vec3, offset: number, stiffness: number): number {
  const first = energyAt(body, up, offset);
  const second = energyAt(body, up, offset - first.force / stiffness);
  return second.energy - second.force ** 2 / (2 * stiffness);
}

/** By how much the energy rises, each way. */
function rises(body: Afloat, float: Float): readonly number[] {
  if (float.offset === null) {
    // wholly under, weight pulls at one point and water lifts at another
    const [water, weight] = [drowned(body), weighed(body)];
    const lift = (up: Vec3) => body.water * water.volume * (dot(up, water.centre) - dot(up, weight.centre));
    return turned(float).map(({ up }) => lift(float.up) - lift(up));
  }
  const { offset } = float;
  const step = 0.05;
  const stiffness =
    (energyAt(body, float.up, offset + step).force - energyAt(body, float.up, offset - step).force) / (2 * step);
  const least = relaxed(body, float.up, offset, stiffness);
  // the surface turns about the middle of what is wet, moved up to the surface
  const { up: n, buoyancyCentre: b } = float;
  const lift = offset - dot(n, b);
  const hinge: Vec3 = [b[0] + lift * n[0], b[1] + lift * n[1], b[2] + lift * n[2]];
  return turned(float).map(({ up }) => relaxed(body, up, dot(up, hinge), stiffness) - least);
}

const bodies = SETUPS.flatMap(([name, setup]) => {
  const { water, links, assembled } = workOut(name, setup, 'drag');
  return [
    ...links.map((link) => [name, setup, link.spec.name, afloat(water, [link]), link.float, mouthSlack(link)] as const),
    [
      name,
      setup,
      'the whole bait',
      afloat(water, links),
      assembled,
      links.reduce((sum, link) => sum + mouthSlack(link), 0),
    ] as const,
  ];
});

afterAll(() => {
  for (const body of bodies) release(...body[3].blocks);
});

test('some of them float and some lie wholly under', () => {
  expect(bodies.filter((body) => body[4].offset !== null).length).toBeGreaterThan(8);
  expect(bodies.filter((body) => body[4].offset === null).length).toBeGreaterThan(8);
});

describe.each(bodies)('%s, %s, %s', (_name, _setup, _what, body, float, facets) => {
  test('weighs and displaces what the engine says', () => {
    const [water, weight] = [drowned(body), weighed(body)];
    const skins = body.blocks.reduce((sum, block) => sum + block.solid.surfaceArea() * slackOf(block), 0);
    const most = body.water * (skins + COARSER * facets);
    expect(Math.abs(weight.mass - float.mass)).toBeLessThan(1e-12 * float.mass);
    expect(Math.abs(weight.mass - body.water * water.volume - float.netWet)).toBeLessThan(most);
    if (float.offset !== null) expect(Math.abs(energyAt(body, float.up, float.offset).force)).toBeLessThan(most);
  });
});

// a coarse knuckle and what is sawn out of it differ by more than half a degree can tell
describe.each(bodies.filter(([, , , , , facets]) => facets === 0))(
  '%s, %s, %s',
  (_name, _setup, _what, body, float) => {
    test('has the least energy where the engine lays it, and gains as its GM says', () => {
      const gains = rises(body, float);
      const upheld = float.offset === null ? float.mass - float.netWet : float.mass;
      turned(float).forEach(({ gm }, k) => {
        const [gain, opposite] = [gains[k], gains[(k + DIRECTIONS / 2) % DIRECTIONS]];
        expect(gain).toBeGreaterThan(0);
        // of two ways a half turn apart neither is much the steeper
        expect(Math.abs(gain - opposite)).toBeLessThan(LOPSIDED * (gain + opposite));
        const wanted = (upheld * gm * TURN ** 2) / 2;
        expect(Math.abs((gain + opposite) / 2 - wanted)).toBeLessThan(BENT * wanted);
      });
    });
  },
);
