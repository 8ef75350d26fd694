import { describe, expect, test } from 'vitest';
import { checkMesh, openEdges } from '../../../../sim/mesh/check.ts';
import type { Mesh } from '../../../../sim/mesh/mesh.ts';
import { boxMesh } from '../../../support/box-mesh.ts';

const BOX = boxMesh({ from: [0, -5, -8], to: [40, 5, 8] });

function withIndex(index: readonly number[]): Mesh {
  return { ...BOX, topology: { ...BOX.topology, index: Uint32Array.from(index) } };
}

const index = [...BOX.topology.index];

describe('edges', () => {
  test('of a box all meet', () => {
    expect(openEdges(BOX.topology)).toEqual([]);
  });

  test('of a box without one triangle stand open, all three', () => {
    expect(openEdges(withIndex(index.slice(3)).topology)).toHaveLength(3);
  });

  test('of a triangle that is turned over run the wrong way', () => {
    const [a, b, c, ...rest] = index;
    expect(openEdges(withIndex([a, c, b, ...rest]).topology)).toHaveLength(3);
  });

  test('of a triangle that is there twice are shared by too many', () => {
    expect(openEdges(withIndex([...index, ...index.slice(0, 3)]).topology)).toHaveLength(3);
  });

  test('are named by their two vertices', () => {
    const [a, b] = index;
    expect(openEdges(withIndex(index.slice(3)).topology)).toContain(`edge ${Math.min(a, b)}–${Math.max(a, b)}`);
  });
});

describe('a mesh', () => {
  test('of a sound box has no issue', () => {
    expect(checkMesh(BOX, 'links.0')).toEqual([]);
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY])('with a point at %d is refused', (wrong) => {
    const positions = Float64Array.from(BOX.positions);
    positions[7] = wrong;
    expect(checkMesh({ ...BOX, positions }, 'links.1')).toMatchObject([{ code: 'mesh/not-finite', path: 'links.1' }]);
  });

  test('that is inside out is refused, with the volume it would have', () => {
    const [issue] = checkMesh(withIndex(index.toReversed()), 'links.2');
    expect(issue).toMatchObject({ code: 'mesh/no-volume', path: 'links.2' });
    expect(issue.message).toContain('-6400.0 mm³');
  });

  test('pressed flat is refused', () => {
    const positions = BOX.positions.map((value, i) => (i % 3 === 2 ? 0 : value));
    expect(checkMesh({ ...BOX, positions }, 'links.0')).toMatchObject([{ code: 'mesh/no-volume' }]);
  });
});
