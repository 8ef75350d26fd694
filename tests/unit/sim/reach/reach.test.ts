import { describe, expect, test } from 'vitest';
import { radianFromDegree } from '../../../../sim/units/convert.ts';
import { KNUCKLE_DESIGN, LINKED_DESIGN, makeDesignFile } from '../../../support/make-design.ts';
import { degrees, reachOf, type SquareJoint, squareBait } from '../../../support/square-bait.ts';

/** Degrees to port and to starboard of the one joint of a board 22 mm wide. */
function swingOf(joint: SquareJoint): readonly [number, number] {
  const [{ port, starboard }] = reachOf(squareBait(joint)).joints;
  return [degrees(port.angle), degrees(starboard.angle)];
}

const bevels = (fore_deg: number, aft_deg: number) => ({ kind: 'bevel', fore_deg, aft_deg }) as const;
const atan = (ratio: number) => degrees(Math.atan(ratio));
const tan = (angle: number) => Math.tan(radianFromDegree(angle));

/** Half width of a square-edged board: facets leave it 0.001 mm off. */
const HALF_MM = 11;

/**
 * Degrees between athwartships and a link's boundary at a distance r from the pin, away from the other link: its face
 * stands `off` from the pin there on the centre line and falls back by an angle, its flank is parallel to the bait.
 */
function fromAthwartships(off: number, bevel: number, r: number): number {
  const t = tan(bevel);
  const corner = off + HALF_MM * t;
  if (r >= Math.hypot(corner, HALF_MM)) return degrees(Math.atan2(Math.sqrt(r * r - HALF_MM ** 2), HALF_MM));
  // where off + y tan β meets the circle
  const y = (-off * t + Math.sqrt(r * r * (1 + t * t) - off * off)) / (1 + t * t);
  return degrees(Math.atan2(off + y * t, y));
}

/** The least of the sum of both over all distances at which there is wood on either side. */
function leastSum(fore: readonly [number, number], aft: readonly [number, number]): number {
  const from = Math.max(Math.abs(fore[0]), Math.abs(aft[0]), 8);
  const distances = Array.from({ length: 20_001 }, (_, i) => from + (20 * i) / 20_000);
  return Math.min(...distances.map((r) => fromAthwartships(...fore, r) + fromAthwartships(...aft, r)));
}

describe('faces, pin half way between them', () => {
  test('square ones, 2 mm apart and 22 wide, swing 10.4° a side: 2 atan(g/2b)', () => {
    const [port, starboard] = swingOf({});
    expect(port).toBeCloseTo(2 * atan(1 / HALF_MM), 1);
    expect(port).toBeCloseTo(10.39, 1);
    expect(starboard).toBeCloseTo(port, 9);
  });

  test('bevels of 30° swing 67.5° a side: 2 atan(g/2b + tan β), which is the swing to one side and not to both', () => {
    const [port] = swingOf({ faces: bevels(30, 30) });
    expect(port).toBeCloseTo(2 * atan(1 / HALF_MM + tan(30)), 1);
    expect(port).toBeCloseTo(67.5, 1);
  });

  test('unlike ones swing the least sum of their angles from athwartships at one distance, not that of their corners', () => {
    const [port] = swingOf({ gap: 3, faces: bevels(0, 25) });
    expect(port).toBeCloseTo(leastSum([1.5, 0], [1.5, 25]), 1);
    // the corners are 11.1 and 12.8 mm from the pin, and so never meet
    expect(port).toBeGreaterThan(atan(1.5 / HALF_MM) + atan(1.5 / HALF_MM + tan(25)) + 0.9);
  });

  test('touch at their corners', () => {
    const [{ port, starboard }] = reachOf(squareBait({ faces: bevels(30, 30) })).joints;
    expect(port.touch).toEqual(['face', 'face']);
    // the fore link's port corner, at x = 59 - 11 tan 30°
    expect(port.at?.[0]).toBeCloseTo(59 - HALF_MM * tan(30), 1);
    expect(port.at?.[1]).toBeCloseTo(-HALF_MM, 1);
    expect(starboard.at?.[1]).toBeCloseTo(HALF_MM, 1);
  });

  test('under a coat on everything have a gap of g - 2t/cos β and stand t wider', () => {
    const coats = [{ name: 'epoxy', thickness_mm: 0.3, density_g_cm3: 1.15 }];
    const [port] = swingOf({ gap: 3, faces: bevels(20, 20), coats });
    const gap = 3 - 0.6 / Math.cos(radianFromDegree(20));
    expect(port).toBeCloseTo(2 * atan(gap / (2 * (HALF_MM + 0.3)) + tan(20)), 1);
    const [{ bare }] = reachOf(squareBait({ gap: 3, faces: bevels(20, 20), coats })).joints;
    expect(degrees(bare.port.angle)).toBeCloseTo(2 * atan(3 / (2 * HALF_MM) + tan(20)), 1);
  });

  test('masked from a coat lose only what its thickness adds at the corners', () => {
    const coats = [{ name: 'epoxy', thickness_mm: 0.3, density_g_cm3: 1.15, covers: 'skin' as const }];
    const [port] = swingOf({ gap: 3, faces: bevels(20, 20), coats });
    expect(port).toBeCloseTo(2 * atan(3 / (2 * (HALF_MM + 0.3)) + tan(20)), 1);
  });
});

describe('faces, pin inside the fore link', () => {
  test.each([
    [0, 0],
    [0, 20],
    [10, 20],
    [20, 35],
  ])('of %d° and %d° swing the least over r of the sum of their angles from athwartships', (fore, aft) => {
    const [port] = swingOf({ before: 5, faces: bevels(fore, aft) });
    expect(port).toBeCloseTo(leastSum([-4, fore], [6, aft]), 1);
  });
});

describe('a shank in its slot', () => {
  test('7 mm wide, wire 1.8 mm, pin 4 mm inside the mouth: 31.4° by acos(a/√(m² + e²)) - atan(e/m)', () => {
    // face at 59, pin at 55; bevels steep enough that faces stay clear
    const [{ port }] = reachOf(squareBait({ before: 5, width: 7, faces: bevels(0, 45) })).joints;
    const [a, m, e] = [0.9, 3.5, 4];
    const closed = degrees(Math.acos(a / Math.hypot(m, e))) - atan(e / m);
    expect(closed).toBeCloseTo(31.437, 3);
    expect(degrees(port.angle)).toBeCloseTo(closed, 2);
    expect(port.touch?.toSorted()).toEqual(['eye', 'slot']);
    // at the mouth of the slot, on the level of the eye
    expect(port.at?.[0]).toBeCloseTo(59, 6);
    expect(port.at?.[1]).toBeCloseTo(-3.5, 6);
    expect(port.at?.[2]).toBeCloseTo(0, 1);
  });

  test('has e and m as the coat leaves them where it goes into the slot', () => {
    const coats = [{ name: 'paint', thickness_mm: 0.1, density_g_cm3: 1.2 }];
    const [{ port }] = reachOf(squareBait({ before: 5, width: 7, faces: bevels(0, 45), coats })).joints;
    const [a, m, e] = [0.9, 3.4, 4.1];
    expect(degrees(port.angle)).toBeCloseTo(degrees(Math.acos(a / Math.hypot(m, e))) - atan(e / m), 2);
  });
});

describe('play', () => {
  test('of 0.4 mm either way makes 8 to 12.5° of a swing of 10.4°: 2 atan(g/2b) in the middle, the pin off it', () => {
    const [{ play }] = reachOf(squareBait()).joints;
    expect(play.moves[0]).toBeCloseTo(-0.4, 12);
    expect(play.moves[1]).toBeCloseTo(0.4, 12);
    // the aft face 0.6 or 1.4 from the pin, the fore one still 1
    expect(degrees(play.least.port)).toBeCloseTo(atan(0.6 / HALF_MM) + atan(1 / HALF_MM), 1);
    expect(degrees(play.most.port)).toBeCloseTo(atan(1.4 / HALF_MM) + atan(1 / HALF_MM), 1);
    expect(degrees(play.least.port)).toBeGreaterThan(8);
    expect(degrees(play.most.port)).toBeLessThan(13);
  });

  test('ends where the faces meet: pushed together they do not swing at all', () => {
    const [{ play }] = reachOf(squareBait({ gap: 0.3, bore: 4 })).joints;
    expect(play.moves[0]).toBeCloseTo(-0.3, 9);
    expect(play.least.port).toBeCloseTo(0, 6);
  });

  test('ends where a loop meets the floor of its slot', () => {
    // slot 11 deep from 59: floor at 48; loop 4/2 + 1.8 about the pin at 55 reaches to 51.2, and play is 0.8
    const roomy = reachOf(squareBait({ before: 5, bore: 4 })).joints[0].play.moves;
    expect(roomy[0]).toBeCloseTo(-0.8, 9);
    const file = squareBait({ before: 5, bore: 4 });
    const [joint] = file.joints;
    const tight = { ...joint, slots: (joint.slots ?? []).map((slot) => ({ ...slot, depth_mm: 8 })) };
    // floor at 51: 0.2 before the loop
    expect(reachOf({ ...file, joints: [tight] }).joints[0].play.moves[0]).toBeCloseTo(-0.2, 9);
  });
});

describe('other joints', () => {
  test('a knuckle turns in its hollow until something else stops it', () => {
    const [{ port, pivot }] = reachOf(KNUCKLE_DESIGN).joints;
    expect(pivot).toBe(73);
    expect(port.touch).toContain('eye');
    // mouth of the slot on the knuckle: asin(m/R) - asin(a/R) with m = 3.75, a = 0.75, R = 12
    expect(degrees(port.angle)).toBeCloseTo(degrees(Math.asin(3.75 / 12) - Math.asin(0.75 / 12)), 1);
  });

  test('linked eyes turn about their middle, and that is said to be near enough only', () => {
    const [{ pivot, approximate, play, port }] = reachOf(LINKED_DESIGN).joints;
    expect([pivot, approximate]).toEqual([60, true]);
    // from taut by bore less wire, 1.5, together
    expect(play.moves).toEqual([-1.5, 0]);
    expect(degrees(port.angle)).toBeCloseTo(2 * atan(1 / 10.2), 0);
    expect(play.most.port).toBe(port.angle);
  });

  test('a fin that stands over the joint behind it stops it before the faces do', () => {
    const fin = (x: readonly number[]) => ({
      name: 'tail fin',
      on: 'back' as const,
      edge_mm: [
        [x[0], 12],
        [x[1], 24],
        [x[2], 24],
        [x[3], 12],
      ] as const,
      thickness_mm: 5,
      tab_mm: 0,
      density_g_cm3: 1.2,
    });
    const file = squareBait({ faces: bevels(45, 45), gap: 4 });
    const [free] = reachOf(file).joints;
    const [finned] = reachOf({ ...file, fins: [fin([40, 44, 76, 80])] }).joints;
    // half of 5 mm beside a pin 2 mm before and behind it: 2 atan(2/2.5)
    expect(degrees(finned.port.angle)).toBeLessThanOrEqual(degrees(free.port.angle));
    expect(finned.port.touch).toEqual(['fin', 'fin']);
    expect(degrees(finned.port.angle)).toBeCloseTo(2 * atan(2 / 2.5), 1);
  });

  test('a bait in one piece has none', () => {
    const { joints, whole } = reachOf(makeDesignFile({ pieces: 1 }));
    expect(joints).toEqual([]);
    expect(whole.port).toEqual({ fold: 0, joints: 0, far: null });
    expect(whole.turnsRound).toBe(false);
  });
});

test('the level shown is the one that stops the joint, with both links as they rest', () => {
  const [{ level, port }] = reachOf(squareBait({ before: 5, width: 7, faces: bevels(0, 45) })).joints;
  expect(level.z).toBe(port.at?.[2]);
  expect(level.fore.length).toBeGreaterThan(0);
  // the aft link's wood and the wire of its eye
  expect(level.aft.map(({ surface }) => surface[0])).toContain('eye');
});
