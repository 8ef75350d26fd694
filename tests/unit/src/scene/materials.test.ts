import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { ShaderChunk, type ShaderMaterial, type Vector4 } from 'three';
import { describe, expect, test } from 'vitest';
import { makeLooks } from '../../../../src/scene/looks.ts';
import {
  makeLinkMaterial,
  makeShared,
  SLOT_LIMIT,
  setOtherWaterline,
  setSheen,
  setSlots,
  setViewport,
} from '../../../../src/scene/materials.ts';
import { withChunks } from '../../../../src/scene/shader-chunks.ts';

const shared = makeShared();
const { parts, ...looks } = makeLooks(shared);
const link = makeLinkMaterial(shared, '#ffffff');
const materials: readonly (readonly [string, ShaderMaterial])[] = [
  ['link', link],
  ...Object.entries(looks),
  ...Object.entries(parts).flatMap(([kind, { seen, hidden }]) => [
    [`${kind} seen`, seen] as const,
    [`${kind} hidden`, hidden] as const,
  ]),
];

const sourceOf = (material: ShaderMaterial) => `${material.vertexShader}\n${material.fragmentShader}`;

describe.each(materials)('the shader of %s', (_, material) => {
  test('is given every uniform it declares, and no other', () => {
    const declared = [...sourceOf(material).matchAll(/^uniform \w+ (\w+)/gm)].map(([, name]) => name);
    expect([...new Set(declared)].sort()).toEqual(Object.keys(material.uniforms).sort());
  });

  test('has all its pieces put in, but for those that three puts in itself', () => {
    const left = [...sourceOf(material).matchAll(/#include <([^>]+)>/g)].map(([, name]) => name);
    for (const name of left) expect(ShaderChunk).toHaveProperty([name]);
  });
});

test('a piece that nobody has is left in place for the compiler to complain of', () => {
  expect(withChunks('#include <no-such-piece>')).toBe('#include <no-such-piece>');
});

test('every piece in shaders/ is one that a shader can ask for', () => {
  const folder = fileURLToPath(new URL('../../../../shaders/', import.meta.url));
  const pieces = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.glsl') && !/\.(vert|frag)\.glsl$/.test(file))
    .map((file) => file.replace(/^.*\//, '').replace('.glsl', ''));
  expect(pieces.length).toBeGreaterThan(5);
  for (const piece of pieces) expect(withChunks(`#include <${piece}>`)).not.toContain('#include');
});

test('the tub’s size is told to all shaders at once', () => {
  setViewport(shared, 1200, 500, 2);
  expect(link.uniforms.uPixelRatio.value).toBe(2);
  expect(looks.outline.uniforms.uViewport_px.value.toArray()).toEqual([1200, 500]);
});

test('bare wood is dull, and the thicker its coats the more it shines', () => {
  const sheens = [0, 0.1, 0.4, 5].map((coats) => {
    setSheen(link, coats);
    return Number(link.uniforms.uSheen.value);
  });
  expect(sheens[0]).toBe(0);
  expect(sheens).toEqual([...sheens].sort((one, other) => one - other));
  expect(sheens.at(-1)).toBeLessThanOrEqual(1);
  expect(new Set(sheens).size).toBe(4);
});

test('slots are open where the link has them and shut again when it loses them', () => {
  const boxes = link.uniforms.uSlots_mm.value as readonly Vector4[];
  setSlots(link, [{ opens: 'aft', width: 7.5, z: [6.75, 9.25], floor: 50, volume: 140 }]);
  expect(boxes[0]?.toArray()).toEqual([3.75, 6.75, 9.25, 2]);
  setSlots(link, []);
  expect(boxes.map((box) => box.w)).toEqual(Array.from({ length: SLOT_LIMIT }, () => 0));
});

test('the waterline of a setup beside is drawn where it floats, and not where it is under water or there is none', () => {
  const plane = () => (link.uniforms.uOther_mm.value as Vector4).toArray();
  setOtherWaterline(shared, { up: [0, 0.6, 0.8], offset: 7 });
  expect(plane()).toEqual([0, 0.6, 0.8, 7]);
  for (const none of [null, { up: [0, 0, 1], offset: null } as const]) {
    setOtherWaterline(shared, none);
    // a plane that no point lies in
    expect(plane()).toEqual([0, 0, 0, 1]);
  }
});
