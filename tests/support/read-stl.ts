import { cross, dot, subtract, type Vec3 } from '../../sim/numerics/vec3.ts';

export interface Facet {
  readonly normal: Vec3;
  readonly corners: readonly [Vec3, Vec3, Vec3];
}

export interface StlFile {
  readonly header: string;
  readonly facets: readonly Facet[];
}

/** Reads a binary STL back, and throws when its length is not that of its count. */
export function readStl(bytes: Uint8Array): StlFile {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = view.getUint32(80, true);
  if (bytes.byteLength !== 84 + 50 * count) throw new Error(`${bytes.byteLength} bytes do not hold ${count} facets`);
  const vectorAt = (at: number): Vec3 => [0, 4, 8].map((step) => view.getFloat32(at + step, true)) as unknown as Vec3;
  return {
    header: new TextDecoder('latin1').decode(bytes.subarray(0, 80)),
    facets: Array.from({ length: count }, (_, i) => {
      const at = 84 + 50 * i;
      return { normal: vectorAt(at), corners: [vectorAt(at + 12), vectorAt(at + 24), vectorAt(at + 36)] };
    }),
  };
}

/** Volume by the divergence theorem, positive when the facets look outward. */
export function volumeOf({ facets }: StlFile): number {
  return facets.reduce((sum, { corners: [a, b, c] }) => sum + dot(a, cross(b, c)) / 6, 0);
}

/** Edges that are not run along exactly as often one way as the other; none in a watertight file. */
export function openEdgesOf({ facets }: StlFile): readonly string[] {
  const balance = new Map<string, number>();
  const add = (edge: string, by: number) => balance.set(edge, (balance.get(edge) ?? 0) + by);
  for (const { corners } of facets) {
    for (let i = 0; i < 3; i++) {
      const [from, to] = [corners[i]?.join(), corners[(i + 1) % 3]?.join()];
      add(`${from} ${to}`, 1);
      add(`${to} ${from}`, -1);
    }
  }
  return [...balance].filter(([, times]) => times !== 0).map(([edge]) => edge);
}

/** Facets whose normal is neither the right-hand one of their corners nor, where they have no area, zero. */
export function wrongNormalsOf({ facets }: StlFile): readonly Facet[] {
  return facets.filter(({ normal, corners: [a, b, c] }) => {
    const wanted = cross(subtract(b, a), subtract(c, a));
    const size = Math.hypot(...wanted);
    // one part in 10^6: normals are written in 32 bits
    return size === 0 ? Math.hypot(...normal) !== 0 : Math.abs(dot(normal, wanted) / size - 1) > 1e-6;
  });
}
