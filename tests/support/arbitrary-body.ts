import fc from 'fast-check';
import type { FloatingBody } from '../../sim/hydro/body.ts';
import { measureVolume } from '../../sim/mesh/measure.ts';
import type { Mesh } from '../../sim/mesh/mesh.ts';
import { add, scale, subtract, unit, type Vec3 } from '../../sim/numerics/vec3.ts';
import { bodyOf, WATER } from './float-mesh.ts';
import { mapMesh, tubeMesh } from './meshes.ts';

/** Evenly spread. Random doubles are even over their bits instead: from -1 to 1 nearly all are next to nothing. */
export function number(min: number, max: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: 1_000_000 }).map((step) => min + ((max - min) * step) / 1_000_000);
}

/** Any direction: also those along an axis, where signs and zeros count. */
export function arbitraryUp(): fc.Arbitrary<Vec3> {
  return fc
    .tuple(number(-1, 1), number(-1, 1), number(-1, 1))
    .filter((v) => v.some((part) => Math.abs(part) > 0.05))
    .map((v) => unit(v));
}

/** Spindles of a link's size, their sections round to square, out of line and askew, somewhere along the body's x. */
export function arbitraryMesh(): fc.Arbitrary<Mesh> {
  const station = fc.record({ wide: number(2, 20), high: number(2, 20), y: number(-2, 2), z: number(-2, 2) });
  return fc
    .record({
      length: number(20, 120),
      from: number(-50, 200),
      corners: fc.integer({ min: 4, max: 14 }),
      square: number(0.5, 1),
      stations: fc.array(station, { minLength: 2, maxLength: 7 }),
    })
    .map(({ length, from, corners, square, stations }) =>
      tubeMesh(
        stations.map(({ wide, high, y, z }, i) => {
          const x = from + (length * i) / (stations.length - 1);
          return Array.from({ length: corners }, (_, k): Vec3 => {
            const [cos, sin] = [Math.cos((2 * Math.PI * k) / corners), Math.sin((2 * Math.PI * k) / corners)];
            const bulge = (part: number) => Math.sign(part) * Math.abs(part) ** square;
            return [x, y + wide * bulge(cos), z + high * bulge(sin)];
          });
        }),
      ),
    );
}

/** A plain body that floats: one mesh, its weight off its middle. */
export interface PlainBody {
  readonly mesh: Mesh;
  /** Mass over that of the water it could displace. */
  readonly share: number;
  readonly centre: Vec3;
}

export function arbitraryPlainBody(): fc.Arbitrary<PlainBody> {
  return fc
    .record({
      mesh: arbitraryMesh(),
      share: number(0.05, 0.95),
      off: fc.tuple(number(-3, 3), number(-2, 2), number(-6, 4)),
    })
    .map(({ mesh, share, off }) => ({ mesh, share, centre: add(measureVolume(mesh).centre, off) }));
}

/** A body with balls outside and things hung from it, light enough to float. */
export function arbitraryBody(): fc.Arbitrary<FloatingBody> {
  const ball = fc.record({ volume: number(1, 300), along: number(-0.6, 0.6), y: number(-25, 25), z: number(-25, 25) });
  const item = fc.record({
    mass: number(0.1, 3),
    sinks: number(0.1, 0.9),
    along: number(-0.6, 0.6),
    z: number(-25, 0),
    hang: number(1, 40),
  });
  return fc
    .record({
      plain: arbitraryPlainBody(),
      balls: fc.array(ball, { maxLength: 3 }),
      items: fc.array(item, { maxLength: 3 }),
    })
    .map(({ plain, balls, items }) => {
      const { centre } = measureVolume(plain.mesh);
      const long = plain.mesh.positions[plain.mesh.positions.length - 3] - plain.mesh.positions[0];
      const place = (along: number, y: number, z: number): Vec3 => add(centre, [along * long, y, z]);
      return bodyOf(plain.mesh, plain.share, plain.centre, {
        outside: balls.map(({ volume, along, y, z }) => ({ volume, at: place(along, y, z) })),
        hung: items.map(({ mass, sinks, along, z, hang }) => ({
          mass,
          volume: ((1 - sinks) * mass) / WATER,
          eye: place(along, 0, z),
          hang,
        })),
      });
    })
    .filter((body) => weightOf(body) < 0.99 * fullLift(body));
}

export function weightOf(body: FloatingBody): number {
  return body.hung.reduce((sum, item) => sum + item.mass, body.mass);
}

function fullLift(body: FloatingBody): number {
  const loose = [...body.outside, ...body.hung].reduce((sum, { volume }) => sum + volume, 0);
  return body.waterDensity * body.trees.reduce((sum, { sums }) => sum + sums[0] / 6, loose);
}

/** The same body as seen in a mirror square to an axis through the origin. */
export function mirrored({ mesh, share, centre }: PlainBody, axis: 0 | 1): PlainBody {
  const flip = (p: Vec3): Vec3 => (axis === 0 ? [-p[0], p[1], p[2]] : [p[0], -p[1], p[2]]);
  return { mesh: mapMesh(mesh, flip, true), share, centre: flip(centre) };
}

export function scaled({ mesh, share, centre }: PlainBody, by: number): PlainBody {
  return { mesh: mapMesh(mesh, (p) => scale(p, by)), share, centre: scale(centre, by) };
}

export function moved({ mesh, share, centre }: PlainBody, by: Vec3): PlainBody {
  return { mesh: mapMesh(mesh, (p) => add(p, by)), share, centre: add(centre, by) };
}

/** Longest distance of a mesh's points from its middle. */
export function reachOf(mesh: Mesh): number {
  const { centre } = measureVolume(mesh);
  let most = 0;
  for (let i = 0; i < mesh.positions.length; i += 3) {
    const p: Vec3 = [mesh.positions[i], mesh.positions[i + 1], mesh.positions[i + 2]];
    most = Math.max(most, Math.hypot(...subtract(p, centre)));
  }
  return most;
}
