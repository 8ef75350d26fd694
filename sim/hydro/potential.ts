import { dot, subtract, type Vec3 } from '../numerics/vec3.ts';
import type { Mm, Mm3 } from '../units/brand.ts';
import { type FloatingBody, meshesOf } from './body.ts';
import { submerge, WET } from './submerge.ts';

/**
 * Potential of a floating body over attitude and draft, divided by the acceleration of free fall, in g·mm:
 *
 *   Φ(n, d) = m (n·G - d) + ρ ∫_wet (d - n·p) dV + the same for outside parts and hung items
 *
 * Its minimum over (n, d) is a resting attitude: ∂Φ/∂d = 0 says that weight equals buoyancy, the slope over n that no
 * moment is left. n turns about the pivot c: with p measured from c and the plane's offset d_c from c,
 *
 *   ∂Φ/∂d_c        = ρV - m
 *   ∂Φ/∂n          = g = mG - ρM                          (felt through its part square to n)
 *   ∂²Φ/∂d_c²      = ρA
 *   ∂²Φ/∂d_c ∂e    = -ρ ∫ p·e dA
 *   ∂²Φ/∂e ∂f      = ρ ∫ (p·e)(p·f) dA - (n·g) e·f          (last term: n stays on the unit sphere)
 *
 * Derived for this project from the hydrostatic pressure integral.
 */
export interface Potential {
  readonly value: number;
  /** ρV - m: what is left over when it does not float freely. */
  readonly force: number;
  /** Slopes and curvatures along u and v, with the plane turning about `centre`, where draft and attitude uncouple. */
  readonly slopeU: number;
  readonly slopeV: number;
  readonly curveDD: number;
  readonly curveUU: number;
  readonly curveUV: number;
  readonly curveVV: number;
  /** The pivot the slopes and curvatures are about: middle of the waterplane, or of the wet part. */
  readonly centre: Vec3;
  /** Fixed displacement that is wet, and its centre. */
  readonly displaced: Mm3;
  readonly buoyancyCentre: Vec3;
  readonly hungDisplaced: Mm3;
  readonly area: number;
}

/** Two unit vectors that complete a right-handed frame with n: u × v = n. */
export function planeAxes(n: Vec3): readonly [Vec3, Vec3] {
  // the axis that n leans on least keeps the frame well away from its pole (J. R. Hughes, T. Möller, JGT 4 (1999) 33)
  const [x, y, z] = n;
  const flat: Vec3 = Math.abs(x) < 0.9 ? [1 - x * x, -x * y, -x * z] : [-y * x, 1 - y * y, -y * z];
  const size = 1 / Math.sqrt(dot(flat, flat));
  const u: Vec3 = [flat[0] * size, flat[1] * size, flat[2] * size];
  return [u, [y * u[2] - z * u[1], z * u[0] - x * u[2], x * u[1] - y * u[0]]];
}

const wet = new Float64Array(WET.size);

/** Works out the potential and its derivatives at the water surface n·p = d. u, v: `planeAxes(n)`. */
export function potentialAt(body: FloatingBody, n: Vec3, u: Vec3, v: Vec3, d: Mm): Potential {
  const rho = body.waterDensity;
  const pivot = body.centre;
  wet.fill(0);
  for (const tree of meshesOf(body)) submerge(tree, n, u, v, d, pivot, wet);
  let volume = wet[WET.volume];
  let mx = wet[WET.moment];
  let my = wet[WET.moment + 1];
  let mz = wet[WET.moment + 2];
  let area = wet[WET.area];
  let areaU = wet[WET.areaU];
  let areaV = wet[WET.areaV];
  let areaUU = wet[WET.areaUU];
  let areaUV = wet[WET.areaUV];
  let areaVV = wet[WET.areaVV];
  const offset = d - dot(n, pivot);
  // energy of the meshes: ∫_wet (d - n·p) dV
  let energy = offset * volume - (n[0] * mx + n[1] * my + n[2] * mz);

  const springAt = (p: Vec3, slope: number) => {
    const pu = dot(p, u);
    const pv = dot(p, v);
    area += slope;
    areaU += slope * pu;
    areaV += slope * pv;
    areaUU += slope * pu * pu;
    areaUV += slope * pu * pv;
    areaVV += slope * pv * pv;
  };

  for (const part of body.outside) {
    const p = subtract(part.at, pivot);
    const radius = Math.cbrt((3 * part.volume) / (4 * Math.PI));
    // depth of the ball's lowest point, and the cap below the surface: V = π h² (3 r - h)/3
    const h = radius - (dot(n, p) - offset);
    if (h <= 0 || radius === 0) continue;
    const cap = Math.min(h, 2 * radius);
    const wetVolume = (Math.PI * cap * cap * (3 * radius - cap)) / 3;
    energy += Math.PI * cap ** 3 * (radius / 3 - cap / 12) + part.volume * Math.max(0, h - 2 * radius);
    volume += wetVolume;
    mx += wetVolume * p[0];
    my += wetVolume * p[1];
    mz += wetVolume * p[2];
    springAt(p, Math.PI * cap * (2 * radius - cap));
  }
  const displaced = volume;
  const displacedCentre: Vec3 =
    volume > 0 ? [pivot[0] + mx / volume, pivot[1] + my / volume, pivot[2] + mz / volume] : [...pivot];

  let mass = body.mass;
  let gx = 0;
  let gy = 0;
  let gz = 0;
  let hungDisplaced = 0;
  let lift = 0;
  for (const item of body.hung) {
    const p = subtract(item.eye, pivot);
    const height = dot(n, p) - offset;
    // it hangs from `height` over the surface down to `height - hang`
    const under = item.hang - height;
    const depth = Math.min(Math.max(under, 0), item.hang);
    const wetVolume = item.hang > 0 ? (item.volume * depth) / item.hang : height < 0 ? item.volume : 0;
    if (item.hang > 0) energy += (item.volume * depth * depth) / (2 * item.hang) + item.volume * Math.max(0, -height);
    else energy += item.volume * Math.max(0, -height);
    hungDisplaced += wetVolume;
    mass += item.mass;
    gx += item.mass * p[0];
    gy += item.mass * p[1];
    gz += item.mass * p[2];
    lift += item.mass * (n[0] * p[0] + n[1] * p[1] + n[2] * p[2]);
    volume += wetVolume;
    mx += wetVolume * p[0];
    my += wetVolume * p[1];
    mz += wetVolume * p[2];
    if (under > 0 && under < item.hang) springAt(p, item.volume / item.hang);
  }
  // g = mG - ρM, measured from the pivot, where the fixed mass has no arm of its own
  gx -= rho * mx;
  gy -= rho * my;
  gz -= rho * mz;
  const force = rho * volume - mass;

  // move the turning point to the middle of the waterplane: slopes and curvatures uncouple there
  let cu = 0;
  let cv = 0;
  let cn = offset;
  if (area > 0) {
    cu = areaU / area;
    cv = areaV / area;
    areaUU -= area * cu * cu;
    areaUV -= area * cu * cv;
    areaVV -= area * cv * cv;
  } else if (displaced > 0) {
    const towards = subtract(displacedCentre, pivot);
    cu = dot(towards, u);
    cv = dot(towards, v);
    cn = dot(towards, n);
  }
  // moments about the new point: mG - ρM loses (m - ρV) c
  const gu = dot([gx, gy, gz], u) + force * cu;
  const gv = dot([gx, gy, gz], v) + force * cv;
  const gn = dot([gx, gy, gz], n) + force * cn;
  return {
    value: lift - mass * offset + rho * energy,
    force,
    slopeU: gu,
    slopeV: gv,
    curveDD: rho * area,
    curveUU: rho * areaUU - gn,
    curveUV: rho * areaUV,
    curveVV: rho * areaVV - gn,
    centre: [
      pivot[0] + cu * u[0] + cv * v[0] + cn * n[0],
      pivot[1] + cu * u[1] + cv * v[1] + cn * n[1],
      pivot[2] + cu * u[2] + cv * v[2] + cn * n[2],
    ],
    displaced,
    buoyancyCentre: displacedCentre,
    hungDisplaced,
    area,
  };
}
