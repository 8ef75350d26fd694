import type { Mesh } from '../../sim/mesh/mesh.ts';
import { add, cross, dot, scale, subtract, type Vec3 } from '../../sim/numerics/vec3.ts';
import { pointsOf } from './meshes.ts';

/** What lies under a water surface n·p = d, and the surface's own integrals along u and v. */
interface Wet {
  readonly volume: number;
  readonly moment: Vec3;
  /** ∫ 1, u, v, u², u v, v² dA. */
  readonly plane: readonly number[];
}

/**
 * The same integrals as the engine's pass, another way round. Every triangle is clipped to a polygon, and cones are
 * drawn from a point of the water surface to its triangles, so the cap adds nothing to volume and moment. The plane's
 * integrals are taken over the wet skin: the field f(u, v) n has no divergence, so what leaves through the cap comes
 * in through the skin, and the rule of edge middles is exact for f of the second degree.
 */
export function clipByHand(mesh: Mesh, n: Vec3, u: Vec3, v: Vec3, d: number): Wet {
  const points = pointsOf(mesh);
  const apex = scale(n, d / dot(n, n));
  const { index } = mesh.topology;
  let volume = 0;
  let moment: Vec3 = [0, 0, 0];
  const plane = [0, 0, 0, 0, 0, 0];
  for (let i = 0; i < index.length; i += 3) {
    const corners = [points[index[i]], points[index[i + 1]], points[index[i + 2]]];
    const polygon = clip(corners, (p) => dot(n, p) - d);
    for (let k = 2; k < polygon.length; k++) {
      const [a, b, c] = [polygon[0], polygon[k - 1], polygon[k]];
      const normal = scale(cross(subtract(b, a), subtract(c, a)), 1 / 2);
      const cone = dot(subtract(a, apex), normal) / 3;
      volume += cone;
      moment = add(moment, scale(add(add(apex, a), add(b, c)), cone / 4));
      const shadow = -dot(n, normal);
      for (const middle of [add(a, b), add(b, c), add(c, a)]) {
        const [along, across] = [dot(u, middle) / 2, dot(v, middle) / 2];
        const powers = [1, along, across, along * along, along * across, across * across];
        powers.forEach((power, k) => {
          plane[k] += (shadow * power) / 3;
        });
      }
    }
  }
  return { volume, moment, plane };
}

/** The part of a polygon where a linear height is under zero (Sutherland and Hodgman). */
function clip(corners: readonly Vec3[], height: (p: Vec3) => number): readonly Vec3[] {
  return corners.flatMap((a, i) => {
    const b = corners[(i + 1) % corners.length];
    const [ha, hb] = [height(a), height(b)];
    const kept = ha < 0 ? [a] : [];
    return ha < 0 !== hb < 0 ? [...kept, add(a, scale(subtract(b, a), ha / (ha - hb)))] : kept;
  });
}
