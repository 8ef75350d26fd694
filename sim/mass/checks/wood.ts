import { type Hull, sectionMeasure, stationOf } from '../../hull/hull.ts';
import { faceAt, type LinkSpec } from '../../links/cut.ts';
import { add, cross, scale, type Vec3 } from '../../numerics/vec3.ts';
import type { Mm } from '../../units/brand.ts';

/** Rounding of a point that is meant to lie on the skin. */
const ON_SKIN = 1e-6;

/** Whether a point lies in the bare body, gaps not counted out. */
export function inBody(hull: Hull, [x, y, z]: Vec3): boolean {
  if (x < 0 || x > hull.length) return false;
  return sectionMeasure(hull, stationOf(hull, x), y, z) <= 1 + ON_SKIN;
}

/** Whether a point lies between the two bare faces of a link. */
export function betweenFaces(spec: LinkSpec, [x, y]: Vec3): boolean {
  const foreClear = !spec.foreFace || x >= faceAt(spec.foreFace, y) - ON_SKIN;
  const aftClear = !spec.aftFace || x <= faceAt(spec.aftFace, y) + ON_SKIN;
  return foreClear && aftClear;
}

/** Eight points round the rim of a disc of this radius about a point, square to an axis-parallel direction. */
export function rim(centre: Vec3, direction: Vec3, radius: Mm): readonly Vec3[] {
  const side: Vec3 = direction[2] === 0 ? [0, 0, 1] : [1, 0, 0];
  const other = cross(direction, side);
  return Array.from({ length: 8 }, (_, i) => {
    const angle = (Math.PI / 4) * i;
    return add(centre, add(scale(side, radius * Math.cos(angle)), scale(other, radius * Math.sin(angle))));
  });
}

/** Largest half width that a link reaches anywhere along its span. */
export function widestOf(hull: Hull, [from, to]: readonly [Mm, Mm]): Mm {
  const steps = 24;
  return Math.max(
    ...Array.from({ length: steps + 1 }, (_, i) => stationOf(hull, from + ((to - from) * i) / steps).halfWidth),
  );
}

/** A length for a message: two decimals at most, no trailing zeros. */
export function mm(value: number): string {
  return `${Number(value.toFixed(2)) + 0} mm`;
}
