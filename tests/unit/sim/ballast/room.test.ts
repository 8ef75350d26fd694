import { describe, expect, test } from 'vitest';
import { type Lane, offersOf, type RoomParts } from '../../../../sim/ballast/room.ts';
import type { Drill, LeadStock } from '../../../../sim/design/design.ts';
import type { Face, LinkSpec } from '../../../../sim/links/cut.ts';
import type { KeepOut } from '../../../../sim/mass/keep-out.ts';
import { plankHull } from '../../../support/bodies.ts';

/** A plank 24 wide and 50 high: its belly at -25, its flanks at 12. Half way along it a link of 40 mm begins. */
const PLANK = plankHull(24, 50);
const START = 5e6;
const WALL = 3;
/** Two thirds of the wall are kept to all that is in the wood. */
const CLEAR = 2;
const FLAT: Drill = { name: '6 mm, flat', diameter: 6, point: Math.PI };
const TWIST: Drill = { name: '6 mm', diameter: 6, point: (118 * Math.PI) / 180 };
const POINT = 3 / Math.tan((59 * Math.PI) / 180);
const SHOT: LeadStock = { name: 'shot in epoxy', kind: 'filled', density: 0.0073 };
const ROD: LeadStock = { name: 'rod', kind: 'slug', diameter: 5.5, density: 0.0113 };

const flat = (x: number, looks: 'fore' | 'aft', lean = 0): Face => ({ at: START + x, lean, looks });

interface Wish extends Partial<Omit<RoomParts, 'spec' | 'hull'>> {
  readonly aftFace?: Face;
}

/** Every lane of the link, each beside the height of its row; null: it has no place. */
function lanesOf({ aftFace = flat(40, 'aft'), ...wish }: Wish) {
  const spec: LinkSpec = {
    ...{ index: 0, name: 'link', slots: [] },
    span: [START, START + 40],
    foreFace: flat(0, 'fore'),
    aftFace,
  };
  const parts = { keepOuts: [], wall: WALL, drills: [FLAT], lead: [SHOT], across: 0, ...wish };
  return offersOf({ hull: PLANK, spec, ...parts }).map((offer) => [offer.row, offer.lane()] as const);
}

function bellyLane(wish: Wish = {}): Lane | null {
  return lanesOf(wish).find(([row]) => row === null)?.[1] ?? null;
}

/** Places along the link, from its fore end. */
function placesOf(lane: Lane | null): readonly number[] {
  return (lane?.stations ?? []).map(({ x }) => x - START);
}

function fromTo(from: number, to: number): readonly number[] {
  return Array.from({ length: to - from + 1 }, (_, i) => from + i);
}

/** Every depth of a lane is this. */
function expectDepths(lane: Lane | null, leadFrom: number, depthTo: number): void {
  expect(lane).not.toBeNull();
  for (const station of lane?.stations ?? []) {
    expect(station.leadFrom).toBeCloseTo(leadFrom, 6);
    expect(station.depthTo).toBeCloseTo(depthTo, 6);
  }
}

describe('holes from the belly of a plank', () => {
  test('keep their wall to belly and back, and stand at every millimetre between the joint faces', () => {
    const lane = bellyLane();
    expectDepths(lane, WALL, 50 - WALL);
    expect(placesOf(lane)).toEqual(fromTo(6, 34));
    expect(lane?.spacing).toBe(FLAT.diameter + CLEAR);
  });

  test('by a pointed drill keep it before the tip of the point', () => {
    expectDepths(bellyLane({ drills: [TWIST] }), WALL, 50 - WALL - POINT);
  });

  test('keep it to the flank in a row beside the middle, or there are none', () => {
    // the drill's edge 5 mm off the flank, and 2 mm off it
    expectDepths(bellyLane({ across: 4 }), WALL, 50 - WALL);
    expectDepths(bellyLane({ across: -4 }), WALL, 50 - WALL);
    expect(bellyLane({ across: 7 })).toBeNull();
    expect(bellyLane({ across: -7 })).toBeNull();
  });

  test('with a wall as thick as the plank allows are in the middle, and with a thicker one there are none', () => {
    expectDepths(bellyLane({ wall: 8.9 }), 8.9, 50 - 8.9);
    expect(bellyLane({ wall: 9.1 })).toBeNull();
  });

  test('stand back from a bevel by as much as it leans', () => {
    // the nearest point of the face to a circle of 6: 6 √(1 + lean²) ahead of its middle, on the centre line
    const lean = -0.75;
    const last = Math.floor(40 - 6 * Math.hypot(1, lean));
    expect(last).toBe(32);
    expect(placesOf(bellyLane({ aftFace: flat(40, 'aft', lean) }))).toEqual(fromTo(6, last));
  });

  test('stand in a knuckle as far out as a circle goes in its round', () => {
    const round = (radius: number): Face => ({ at: START + 40, axis: START + 40 - radius, radius, looks: 'aft' });
    expect(placesOf(bellyLane({ aftFace: round(14) })).at(-1)).toBe(34);
    // beside the middle by 4, in a round of 14: √(8² - 4²) behind its axis at 26
    expect(placesOf(bellyLane({ aftFace: round(14), across: 4 })).at(-1)).toBe(
      Math.floor(26 + Math.sqrt(8 ** 2 - 4 ** 2)),
    );
  });
});

describe('holes among what is in the wood already', () => {
  const x = START + 20;
  const shank: KeepOut = { name: 'shank', low: [x, 0, -25], high: [x, 0, -10], radius: 0.8 };

  test('stand aside from a shank in the belly by two thirds of the wall', () => {
    // 3 + 2 + 0.8 from axis to axis
    expect(placesOf(bellyLane({ keepOuts: [shank] }))).toEqual([...fromTo(6, 14), ...fromTo(26, 34)]);
  });

  test('end so far under a bore that lies across their way', () => {
    const bore: KeepOut = { name: 'bore', low: [x, -5, 3], high: [x, 5, 3], radius: 1 };
    const lane = bellyLane({ keepOuts: [bore], drills: [TWIST] });
    const at = (place: number) => lane?.stations.find((station) => station.x === START + place)?.depthTo;
    for (const place of [18, 20, 22]) expect(at(place)).toBeCloseTo(25 + 3 - 1 - CLEAR - POINT, 6);
    // one mm past the drill's edge: the round of the distance
    expect(at(24)).toBeCloseTo(28 - Math.sqrt(3 ** 2 - 1) - POINT, 6);
    expect(at(26)).toBeCloseTo(50 - WALL - POINT, 6);
  });

  test('end so far under a slot, and there are none where it reaches to the belly', () => {
    const slot = (from: number): KeepOut => ({
      name: 'slot',
      low: [x, -4, from],
      high: [START + 40, 4, from + 6],
      radius: 0,
    });
    const lane = bellyLane({ keepOuts: [slot(5)] });
    for (const station of lane?.stations.filter(({ x: at }) => at >= START + 17) ?? []) {
      expect(station.depthTo).toBeCloseTo(25 + 5 - CLEAR, 6);
    }
    expect(placesOf(bellyLane({ keepOuts: [slot(-24)] }))).toEqual(fromTo(6, 15));
  });
});

describe('holes from the flanks of a plank', () => {
  test('come in rows from a wall over the belly up to half its height, with two thirds of a wall between the two', () => {
    const wall = 2.9;
    const rows = lanesOf({ drills: [TWIST], wall }).filter(([row]) => row !== null);
    const open = rows.filter(([, lane]) => lane !== null);
    expect(open.map(([row]) => row)).toEqual(fromTo(-25 + 6, -1));
    for (const [, lane] of open) expectDepths(lane, wall, 12 - wall / 3 - POINT);
    for (const [, lane] of open) expect(placesOf(lane)).toEqual(fromTo(6, 34));
  });

  test('are kept clear of what lies on either side', () => {
    const port: KeepOut = { name: 'rod', low: [START, -5, -12], high: [START + 40, -5, -12], radius: 1 };
    const [, lane] = lanesOf({ keepOuts: [port] }).find(([row]) => row === -12) ?? [null, null];
    // 7 mm from the flank at 12 to the rod, its radius and two thirds of a wall off
    expectDepths(lane, WALL, 7 - 1 - CLEAR);
    expect(lanesOf({ keepOuts: [{ ...port, radius: 2.1 }] }).find(([row]) => row === -12)?.[1]).toBeNull();
  });

  test('there are none in a link that is to have its lead off the middle', () => {
    expect(lanesOf({ across: 1 }).every(([row]) => row === null)).toBe(true);
  });
});

describe('what goes with what', () => {
  const drills = [5, 5.4, 5.6, 6, 6.5, 7].map((diameter): Drill => ({ name: `${diameter}`, diameter, point: Math.PI }));

  test('is round stock with the narrowest drill that takes it, and the rest with any', () => {
    const belly = lanesOf({ drills, lead: [ROD, SHOT] }).filter(([row]) => row === null);
    const pairs = belly.map(([, lane]) => [lane?.stock.name, lane?.drill.diameter]);
    expect(pairs).toEqual([['rod', 5.6], ...drills.map(({ diameter }) => ['shot in epoxy', diameter])]);
  });

  test('is nothing for round stock that no drill takes within a millimetre', () => {
    expect(lanesOf({ drills: drills.slice(-1), lead: [ROD] })).toEqual([]);
    expect(lanesOf({ drills: drills.slice(0, 2), lead: [ROD] })).toEqual([]);
  });
});
