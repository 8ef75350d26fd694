import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../../sim/numerics/vec3.ts';
import { binaryStl, type Triangle, trianglesOf } from '../../../../sim/out/stl.ts';
import { boxMesh } from '../../../support/box-mesh.ts';
import { openEdgesOf, readStl, volumeOf, wrongNormalsOf } from '../../../support/read-stl.ts';

const BLOCK = { from: [5, -10, -12], to: [65, 10, 18] } as const;
const SLOT = { from: [58, -4, -2], to: [65, 4, 2] } as const;
const MESH = boxMesh(BLOCK, [SLOT]);

describe('a block as a binary STL', () => {
  const bytes = binaryStl(trianglesOf(MESH, ['skin', 'fore-face', 'aft-face']), 'block of oak');
  const file = readStl(bytes);

  test('has 80 bytes of text, a count, and 50 bytes for each of its 12 facets', () => {
    expect(bytes.byteLength).toBe(84 + 50 * 12);
    expect(file.header).toBe('Floatwright: block of oak'.padEnd(80));
  });

  test('encloses what the block does, slot or no slot', () => {
    // 60 x 20 x 30 mm; whole numbers are exact in 32 bits
    expect(volumeOf(file)).toBe(36_000);
  });

  test('is watertight, with normals that look outward', () => {
    expect(openEdgesOf(file)).toEqual([]);
    expect(wrongNormalsOf(file)).toEqual([]);
  });

  test('is noticed by the same checks when a facet is missing or turned over', () => {
    const [first, ...rest] = trianglesOf(MESH, ['skin', 'fore-face', 'aft-face']);
    const [a, b, c] = first as Triangle;
    expect(openEdgesOf(readStl(binaryStl(rest, 'open')))).not.toEqual([]);
    expect(openEdgesOf(readStl(binaryStl([[a, c, b], ...rest], 'turned')))).not.toEqual([]);
  });
});

test('the water in a slot is a closed solid of its own once it is turned outward', () => {
  const file = readStl(binaryStl(trianglesOf(MESH, ['slot'], true), 'slot'));
  // 7 x 8 x 4 mm
  expect(volumeOf(file)).toBeCloseTo(224, 9);
  expect(openEdgesOf(file)).toEqual([]);
  expect(volumeOf(readStl(binaryStl(trianglesOf(MESH, ['slot']), 'slot')))).toBeCloseTo(-224, 9);
});

test('corners that fall together in 32 bits leave no sliver and no gap', () => {
  const [a, b, c, d]: Vec3[] = [
    [0, 0, 0],
    [10, 0, 0],
    [10, 10, 0],
    [0, 10, 0],
  ];
  // a roof with a ridge of a millionth of a millimetre: 32 bits at 5 mm are half that apart
  const p: Vec3 = [5, 5, 9];
  const q: Vec3 = [5, 5 + 1e-7, 9];
  const roof = [
    [a, b, p],
    [b, q, p],
    [b, c, q],
    [c, d, q],
    [d, p, q],
    [d, a, p],
    [a, c, b],
    [a, d, c],
  ] as readonly Triangle[];
  const file = readStl(binaryStl(roof, 'roof'));
  expect(file.facets).toHaveLength(6);
  expect(openEdgesOf(file)).toEqual([]);
  // a pyramid: base 100 mm2, 9 mm high
  expect(volumeOf(file)).toBeCloseTo(300, 9);
});

test('a title in any script is written in plain letters, cut to the room there is', () => {
  const header = (title: string) => readStl(binaryStl([], title)).header;
  expect(header('Über-Fisch 魚')).toBe('Floatwright: Uber-Fisch ?'.padEnd(80));
  expect(header('x'.repeat(200))).toBe(`Floatwright: ${'x'.repeat(67)}`);
  expect(header('solid')).not.toMatch(/^solid/);
});
