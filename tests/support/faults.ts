import { openEdges } from '../../sim/mesh/check.ts';
import type { Topology } from '../../sim/mesh/mesh.ts';

/** Places of numbers that are not finite, in whatever answer. */
export function wildNumbers(part: unknown, place = ''): readonly string[] {
  if (typeof part === 'number') return Number.isFinite(part) ? [] : [`${place}: ${part}`];
  if (part instanceof Float64Array) return part.every(Number.isFinite) ? [] : [`${place}: an array`];
  if (typeof part !== 'object' || part === null || ArrayBuffer.isView(part)) return [];
  return Object.entries(part).flatMap(([key, child]) => wildNumbers(child, `${place}.${key}`));
}

const closed = new Set<Topology>();

/** Whether every edge is shared by two triangles; looked at once for each topology. */
export function isClosed(topology: Topology): boolean {
  if (!closed.has(topology) && openEdges(topology).length === 0) closed.add(topology);
  return closed.has(topology);
}
