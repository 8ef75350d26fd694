import { describe, expect, test } from 'vitest';
import { openEdges } from '../../../../sim/mesh/check.ts';
import { countsOf, type LinkCounts, layOutVertices, linkTopology, slotCorners } from '../../../../sim/mesh/topology.ts';

const ENDS = [
  ['a bait in one piece', true, true],
  ['a head', true, false],
  ['a tail', false, true],
  ['a middle link', false, false],
] as const;
const DETAILS = [
  { bands: 60, steps: 32 },
  { bands: 30, steps: 16 },
  { bands: 2, steps: 2 },
];
const SHARP: readonly LinkCounts[] = ENDS.flatMap(([, foreTip, aftTip]) =>
  DETAILS.flatMap((detail) => [0, 1, 2, 3, 4, 5, 6].map((slots) => ({ ...detail, foreTip, aftTip, slots }))),
);
/** The same with a knuckle at either end that has a face, or at both; every other slot, at least, opens to one. */
const ROUND: readonly LinkCounts[] = SHARP.flatMap((counts) =>
  [
    { fore: !counts.foreTip, aft: false },
    { fore: false, aft: !counts.aftTip },
    { fore: true, aft: true },
  ]
    .filter(({ fore, aft }) => (fore || aft) && !(fore && counts.foreTip) && !(aft && counts.aftTip))
    .map(({ fore, aft }) => {
      const slots = Array.from({ length: counts.slots }, (_, i) => (fore && aft) || i % 2 === 0);
      return { ...counts, round: { fore, aft, slots } };
    }),
);
const ALL = [...SHARP, ...ROUND];

describe.each(ENDS)('%s', (_, foreTip, aftTip) => {
  const kinds = ALL.filter((counts) => counts.foreTip === foreTip && counts.aftTip === aftTip);

  test('is closed at every detail, with none to six slots', () => {
    for (const counts of kinds) expect(openEdges(linkTopology(counts))).toEqual([]);
  });

  test('uses every vertex, and none that is not there', () => {
    for (const counts of kinds) {
      const { index, vertexCount } = linkTopology(counts);
      expect(layOutVertices(counts).vertexCount).toBe(vertexCount);
      expect(new Set(index).size).toBe(vertexCount);
      expect(Math.max(...index)).toBe(vertexCount - 1);
    }
  });

  test('is one shell, and one more for each slot, none with a handle', () => {
    for (const counts of kinds) {
      const { index, vertexCount } = linkTopology(counts);
      const triangles = index.length / 3;
      // Euler: vertices - edges + triangles is 2 for each closed shell without handles; three half edges a triangle
      expect(vertexCount - (3 * triangles) / 2 + triangles).toBe(2 * (1 + counts.slots));
    }
  });

  test('names every triangle once: skin, its faces, and slots last', () => {
    for (const counts of kinds) {
      const { index, patches } = linkTopology(counts);
      let next = 0;
      for (const patch of patches) {
        expect(patch.from).toBe(next);
        next += patch.count;
      }
      expect(next).toBe(index.length / 3);
      const wanted = ['skin', ...(foreTip ? [] : ['fore-face']), ...(aftTip ? [] : ['aft-face'])];
      expect(patches.map(({ kind }) => kind)).toEqual([...wanted, ...Array(counts.slots).fill('slot')]);
    }
  });
});

test('the same counts give the very same topology, others another', () => {
  const made = ALL.map(linkTopology);
  expect(ALL.map((counts) => linkTopology({ ...counts }))).toEqual(made);
  ALL.forEach((counts, i) => {
    expect(linkTopology({ ...counts })).toBe(made[i]);
    expect(linkTopology({ ...counts }).index).toBe(made[i].index);
  });
  expect(new Set(made).size).toBe(ALL.length);
  expect(new Set(made.map(({ key }) => key)).size).toBe(ALL.length);
});

test('a topology tells what counts it was made from, and only those made here do', () => {
  for (const counts of ALL) expect(countsOf(linkTopology(counts))).toEqual(counts);
  expect(countsOf({ ...linkTopology(ALL[0]) })).toBeUndefined();
});

test('vertices are counted out without gaps: rings, poles, ridges, slots', () => {
  const head = layOutVertices({ bands: 4, steps: 6, foreTip: true, aftTip: false, slots: 2 });
  // stations 1 to 4 have rings of 12, then the nose, then five points on the ridge of the aft face
  expect(head).toEqual({
    ringSize: 12,
    firstRing: 1,
    lastRing: 4,
    forePole: 48,
    aftPole: -1,
    foreRidge: -1,
    aftRidge: 49,
    slots: [54, 64],
    // five corners below and five above for each slot
    vertexCount: 54 + 2 * slotCorners(1),
  });
});
