import { describe, expect, test } from 'vitest';
import type { FloatingBody } from '../../../../sim/hydro/body.ts';
import { floatBody } from '../../../../sim/hydro/float.ts';
import type { Vec3 } from '../../../../sim/numerics/vec3.ts';
import { dragAreas, dragCentre, fallingUp, showToFall } from '../../../../sim/sinking/drag-law.ts';
import { fallPartsOf } from '../../../../sim/sinking/fall-parts.ts';
import { netAtSpeed, type SinkParts, sinkBody } from '../../../../sim/sinking/sink.ts';
import { bodyOf } from '../../../support/float-mesh.ts';
import { barMesh, ellipsoidMesh, mapMesh } from '../../../support/meshes.ts';

const NU = 1;

function alone(body: FloatingBody): SinkParts {
  return { body, links: [body], viscosity: NU, timed: null };
}

function fallOf(body: FloatingBody) {
  const sinking = sinkBody(alone(body), floatBody(body));
  if (sinking === null) throw new Error('it does not sink');
  return sinking;
}

/** 80 by 16 by 30, a fiftieth heavier than its water, weight low. */
const SLAB = ellipsoidMesh([40, 8, 15], 60, 48);
const LOW: Vec3 = [0, 0, -4];

describe('what floats or hangs', () => {
  test('does not fall', () => {
    for (const share of [0.9, 1]) {
      const body = bodyOf(SLAB, share, LOW);
      expect(sinkBody(alone(body), floatBody(body))).toBeNull();
    }
  });
});

describe('an even body with its weight low', () => {
  const sinking = fallOf(bodyOf(SLAB, 1.02, LOW));

  test('falls level, upright, its drag in its middle', () => {
    expect(sinking.trim).toBeCloseTo(0, 6);
    expect(sinking.heel).toBeCloseTo(0, 6);
    expect(sinking).toMatchObject({ neutral: false, settled: true });
    for (const axis of [0, 1, 2]) expect(sinking.dragCentre[axis]).toBeCloseTo(0, 1);
  });

  test('shows the ellipse of its plan', () => {
    expect(Math.abs(sinking.area / (Math.PI * 40 * 8) - 1)).toBeLessThan(5e-3);
  });

  test('has its three speeds in order, and its times in the other', () => {
    for (const [low, mid, high] of [sinking.speed, sinking.firstFoot, sinking.firstMetre, sinking.dragArea]) {
      expect(low).toBeLessThan(mid);
      expect(mid).toBeLessThan(high);
    }
    expect(sinking.firstFoot[0]).toBeGreaterThan(304.8 / sinking.speed[2]);
    expect(sinking.firstMetre[1] - sinking.firstFoot[1]).toBeGreaterThan((1000 - 304.8) / sinking.speed[1]);
  });

  test('may have at least 30 % more or less drag', () => {
    const [low, mid, high] = sinking.dragArea;
    expect(mid / low).toBeGreaterThanOrEqual(1.3 - 1e-9);
    expect(high / mid).toBeGreaterThanOrEqual(1.3 - 1e-9);
  });

  test('is drawn from rest to a metre', () => {
    const { curve, firstMetre } = sinking;
    expect(curve[0]).toEqual({ time: 0, depth: [0, 0, 0], speed: [0, 0, 0] });
    const end = curve[curve.length - 1];
    expect(end.time).toBe(firstMetre[2]);
    expect(end.depth[0]).toBeCloseTo(1000, 0);
    expect(end.depth[2]).toBeGreaterThan(1000);
  });
});

describe('the way up in a fall', () => {
  test('turns away from rest as the drag does: with its weight forward, and more so the faster it falls', () => {
    // an egg: its drag lies ahead of the middle of what it displaces
    const egg = mapMesh(SLAB, ([x, y, z]) => [x, y * (1 - x / 120), z]);
    const [slow, fast] = [1.01, 1.08].map((share) => fallOf(bodyOf(egg, share)));
    const rest = floatBody(bodyOf(egg, 1.05, [0, 0, -4]));
    expect(rest.state).toBe('sinks');
    for (const each of [slow, fast]) expect(each.settled).toBe(true);
  });

  test('is where buoyancy and drag together stand over the weight', () => {
    const egg = mapMesh(SLAB, ([x, y, z]) => [x, y * (1 - x / 120), z]);
    const body = bodyOf(egg, 1.06, [-2.4, 0, -3]);
    const sinking = fallOf(body);
    const shown = showToFall([body], sinking.up, NU, null);
    const { at } = dragCentre(shown.parts, sinking.speed[1]);
    const { volumeCentre } = balance(body);
    const up = fallingUp({ ...balance(body), volumeCentre }, at, 0) as Vec3;
    for (const axis of [0, 1, 2]) expect(up[axis]).toBeCloseTo(sinking.up[axis], 5);
    expect(Math.abs(sinking.trim)).toBeGreaterThan(0.01);
  });

  test('is the one it was let go with where nothing turns it', () => {
    const sinking = fallOf(bodyOf(ellipsoidMesh([12, 12, 12], 60, 48), 1.05));
    expect(sinking.neutral).toBe(true);
    expect(sinking.up).toEqual([0, 0, 1]);
  });

  test('is found for a body that is tender and for one that stands on its nose', () => {
    for (const centre of [
      [0.3, 0, -0.1],
      [-20, 0, 0],
      [0, 2, -0.5],
    ] as const) {
      const sinking = fallOf(bodyOf(SLAB, 1.05, centre));
      expect(sinking.settled).toBe(true);
      expect(Math.hypot(...sinking.up)).toBeCloseTo(1, 9);
      for (const value of [...sinking.speed, ...sinking.firstFoot]) expect(value).toBeGreaterThan(0);
    }
  });
});

function balance(body: FloatingBody) {
  const volume = body.trees.reduce((sum, tree) => sum + tree.sums[0] / 6, 0);
  const [tree] = body.trees;
  const [six, mx, my, mz] = tree.sums;
  const volumeCentre: Vec3 = [
    tree.origin[0] + mx / (4 * six),
    tree.origin[1] + my / (4 * six),
    tree.origin[2] + mz / (4 * six),
  ];
  return { mass: body.mass, netWet: body.mass - 0.001 * volume, gravityCentre: body.centre, volumeCentre };
}

describe('a bait of two links', () => {
  const [fore, aft] = [barMesh(50, 20, 30), barMesh(30, 12, 20)];
  const links = [
    bodyOf(
      mapMesh(fore, ([x, y, z]) => [x + 25, y, z]),
      1.02,
    ),
    bodyOf(
      mapMesh(aft, ([x, y, z]) => [x + 67, y, z]),
      1.02,
    ),
  ];
  const body: FloatingBody = {
    ...links[0],
    trees: links.flatMap(({ trees }) => trees),
    mass: links[0].mass + links[1].mass,
    centre: [36, 0, -3],
    hung: [{ mass: 2.1, volume: 267.5, eye: [20, 0, -16], hang: 34 }],
    outside: [{ volume: 30, at: [-3, 0, 0] }],
  };
  const own = [{ ...links[0], hung: body.hung, outside: body.outside }, links[1]];
  const parts: SinkParts = { body, links: own, viscosity: NU, timed: null };

  test('has its drag from its links, each with its centre', () => {
    const sinking = sinkBody(parts, { state: 'sinks', up: [0, 0, 1] });
    if (sinking === null) throw new Error('it sinks');
    const [first, second] = sinking.shares;
    expect(first.share + second.share).toBeCloseTo(1, 12);
    expect(first.share).toBeGreaterThan(second.share);
    expect(first.at[0]).toBeLessThan(50);
    expect(second.at[0]).toBeGreaterThan(50);
    const x = first.share * first.at[0] + second.share * second.at[0];
    expect(x).toBeCloseTo(sinking.dragCentre[0], 6);
  });

  test('at a wanted speed weighs what drag then bears, and sinks at just that', () => {
    const wanted = netAtSpeed(parts, [0, 0, 1], 90);
    const shown = showToFall(own, [0, 0, 1], NU, null);
    expect(wanted.netWet).toBeCloseTo((0.5 * 0.001 * dragAreas(shown.law, 90)[1] * 8100) / 9806.65, 12);
  });
});

test('a bait in one piece is its only link', () => {
  const water = { density: 0.001, temperature: 20, salinity: 0, source: '' };
  const [tree] = bodyOf(SLAB, 1.02).trees;
  const ledger = { lines: [], mass: 21, centre: LOW };
  const { whole, links } = fallPartsOf([{ skin: tree, fins: [] }], [ledger], [], water, {
    factor: 1.2,
    band: [1, 1.2, 1.3],
  });
  expect(links).toEqual([whole]);
  const two = fallPartsOf(
    [
      { skin: tree, fins: [] },
      { skin: tree, fins: [] },
    ],
    [ledger, ledger],
    [],
    water,
    {
      factor: 1.2,
      band: [1, 1.2, 1.3],
    },
  );
  expect(two.links.map(({ timed }) => timed)).toEqual([
    { factor: 1.2, band: null },
    { factor: 1.2, band: null },
  ]);
});
