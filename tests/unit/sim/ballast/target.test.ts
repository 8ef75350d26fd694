import { describe, expect, test } from 'vitest';
import { checkTarget, type TargetParts } from '../../../../sim/ballast/target.ts';
import type { Target } from '../../../../sim/design/design.ts';
import type { FloatingBody } from '../../../../sim/hydro/body.ts';
import type { Float } from '../../../../sim/hydro/float.ts';
import { measureVolume } from '../../../../sim/mesh/measure.ts';
import type { Wetted } from '../../../../sim/mesh/wetted.ts';
import type { Vec3 } from '../../../../sim/numerics/vec3.ts';
import { netAtSpeed } from '../../../../sim/sinking/sink.ts';
import { boxMesh } from '../../../support/box-mesh.ts';
import { bodyOf } from '../../../support/float-mesh.ts';
import { makeFloat, makeSinking } from '../../../support/make-checked-bait.ts';
import { PLAIN_DESIGN } from '../../../support/make-design.ts';
import { answersOf } from '../../../support/worked-bait.ts';

const DEGREE = Math.PI / 180;

function box(from: Vec3, to: Vec3): Wetted {
  const mesh = boxMesh({ from, to });
  return { mesh, ...measureVolume(mesh), slots: [], skinGrowth: 0, faceGrowth: 0, films: [] };
}

/** A head of 60 by 20 by 30 and a low tail of 40 by 20 by 10: volumes 36,000 and 8,000. */
const HEAD = box([0, -10, -15], [60, 10, 15]);
const TAIL = box([60, -10, -15], [100, 10, -5]);

function bodyOfBoxes(...boxes: readonly Wetted[]): FloatingBody {
  const bodies = boxes.map(({ mesh }) => bodyOf(mesh, 1.02));
  return { ...bodies[0], trees: bodies.flatMap(({ trees }) => trees) };
}

const BODIES = [bodyOfBoxes(HEAD), bodyOfBoxes(TAIL)] as const;
const FALL: TargetParts['fall'] = {
  whole: { body: bodyOfBoxes(HEAD, TAIL), links: BODIES, viscosity: 1, timed: null },
  links: BODIES.map((body) => ({ body, links: [body], viscosity: 1, timed: null })),
};

function parts(target: Target, changes: Partial<TargetParts> = {}): TargetParts {
  return {
    target,
    linkTargets: {},
    names: ['head', 'tail'],
    spans: [
      [0, 58],
      [62, 100],
    ],
    length: 100,
    wetted: [HEAD, TAIL],
    floats: [makeFloat({ mass: 30 }), makeFloat({ mass: 7 })],
    assembled: makeFloat({ mass: 40, proud: 3, offset: 12, netWet: -4 }),
    fall: FALL,
    sinking: null,
    ...changes,
  };
}

const level = { trim: 0 };

function expectUp(found: Vec3, wanted: Vec3): void {
  for (const axis of [0, 1, 2]) expect(found[axis]).toBeCloseTo(wanted[axis], 12);
}

describe('a bait that is to stand proud', () => {
  test('has its plane that far under its highest point', () => {
    const { assembled } = checkTarget(parts({ kind: 'proud', proud: 3, ...level }));
    expect(assembled).toMatchObject({ offset: 12, netWet: null });
    expectUp(assembled.up, [0, 0, 1]);
  });

  test('nose-down has it under the point that is then highest', () => {
    const trim = 5 * DEGREE;
    const { assembled } = checkTarget(parts({ kind: 'proud', proud: 3, trim }));
    expectUp(assembled.up, [Math.sin(trim), 0, Math.cos(trim)]);
    expect(assembled.offset).toBeCloseTo(60 * Math.sin(trim) + 15 * Math.cos(trim) - 3, 12);
  });

  test('asks of each link the very same plane, and of one that it misses to hang', () => {
    const { links } = checkTarget(parts({ kind: 'proud', proud: 3, ...level }));
    expect(links).toMatchObject([
      { offset: 12, netWet: null },
      // the plane at 12 passes over the back of the tail at -5
      { offset: null, netWet: 0 },
    ]);
    for (const { up } of links) expectUp(up, [0, 0, 1]);
    const deep = checkTarget(parts({ kind: 'proud', proud: 22, ...level }));
    expect(deep.links.map(({ offset }) => offset)).toEqual([-7, -7]);
  });
});

describe('a bait with a waterline', () => {
  test('has its plane at that height half way along, whatever the trim', () => {
    const trim = -10 * DEGREE;
    const { assembled } = checkTarget(parts({ kind: 'waterline', z: 4, trim }));
    expect(assembled.offset).toBeCloseTo(50 * Math.sin(trim) + 4 * Math.cos(trim), 12);
    expect(checkTarget(parts({ kind: 'waterline', z: 4, ...level })).assembled.offset).toBe(4);
  });

  test('is told its height half way along, and null where it lies on its side or under', () => {
    const got = (changes: Partial<Float>) =>
      checkTarget(parts({ kind: 'waterline', z: 4, ...level }, { assembled: makeFloat(changes) })).checks[0];
    const up: Vec3 = [Math.sin(3 * DEGREE), 0, Math.cos(3 * DEGREE)];
    expect(got({ up, offset: up[0] * 50 + up[2] * 4.6 })).toMatchObject({ what: 'waterline', wanted: 4, met: true });
    expect(got({ up, offset: up[0] * 50 + up[2] * 4.6 }).got).toBeCloseTo(4.6, 9);
    expect(got({ offset: 5.1 })).toMatchObject({ got: 5.1, met: false });
    expect(got({ offset: null })).toMatchObject({ got: null, met: false });
    expect(got({ up: [0, 1, 0] })).toMatchObject({ got: null, met: false });
  });
});

describe('a bait whose water is off its mark', () => {
  const deeper = makeFloat({ up: [Math.sin(2 * DEGREE), 0, Math.cos(2 * DEGREE)], offset: 14, proud: 2 });

  test('is told by how much at the nose, at its joint half way across the gap, and at the tail', () => {
    const { offMark } = checkTarget(parts({ kind: 'proud', proud: 3, ...level }, { assembled: deeper }));
    expect(offMark.map(({ at, x, mark }) => [at, x, mark])).toEqual([
      ['nose', 0, 12],
      [1, 60, 12],
      ['tail', 100, 12],
    ]);
  });

  test('is told nothing where it was to weigh something under water', () => {
    expect(checkTarget(parts({ kind: 'net', net: 1, ...level }, { assembled: deeper })).offMark).toEqual([]);
  });
});

describe('a bait that is to have something in reserve', () => {
  /** Water that displaces so many of the 44 g that both boxes lift: the tail is low and drowned, the head 1.2 g a mm. */
  const lineAt = (displaced: number) => -15 + (displaced - 8) / 1.2;

  test.each([
    ['grams', { kind: 'reserve', reserve: 3 }, 41, -3],
    // 44 g are lifted and 40 g weighed, hooks included: 2 g are a twentieth of what it weighs now, and a bait that is
    // ballasted to 44/1.05 g has a twentieth of that
    ['a share of its mass', { kind: 'reserve-share', share: 0.05 }, 44 / 1.05, -2],
  ] as const)('as %s floats at the one line at which it displaces so much less', (_, target, displaced, now) => {
    const { assembled, links, checks } = checkTarget(parts({ ...target, ...level }));
    expect(assembled).toMatchObject({ offset: expect.closeTo(lineAt(displaced), 6), netWet: null });
    // the tail, which is under the line, is to hang
    expect(links[0]).toEqual(assembled);
    expect(links[1]).toMatchObject({ offset: null, netWet: 0 });
    expect(checks[0]).toMatchObject({ what: 'net', wanted: expect.closeTo(now, 12), got: -4, met: false });
  });

  test('as a share of its mass aims at the same line whatever ballast it has now', () => {
    const aims = [30, 36, 40, 43.9].map((mass) => {
      const assembled = makeFloat({ mass, netWet: mass - 44, offset: 12 });
      return checkTarget(parts({ kind: 'reserve-share', share: 0.1, ...level }, { assembled })).assembled.offset;
    });
    for (const aim of aims) expect(aim).toBeCloseTo(lineAt(40), 6);
  });

  test('has no line of its own where a link has a target of its own, nor where it is to hang or sink', () => {
    const linkTargets: TargetParts['linkTargets'] = { tail: { kind: 'net', net: 0.3, ...level } };
    const { assembled, links } = checkTarget(parts({ kind: 'reserve', reserve: 3, ...level }, { linkTargets }));
    expect(assembled).toMatchObject({ offset: null, netWet: -3 });
    expect(links.map(({ netWet }) => netWet)).toEqual([expect.closeTo(-3.3, 12), 0.3]);
    expect(checkTarget(parts({ kind: 'reserve', reserve: -2, ...level })).assembled).toMatchObject({ netWet: 2 });
  });
});

describe('a bait that is to weigh something under water', () => {
  test('has no plane but a net weight', () => {
    const { assembled, checks } = checkTarget(parts({ kind: 'net', net: 1.2, ...level }));
    expect(assembled).toMatchObject({ offset: null, netWet: 1.2 });
    expect(checks[0]).toMatchObject({ what: 'net', wanted: 1.2, got: -4, met: false });
  });

  test('shares it between its links by what they displace', () => {
    const { links } = checkTarget(parts({ kind: 'net', net: 1.1, ...level }));
    expect(links.map(({ netWet }) => netWet)).toEqual([expect.closeTo(0.9, 12), expect.closeTo(0.2, 12)]);
  });

  test('leaves to the other links what one that has its own target does not carry', () => {
    const linkTargets: TargetParts['linkTargets'] = { tail: { kind: 'net', net: 0.3, ...level } };
    const { links } = checkTarget(parts({ kind: 'net', net: 1.1, ...level }, { linkTargets }));
    expect(links.map(({ netWet }) => netWet)).toEqual([expect.closeTo(0.8, 12), 0.3]);
  });

  test('whose links all have targets of their own shares nothing, and divides by nothing', () => {
    const own = (net: number): Target => ({ kind: 'net', net, ...level });
    const linkTargets = { head: own(0.5), tail: own(0.1) };
    const { links } = checkTarget(parts(own(1.1), { linkTargets }));
    expect(links.map(({ netWet }) => netWet)).toEqual([0.5, 0.1]);
  });
});

describe('a link with a target of its own', () => {
  const whole: Target = { kind: 'proud', proud: 3, ...level };

  test('to stand proud is measured from its own back', () => {
    const linkTargets: TargetParts['linkTargets'] = { tail: { kind: 'proud', proud: 2, ...level } };
    expect(checkTarget(parts(whole, { linkTargets })).links[1]).toMatchObject({ offset: -7, netWet: null });
  });

  test('by a share of its mass counts the hooks that hang from it, as the whole bait does', () => {
    const linkTargets: TargetParts['linkTargets'] = { tail: { kind: 'reserve-share', share: 0.1, ...level } };
    const floats = [makeFloat({ mass: 30 }), makeFloat({ mass: 7, netWet: -1.8 })];
    expect(checkTarget(parts(whole, { linkTargets, floats })).links[1].netWet).toBeCloseTo(-0.8, 12);
    // the tail of the plain bait carries a hook of 2 g
    const [setup] = PLAIN_DESIGN.setups;
    const file = { ...PLAIN_DESIGN, setups: [{ ...setup, link_targets: { tail: { reserve_percent: 10 } } }] };
    const { bait, links } = answersOf(file, { detail: 'drag' });
    const { mass, netWet } = links[1].float;
    expect(bait.target.links[1].netWet).toBeCloseTo((-0.1 * (mass - netWet)) / 1.1, 12);
    expect(mass).toBeCloseTo(links[1].ledger.mass + 2, 9);
  });
});

describe('a bait that is to sink at a speed', () => {
  const target: Target = { kind: 'sink', speed: 100, ...level };

  test('is to weigh what drag then bears, level about the place where that acts', () => {
    const { assembled } = checkTarget(parts(target));
    const wanted = netAtSpeed(FALL.whole, [0, 0, 1], 100);
    expect(assembled).toMatchObject({ offset: null, netWet: wanted.netWet, drag: wanted.dragCentre });
    expect(wanted.netWet).toBeGreaterThan(0.5);
  });

  test('shares that between its links by their drag, not by what they displace', () => {
    const { assembled, links } = checkTarget(parts(target));
    const [head, tail] = links.map(({ netWet }) => netWet ?? 0);
    expect(head + tail).toBeCloseTo(assembled.netWet ?? 0, 12);
    // as wide as the head and two thirds as long, a third as deep: more drag than its share of what is displaced
    expect(tail / head).toBeGreaterThan(2 * (8000 / 36_000));
    expect(links[0].drag?.[0]).toBeCloseTo(30, 6);
    expect(links[1].drag?.[0]).toBeCloseTo(80, 6);
  });

  test('is held to a tenth of its speed, and to how it lies in the fall', () => {
    const sinking = makeSinking({ speed: [95, 108, 120], trim: 1 * DEGREE, heel: 0 });
    const checks = checkTarget(parts(target, { assembled: makeFloat({ trim: 9 * DEGREE }), sinking })).checks;
    expect(checks).toMatchObject([
      { what: 'sink', wanted: 100, got: 108, tolerance: 10, band: [95, 120], met: true },
      { what: 'trim', wanted: 0, got: 1 * DEGREE, met: true },
      { what: 'heel', wanted: 0, got: 0, met: true },
    ]);
    const fast = checkTarget(parts(target, { sinking: makeSinking({ speed: [100, 111, 125] }) }));
    expect(fast.met).toBe(false);
  });

  test('gets nothing of it where it does not sink', () => {
    const { checks, met } = checkTarget(parts(target));
    expect(met).toBe(false);
    for (const check of checks) expect(check).toMatchObject({ got: null, met: false, isInFall: true });
  });

  test('may ask it of one link, for what that link alone does', () => {
    const linkTargets: TargetParts['linkTargets'] = { tail: target };
    const { links } = checkTarget(parts({ kind: 'net', net: 2, ...level }, { linkTargets }));
    const own = netAtSpeed(FALL.links[1], [0, 0, 1], 100);
    expect(links[1]).toMatchObject({ netWet: own.netWet, drag: own.dragCentre });
    expect(links[0].netWet).toBeCloseTo(2 - own.netWet, 12);
  });
});

describe('how near is near enough', () => {
  const checksFor = (target: Target, changes: Partial<Float>) =>
    checkTarget(parts(target, { assembled: makeFloat(changes) }));

  test('is 1 mm of back, 2 degrees of trim and of heel', () => {
    const near = { proud: 3.9, trim: 1.9 * DEGREE, heel: -1.9 * DEGREE };
    const target: Target = { kind: 'proud', proud: 3, ...level };
    expect(checksFor(target, near)).toMatchObject({ met: true });
    expect(checksFor(target, near).checks.map(({ what, tolerance }) => [what, tolerance])).toEqual([
      ['proud', 1],
      ['trim', 2 * DEGREE],
      ['heel', 2 * DEGREE],
    ]);
    expect(checksFor(target, { ...near, proud: 4.1 })).toMatchObject({ met: false });
    expect(checksFor(target, { ...near, trim: 2.1 * DEGREE })).toMatchObject({ met: false });
    expect(checksFor(target, { ...near, heel: -2.1 * DEGREE })).toMatchObject({ met: false });
  });

  test('is measured from the trim that was asked for, not from level', () => {
    const target: Target = { kind: 'proud', proud: 3, trim: 8 * DEGREE };
    expect(checksFor(target, { trim: 7 * DEGREE })).toMatchObject({ met: true });
    expect(checksFor(target, { trim: 0 })).toMatchObject({ met: false });
  });

  test('is 0.2 g of a net weight', () => {
    const target: Target = { kind: 'net', net: 1.2, ...level };
    expect(checksFor(target, { netWet: 1.39 })).toMatchObject({ met: true });
    expect(checksFor(target, { netWet: 1.41 })).toMatchObject({ met: false });
    expect(checksFor(target, { netWet: 0.99 })).toMatchObject({ met: false });
  });

  test('is what counts as hanging where none is asked for: 0.1 g, or a thousandth of a heavy bait', () => {
    const target: Target = { kind: 'net', net: 0, ...level };
    expect(checksFor(target, { netWet: 0.09, mass: 40 })).toMatchObject({ met: true });
    expect(checksFor(target, { netWet: 0.11, mass: 40 })).toMatchObject({ met: false });
    expect(checksFor(target, { netWet: 0.11, mass: 200 })).toMatchObject({ met: true });
  });

  test('is nothing for a bait that lies wholly under and was to stand proud', () => {
    const { checks, met } = checksFor({ kind: 'proud', proud: 0.5, ...level }, { proud: null });
    expect(checks[0]).toMatchObject({ got: null, met: false });
    expect(met).toBe(false);
  });
});
