import { add, cross, dot, scale, subtract, unit, type Vec3 } from './vec3.ts';

/** Directions spread evenly over the sphere, with who stands next to whom. */
export interface SphereGrid {
  readonly points: readonly Vec3[];
  /** Two earlier points that each point was set half-way between; null for the first twelve. */
  readonly parents: readonly (readonly [number, number] | null)[];
  /** The five or six next to each point, in their order round it. */
  readonly around: readonly (readonly number[])[];
}

/** A turn without symmetry, so that no direction lies on an axis, in a plane of symmetry or square to one. */
const ASKEW: readonly [Vec3, Vec3, Vec3] = (() => {
  const x = unit([0.811, 0.377, -0.447]);
  const y = unit(cross([0.213, -0.341, 0.915], x));
  return [x, y, cross(x, y)];
})();

const GOLDEN = (1 + Math.sqrt(5)) / 2;

const grids = new Map<number, SphereGrid>();

/** The icosahedron halved `level` times: 12, 42, 162, 642 directions for 0 to 3. The same object every time. */
export function sphereGrid(level: number): SphereGrid {
  const known = grids.get(level);
  if (known) return known;
  const grid = buildGrid(level);
  grids.set(level, grid);
  return grid;
}

/**
 * The cell of each point: corners, in their order round it, of all that lies nearer to it than to any other. Three cells
 * meet where three neighbours are equally far.
 */
export function cellsOf({ points, around }: SphereGrid): readonly (readonly Vec3[])[] {
  return points.map((point, i) =>
    around[i].map((one, k) => {
      const [a, b] = [points[one], points[around[i][(k + 1) % around[i].length]]];
      const middle = unit(cross(subtract(a, point), subtract(b, point)));
      return dot(middle, point) > 0 ? middle : scale(middle, -1);
    }),
  );
}

function buildGrid(level: number): SphereGrid {
  const points: Vec3[] = [-1, 1].flatMap((a) =>
    [-GOLDEN, GOLDEN].flatMap((b): Vec3[] => [unit([0, a, b]), unit([a, b, 0]), unit([b, 0, a])]),
  );
  const parents: ([number, number] | null)[] = points.map(() => null);
  const edge = Math.min(...points.slice(1).map((p) => 1 - dot(p, points[0])));
  const near = (i: number, j: number) => 1 - dot(points[i], points[j]) < 1.01 * edge;
  let faces: [number, number, number][] = [];
  for (let i = 0; i < 12; i++) {
    for (let j = i + 1; j < 12; j++) {
      for (let k = j + 1; k < 12; k++) if (near(i, j) && near(j, k) && near(k, i)) faces.push([i, j, k]);
    }
  }
  for (let i = 0; i < level; i++) {
    const middles = new Map<string, number>();
    const middle = (a: number, b: number): number => {
      const key = a < b ? `${a} ${b}` : `${b} ${a}`;
      const made = middles.get(key);
      if (made !== undefined) return made;
      points.push(unit(add(points[a], points[b])));
      parents.push([a, b]);
      middles.set(key, points.length - 1);
      return points.length - 1;
    };
    faces = faces.flatMap(([a, b, c]): [number, number, number][] => {
      const [ab, bc, ca] = [middle(a, b), middle(b, c), middle(c, a)];
      return [
        [a, ab, ca],
        [b, bc, ab],
        [c, ca, bc],
        [ab, bc, ca],
      ];
    });
  }
  const beside = points.map(() => new Set<number>());
  for (const face of faces) for (const i of face) for (const j of face) if (i !== j) beside[i].add(j);
  return {
    points: points.map((p) => unit([dot(ASKEW[0], p), dot(ASKEW[1], p), dot(ASKEW[2], p)])),
    parents,
    around: points.map((point, i) => inOrder(point, [...beside[i]], points)),
  };
}

/** Neighbours sorted by their bearing as seen from a point. */
function inOrder(point: Vec3, neighbours: readonly number[], points: readonly Vec3[]): readonly number[] {
  const towards = (i: number) => subtract(points[i], scale(point, dot(point, points[i])));
  const east = unit(towards(neighbours[0]));
  const north = cross(point, east);
  const bearing = (i: number) => Math.atan2(dot(towards(i), north), dot(towards(i), east));
  return neighbours.toSorted((a, b) => bearing(a) - bearing(b));
}
