/** What a run of triangles is a piece of. */
export type PatchKind = 'skin' | 'fore-face' | 'aft-face' | 'slot';

export interface Patch {
  readonly kind: PatchKind;
  /** First triangle and number of triangles. */
  readonly from: number;
  readonly count: number;
}

/**
 * How the vertices of a link hang together. Depends on counts alone, never on dimensions, so it is made once for each
 * kind of link and stays the same object under every edit that keeps the counts.
 */
export interface Topology {
  /** Names the counts: two topologies with one key are equal. */
  readonly key: string;
  readonly vertexCount: number;
  /**
   * Three vertex numbers a triangle, outward by the right-hand rule. Slots stand last, wound the other way round, so
   * that the whole encloses wood and coat but not the water in the slots.
   */
  readonly index: Uint32Array;
  readonly patches: readonly Patch[];
}

/**
 * A closed surface, each edge shared by exactly two triangles, outward, finite: checked once when built.
 * positions: x, y, z of each vertex in millimetres, body frame.
 */
export interface Mesh {
  readonly topology: Topology;
  readonly positions: Float64Array;
}
