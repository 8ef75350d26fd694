import { describe, expect, test } from 'vitest';
import { roomOf } from '../../../../src/scene/room.ts';
import { reachAlong, shownBait, waterlineEnd } from '../../../../src/scene/shown.ts';
import { goodOf } from '../../../support/change-file.ts';
import { makeDesignFile } from '../../../support/make-design.ts';
import { outcomesOf } from '../../../support/worked-bait.ts';

const PLAIN = outcomesOf(makeDesignFile());
const NOTHING = { bait: {}, links: [] };
/** Of wood denser than water: it goes down whole. */
const HEAVY = outcomesOf(makeDesignFile({ wood: { density_g_cm3: 1.2 } }));

function seen(answers: Parameters<typeof shownBait>[0], shown: 'whole' | number) {
  const bait = shownBait(answers, shown);
  if (bait === null) throw new Error('nothing is shown');
  return bait;
}

describe('the tub', () => {
  test('is empty before the first answers', () => {
    expect(shownBait({ ...NOTHING, lastGood: NOTHING }, 'whole')).toBeNull();
    expect(shownBait({ ...NOTHING, lastGood: NOTHING }, 0)).toBeNull();
  });

  test('shows the whole bait as its pins hold it, with all that it carries', () => {
    const bait = seen({ ...PLAIN, lastGood: NOTHING }, 'whole');
    expect(bait.links.map(({ index }) => index)).toEqual([0, 1]);
    expect(bait.hung.map(({ name }) => name)).toEqual(['fore treble', 'aft treble']);
    expect(bait.pins).toHaveLength(1);
    expect(bait.float).toBe(PLAIN.bait.assembled && goodOf(PLAIN.bait.assembled));
    expect(bait.pose.offset).toBe(bait.float.offset);
    expect(bait.kept).toBe(false);
  });

  test('shows a link alone at its own float, with its own parts only', () => {
    const tail = seen({ ...PLAIN, lastGood: NOTHING }, 1);
    expect(tail.links.map(({ index }) => index)).toEqual([1]);
    expect(tail.hung.map(({ name }) => name)).toEqual(['aft treble']);
    // the pin stays with the fore link that holds it; both hinge eyes are screwed into the tail
    expect(tail.pins).toHaveLength(0);
    expect(tail.eyes.filter(({ kind }) => kind === 'hinge')).toHaveLength(2);
    expect(tail.float).toBe(PLAIN.links[1]?.float && goodOf(PLAIN.links[1].float));
  });

  test('draws a bait that went under with its highest point 10 mm down', () => {
    const bait = seen({ ...HEAVY, lastGood: NOTHING }, 'whole');
    expect(bait.float.offset).toBeNull();
    expect(reachAlong(bait.links, bait.pose.up) - bait.pose.offset).toBeCloseTo(-10, 9);
  });

  test('keeps the last good picture when the newest design has none, and says so', () => {
    const lastGood = {
      bait: { hardware: goodOf(must(PLAIN.bait.hardware)), assembled: goodOf(must(PLAIN.bait.assembled)) },
      links: PLAIN.links.map((link) => ({ wetted: goodOf(must(link.wetted)), float: goodOf(must(link.float)) })),
    };
    const broken = { ...PLAIN.bait, assembled: { status: 'blocked', by: ['links'] } as const };
    const whole = seen({ bait: broken, links: PLAIN.links, lastGood }, 'whole');
    expect(whole.kept).toBe(true);
    expect(whole.float).toBe(lastGood.bait.assembled);
    // a link needs no pins to float alone
    expect(seen({ bait: broken, links: PLAIN.links, lastGood }, 0).kept).toBe(false);
  });

  test('shows nothing of a link that the design does not have', () => {
    expect(shownBait({ ...PLAIN, lastGood: NOTHING }, 7)).toBeNull();
  });
});

describe('a bait with a fin on its back', () => {
  const FIN = {
    name: 'fin',
    on: 'back',
    thickness_mm: 2,
    density_g_cm3: 1.2,
    edge_mm: [
      [70, 40],
      [90, 40],
    ],
  } as const;
  const finned = outcomesOf(makeDesignFile({ fins: [FIN] }));

  test('shows the fin with the whole bait and with its own link alone', () => {
    const count = (shown: 'whole' | number) => seen({ ...finned, lastGood: NOTHING }, shown).fins.length;
    expect(['whole' as const, 0, 1].map(count)).toEqual([1, 0, 1]);
  });

  test('has room for it over the water', () => {
    const bait = seen({ ...finned, lastGood: NOTHING }, 'whole');
    expect(roomOf(bait).above).toBeGreaterThan(must(bait.float.proud) + 15);
  });
});

describe('the room a bait needs', () => {
  test('reaches from its back over the water down to its lowest hook', () => {
    const bait = seen({ ...PLAIN, lastGood: NOTHING }, 'whole');
    const room = roomOf(bait);
    expect(room.above).toBeCloseTo(must(bait.float.proud), 9);
    const [x, y, z] = bait.pose.up;
    const depths = bait.hung.map(({ eye, hang }) => bait.pose.offset - (x * eye[0] + y * eye[1] + z * eye[2]) + hang);
    expect(room.below).toBeCloseTo(Math.max(...depths), 9);
  });

  test('has its middle half way between nose and tail, coats and all', () => {
    const room = roomOf(seen({ ...PLAIN, lastGood: NOTHING }, 'whole'));
    expect(room.middle).toBeCloseTo(60, 6);
    // 120 mm of wood and 0.2 mm of epoxy at both tips; a mesh that straddles its skin is a little longer
    expect(Math.abs(room.length - 120.4)).toBeLessThan(0.05);
  });
});

function must<Value>(value: Value | null | undefined): Value {
  if (value === null || value === undefined) throw new Error('the plain bait has this answer');
  return value;
}

describe('walls and keep-outs', () => {
  const { holes, keepOuts } = goodOf(must(PLAIN.bait.walls));
  const placed = goodOf(must(PLAIN.bait.hardware)).holes;

  test('are those of all holes and links of the whole bait, each with its own', () => {
    const bait = seen({ ...PLAIN, lastGood: NOTHING }, 'whole');
    expect(bait.walls.map(({ hole }) => hole)).toEqual(placed);
    expect(bait.walls.map(({ wall }) => wall)).toEqual(holes);
    expect(bait.keepOuts).toEqual(keepOuts);
  });

  test('are a link’s own when it is shown alone', () => {
    const tail = seen({ ...PLAIN, lastGood: NOTHING }, 1);
    expect(tail.walls).toHaveLength(placed.filter(({ link }) => link === 1).length);
    for (const { hole, wall } of tail.walls) expect(wall).toBe(holes[placed.indexOf(hole)]);
    expect(tail.keepOuts).toEqual([keepOuts[1]]);
  });

  test('are none before they are known', () => {
    const { walls: _, ...bait } = PLAIN.bait;
    const early = seen({ bait, links: PLAIN.links, lastGood: NOTHING }, 'whole');
    expect(early.walls).toEqual([]);
    expect(early.keepOuts).toEqual([[], []]);
  });
});

describe('the aft end of a waterline on the wood', () => {
  const { links, float } = seen({ ...PLAIN, lastGood: NOTHING }, 'whole');

  test('lies in the water’s plane and on the skin, further aft than any of the wood above the water', () => {
    const { up, offset } = float;
    const end = waterlineEnd(links, up, offset ?? Number.NaN);
    if (end === null) throw new Error('the plain bait floats');
    expect(up[0] * end[0] + up[1] * end[1] + up[2] * end[2]).toBeCloseTo(offset ?? Number.NaN, 9);
    const dry = links.flatMap(({ wetted: { mesh } }) =>
      Array.from({ length: mesh.positions.length / 3 }, (_, i) => mesh.positions.subarray(3 * i, 3 * i + 3)).filter(
        ([x = 0, y = 0, z = 0]) => up[0] * x + up[1] * y + up[2] * z > (offset ?? Number.NaN),
      ),
    );
    expect(end[0]).toBeGreaterThanOrEqual(Math.max(...dry.map(([x = 0]) => x)));
    expect(end[0]).toBeLessThan(reachAlong(links, [1, 0, 0]));
  });

  test('is nowhere over a bait that is under, or under one that hangs in the air', () => {
    expect(waterlineEnd(links, [0, 0, 1], 100)).toBeNull();
    expect(waterlineEnd(links, [0, 0, 1], -100)).toBeNull();
  });
});
