import { describe, expect, test } from 'vitest';
import type { Design, Joint, Slot } from '../../../../sim/design/design.ts';
import { cutLinks, faceAt, ownerAt, slotFloor } from '../../../../sim/links/cut.ts';

const DEGREE = Math.PI / 180;

function slot(side: Slot['in'], from: number): Slot {
  return { in: side, width: 8, depth: 7, z: [from, from + 3] };
}

function joint(x: number, gap: number, fore: number, aft: number, slots: readonly Slot[]): Joint {
  const pin = { x, diameter: 2, z: [-9, 9], heldBy: 'fore', density: 0.00785 } as const;
  const hinge = { kind: 'pin', eyes: [], wire: 1.5, bore: 3, shank: 10, pin } as const;
  return { x, gap, faces: { kind: 'bevel', fore: fore * DEGREE, aft: aft * DEGREE }, hinge, slots };
}

const LINKS: Design['links'] = ['head', 'middle', 'tail'].map((name) => ({ name, density: null }));
const JOINTS = [
  joint(50, 2, 20, 30, [slot('fore', 5), slot('fore', -8), slot('aft', -1)]),
  joint(90, 3, 0, 45, [slot('aft', 4)]),
];

describe('a body sawn at two joints', () => {
  const [head, middle, tail] = cutLinks(140, LINKS, JOINTS);

  test('is three links in order, half a gap short of each joint', () => {
    expect(cutLinks(140, LINKS, JOINTS)).toHaveLength(3);
    expect([head, middle, tail].map(({ index, name, span }) => [index, name, span])).toEqual([
      [0, 'head', [0, 49]],
      [1, 'middle', [51, 88.5]],
      [2, 'tail', [91.5, 140]],
    ]);
  });

  test('has no face at nose and tail', () => {
    expect(head.foreFace).toBeNull();
    expect(tail.aftFace).toBeNull();
  });

  test('has faces that fall back from their ridge, each into its own link and by its own angle', () => {
    expect(head.aftFace).toEqual({ at: 49, lean: -Math.tan(20 * DEGREE), looks: 'aft' });
    expect(middle.foreFace).toEqual({ at: 51, lean: Math.tan(30 * DEGREE), looks: 'fore' });
    expect(middle.aftFace).toEqual({ at: 88.5, lean: -0, looks: 'aft' });
    expect(tail.foreFace).toEqual({ at: 91.5, lean: Math.tan(45 * DEGREE), looks: 'fore' });
  });

  test('gives each slot to the link that it is sawn into, open to the joint, with its place in the file', () => {
    expect(head.slots.map(({ opens, path, z }) => [opens, path, z])).toEqual([
      ['aft', 'joints.0.slots.0', [5, 8]],
      ['aft', 'joints.0.slots.1', [-8, -5]],
    ]);
    expect(middle.slots.map(({ opens, path }) => [opens, path])).toEqual([['fore', 'joints.0.slots.2']]);
    expect(tail.slots.map(({ opens, path }) => [opens, path])).toEqual([['fore', 'joints.1.slots.0']]);
  });

  test('has slots that end as deep behind the ridge as they say', () => {
    if (!head.aftFace || !tail.foreFace) throw new Error('both faces are wanted');
    expect(slotFloor(head.slots[0], head.aftFace)).toBe(42);
    expect(slotFloor(tail.slots[0], tail.foreFace)).toBe(98.5);
  });

  test('has a face as far back to port as to starboard', () => {
    if (!tail.foreFace) throw new Error('a face is wanted');
    expect(faceAt(tail.foreFace, 0)).toBe(91.5);
    expect(faceAt(tail.foreFace, 6)).toBeCloseTo(97.5, 12);
    expect(faceAt(tail.foreFace, -6)).toBe(faceAt(tail.foreFace, 6));
  });
});

test('a body without joints is one link from nose to tail', () => {
  expect(cutLinks(140, LINKS.slice(0, 1), [])).toEqual([
    { index: 0, name: 'head', span: [0, 140], foreFace: null, aftFace: null, slots: [] },
  ]);
});

describe('what stands at a station', () => {
  test.each([
    [-20, 0],
    [0, 0],
    [49.9, 0],
    [50.1, 1],
    [89, 1],
    [90.1, 2],
    [140, 2],
    [170, 2],
  ])('at %d mm belongs to link %d, counted from the nose', (x, link) => {
    expect(ownerAt(JOINTS, x)).toBe(link);
  });

  test('belongs to the only link of a bait in one piece', () => {
    expect(ownerAt([], 70)).toBe(0);
  });
});
