import { describe, expect, test } from 'vitest';
import { totalsOf } from '../../../sim/hydro/body.ts';
import { planeAxes, potentialAt } from '../../../sim/hydro/potential.ts';
import { measureArea, measureVolume } from '../../../sim/mesh/measure.ts';
import type { Mesh } from '../../../sim/mesh/mesh.ts';
import { length, scale, subtract, unit, type Vec3 } from '../../../sim/numerics/vec3.ts';
import { bodyOf } from '../../support/float-mesh.ts';
import { hullMesh, mapMesh, prismMesh } from '../../support/meshes.ts';
import paper from './case.json' with { type: 'json' };

const GOLDEN = (1 + Math.sqrt(5)) / 2;
const SIGNS = [-1, 1];
/** (0, ±a, ±b) and its turns. */
function threeWays(a: number, b: number): readonly Vec3[] {
  return SIGNS.flatMap((s) =>
    SIGNS.flatMap((t): Vec3[] => [
      [0, s * a, t * b],
      [s * a, t * b, 0],
      [t * b, 0, s * a],
    ]),
  );
}
const CUBE = SIGNS.flatMap((x) => SIGNS.flatMap((y) => SIGNS.map((z): Vec3 => [x, y, z])));

/** Corners, the edge they have, and the volume of edge 1. */
const SOLIDS = [
  {
    name: 'tetrahedron',
    points: CUBE.filter(([x, y, z]) => x * y * z > 0),
    edge: 2 * Math.SQRT2,
    volume: Math.SQRT2 / 12,
  },
  { name: 'cube', points: CUBE, edge: 2, volume: 1 },
  {
    name: 'octahedron',
    points: SIGNS.flatMap((s): Vec3[] => [
      [s, 0, 0],
      [0, s, 0],
      [0, 0, s],
    ]),
    edge: Math.SQRT2,
    volume: Math.SQRT2 / 3,
  },
  { name: 'icosahedron', points: threeWays(1, GOLDEN), edge: 2, volume: (5 * (3 + Math.sqrt(5))) / 12 },
  {
    name: 'dodecahedron',
    points: [...CUBE, ...threeWays(1 / GOLDEN, GOLDEN)],
    edge: 2 / GOLDEN,
    volume: (15 + 7 * Math.sqrt(5)) / 4,
  },
] as const;

const AT: Vec3 = [31, -7, 4];
const PLANES: readonly Vec3[] = (
  [
    [0, 0, 1],
    [0, 1, 0],
    [1, 2, 3],
    [-4, 1, 2],
    [3, -5, -1],
  ] as const
).map((n) => unit(n));

/** Volume and centre found four ways: the mesh's measure, the tree's root, wholly under, and a cut's two sides added up. */
function found(mesh: Mesh): readonly { readonly way: string; readonly volume: number; readonly centre: Vec3 }[] {
  const measured = measureVolume(mesh);
  const body = bodyOf(mesh, 0.5);
  const totals = totalsOf(body);
  const cuts = PLANES.flatMap((n, i) => {
    const wetAt = (up: Vec3, offset: number) => potentialAt(body, up, ...planeAxes(up), offset);
    const down: Vec3 = [-n[0], -n[1], -n[2]];
    const [x, y, z] = measured.centre;
    const offset = n[0] * (x + 0.1) + n[1] * y + n[2] * z;
    const [below, above, all] = [wetAt(n, offset), wetAt(down, -offset), wetAt(n, 1000)];
    const volume = below.displaced + above.displaced;
    const along = (axis: 0 | 1 | 2) =>
      (below.displaced * below.buoyancyCentre[axis] + above.displaced * above.buoyancyCentre[axis]) / volume;
    expect(below.displaced).toBeGreaterThan(0);
    expect(above.displaced).toBeGreaterThan(0);
    return [
      { way: `cut ${i}`, volume, centre: [along(0), along(1), along(2)] as const },
      { way: `under ${i}`, volume: all.displaced, centre: all.buoyancyCentre },
    ];
  });
  return [
    { way: 'measure', ...measured },
    { way: 'tree', volume: totals.volume, centre: totals.volumeCentre },
    ...cuts,
  ];
}

describe.each(SOLIDS)('a $name', ({ points, edge, volume }) => {
  test('has the volume and the centre of its formula, however it is cut', () => {
    const wanted = volume * edge ** 3;
    const { tolerance } = paper.expect.regular;
    for (const { way, volume: got, centre } of found(
      mapMesh(hullMesh(points), (p) => [p[0] + AT[0], p[1] + AT[1], p[2] + AT[2]]),
    )) {
      expect(Math.abs(got / wanted - 1), way).toBeLessThan(tolerance);
      expect(length(subtract(centre, AT)) / length(AT), way).toBeLessThan(tolerance);
    }
  });
});

describe.each(paper.expect.printed.rows)('a regular $name of edge 1', ({ name, volume, area }) => {
  const solid = SOLIDS.find((one) => one.name === name);
  const mesh = hullMesh(solid?.points.map((point) => scale(point, 1 / solid.edge)) ?? []);
  const { tolerance } = paper.expect.printed;

  test(`has the printed volume, ${volume}`, () => {
    expect(Math.abs(measureVolume(mesh).volume - volume)).toBeLessThan(tolerance);
  });

  test(`has the printed area, ${area}`, () => {
    expect(Math.abs(measureArea(mesh).area - area)).toBeLessThan(tolerance);
  });
});

test.each(paper.expect.inscribed.sides.map((sides, i) => ({ sides, share: paper.expect.inscribed.value[i] })))(
  'a prism of $sides flats with its edges on a cylinder holds $share of it',
  ({ sides, share }) => {
    const corner = (k: number) => [Math.cos((2 * Math.PI * k) / sides), Math.sin((2 * Math.PI * k) / sides)] as const;
    const mesh = prismMesh(
      Array.from({ length: sides }, (_, k) => corner(k)),
      0,
      1,
    );
    for (const volume of [measureVolume(mesh).volume, totalsOf(bodyOf(mesh, 0.5)).volume]) {
      expect(Math.abs(volume / Math.PI - share)).toBeLessThan(paper.expect.inscribed.tolerance);
    }
  },
);

describe('the tetrahedron of a paper on inertia', () => {
  const { printed_volume, volume, centre } = paper.expect.tonon;
  const ways = found(hullMesh(paper.given.tonon.map(([x, y, z]): Vec3 => [x, y, z])));

  test('has the volume printed, and more closely that of its printed corners', () => {
    for (const { way, volume: got } of ways) {
      expect(Math.abs(got / printed_volume.value - 1), way).toBeLessThan(printed_volume.tolerance);
      expect(Math.abs(got / volume.value - 1), way).toBeLessThan(volume.tolerance);
    }
  });

  test('has its centre at the mean of its corners', () => {
    const [x, y, z] = centre.value;
    for (const { way, centre: at } of ways) {
      expect(length(subtract(at, [x, y, z])) / length(at), way).toBeLessThan(centre.tolerance);
    }
  });
});

test('the right tetrahedron with unit legs has a sixth of a cube, a quarter out', () => {
  const corners: readonly Vec3[] = [
    [0, 0, 0],
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ];
  for (const { way, volume, centre } of found(hullMesh(corners))) {
    expect(volume, way).toBeCloseTo(1 / 6, 14);
    for (const part of centre) expect(part, way).toBeCloseTo(1 / 4, 13);
  }
});
