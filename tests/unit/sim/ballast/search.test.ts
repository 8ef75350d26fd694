import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Filling } from '../../../../sim/ballast/drilling.ts';
import type { Need } from '../../../../sim/ballast/need.ts';
import type { Lane, Offer, Station } from '../../../../sim/ballast/room.ts';
import { type Pattern, searchHoles } from '../../../../sim/ballast/search.ts';
import type { Drill, LeadStock } from '../../../../sim/design/design.ts';
import { upFrom, worldAxes } from '../../../../sim/frames.ts';
import { buildHull } from '../../../../sim/hull/hull.ts';
import { holeMouth } from '../../../../sim/mass/hole.ts';
import { dot, subtract, type Vec3 } from '../../../../sim/numerics/vec3.ts';
import { number } from '../../../support/arbitrary-body.ts';
import { SHAD } from '../../../support/bodies.ts';
import { bestByTrying, drilledAt, type Found, type Put } from '../../../support/every-plan.ts';

const HULL = buildHull(SHAD);
const DEGREE = Math.PI / 180;
const FLAT: Drill = { name: '4 mm, flat', diameter: 4, point: Math.PI };
const TWIST: Drill = { name: '4.2 mm', diameter: 4.2, point: 118 * DEGREE };
const ROD: LeadStock = { name: 'rod', kind: 'slug', diameter: 4, density: 0.0113 };
const SHOT: LeadStock = { name: 'shot in epoxy', kind: 'filled', density: 0.0073 };

type Ends = readonly (readonly [x: number, leadFrom: number, depthTo: number])[];

/** A lane in the shad: real mouths, but walls at our own choice. */
function laneOf(stock: LeadStock, drill: Drill, from: Lane['from'], row: number, spacing: number, ends: Ends): Lane {
  const side = from === 'belly' ? 'belly' : 'starboard';
  const stations = ends.map(([x, leadFrom, depthTo]): Station => {
    const mouth = holeMouth(HULL, { from: side, x, across: row, diameter: drill.diameter });
    if (!mouth) throw new Error(`no skin over ${x}`);
    return { x, at: from === 'flanks' ? [x, 0, row] : mouth.at, mouth: () => mouth, leadFrom, depthTo };
  });
  return { stock, drill, from, row, spacing, stations };
}

/** Rows of stations whose rooms differ, so that deep holes have fewer places than shallow ones. */
const BELLY: Ends = [
  [34, 3.1, 9.2],
  [37, 3, 12.4],
  [41, 3, 6.2],
  [44, 3.2, 13],
  [47, 3.4, 11],
  [52, 3.1, 10.1],
];
const FLANK: Ends = [
  [40, 2.9, 6.4],
  [43, 2.8, 7.2],
  [46, 2.8, 7.6],
  [50, 2.8, 7.5],
];
const LANES: readonly Lane[] = [
  laneOf(SHOT, FLAT, 'belly', 0, 6, BELLY),
  laneOf(SHOT, TWIST, 'belly', 0, 6.2, BELLY),
  laneOf(ROD, TWIST, 'belly', 0, 6.2, BELLY),
  laneOf(SHOT, TWIST, 'belly', 1, 7, BELLY),
  laneOf(SHOT, FLAT, 'flanks', -12, 6, FLANK),
  laneOf(SHOT, TWIST, 'flanks', -9, 6.2, FLANK),
  laneOf(ROD, TWIST, 'flanks', -10, 6.2, FLANK),
];

function offerOf(lane: Lane): Offer {
  return { row: lane.from === 'flanks' ? lane.row : null, span: [30, 60], lane: () => lane };
}

interface Question {
  readonly lanes: readonly Lane[];
  readonly need: Need;
  readonly filling: Filling;
}

function question(trim: readonly [number, number]): fc.Arbitrary<Question> {
  return fc
    .record({
      lanes: fc.uniqueArray(fc.constantFrom(...LANES), { minLength: 1, maxLength: 3 }),
      net: number(0.1, 2.4),
      over: number(34, 52),
      trim: number(...trim),
      about: fc.tuple(number(20, 60), number(-5, 8)),
      // of a link that floats, and of one that hangs
      stiffness: fc.oneof(fc.tuple(number(200, 1500), number(0, 60)), fc.tuple(number(-20, 60), number(-60, 60))),
      wood: number(2.5e-4, 7e-4),
      plug: number(6e-4, 1.6e-3),
      soakShare: fc.oneof(fc.constant(0), number(0.01, 0.1)),
    })
    .map(({ lanes, net, over, trim, about: [x, z], stiffness, wood, plug, soakShare }): Question => {
      const up = upFrom(trim * DEGREE, 0);
      const { along, across } = worldAxes(up);
      const about: Vec3 = [x, 0, z];
      return {
        lanes,
        need: {
          net,
          up,
          along,
          across,
          buoyancy: about,
          about,
          moment: { along: net * dot(subtract([over, 0, -15], about), along), across: 0 },
          stiffness: { trim: stiffness[0], heel: stiffness[1] },
        },
        filling: { wood, plug, soakShare, soakCentre: [45, 0, 1] },
      };
    });
}

/** The search and the brute force on one question. */
function bothOf({ lanes, need, filling }: Question): readonly [Pattern | null, Found | null] {
  return [searchHoles(lanes.map(offerOf), need, filling), bestByTrying(HULL, lanes, need, filling)];
}

/** A pattern as it is said to be, worked out again from its holes alone. */
function reckoned({ lane, depth, holes }: Pattern, need: Need, filling: Filling) {
  const puts = holes.map(({ station, units }) => {
    const put = drilledAt(HULL, lane, station, depth, need, filling).puts.find((one) => one.units === units);
    if (!put) throw new Error(`${units} units do not go into a hole of ${depth} mm at ${station.x}`);
    return put;
  });
  const sum = (pick: (put: Put) => number) => puts.reduce((total, put) => total + pick(put), 0);
  const stiffness = need.stiffness.trim - sum(({ up }) => up);
  return {
    net: need.net - sum(({ net }) => net),
    trim: -Math.atan2(sum(({ along }) => along) - need.moment.along, stiffness),
    height: sum(({ raised }) => raised) / sum(({ lead }) => lead),
  };
}

describe('of all holes that can be drilled', () => {
  test.each([
    ['level', [0, 0], 120],
    ['a little nose-down or tail-down', [-12, 12], 120],
    ['as far down as a target may ask for', [-60, 60], 80],
  ] as const)('for a bait that is to lie %s, the search finds what trying each of them finds', (_, trim, numRuns) => {
    const counts = [0, 0, 0, 0];
    fc.assert(
      fc.property(question(trim), (asked) => {
        const [found, wanted] = bothOf(asked);
        expect(found?.holes.length ?? 0).toBe(wanted?.count ?? 0);
        counts[found?.holes.length ?? 0]++;
        if (!found || !wanted) return;
        expect(Math.abs(found.height - wanted.height)).toBeLessThan(1e-9);
        const { net, trim: left, height } = reckoned(found, asked.need, asked.filling);
        expect(Math.abs(found.net - net)).toBeLessThan(1e-9);
        expect(Math.abs(found.trim - left)).toBeLessThan(1e-9);
        expect(Math.abs(found.height - height)).toBeLessThan(1e-9);
      }),
      { numRuns },
    );
    // one hole, two, three, and none at all: each often enough to be worth the name of a test
    for (const count of counts) expect(count).toBeGreaterThan(0.03 * numRuns);
  });

  test('for a thick drill with a point in a tender bait, what just comes to 0.3° is not lost', () => {
    const drill: Drill = { name: '1/2 in', diameter: 12.7, point: 118 * DEGREE };
    const lane = laneOf(SHOT, drill, 'belly', 0, 14, [[44, 3, 14]]);
    const up = upFrom(-30 * DEGREE, 0);
    const { along, across } = worldAxes(up);
    const about: Vec3 = [44, 0, -20];
    const filling = { wood: 5e-4, plug: 1.15e-3, soakShare: 0, soakCentre: about };
    const moments = Array.from({ length: 800 }, (_, i) => -8 + i / 50);
    const heights = moments.map((moment) => {
      const need: Need = {
        ...{ net: 5, up, along, across, buoyancy: about, about },
        moment: { along: moment, across: 0 },
        stiffness: { trim: 60, heel: 60 },
      };
      const [found, wanted] = bothOf({ lanes: [lane], need, filling });
      expect(found?.height ?? 0).toBeCloseTo(wanted?.height ?? 0, 9);
      return wanted?.height;
    });
    // lower and higher ones come by turns
    expect(new Set(heights.map((height) => height?.toFixed(6))).size).toBeGreaterThan(5);
  });
});
