import { describe, expect, test } from 'vitest';
import type { FacesEntry, SideEntry, SlotEntry } from '../../../../sim/design/file.ts';
import { buildHull } from '../../../../sim/hull/hull.ts';
import { buildRing } from '../../../../sim/hull/section.ts';
import { type Face, faceAt, isRound, type LinkSpec } from '../../../../sim/links/cut.ts';
import { type Growth, grownFace, loftLink } from '../../../../sim/mesh/loft.ts';
import { measureArea, measureVolume } from '../../../../sim/mesh/measure.ts';
import type { Mesh } from '../../../../sim/mesh/mesh.ts';
import { linkTopology } from '../../../../sim/mesh/topology.ts';
import { meshLink, roundCounts, wetLink } from '../../../../sim/mesh/wetted.ts';
import { ellipsoidBody } from '../../../support/bodies.ts';
import { makeDesignFile } from '../../../support/make-design.ts';
import { pointsOf, validateMesh } from '../../../support/meshes.ts';
import { partsOf } from '../../../support/worked-bait.ts';

/** Semi-axes of the plain bait before it is sawn. */
const [A, B, C] = [60, 10, 18];
const HULL = buildHull(ellipsoidBody(A, B, C));
const BARE: Growth = { skin: 0, face: 0 };

/** The plain bait's links with these faces at each joint; the checks are not asked. */
function linksOf(faces: FacesEntry, pieces: 2 | 3 = 2, slots: readonly SlotEntry[] = []): readonly LinkSpec[] {
  const file = makeDesignFile({ pieces });
  const joints = file.joints.map((joint) => {
    if (joint.hinge.kind !== 'pin') throw new Error('the plain bait hinges on pins');
    const { x_mm: _, ...pin } = joint.hinge.pin;
    return { ...joint, faces, hinge: { ...joint.hinge, pin }, slots };
  });
  return partsOf({ ...file, joints }).links;
}

function knuckle(on: SideEntry, radius_mm = 12): FacesEntry {
  return { kind: 'knuckle', on, radius_mm };
}

function meshOf(spec: LinkSpec, finer: number, growth: Growth = BARE): Mesh {
  const { foreFace, aftFace, slots } = spec;
  const counts = {
    bands: 30 * finer,
    steps: 16 * finer,
    foreTip: foreFace === null,
    aftTip: aftFace === null,
    slots: slots.length,
    ...roundCounts(spec),
  };
  return {
    topology: linkTopology(counts),
    positions: loftLink(HULL, buildRing(HULL.section, counts.steps), spec, counts, growth),
  };
}

/** Nodes of the midpoint rule over an angle, where all that is integrated here is smooth. */
const NODES = 4000;

/**
 * Volume of the ellipsoid before a face. A plane y = const cuts an ellipse with semi-axes A·s and C·s, and x = face(y)
 * cuts of it the segment A·C·s²·(u·√(1 - u²) + asin u + π/2), u = (face - A)/(A·s).
 */
function volumeBefore(face: Face | null): number {
  if (face === null) return (4 / 3) * Math.PI * A * B * C;
  let sum = 0;
  for (let i = 0; i < NODES; i++) {
    const turn = ((i + 0.5) / NODES - 0.5) * Math.PI;
    const s = Math.cos(turn);
    const u = Math.max(-1, Math.min(1, (faceAt(face, B * Math.sin(turn)) - A) / (A * s)));
    sum += A * C * s * s * (u * Math.sqrt(1 - u * u) + Math.asin(u) + Math.PI / 2) * s;
  }
  return (sum * B * Math.PI) / NODES;
}

function volumeOf({ foreFace, aftFace }: LinkSpec): number {
  return volumeBefore(aftFace) - (foreFace ? volumeBefore(foreFace) : 0);
}

const KINDS = [
  ['a head with a hollow', linksOf(knuckle('aft'))[0]],
  ['a tail with a knuckle', linksOf(knuckle('aft'))[1]],
  ['a head with a knuckle', linksOf(knuckle('fore'))[0]],
  ['a tail with a hollow', linksOf(knuckle('fore'))[1]],
  ['a middle link with a knuckle before and a hollow behind', linksOf(knuckle('aft'), 3)[1]],
  ['a middle link with a hollow before and a knuckle behind', linksOf(knuckle('fore'), 3)[1]],
] as const;

/** The points of a face on each of its levels, from port to starboard; the two where it runs out are left out. */
function levelsOf(
  index: readonly number[],
  positions: Float64Array,
): readonly (readonly (readonly [number, number])[])[] {
  const levels = new Map<number, (readonly [number, number])[]>();
  for (const vertex of new Set(index)) {
    const [x, y, z] = positions.subarray(3 * vertex, 3 * vertex + 3);
    levels.set(z, [...(levels.get(z) ?? []), [x, y]]);
  }
  return [...levels.values()].filter((arc) => arc.length > 2).map((arc) => arc.sort((one, other) => one[1] - other[1]));
}

describe.each(KINDS)('%s', (_, spec) => {
  test('is closed and outward, bare and coated, fine and coarse', () => {
    for (const finer of [1, 2]) {
      for (const growth of [BARE, { skin: 0.35, face: 0.2 }]) {
        expect(validateMesh(meshOf(spec, finer, growth))).toEqual([]);
      }
    }
  });

  test('has its rims on their cylinders, and each level between them of the area under its arc, coated or not', () => {
    for (const growth of [BARE, { skin: 0.35, face: 0.2 }]) {
      const { topology, positions } = meshOf(spec, 2, growth);
      for (const { kind, from, count } of topology.patches) {
        const face = kind === 'fore-face' ? spec.foreFace : kind === 'aft-face' ? spec.aftFace : null;
        if (face === null) continue;
        const cut = grownFace(face, growth.face);
        if (!isRound(cut)) throw new Error('only knuckles here');
        for (const arc of levelsOf([...topology.index.slice(3 * from, 3 * (from + count))], positions)) {
          // along x from the axis to the face, and y
          const spokes = arc.map(([x, y]) => [(x - cut.axis) * Math.sign(cut.at - cut.axis), y] as const);
          const [first, last] = [spokes[0], spokes[spokes.length - 1]];
          for (const [x, y] of [first, last]) expect(Math.abs(Math.hypot(x, y) - cut.radius)).toBeLessThan(1e-9);
          for (const [x, y] of spokes) {
            expect(Math.hypot(x, y)).toBeGreaterThan(cut.radius - 1e-9);
            expect(Math.hypot(x, y)).toBeLessThan(cut.radius * (1 + 2e-3));
          }
          const twice = spokes.slice(1).map(([x, y], i) => spokes[i][0] * y - x * spokes[i][1]);
          const sector = cut.radius ** 2 * (Math.atan2(last[1], last[0]) - Math.atan2(first[1], first[0]));
          expect(Math.abs(twice.reduce((sum, each) => sum + each, 0) - sector)).toBeLessThan(1e-9 * cut.radius ** 2);
        }
      }
    }
  });

  test('turns every facet of its faces out of its wood', () => {
    const { topology, positions } = meshOf(spec, 2);
    const points = pointsOf({ topology, positions });
    for (const { kind, from, count } of topology.patches) {
      if (kind !== 'fore-face' && kind !== 'aft-face') continue;
      for (let i = 3 * from; i < 3 * (from + count); i += 3) {
        const [a, b, c] = [0, 1, 2].map((corner) => points[topology.index[i + corner]]);
        const nx = (b[1] - a[1]) * (c[2] - a[2]) - (b[2] - a[2]) * (c[1] - a[1]);
        expect(kind === 'fore-face' ? -nx : nx).toBeGreaterThan(0);
      }
    }
  });

  test('is its own mirror image', () => {
    expect(Math.abs(measureVolume(meshOf(spec, 2)).centre[1])).toBeLessThan(1e-12);
  });

  test('has its volume to 5 in 100,000 at the full mesh, and closes in on it', () => {
    const wanted = volumeOf(spec);
    const errors = [1, 2, 4].map((finer) => Math.abs(measureVolume(meshOf(spec, finer)).volume / wanted - 1));
    expect(errors[1]).toBeLessThan(5e-5);
    for (const i of [1, 2]) expect(errors[i - 1] / errors[i]).toBeGreaterThan(2.8);
  });
});

describe('a knuckle, its hollow and the gap between them', () => {
  /** The gap in turns about the axis: its height over all r from radius to radius + gap, as far as the body is wide. */
  function gapVolume(axis: number, towardsNose: boolean, radius: number, gap: number): number {
    const [turns, rings] = [4000, 40];
    let sum = 0;
    for (let i = 0; i < turns; i++) {
      const turn = ((i + 0.5) / turns - 0.5) * Math.PI;
      for (let j = 0; j < rings; j++) {
        const r = radius + (gap * (j + 0.5)) / rings;
        const x = axis + (towardsNose ? -1 : 1) * r * Math.cos(turn);
        const inside = 1 - ((x - A) / A) ** 2 - ((r * Math.sin(turn)) / B) ** 2;
        if (inside > 0) sum += 2 * C * Math.sqrt(inside) * r * (gap / rings) * (Math.PI / turns);
      }
    }
    return sum;
  }

  test.each([
    ['aft', 73],
    ['fore', 47],
  ] as const)('make up the whole body, the gap as wide all round: on the %s link', (on, axis) => {
    const links = linksOf(knuckle(on));
    const solid = links.reduce((sum, spec) => {
      const [coarse, fine] = [2, 4].map((finer) => measureVolume(meshOf(spec, finer)).volume);
      return sum + (4 * fine - coarse) / 3;
    }, 0);
    const whole = (4 / 3) * Math.PI * A * B * C;
    expect(Math.abs((solid + gapVolume(axis, on === 'aft', 12, 2)) / whole - 1)).toBeLessThan(1e-5);
  });
});

describe('a coat', () => {
  test('grows the radius of a knuckle and shrinks that of its hollow, about the same axis', () => {
    const [head, tail] = linksOf(knuckle('aft'));
    if (!head.aftFace || !tail.foreFace) throw new Error('both faces are wanted');
    expect(head.aftFace).toEqual({ at: 59, axis: 73, radius: 14, looks: 'aft' });
    expect(tail.foreFace).toEqual({ at: 61, axis: 73, radius: 12, looks: 'fore' });
    expect(grownFace(head.aftFace, 0.3)).toEqual({
      at: 59.3,
      axis: 73,
      radius: expect.closeTo(13.7, 12),
      looks: 'aft',
    });
    expect(grownFace(tail.foreFace, 0.3)).toEqual({
      at: 60.7,
      axis: 73,
      radius: expect.closeTo(12.3, 12),
      looks: 'fore',
    });
  });

  test('on the faces alone adds the shell between the two cylinders', () => {
    const growth: Growth = { skin: 0, face: 0.4 };
    for (const spec of linksOf(knuckle('aft'))) {
      const grown = (face: Face | null) => face && grownFace(face, growth.face);
      const wanted =
        volumeOf({ ...spec, foreFace: grown(spec.foreFace), aftFace: grown(spec.aftFace) }) - volumeOf(spec);
      const [coarse, fine] = [2, 4].map(
        (finer) => measureVolume(meshOf(spec, finer, growth)).volume - measureVolume(meshOf(spec, finer)).volume,
      );
      expect(Math.abs((4 * fine - coarse) / 3 / wanted - 1)).toBeLessThan(1e-4);
    }
  });
});

describe('a knuckle just as wide as the body', () => {
  test.each([0, 1])('still has link %d closed, and its volume to half a per cent', (i) => {
    // the body is 10 wide at 60 and hardly less at the axis, so the nose turns almost square to the flank
    const spec = linksOf(knuckle('aft', 10))[i];
    expect(validateMesh(meshOf(spec, 2))).toEqual([]);
    expect(Math.abs(measureVolume(meshOf(spec, 2)).volume / volumeOf(spec) - 1)).toBeLessThan(5e-3);
    const [coarse, fine] = [2, 4].map((finer) => Math.abs(measureVolume(meshOf(spec, finer)).volume - volumeOf(spec)));
    expect(fine).toBeLessThan(coarse / 2);
  });
});

describe('a knuckle of a huge radius', () => {
  test.each(['fore', 'aft'] as const)('is a flat face: on the %s link', (on) => {
    const flat = linksOf({ kind: 'flat' });
    // larger than a design may have, so put into the links themselves
    const bent = (face: Face | null, radius: number) =>
      face && isRound(face)
        ? { ...face, radius, axis: face.axis > face.at ? face.at + radius : face.at - radius }
        : face;
    const volumeAt = (spec: LinkSpec) => measureVolume(meshOf(spec, 4)).volume;
    const differences = [1e3, 1e4].map((radius) => {
      const apart = linksOf(knuckle(on)).map((spec, i) => {
        const huge = { ...spec, foreFace: bent(spec.foreFace, radius), aftFace: bent(spec.aftFace, radius) };
        return Math.abs(volumeAt(huge) - volumeAt(flat[i]));
      });
      return Math.max(...apart);
    });
    // the mean of y²/2R over an ellipse of half width B is B²/8R
    expect(Math.abs(differences[1] / (Math.PI * B * C * ((B * B) / 8 / 1e4)) - 1)).toBeLessThan(0.01);
    expect(differences[0] / differences[1]).toBeCloseTo(10, 1);
  });
});

/** What the slots of a mesh enclose, all together. */
function slotVolume(mesh: Mesh): number {
  const { index, patches } = mesh.topology;
  const inSlots = patches.flatMap(({ kind, from, count }) =>
    kind === 'slot' ? [...index.slice(3 * from, 3 * (from + count))] : [],
  );
  const topology = { ...mesh.topology, index: Uint32Array.from(inSlots) };
  return -measureVolume({ topology, positions: mesh.positions }).volume;
}

/** 7 wide, 3 high. */
function slot(side: SideEntry, depth_mm: number): SlotEntry {
  return { in: side, width_mm: 7, depth_mm, z_mm: [2, 5] };
}

/** Width times depth, less what a knuckle's mouth falls back by R - √(R² - y²), or with what a hollow's reaches out. */
function slotArea(radius: number, half: number, depth: number, hollow: boolean): number {
  const underArc = radius * radius * Math.asin(half / radius) + half * Math.sqrt(radius * radius - half * half);
  const fallen = 2 * half * radius - underArc;
  return 2 * half * depth + (hollow ? fallen : -fallen);
}

describe.each([
  ['a knuckle', 'aft', 1, 14, 12, false],
  ['a hollow', 'fore', 0, 5, 14, true],
] as const)('a slot in %s', (_, side, index, depth, radius, hollow) => {
  const spec = linksOf(knuckle('aft'), 2, [slot(side, depth)])[index];

  test('has a mouth that follows the face: its corners lie on the cylinder', () => {
    const { hull } = partsOf(makeDesignFile());
    const face = side === 'aft' ? spec.foreFace : spec.aftFace;
    if (!face || !isRound(face)) throw new Error('a round face is wanted');
    const { topology, positions } = meshLink(hull, spec, 'full');
    const patch = topology.patches.find(({ kind }) => kind === 'slot');
    if (!patch) throw new Error('a slot is wanted');
    const corners = [...new Set(topology.index.slice(3 * patch.from, 3 * (patch.from + patch.count)))];
    const off = corners.filter((vertex) => {
      const [x, y] = [positions[3 * vertex], positions[3 * vertex + 1]];
      return Math.abs(Math.hypot(x - face.axis, y) - face.radius) > 1e-9;
    });
    // the floor's four; nine points of the mouth below, nine above
    expect([corners.length, off.length]).toEqual([22, 4]);
  });

  test('takes off its closed form, its mesh closing in by the square of its step', () => {
    const wanted = 3 * slotArea(radius, 3.5, depth, hollow);
    const errors = [1, 2, 4].map((finer) => Math.abs(slotVolume(meshOf(spec, finer)) - wanted));
    // the coarsest has two strips as the next has, so only from there on it halves
    expect(errors[1] / wanted).toBeLessThan(1e-3);
    expect(Math.log2(errors[1] / errors[2])).toBeGreaterThan(1.9);
    expect(Math.log2(errors[1] / errors[2])).toBeLessThan(2.1);
  });

  test('is said to hold that, coated by as much less', () => {
    const { hull } = partsOf(makeDesignFile());
    const bare = meshLink(hull, spec, 'full');
    const wetted = wetLink(hull, spec, 'full', bare, []);
    expect(wetted.slots[0].volume).toBeCloseTo(3 * slotArea(radius, 3.5, depth, hollow), 9);
    const paint = { kind: 'film', name: 'paint', thickness: 0.2, density: 0.0012, covers: 'all' } as const;
    const painted = wetLink(hull, spec, 'full', bare, [paint]);
    // floor and mouth move apart by nothing, cheeks and ends come in by 0.2 each
    const grownRadius = hollow ? radius - 0.2 : radius + 0.2;
    expect(painted.slots[0].volume).toBeCloseTo(2.6 * slotArea(grownRadius, 3.3, depth, hollow), 9);
    expect(Math.abs(slotVolume(painted.mesh) / painted.slots[0].volume - 1)).toBeLessThan(1e-3);
  });

  test('adds its walls to the surface, and takes its mouth off the face', () => {
    const [plain, slotted] = [linksOf(knuckle('aft'))[index], spec].map((one) => measureArea(meshOf(one, 4)).area);
    const arc = 2 * radius * Math.asin(3.5 / radius);
    const cheek = depth - (hollow ? -1 : 1) * (radius - Math.sqrt(radius * radius - 3.5 * 3.5));
    const walls = 2 * slotArea(radius, 3.5, depth, hollow) + 3 * 7 + 2 * 3 * cheek;
    expect(Math.abs((slotted - plain) / (walls - 3 * arc) - 1)).toBeLessThan(1e-3);
  });

  test('parts from the facets of its face by less than 1 % of the radius', () => {
    const { topology, positions } = meshOf(spec, 2);
    const face = side === 'aft' ? spec.foreFace : spec.aftFace;
    if (!face || !isRound(face)) throw new Error('a round face is wanted');
    let most = 0;
    for (const { kind, from, count } of topology.patches) {
      if (kind === 'skin') continue;
      for (let i = 3 * from; i < 3 * (from + count); i += 3) {
        const corners = [0, 1, 2].map((corner) => 3 * topology.index[i + corner]);
        const onFace = corners.every((at) => {
          const [x, y] = [positions[at], positions[at + 1]];
          return Math.abs(Math.hypot(x - face.axis, y) - face.radius) < 1e-9;
        });
        if (!onFace || !corners.every((at) => positions[at + 2] >= 0 && positions[at + 2] <= 7)) continue;
        for (const [a, b] of [
          [0, 1],
          [1, 2],
          [2, 0],
        ]) {
          const x = (positions[corners[a]] + positions[corners[b]]) / 2;
          const y = (positions[corners[a] + 1] + positions[corners[b] + 1]) / 2;
          most = Math.max(most, face.radius - Math.hypot(x - face.axis, y));
        }
      }
    }
    expect(most).toBeGreaterThan(0);
    expect(most).toBeLessThan(0.01 * radius);
  });
});
