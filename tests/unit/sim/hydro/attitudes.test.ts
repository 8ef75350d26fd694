import { describe, expect, test } from 'vitest';
import { type Attitudes, dropCells, findAttitudes, shareError } from '../../../../sim/hydro/attitudes.ts';
import type { FloatingBody } from '../../../../sim/hydro/body.ts';
import { type Float, floatBody } from '../../../../sim/hydro/float.ts';
import type { Vec3 } from '../../../../sim/numerics/vec3.ts';
import { bodyOf } from '../../../support/float-mesh.ts';
import { barMesh, ellipsoidMesh, prismMesh, roundSection, tubeMesh } from '../../../support/meshes.ts';

const DEGREE = Math.PI / 180;

function attitudesOf(body: FloatingBody): { readonly first: Float; readonly all: Attitudes } {
  const first = floatBody(body);
  return { first, all: findAttitudes(body, body, first) };
}

describe('a slab', () => {
  // 60 × 20 × 30 mm of wood of half the water's density
  const { first, all } = attitudesOf(bodyOf(barMesh(60, 20, 30), 0.5));

  test('lies on either flank, each the mirror image of the other', () => {
    expect(first.heel / DEGREE).toBeCloseTo(90, 6);
    expect(all.others).toHaveLength(1);
    expect(all.others[0].float.heel / DEGREE).toBeCloseTo(-90, 6);
    expect(all.others[0].float.gmMin).toBeCloseTo(2.5, 6);
    expect(all.others[0].mirrorOf).toBe(0);
  });

  test('has to be stood up to get there: B is 7.5 mm under G then, and 5 mm on its flank', () => {
    expect((all.others[0].hump ?? 0) / first.mass).toBeCloseTo(2.5, 9);
    expect((all.others[0].back ?? 0) / first.mass).toBeCloseTo(2.5, 9);
    expect(Math.abs(all.others[0].over?.[2] ?? 0)).toBeCloseTo(1, 6);
  });

  test('ends on each from half of the starts', () => {
    expect([all.starts, all.firstShare]).toEqual([162, 0.5]);
    expect(all.others[0].share).toBe(0.5);
  });

  test('with lead low in it rests upright only', () => {
    expect(attitudesOf(bodyOf(barMesh(60, 20, 30), 26 / 36, [0, 0, (8 * -12) / 26])).all.others).toEqual([]);
  });

  test('with too little lead leans either way, with a hump in between that is its loll', () => {
    const { first: leaning, all: both } = attitudesOf(bodyOf(barMesh(60, 20, 30), 24 / 36, [0, 0, -3]));
    expect(both.others).toHaveLength(1);
    expect(both.others[0].mirrorOf).toBe(0);
    expect(both.others[0].float.heel).toBeCloseTo(-leaning.heel, 6);
    // walls wet: GZ = (GM + BM/2 tan²) sin, so the energy from upright is GM (1 - cos) + BM/2 (sec + cos - 2)/... summed up
    const [gm, bm] = [10 - 15 + 3 + 400 / 240, 400 / 240];
    const energy = (heel: number) => gm * (1 - Math.cos(heel)) + (bm / 2) * (1 / Math.cos(heel) + Math.cos(heel) - 2);
    expect((both.others[0].hump ?? 0) / leaning.mass).toBeCloseTo(-energy(leaning.heel), 8);
  });
});

describe('a square log', () => {
  test.each([
    // relative density, ways it rests, all of them alike
    [0.2, 4],
    [0.22, 8],
    [0.24, 8],
    [0.26, 8],
    [0.3, 4],
    [0.5, 4],
  ])('of relative density %d rests in %d ways', (density, count) => {
    const { first, all } = attitudesOf(bodyOf(barMesh(400, 10, 10), density));
    expect(all.others).toHaveLength(count - 1);
    for (const { float, hump } of all.others) {
      // the same heel from the nearest flat
      const from = (heel: number) => Math.abs(heel / DEGREE - 90 * Math.round(heel / DEGREE / 90));
      expect(from(float.heel)).toBeCloseTo(from(first.heel), 4);
      expect(hump).toBeGreaterThan(0);
    }
  });

  test('half as dense as water goes over a flat: B lies 2.5 mm under G there, and a third of half its diagonal now', () => {
    const { first, all } = attitudesOf(bodyOf(barMesh(400, 10, 10), 0.5));
    for (const { hump } of all.others) expect((hump ?? 0) / first.mass).toBeCloseTo(2.5 - 10 / Math.sqrt(2) / 3, 9);
  });

  test('of 0.22 goes on over the flat by little, and over the corner by more', () => {
    const { first, all } = attitudesOf(bodyOf(barMesh(400, 10, 10), 0.22));
    const [gm, bm] = [1.1 - 5 + 10 / 2.64, 10 / 2.64];
    const loll = Math.atan(Math.sqrt((-2 * gm) / bm));
    const energy = gm * (1 - Math.cos(loll)) + (bm / 2) * (1 / Math.cos(loll) + Math.cos(loll) - 2);
    const humps = all.others.map(({ hump }) => (hump ?? 0) / first.mass).sort((a, b) => a - b);
    expect(humps[0]).toBeCloseTo(-energy, 7);
    expect(humps[1]).toBeGreaterThan(10 * humps[0]);
    expect(humps[6]).toBeCloseTo(humps[1], 9);
  });
});

describe('bodies of revolution', () => {
  test('a sphere has no preferred way up, and nothing else is made up', () => {
    const { all } = attitudesOf(bodyOf(ellipsoidMesh([10, 10, 10], 24, 48), 0.4));
    expect(all.others).toEqual([]);
    expect(all.firstIsNeutral).toBe(true);
  });

  test('a round bar has none in roll', () => {
    const { all } = attitudesOf(bodyOf(prismMesh(roundSection(10, 64), -40, 40), 0.4));
    expect(all.others).toEqual([]);
    expect([all.firstIsNeutral, all.firstShare]).toEqual([true, 1]);
  });

  test('a disc stands either way up, and goes over on its rim', () => {
    const disc = tubeMesh([0, 10].map((z) => roundSection(10, 64).map(([a, b]): Vec3 => [a, b, z])));
    const { first, all } = attitudesOf(bodyOf(disc, 0.4));
    expect(all.firstIsNeutral).toBe(false);
    expect(all.others.map(({ float }) => Math.round(Math.abs(float.heel) / DEGREE))).toEqual([180]);
    // on its rim B lies 5.108 mm under the axis (closed form of the floating cylinder), flat 3 mm under the middle
    expect((all.others[0].hump ?? 0) / first.mass).toBeCloseTo(0.51084071 * 10 - 3, 2);
  });
});

test('an ellipsoid lies on either side of its thinnest axis', () => {
  const { all } = attitudesOf(bodyOf(ellipsoidMesh([40, 20, 9], 32, 48), 0.4));
  expect(all.others).toHaveLength(1);
  expect(all.others[0].float.up[2]).toBeCloseTo(-1, 6);
  expect(all.others[0].mirrorOf).toBeNull();
});

test('a stick with its weight at one end hangs by it, and hooks that lie on it there are said', () => {
  const hook = { mass: 0.3, volume: 38, eye: [0, 0, -5] as Vec3, hang: 20 };
  const { first, all } = attitudesOf(bodyOf(barMesh(80, 10, 10), 0.7, [24, 0, 0], { hung: [hook] }));
  expect(first.trim / DEGREE).toBeLessThan(-80);
  expect(first.lyingHooks).toBe(true);
  expect(all.others.every(({ float }) => float.trim / DEGREE < -80)).toBe(true);
});

test('under water there is one rest, or none that is preferred', () => {
  expect(attitudesOf(bodyOf(barMesh(60, 20, 30), 1.5, [0, 0, -3])).all).toEqual({
    ...{ others: [], firstIsNeutral: false, firstShare: 1, starts: 0, drops: [] },
  });
  expect(attitudesOf(bodyOf(barMesh(60, 20, 30), 1.5)).all.firstIsNeutral).toBe(true);
});

describe('the drops behind the shares', () => {
  const { first, all } = attitudesOf(bodyOf(barMesh(60, 20, 30), 0.5));

  test('are each start, with the rest that it ends at', () => {
    expect(all.drops).toHaveLength(all.starts);
    const share = (rest: number) => all.drops.filter((drop) => drop.rest === rest).length / all.starts;
    expect([share(0), share(1)]).toEqual([all.firstShare, all.others[0].share]);
    // symmetric: whatever leans more to starboard ends on that flank
    for (const { up, rest } of all.drops) expect(rest).toBe(up[1] * first.up[1] > 0 ? 0 : 1);
  });

  test('count every rest of a log, none left out', () => {
    const log = attitudesOf(bodyOf(barMesh(400, 10, 10), 0.22)).all;
    const seen = new Set(log.drops.map(({ rest }) => rest));
    expect([...seen].toSorted((a, b) => a - b)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    log.others.forEach(({ share }, i) => {
      expect(log.drops.filter(({ rest }) => rest === i + 1).length / log.starts).toBeCloseTo(share, 12);
    });
  });

  test('stand each for a cell of the sphere', () => {
    expect(dropCells(all)).toHaveLength(162);
    expect(dropCells({ drops: [] })).toEqual([]);
  });

  test('give a share with an error of √(p (1 - p)/N)', () => {
    expect(shareError(0.23, 162)).toBeCloseTo(Math.sqrt((0.23 * 0.77) / 162), 12);
    expect([shareError(1, 162), shareError(0, 162), shareError(1, 0)]).toEqual([0, 0, 0]);
  });
});
