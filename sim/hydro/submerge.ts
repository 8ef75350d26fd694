import type { Vec3 } from '../numerics/vec3.ts';
import type { Tree } from './tree.ts';

/** Where each integral stands in the array that `submerge` adds to. */
export const WET = {
  /** Wet volume. */
  volume: 0,
  /** ∫ p dV over the wet part: x, y, z. */
  moment: 1,
  /** Waterplane area. */
  area: 4,
  /** ∫ u dA, ∫ v dA, with u and v along the plane's two axes. */
  areaU: 5,
  areaV: 6,
  /** ∫ u² dA, ∫ u v dA, ∫ v² dA. */
  areaUU: 7,
  areaUV: 8,
  areaVV: 9,
  size: 10,
} as const;

/**
 * Cuts a mesh with the water surface n·p = d and adds its wet volume, first moment and waterplane integrals to `out`.
 * Exact for the mesh.
 *
 *   V = Σ a·(b × c)/6 over the wet triangles, clipped, plus the cap, A d/3 seen from the origin
 *   M = Σ (a + b + c)/4 · a·(b × c)/6, plus the cap's d/4 ∫ p dA
 *
 * The cap is never built: the plane's integrals come from the segments in which it cuts triangles (Green's theorem),
 * run backwards, since the cap looks up where the skin's edge looks out.
 *
 * n, u, v: right-handed unit vectors, u and v in the plane; d and `pivot` in the mesh's own frame. All results are
 * measured from the pivot.
 */
export function submerge(tree: Tree, n: Vec3, u: Vec3, v: Vec3, d: number, pivot: Vec3, out: Float64Array): void {
  const { points: p, boxes, sums, origin } = tree;
  const { index, skip, first, count } = tree.shape;
  const nx = n[0];
  const ny = n[1];
  const nz = n[2];
  const ux = u[0];
  const uy = u[1];
  const uz = u[2];
  const vx = v[0];
  const vy = v[1];
  const vz = v[2];
  const absX = Math.abs(nx);
  const absY = Math.abs(ny);
  const absZ = Math.abs(nz);
  const level = d - (nx * origin[0] + ny * origin[1] + nz * origin[2]);
  let six = 0;
  let mx = 0;
  let my = 0;
  let mz = 0;
  let area = 0;
  let areaU = 0;
  let areaV = 0;
  let areaUU = 0;
  let areaUV = 0;
  let areaVV = 0;
  const nodes = skip.length;
  let node = 0;
  while (node < nodes) {
    const box = 6 * node;
    const middle = nx * boxes[box] + ny * boxes[box + 1] + nz * boxes[box + 2] - level;
    const reach = absX * boxes[box + 3] + absY * boxes[box + 4] + absZ * boxes[box + 5];
    // a hair of slack, so that rounding never calls a node dry or wet that a triangle's own heights would cut
    const slack = 1e-12 * (reach + Math.abs(level)) + 1e-300;
    if (middle - reach > slack) {
      node = skip[node];
      continue;
    }
    if (middle + reach < -slack) {
      const sum = 4 * node;
      six += sums[sum];
      mx += sums[sum + 1];
      my += sums[sum + 2];
      mz += sums[sum + 3];
      node = skip[node];
      continue;
    }
    const triangles = count[node];
    if (triangles === 0) {
      node++;
      continue;
    }
    const to = 3 * (first[node] + triangles);
    for (let i = 3 * first[node]; i < to; i += 3) {
      let a = 3 * index[i];
      let b = 3 * index[i + 1];
      let c = 3 * index[i + 2];
      let ha = nx * p[a] + ny * p[a + 1] + nz * p[a + 2] - level;
      let hb = nx * p[b] + ny * p[b + 1] + nz * p[b + 2] - level;
      let hc = nx * p[c] + ny * p[c + 1] + nz * p[c + 2] - level;
      const wet = (ha < 0 ? 1 : 0) + (hb < 0 ? 1 : 0) + (hc < 0 ? 1 : 0);
      if (wet === 0) continue;
      if (wet !== 3) {
        // turn the triangle so that the odd corner out comes last (two wet) or first (one wet)
        const odd = wet === 1;
        while (odd ? ha >= 0 : hc < 0) {
          const turn = a;
          a = b;
          b = c;
          c = turn;
          const turnHeight = ha;
          ha = hb;
          hb = hc;
          hc = turnHeight;
        }
      }
      const ax = p[a];
      const ay = p[a + 1];
      const az = p[a + 2];
      let bx = p[b];
      let by = p[b + 1];
      let bz = p[b + 2];
      let cx = p[c];
      let cy = p[c + 1];
      let cz = p[c + 2];
      if (wet !== 3) {
        // from a to the dry corner c: both neighbours of that edge interpolate from its wet end, to the same point
        const s = ha / (ha - hc);
        const qx = ax + s * (cx - ax);
        const qy = ay + s * (cy - ay);
        const qz = az + s * (cz - az);
        let rx: number;
        let ry: number;
        let rz: number;
        if (wet === 1) {
          const t = ha / (ha - hb);
          rx = ax + t * (bx - ax);
          ry = ay + t * (by - ay);
          rz = az + t * (bz - az);
          bx = rx;
          by = ry;
          bz = rz;
        } else {
          const t = hb / (hb - hc);
          rx = bx + t * (cx - bx);
          ry = by + t * (cy - by);
          rz = bz + t * (cz - bz);
          const extra = ax * (by * rz - bz * ry) + ay * (bz * rx - bx * rz) + az * (bx * ry - by * rx);
          six += extra;
          mx += extra * (ax + bx + rx);
          my += extra * (ay + by + ry);
          mz += extra * (az + bz + rz);
          bx = rx;
          by = ry;
          bz = rz;
        }
        cx = qx;
        cy = qy;
        cz = qz;
        // the skin's edge runs r to q, so the cap's runs q to r
        const qu = ux * qx + uy * qy + uz * qz;
        const qv = vx * qx + vy * qy + vz * qz;
        const ru = ux * rx + uy * ry + uz * rz;
        const rv = vx * rx + vy * ry + vz * rz;
        const twice = qu * rv - ru * qv;
        area += twice;
        areaU += twice * (qu + ru);
        areaV += twice * (qv + rv);
        areaUU += twice * (qu * qu + qu * ru + ru * ru);
        areaUV += twice * (2 * (qu * qv + ru * rv) + qu * rv + ru * qv);
        areaVV += twice * (qv * qv + qv * rv + rv * rv);
      }
      const piece = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
      six += piece;
      mx += piece * (ax + bx + cx);
      my += piece * (ay + by + cy);
      mz += piece * (az + bz + cz);
    }
    node = skip[node];
  }
  area /= 2;
  areaU /= 6;
  areaV /= 6;
  areaUU /= 12;
  areaUV /= 24;
  areaVV /= 12;
  const volume = (six / 2 + area * level) / 3;
  const lift = level / 4;
  // from the tree's own origin to the pivot
  const ox = origin[0] - pivot[0];
  const oy = origin[1] - pivot[1];
  const oz = origin[2] - pivot[2];
  const ou = ux * ox + uy * oy + uz * oz;
  const ov = vx * ox + vy * oy + vz * oz;
  out[WET.volume] += volume;
  out[WET.moment] += mx / 24 + lift * (ux * areaU + vx * areaV + nx * level * area) + volume * ox;
  out[WET.moment + 1] += my / 24 + lift * (uy * areaU + vy * areaV + ny * level * area) + volume * oy;
  out[WET.moment + 2] += mz / 24 + lift * (uz * areaU + vz * areaV + nz * level * area) + volume * oz;
  out[WET.area] += area;
  out[WET.areaU] += areaU + area * ou;
  out[WET.areaV] += areaV + area * ov;
  out[WET.areaUU] += areaUU + ou * (2 * areaU + ou * area);
  out[WET.areaUV] += areaUV + ou * areaV + ov * areaU + ou * ov * area;
  out[WET.areaVV] += areaVV + ov * (2 * areaV + ov * area);
}
