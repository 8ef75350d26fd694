import type { WhatIfRow } from '../../sim/ballast/advised.ts';
import type { LinkPlan } from '../../sim/ballast/plan.ts';
import type { Assembled, Assembly, JointRest } from '../../sim/chain/assemble.ts';
import type { Folded, FoldWay } from '../../sim/chain/fold.ts';
import { evaluateDesign } from '../../sim/design/validate.ts';
import type { Accuracy } from '../../sim/hydro/accuracy.ts';
import type { Attitudes, OtherRest } from '../../sim/hydro/attitudes.ts';
import type { Float } from '../../sim/hydro/float.ts';
import { cutLinks } from '../../sim/links/cut.ts';
import type { Ledger, LedgerLine } from '../../sim/mass/ledger.ts';
import type { Wetted } from '../../sim/mesh/wetted.ts';
import type { CheckedBait } from '../../sim/out/checked-bait.ts';
import type { JointReach, Reach } from '../../sim/reach/reach.ts';
import type { ArmsOver } from '../../sim/roll/arms.ts';
import type { LinkRoll } from '../../sim/roll/roll.ts';
import type { Sinking } from '../../sim/sinking/sink.ts';
import { boxMesh } from './box-mesh.ts';
import { goodOf } from './change-file.ts';
import { makeDesignFile } from './make-design.ts';

/** A float with plain numbers: 3 mm proud, upright, steady. Fields given replace them; angles in radians. */
export function makeFloat(changes: Partial<Float> = {}): Float {
  return {
    state: 'floats',
    up: [0, 0, 1],
    offset: 12,
    trim: 0,
    heel: 0,
    draft: 30,
    proud: 3,
    displaced: 20_000,
    buoyancyCentre: [30, 0, -1],
    hungDisplaced: 250,
    mass: 20.2,
    gravityCentre: [30, 0, -4],
    netWet: -1.5,
    reserveShare: 0.075,
    gm: 3,
    gmLong: 40,
    gmMin: 3,
    gmUpright: 3,
    laysOver: false,
    width: 20,
    neutral: false,
    tender: false,
    mirrored: false,
    lyingHooks: false,
    solver: { converged: true, steps: 4, passes: 12, force: 1e-9, moment: 1e-8 },
    ...changes,
  };
}

const BELLY_UP: OtherRest = {
  float: makeFloat({ up: [0, 0, -1], heel: Math.PI, offset: -11, proud: 4, gmMin: 0.5, lyingHooks: true }),
  hump: 6.25,
  back: 1.5,
  over: [0, -1, 0],
  share: 0.25,
  mirrorOf: null,
};

/** The sums are right to more than is shown, and the film has nothing to say. Fields given replace these. */
export function makeAccuracy(changes: Partial<Accuracy> = {}): Accuracy {
  return {
    mesh: { draft: 0.004, proud: 0.003, trim: 1e-4, heel: 0, gm: 0.002 },
    solver: { draft: 1e-9, angle: 1e-10 },
    film: { edge: 90, force: 0.67, draft: 0.7, heel: 0.05, trim: 0.02, tooClose: false },
    digits: { draft: 1, proud: 1, trim: 1, heel: 1, gm: 2 },
    ...changes,
  };
}

/** No way to rest but the first, unless others are given. */
export function makeAttitudes(others: readonly OtherRest[] = []): Attitudes {
  return { others, firstIsNeutral: false, firstShare: others.length === 0 ? 1 : 0.75, starts: 162, drops: [] };
}

/** Steady, afloat, alike to either side; arms at three heels stand for the curve. Fields given replace these. */
export function makeRoll(changes: Partial<LinkRoll> = {}): LinkRoll {
  const over = (way: 1 | -1): ArmsOver => ({
    limit: (way * 74 * Math.PI) / 180,
    most: { heel: (way * 41 * Math.PI) / 180, arm: 2.1 },
    energy: 31,
    onEnd: null,
  });
  return {
    isAfloat: true,
    steadiness: 'steady',
    gm: 1.9,
    width: 20,
    steadyFrom: 0.2,
    arms: {
      points: [-1, 0, 1].map((heel) => ({ heel, arm: 2 * heel, energy: 15 * heel * heel })),
      starboard: over(1),
      port: over(-1),
    },
    loll: null,
    fromBellyUp: true,
    offCentre: (4.1 * Math.PI) / 180,
    least: { at: [30, 0, -14], of: 'own', stands: { net: 3, lead: 3.2 }, steady: { net: 3.3, lead: 3.5 } },
    ...changes,
  };
}

/** A slow fall, a little nose-down. Fields given replace these. */
export function makeSinking(changes: Partial<Sinking> = {}): Sinking {
  return {
    speed: [100, 115, 130],
    firstFoot: [3.1, 3.4, 3.7],
    firstMetre: [8.6, 9.6, 10.6],
    up: [Math.sin(Math.PI / 150), 0, Math.cos(Math.PI / 150)],
    trim: Math.PI / 150,
    heel: 0,
    neutral: false,
    settled: true,
    dragCentre: [88, 0, -1],
    netWet: 0.8,
    addedMass: 11,
    dragArea: [950, 1220, 1600],
    area: 1900,
    shares: [{ share: 1, at: [88, 0, -1] }],
    timed: null,
    curve: [0, 1, 2].map((time) => ({
      time: 5.3 * time,
      depth: [480 * time, 530 * time, 580 * time] as const,
      speed: [100, 115, 130] as const,
    })),
    ...changes,
  };
}

/** A link that rests as it should without lead, unless changes say otherwise. */
export function makePlan(link: number, name: string, changes: Partial<LinkPlan> = {}): LinkPlan {
  return {
    link,
    name,
    need: {
      net: 0.02,
      up: [0, 0, 1],
      along: [1, 0, 0],
      across: [0, 1, 0],
      buoyancy: [30, 0, 0],
      about: [30, 0, 0],
      moment: { along: 0, across: 0 },
      stiffness: { trim: 800, heel: 60 },
    },
    place: null,
    state: 'enough',
    holes: [],
    lead: 0,
    leadHeight: null,
    left: { trim: 0, net: 0.02 },
    last: null,
    why: null,
    ...changes,
  };
}

/** What becomes of a bait in other conditions: lighter, higher and tail low. Fields given replace these. */
export function makeWhatIf(changes: Partial<WhatIfRow> = {}): WhatIfRow {
  return {
    name: 'in other water',
    state: 'floats',
    netWet: -2.75,
    trim: -Math.PI / 360,
    proud: 2.9,
    firstFoot: null,
    change: { netWet: -0.5, trim: -Math.PI / 360, proud: 0.4, firstFoot: null },
    lead: null,
    ...changes,
  };
}

/** A joint that swings 30° to port and 32° to starboard. Fields given replace these. */
export function makeJointReach(changes: Partial<JointReach> = {}): JointReach {
  const swing = (degrees: number, y: number) =>
    ({ angle: (degrees * Math.PI) / 180, touch: ['face', 'face'], at: [54, y, -2] }) as const;
  const angles = (port: number, starboard: number) => ({
    port: (port * Math.PI) / 180,
    starboard: (starboard * Math.PI) / 180,
  });
  return {
    joint: 0,
    hinge: 'pin',
    pivot: 56,
    approximate: false,
    port: swing(30, -9),
    starboard: swing(32, 9),
    play: { moves: [-0.5, 0.5], least: angles(27, 29), most: angles(33, 35) },
    bare: { port: swing(31, -9), starboard: swing(33, 9) },
    level: { z: -2, fore: [], aft: [] },
    ...changes,
  };
}

/** The reach of a bait of two links. */
export function makeReach(joints: readonly JointReach[] = [makeJointReach()]): Reach {
  const fold = (side: 'port' | 'starboard') => {
    const sum = joints.reduce((all, joint) => all + joint[side].angle, 0);
    return { fold: sum, joints: sum, far: null };
  };
  return { joints, whole: { port: fold('port'), starboard: fold('starboard'), turnsRound: false } };
}

/** A joint that is straight and carries nothing. Fields given replace these. */
export function makeJointRest(changes: Partial<JointRest> = {}): JointRest {
  return {
    yaw: 0,
    sag: 0,
    lean: 0,
    shift: [0, 0],
    rise: 0,
    load: { shear: 0, moment: 0, twist: 0 },
    slop: Math.PI / 90,
    stops: [],
    ...changes,
  };
}

/** Two links that rest level. Fields given replace these. */
export function makeAssembly(changes: Partial<Assembly> = {}): Assembly {
  const link = { up: [0, 0, 1], offset: 12, trim: 0, heel: 0 } as const;
  return {
    links: [link, link],
    joints: [makeJointRest()],
    poses: [],
    energy: -100,
    converged: true,
    passes: 9,
    ...changes,
  };
}

/** A bait that stays straight. Fields given replace these. */
export function makeJointed(changes: Partial<Assembled> = {}): Assembled {
  return { straight: makeAssembly(), loose: null, yawCurve: 0, friction: [Math.PI / 60], ...changes };
}

/** A bait that is folded through half a right angle and heels by so much at most, in radians. */
export function makeFolded(heel = 0): Folded {
  const way = (sign: number): FoldWay => {
    const at = (share: number) => ({
      share,
      fold: (share * Math.PI) / 4,
      bait: makeAssembly(),
      heel: sign * share * heel,
    });
    const rolls = Math.abs(heel) > Math.PI / 6;
    return {
      points: [0, 0.5, 1].map(at),
      most: { fold: Math.PI / 4, heel: sign * heel },
      rollsFrom: rolls ? Math.PI / 4 : null,
    };
  };
  return { port: way(1), starboard: way(-1) };
}

/**
 * The plain bait of two links with answers written down by hand, no two of them alike, so that a report shows which
 * answer stands where. They do not follow from each other.
 */
export function makeCheckedBait(changes: Partial<CheckedBait> = {}): CheckedBait {
  const design = goodOf(evaluateDesign(makeDesignFile()));
  const [setup] = design.setups;
  if (setup === undefined) throw new Error('the plain bait has a setup');
  const [head, tail] = cutLinks(design.body.length, design.links, design.joints);
  if (head === undefined || tail === undefined) throw new Error('the plain bait has two links');
  return {
    design,
    setup,
    water: { density: 0.0009982, temperature: 20, salinity: 0, source: 'a table of water, p. 3' },
    hardware: {
      eyes: [],
      pins: [
        {
          name: 'pin 1',
          joint: 0,
          link: 0,
          heldBy: 'fore',
          x: 56,
          z: [-12, 12],
          diameter: 2,
          density: 0.00785,
          wet: [],
          bored: [[-12, 12]],
        },
      ],
      holes: [],
      fittings: [],
      fins: [],
      finFaults: [],
      hung: [
        { name: 'fore treble', link: 0, eye: [36, 0, -19], mass: 2, volume: 254.8, hang: 30 },
        { name: 'aft treble', link: 1, eye: [96, 0, -16], mass: 2.1, volume: 267.5, hang: 31 },
      ],
    },
    links: [
      {
        spec: head,
        solid: { volume: 41_000, centre: [29, 0, 0], area: 7_900, areaCentre: [29, 0, 0.5], soakCentre: [29, 0, 0.5] },
        wetted: wettedBox(0, 59, true),
        ledger: ledgerOf([
          line({ name: 'wood', kind: 'wood', mass: 12.25, at: [31, 0, 0.5], source: 'density in the design' }),
          line({
            name: 'line tie',
            kind: 'hanger',
            mass: 0.4,
            at: [-2, 0, 0],
            outsideVolume: 21,
            outsideAt: [-3, 0, 0],
          }),
        ]),
        float: makeFloat({ trim: Math.PI / 60, up: [Math.sin(Math.PI / 60), 0, Math.cos(Math.PI / 60)] }),
        accuracy: makeAccuracy(),
        attitudes: makeAttitudes([BELLY_UP]),
        roll: makeRoll(),
        sinking: null,
        cures: [],
        forgiveness: { perMm: 0.02, perGram: [0.3, -0.25], hung: [] },
      },
      {
        spec: tail,
        solid: { volume: 42_000, centre: [90, 0, 0], area: 8_000, areaCentre: [90, 0, 0.5], soakCentre: [90, 0, 0.5] },
        wetted: wettedBox(61, 120, false),
        ledger: ledgerOf([
          line({ name: 'wood', kind: 'wood', mass: 13.5, at: [88, 0, 0.25], source: 'density in the design' }),
        ]),
        float: makeFloat({ state: 'sinks', offset: null, draft: null, proud: null, netWet: 0.8, reserveShare: -0.04 }),
        accuracy: makeAccuracy({
          film: { edge: 110, force: 0.82, draft: null, heel: null, trim: null, tooClose: true },
        }),
        attitudes: makeAttitudes(),
        roll: makeRoll({ isAfloat: false, steadiness: 'stiff', gm: 6.5, offCentre: null }),
        sinking: makeSinking(),
        cures: [],
        forgiveness: null,
      },
    ],
    assembledAccuracy: makeAccuracy(),
    assembledAttitudes: makeAttitudes(),
    assembledRoll: {
      ...makeRoll({ gm: 2.25 }),
      offCentre: { all: (5.2 * Math.PI) / 180, links: [(1.3 * Math.PI) / 180, null] },
    },
    drop: null,
    assembledSinking: null,
    assembled: makeFloat({ mass: 41.5, netWet: -2.25, reserveShare: 0.054, proud: 2.5, heel: -Math.PI / 36 }),
    target: {
      assembled: { up: [0, 0, 1], offset: 15, netWet: null },
      links: [
        { up: [0, 0, 1], offset: 15, netWet: null },
        { up: [0, 0, 1], offset: null, netWet: 0 },
      ],
      checks: [
        { what: 'proud', wanted: 3, got: 2.5, tolerance: 0.5, met: true },
        { what: 'heel', wanted: 0, got: -Math.PI / 36, tolerance: Math.PI / 90, met: false },
      ],
      met: false,
      offMark: [],
    },
    ballast: { links: [makePlan(0, 'head'), makePlan(1, 'tail')], holes: [] },
    planned: {
      floats: [makeFloat(), makeFloat({ proud: 1.5 })],
      assembled: makeFloat({ proud: 2.75 }),
      target: {
        assembled: { up: [0, 0, 1], offset: 15, netWet: null },
        links: [],
        checks: [{ what: 'proud', wanted: 3, got: 2.75, tolerance: 0.5, met: true }],
        met: true,
        offMark: [],
      },
      holes: [],
      sinkings: [null, null],
      assembledSinking: null,
    },
    reach: makeReach(),
    jointed: makeJointed(),
    folded: makeFolded(),
    whatIfs: [],
    warnings: [
      {
        code: 'wall-thin',
        where: 'head hole',
        text: 'Hole "head hole" leaves 2.1 mm of wood.',
        at: [24, -5, -12],
        number: 2.125,
        limit: 3,
        unit: 'mm',
        fix: { says: 'drill "head hole" 1.5 mm less deep', sets: [{ path: 'setups.0.holes.0.depth_mm', value: 8.5 }] },
      },
    ],
    ...changes,
  };
}

function wettedBox(from: number, to: number, slotted: boolean): Wetted {
  const slot = { from: [to - 7, -4, -2], to: [to, 4, 2] } as const;
  return {
    mesh: boxMesh({ from: [from, -10, -18], to: [to, 10, 18] }, slotted ? [slot] : []),
    volume: (to - from) * 20 * 36 - (slotted ? 7 * 8 * 4 : 0),
    centre: [(from + to) / 2, 0, 0],
    slots: slotted ? [{ opens: 'aft', width: 8, z: [-2, 2], floor: to - 7, volume: 224 }] : [],
    skinGrowth: 0.2,
    faceGrowth: 0,
    films: [],
  };
}

function line(given: Partial<LedgerLine> & Pick<LedgerLine, 'name' | 'kind' | 'mass' | 'at'>): LedgerLine {
  return { outsideVolume: 0, outsideAt: [0, 0, 0], source: 'weighed by you', ...given };
}

function ledgerOf(lines: readonly LedgerLine[]): Ledger {
  return { lines, mass: lines.reduce((sum, { mass }) => sum + mass, 0), centre: lines[0]?.at ?? [0, 0, 0] };
}
