import { describe, expect, test } from 'vitest';
import type { Body } from '../../../../sim/design/design.ts';
import { buildHull, sectionArea, stationOf } from '../../../../sim/hull/hull.ts';
import { buildRing } from '../../../../sim/hull/section.ts';
import { type Face, faceAt, type LinkSpec } from '../../../../sim/links/cut.ts';
import { type Growth, loftLink } from '../../../../sim/mesh/loft.ts';
import { measureArea, measureVolume } from '../../../../sim/mesh/measure.ts';
import type { Mesh } from '../../../../sim/mesh/mesh.ts';
import { linkTopology } from '../../../../sim/mesh/topology.ts';
import { BOARD, SHAD } from '../../../support/bodies.ts';
import { validateMesh } from '../../../support/meshes.ts';

const BARE: Growth = { skin: 0, face: 0 };
const COATED: Growth = { skin: 0.35, face: 0.2 };
const TAN = Math.tan((25 * Math.PI) / 180);
const BEVEL: Face = { at: 60, lean: -TAN, looks: 'aft' };

function link(length: number, foreFace: Face | null, aftFace: Face | null): LinkSpec {
  const span = [foreFace?.at ?? 0, aftFace?.at ?? length] as const;
  return { index: 0, name: 'link', span, foreFace, aftFace, slots: [] };
}

function meshOf(body: Body, spec: LinkSpec, bands: number, steps: number, growth: Growth = BARE): Mesh {
  const hull = buildHull(body);
  const counts = { bands, steps, foreTip: spec.foreFace === null, aftTip: spec.aftFace === null, slots: 0 };
  const ring = buildRing(hull.section, steps);
  return { topology: linkTopology(counts), positions: loftLink(hull, ring, spec, counts, growth) };
}

const READ: Body['readings'] = [
  { x: 30, height: 33, back: null, belly: null, width: null },
  { x: 110, height: 31, back: null, belly: null, width: 13 },
];

const BODIES: readonly (readonly [string, Body])[] = [
  ['a board', BOARD],
  ['a board with square edges', { ...BOARD, section: { kind: 'board', backEdge: 0, bellyEdge: 0 } }],
  ['a board as round as it can be', { ...BOARD, section: { kind: 'board', backEdge: 100, bellyEdge: 100 } }],
  ['a board read by calipers', { ...BOARD, readings: READ }],
  ['an oval with straight runs and a blunt nose', { ...BOARD, section: SHAD.section }],
  ['an oval read by calipers', { ...SHAD, readings: READ }],
];

/** Volume of the sections by strips along x; no mesh is made. */
function volumeOf(body: Body): number {
  const hull = buildHull(body);
  const strips = 20_000;
  let sum = 0;
  for (let i = 0; i < strips; i++) {
    const turn = ((i + 0.5) / strips) * Math.PI;
    sum += sectionArea(hull, (hull.length * (1 - Math.cos(turn))) / 2) * Math.sin(turn);
  }
  return (sum * hull.length * Math.PI) / (2 * strips);
}

describe.each(BODIES)('%s', (_, body) => {
  const { length } = body;
  const whole = link(length, null, null);

  test('is closed and outward, whole and sawn, bare and coated, fine and coarse', () => {
    const aft: Face = { ...BEVEL, at: 62, lean: TAN, looks: 'fore' };
    for (const spec of [whole, link(length, null, BEVEL), link(length, aft, null)]) {
      for (const [bands, steps] of [
        [60, 32],
        [30, 16],
      ]) {
        for (const growth of [BARE, COATED]) expect(validateMesh(meshOf(body, spec, bands, steps, growth))).toEqual([]);
      }
    }
  });

  test('meets its bevel with every line', () => {
    const { topology, positions } = meshOf(body, link(length, null, BEVEL), 60, 32);
    const face = topology.patches.find(({ kind }) => kind === 'aft-face');
    const { from, count } = face ?? { from: 0, count: 0 };
    expect(count).toBeGreaterThan(0);
    for (const vertex of new Set(topology.index.slice(3 * from, 3 * (from + count)))) {
      expect(Math.abs(positions[3 * vertex] - faceAt(BEVEL, positions[3 * vertex + 1]))).toBeLessThan(1e-9);
    }
  });

  test('keeps its index array under a change of every size', () => {
    const larger: Body = { ...body, height: body.height + 3, width: body.width + 2, readings: [] };
    expect(meshOf(larger, whole, 60, 32).topology.index).toBe(meshOf(body, whole, 60, 32).topology.index);
  });

  test('closes in on the volume of its sections by the square of its step or better', () => {
    const wanted = volumeOf(body);
    const errors = [1, 2, 4].map((finer) =>
      Math.abs(measureVolume(meshOf(body, whole, 60 * finer, 32 * finer)).volume / wanted - 1),
    );
    // below a millionth the sum that the wanted volume comes from begins to count
    for (const i of [1, 2]) expect(errors[i]).toBeLessThan(errors[i - 1] / 3.5 + 1e-6);
    expect(errors[2]).toBeLessThan(3e-6);
  });

  test('gains its area times the thickness of a coat, and more only by the square of that', () => {
    const fine = (skin: number) => meshOf(body, whole, 360, 192, { skin, face: 0 });
    const bare = fine(0);
    const { area } = measureArea(bare);
    const { volume } = measureVolume(bare);
    const beyond = [0.8, 0.4].map((thickness) => measureVolume(fine(thickness)).volume - volume - area * thickness);
    const order = Math.log2(beyond[0] / beyond[1]);
    expect(order).toBeGreaterThan(1.9);
    expect(order).toBeLessThan(2.1);
  });
});

test('a board without rounds is its plan times its height where both run straight', () => {
  const [from, to] = [50, 80];
  const square: Body = { ...BOARD, section: { kind: 'board', backEdge: 0, bellyEdge: 0 } };
  const flat = (at: number, looks: Face['looks']): Face => ({ at, lean: 0, looks });
  const mesh = meshOf(square, link(150, flat(from, 'fore'), flat(to, 'aft')), 60, 32);
  // 30 mm of 18 mm by 40 mm, to the last digits: nothing is round
  expect(measureVolume(mesh).volume).toBeCloseTo(30 * 18 * 40, 6);
  const { back, belly, halfWidth } = stationOf(buildHull(square), 60);
  expect([back, belly, halfWidth]).toEqual([19, -21, 9]);
});
