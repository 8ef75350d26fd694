import { expect, test } from 'vitest';
import { type Hull, heightAt, stationOf } from '../../../sim/hull/hull.ts';
import type { PlacedHole } from '../../../sim/mass/placed.ts';
import { wallOf } from '../../../sim/mass/wall.ts';
import type { Vec3 } from '../../../sim/numerics/vec3.ts';
import { tubeMesh } from '../../support/meshes.ts';
import { type Planned, plannedOf } from '../../support/planned-bait.ts';
import { designOf, SETUPS } from './baits.ts';
import { type Block, blockOf, boxAround, common, drillBlock, gapBetween, measure, release } from './solids.ts';

/** How far the bare body is drawn to either side of a hole (mm): further than any wall is thick. */
const REACH = 30;
/** Between the rings of points on the skin, and round a ring: what lies between them is off by less than 0.01 mm. */
const STEP = 0.5;
const ROUND = 64;
/** The tips are no rings. */
const TIP = 0.02;

/** The bare body round a station, uncut by joints, from the hull's own functions. */
function bareBody(hull: Hull, x: number): Block {
  const from = Math.max(TIP, x - REACH);
  const to = Math.min(hull.length - TIP, x + REACH);
  const count = Math.ceil((to - from) / STEP);
  const rings = Array.from({ length: count + 1 }, (_, i) => {
    const at = from + ((to - from) * i) / count;
    const station = stationOf(hull, at);
    // close together where the flank is steep
    const ys = Array.from(
      { length: ROUND + 1 },
      (_step, k) => station.halfWidth * Math.sin((Math.PI / 2) * 0.9995 * (2 * (k / ROUND) - 1)),
    );
    const face = (on: 'back' | 'belly') =>
      ys.map((y): Vec3 => [at, y, heightAt(hull, station, on, y) ?? station.broadest]);
    return [...face('belly'), ...face('back').toReversed()];
  });
  return blockOf(tubeMesh(rings), ['skin'], [x, 0, 0]);
}

/** All that is not body round a hole, in front of a tip and behind it too. */
function outsideOf({ length }: Hull, body: Block, x: number): Block {
  const reach = REACH - 1;
  return boxAround(body, [x - reach, -length, -length], [x + reach, length, length]);
}

interface Gap {
  /** From lead as wide as the hole, or from the very tip of the drill's point, to the outside. */
  readonly wall: number;
  /** The same from all of the point. */
  readonly withCone: number;
}

function gapOf(hole: PlacedHole, outside: Block, most: number): Gap {
  const { diameter, depth, pointDepth, lead } = hole;
  const radius = diameter / 2;
  const from = Math.min(lead?.from ?? depth, depth - 0.001);
  const apex = depth + pointDepth;
  const shaft = drillBlock(hole, radius, [from, depth], 0, outside.origin);
  const tip = drillBlock(hole, 0.001, [apex - 0.001, apex], 0, outside.origin);
  const whole = drillBlock(hole, radius, [from, depth], pointDepth, outside.origin);
  const wall = Math.min(gapBetween(shaft, outside, most), gapBetween(tip, outside, most));
  const withCone = gapBetween(whole, outside, most);
  release(shaft, tip, whole);
  return { wall, withCone };
}

/** Every demo bait as it is planned in each of its setups. */
const baits = [...new Set(SETUPS.map(([name]) => name))].map((name) => {
  const setups = SETUPS.filter(([bait]) => bait === name);
  return [name, setups.map(([, setup]) => [setup, plannedOf(designOf(name), { setup })] as const)] as const;
});

interface NamedHole {
  readonly name: string;
  readonly hole: PlacedHole;
}

/** Holes as they are, and those of the plan that are new. */
function holesOf(setup: string, { answers, settled }: Planned): readonly NamedHole[] {
  const own = answers.bait.hardware.holes;
  const fresh = settled.holes.filter(({ hole }) => own.every((other) => other.hole !== hole.hole));
  return [
    ...own.map((hole) => ({ name: `${hole.name} as it is in ${setup}`, hole })),
    ...fresh.map(({ hole }) => ({ name: `${hole.name} as planned in ${setup}`, hole })),
  ];
}

/** The holes of all setups of a bait by where they stand along it; one that several setups have counts once. */
function holesAlong(setups: (typeof baits)[number][1]): ReadonlyMap<number, readonly NamedHole[]> {
  const seen = new Set<string>();
  const along = new Map<number, NamedHole[]>();
  for (const one of setups.flatMap(([setup, planned]) => holesOf(setup, planned))) {
    const { name: _, ...shape } = one.hole.hole;
    const key = JSON.stringify(shape);
    if (seen.has(key)) continue;
    seen.add(key);
    along.set(shape.x, [...(along.get(shape.x) ?? []), one]);
  }
  return along;
}

test('there are holes to drill in every setup of every demo bait, and planned ones too', () => {
  const plans = baits.flatMap(([, setups]) => setups);
  expect(plans).toHaveLength(SETUPS.length);
  for (const [setup, planned] of plans) expect(holesOf(setup, planned).length).toBeGreaterThan(1);
  const holes = baits.flatMap(([, setups]) => [...holesAlong(setups).values()].flat());
  expect(holes.length).toBeGreaterThan(6 * baits.length);
  expect(holes.filter(({ name }) => name.includes('as planned')).length).toBeGreaterThan(2 * baits.length);
});

test.each(baits)(
  'each hole of %s takes as much wood as a drill does and leaves the wall that is told',
  (_name, setups) => {
    const { hull } = setups[0][1].parts;
    for (const [x, holes] of holesAlong(setups)) {
      const body = bareBody(hull, x);
      const outside = outsideOf(hull, body, x);
      for (const { name, hole } of holes) {
        const drill = drillBlock(hole, hole.diameter / 2, [-REACH, hole.depth], hole.pointDepth, body.origin);
        const wood = common(body, drill);
        const off = measure(wood).volume / hole.volume - 1;
        const { thickness } = wallOf(hull, hole);
        const gap = gapOf(hole, outside, thickness + 0.5);
        // chords of the body and of the drill, found: 0.05 % of the wood and 0.008 mm of the wall
        expect([name, Math.abs(off) < 0.001]).toEqual([name, true]);
        expect([name, Math.abs(gap.wall - thickness) < 0.02]).toEqual([name, true]);
        // what the flank of the point takes besides is no more than the looks for a place may be off
        expect([name, gap.withCone > thickness - 0.05]).toEqual([name, true]);
        release(drill, wood);
      }
      release(body, outside);
    }
  },
);
