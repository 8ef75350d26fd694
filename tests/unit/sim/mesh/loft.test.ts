import { describe, expect, test } from 'vitest';
import { buildHull, type Hull, sectionArea, skinHeight, stationOf } from '../../../../sim/hull/hull.ts';
import { buildRing } from '../../../../sim/hull/section.ts';
import { type BevelFace as Face, faceAt, type LinkSlot, type LinkSpec } from '../../../../sim/links/cut.ts';
import { type Growth, grownFace, loftLink } from '../../../../sim/mesh/loft.ts';
import { measureVolume } from '../../../../sim/mesh/measure.ts';
import type { Mesh } from '../../../../sim/mesh/mesh.ts';
import { type LinkCounts, layOutVertices, linkTopology } from '../../../../sim/mesh/topology.ts';
import { SHAD } from '../../../support/bodies.ts';
import { pointsOf, validateMesh } from '../../../support/meshes.ts';

const HULL = buildHull(SHAD);
const BARE: Growth = { skin: 0, face: 0 };
const COATED: Growth = { skin: 0.35, face: 0.2 };

const SLOTS: readonly LinkSlot[] = [-9, -4, 1, 6, 10, 14].map((z, i) => ({
  in: i % 2 === 0 ? 'fore' : 'aft',
  width: 6,
  depth: 7,
  z: [z, z + 2.5],
  opens: i % 2 === 0 ? 'aft' : 'fore',
  path: `slots.${i}`,
}));

function face(at: number, degrees: number, looks: Face['looks']): Face {
  const lean = Math.tan((degrees * Math.PI) / 180);
  return { at, lean: looks === 'aft' ? -lean : lean, looks };
}

function link(foreFace: Face | null, aftFace: Face | null, slots: number): LinkSpec {
  const span = [foreFace?.at ?? 0, aftFace?.at ?? 140] as const;
  const usable = SLOTS.filter(({ opens }) => (opens === 'fore' ? foreFace : aftFace) !== null);
  // a head or a tail has one face, so its slots are the same few again, higher up
  const taken = Array.from({ length: slots }, (_, i) => usable[i % usable.length]);
  return { index: 0, name: 'link', span, foreFace, aftFace, slots: taken };
}

function counted(spec: LinkSpec, bands: number, steps: number): LinkCounts {
  const { foreFace, aftFace, slots } = spec;
  return { bands, steps, foreTip: foreFace === null, aftTip: aftFace === null, slots: slots.length };
}

function meshOf(spec: LinkSpec, bands: number, steps: number, growth: Growth = BARE, hull: Hull = HULL): Mesh {
  const counts = counted(spec, bands, steps);
  return {
    topology: linkTopology(counts),
    positions: loftLink(hull, buildRing(hull.section, counts.steps), spec, counts, growth),
  };
}

const KINDS = [
  ['a bait in one piece', null, null],
  ['a head with a flat face', null, face(49, 0, 'aft')],
  ['a head with a bevel', null, face(49, 30, 'aft')],
  ['a tail with a bevel', face(97, 25, 'fore'), null],
  ['a middle link, bevelled at both ends', face(51, 20, 'fore'), face(95, 35, 'aft')],
] as const;

describe.each(KINDS)('%s', (_, foreFace, aftFace) => {
  test.each(foreFace || aftFace ? [0, 1, 2, 3, 4, 5, 6] : [0])(
    'with %d slots is closed and outward, bare and coated, fine and coarse',
    (slots) => {
      const spec = link(foreFace, aftFace, slots);
      for (const [bands, steps] of [
        [60, 32],
        [30, 16],
      ]) {
        for (const growth of [BARE, COATED]) expect(validateMesh(meshOf(spec, bands, steps, growth))).toEqual([]);
      }
    },
  );

  const spec = link(foreFace, aftFace, foreFace || aftFace ? 2 : 0);

  test('turns every triangle of its skin outwards, and none over itself', () => {
    for (const growth of [BARE, COATED]) {
      const mesh = meshOf(spec, 60, 32, growth);
      const points = pointsOf(mesh);
      const { index, patches } = mesh.topology;
      const skin = patches[0];
      let least = Number.POSITIVE_INFINITY;
      for (let i = 3 * skin.from; i < 3 * (skin.from + skin.count); i += 3) {
        const [a, b, c] = [points[index[i]], points[index[i + 1]], points[index[i + 2]]];
        const ny = (b[2] - a[2]) * (c[0] - a[0]) - (b[0] - a[0]) * (c[2] - a[2]);
        const nz = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
        const [x, y, z] = [0, 1, 2].map((axis) => (a[axis] + b[axis] + c[axis]) / 3);
        least = Math.min(least, ny * y + nz * (z - stationOf(HULL, x).broadest));
      }
      expect(least).toBeGreaterThan(0);
    }
  });

  test('is its own mirror image, to the last bit', () => {
    for (const growth of [BARE, COATED]) {
      const counts = counted(spec, 60, 32);
      const points = pointsOf(meshOf(spec, 60, 32, growth));
      const { ringSize, firstRing, lastRing } = layOutVertices(counts);
      for (let row = 0; row <= lastRing - firstRing; row++) {
        for (let k = 0; k <= counts.steps; k++) {
          const [x, y, z] = points[row * ringSize + k];
          expect(points[row * ringSize + ((ringSize - k) % ringSize)]).toEqual(
            k === 0 || k === counts.steps ? [x, y, z] : [x, -y, z],
          );
        }
      }
      // 1e-13 of a body 20 mm wide: the sums themselves round
      expect(Math.abs(measureVolume(meshOf(spec, 60, 32, growth)).centre[1])).toBeLessThan(1e-12);
    }
  });

  test('keeps the topology of its counts under every change of dimension', () => {
    const wider = buildHull({ ...SHAD, width: 24, tail: { ...SHAD.tail, depth: 8 } });
    const { topology } = meshOf(spec, 60, 32);
    const edited = meshOf(spec, 60, 32, COATED, wider);
    expect(edited.topology).toBe(topology);
    expect(edited.topology.index).toBe(topology.index);
  });

  test('has its faces where they were sawn, coated or not', () => {
    for (const growth of [BARE, COATED]) {
      const { topology, positions } = meshOf(spec, 60, 32, growth);
      for (const { kind, from, count } of topology.patches) {
        const bare = kind === 'fore-face' ? foreFace : kind === 'aft-face' ? aftFace : null;
        if (bare === null) continue;
        const cut = grownFace(bare, growth.face);
        let most = 0;
        for (const vertex of new Set(topology.index.slice(3 * from, 3 * (from + count)))) {
          most = Math.max(most, Math.abs(positions[3 * vertex] - faceAt(cut, positions[3 * vertex + 1])));
        }
        expect(most).toBeLessThan(1e-10);
      }
    }
  });
});

describe('a coated face', () => {
  test.each([0, 20, 45])('on a bevel of %d degrees moves out along its own normal', (degrees) => {
    const cos = Math.cos((degrees * Math.PI) / 180);
    expect(grownFace(face(49, degrees, 'aft'), 0.3).at).toBeCloseTo(49 + 0.3 / cos, 12);
    expect(grownFace(face(51, degrees, 'fore'), 0.3).at).toBeCloseTo(51 - 0.3 / cos, 12);
    expect(grownFace(face(51, degrees, 'fore'), 0.3).lean).toBe(face(51, degrees, 'fore').lean);
  });
});

/** Half the area of a section beyond |y| = from: y = w - (w - from) v² takes the root at the flank out. */
function flankArea(x: number, from: number): number {
  const { halfWidth } = stationOf(HULL, x);
  const strips = 200;
  let sum = 0;
  for (let i = 0; i < strips; i++) {
    const v = (i + 0.5) / strips;
    const y = halfWidth - (halfWidth - from) * v * v;
    const height = (skinHeight(HULL, 'back', x, y) ?? 0) - (skinHeight(HULL, 'belly', x, y) ?? 0);
    sum += height * 2 * v * (halfWidth - from);
  }
  return sum / strips;
}

/** Volume of the body between two faces from its sections alone, by strips along x; no mesh is made. */
function volumeBetween(fore: Face | null, aft: Face | null): number {
  const from = fore?.at ?? 0;
  const to = aft?.at ?? 140;
  const strips = 4000;
  let sum = 0;
  for (let i = 0; i < strips; i++) {
    // x = from + (to - from) sin² crowds the strips at the ends, where tips are steep and bevels begin
    const turn = ((i + 0.5) / strips) * (Math.PI / 2);
    const x = from + (to - from) * Math.sin(turn) ** 2;
    const beyond = [fore, aft].reduce((gone, cut) => {
      if (cut === null || cut.lean === 0) return gone;
      const edge = (x - cut.at) / cut.lean;
      return edge < stationOf(HULL, x).halfWidth ? gone + 2 * flankArea(x, edge) : gone;
    }, 0);
    sum += (sectionArea(HULL, x) - beyond) * (to - from) * Math.sin(2 * turn);
  }
  return (sum * Math.PI) / (2 * strips);
}

describe.each(KINDS)('the mesh of %s', (_, foreFace, aftFace) => {
  test('closes in on the volume between its faces by the square of its step or better', () => {
    const wanted = volumeBetween(foreFace, aftFace);
    const errors = [1, 2, 4].map(
      (finer) => measureVolume(meshOf(link(foreFace, aftFace, 0), 30 * finer, 16 * finer)).volume / wanted - 1,
    );
    // below a millionth the strips that the wanted volume is added up from begin to count
    for (const i of [1, 2]) expect(Math.abs(errors[i])).toBeLessThan(Math.abs(errors[i - 1]) / 3.5 + 1e-6);
    expect(Math.abs(errors[1])).toBeLessThan(5e-5);
    expect(Math.abs(errors[2])).toBeLessThan(1e-5);
  });
});
