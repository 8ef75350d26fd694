import { describe, expect, test } from 'vitest';
import type { DesignFile } from '../../../../sim/design/file.ts';
import { jointIssues } from '../../../../sim/mass/checks/joints.ts';
import { slotIssues } from '../../../../sim/mass/checks/slots.ts';
import { changed } from '../../../support/change-file.ts';
import { KNUCKLE_DESIGN, LINKED_DESIGN, makeDesignFile } from '../../../support/make-design.ts';
import { answersOf, partsOf, soundIssuesOf } from '../../../support/worked-bait.ts';

type Changes = Readonly<Record<string, unknown>>;

function edited(file: DesignFile, changes: Changes): DesignFile {
  return Object.entries(changes).reduce<unknown>(
    (sum, [place, value]) => changed(sum, place, value),
    file,
  ) as DesignFile;
}

const [KNUCKLE_JOINT] = KNUCKLE_DESIGN.joints;
const [LINKED_JOINT] = LINKED_DESIGN.joints;
const KNUCKLE_SLOTS = KNUCKLE_JOINT.slots ?? [];
const LINKED_SLOTS = LINKED_JOINT.slots ?? [];
const HINGE = 'joints.0.hinge';
const PAINT = [{ name: 'paint', thickness_mm: 0.2, density_g_cm3: 1.2 }];

describe.each([
  ['a knuckle', KNUCKLE_DESIGN],
  ['linked eyes', LINKED_DESIGN],
])('the plain bait on %s', (_, file) => {
  test('can be made, and floats', () => {
    expect(soundIssuesOf(file)).toEqual([]);
    const { bait } = answersOf(file, { detail: 'drag' });
    expect(bait.assembled.solver.converged).toBe(true);
    expect(bait.assembled.state).toBe('floats');
  });
});

interface Case {
  /** What is wrong with the bait. */
  readonly bait: string;
  readonly code: string;
  readonly path: string;
  /** What the message has to say. */
  readonly says: string;
  readonly wrong: Changes;
  /** Hardly different, and sound. */
  readonly right: Changes;
}

/* Half the body is 10 wide at 60, its coat 0.2; hollow from 59, nose from 61, axis 73 for a radius of 12. */
const KNUCKLES: readonly Case[] = [
  {
    bait: 'a knuckle slimmer than the coated body',
    code: 'joints/knuckle-too-small',
    path: 'joints.0.faces.radius_mm',
    says: 'at least 10.2 mm is needed',
    wrong: { 'joints.0.faces.radius_mm': 10.1 },
    right: { 'joints.0.faces.radius_mm': 10.2 },
  },
  {
    // 10 of wood at 60 and 2.1 of varnish
    bait: 'a knuckle wide enough only before it is painted',
    code: 'joints/knuckle-too-small',
    path: 'joints.0.faces.radius_mm',
    says: 'a knuckle of radius 12 mm is slimmer',
    wrong: { coats: [{ name: 'dip', thickness_mm: 2.1, density_g_cm3: 1.2, covers: 'skin' }] },
    right: { coats: [{ name: 'dip', thickness_mm: 1.9, density_g_cm3: 1.2, covers: 'skin' }] },
  },
  {
    bait: 'an eye in the link that has the knuckle',
    code: 'joints/loop-in-wood',
    path: 'joints.0.hinge.eyes.0',
    says: 'the pin stands 12 mm inside the knuckle of link "tail"',
    wrong: { [`${HINGE}.eyes.0.in`]: 'aft' },
    right: {},
  },
  {
    bait: 'a pin held by the link that has the hollow',
    code: 'joints/pin-outside-wood',
    path: 'joints.0.hinge.pin',
    says: 'the pin at 73 mm',
    wrong: { [`${HINGE}.pin.held_by`]: 'fore' },
    right: {},
  },
  {
    // the loop reaches 3 behind the axis, which is 12 behind the face
    bait: 'a slot of the knuckle too shallow for the loop round its axis',
    code: 'joints/eye-without-slot',
    path: 'joints.0.hinge.eyes.1',
    says: '15 mm deep',
    wrong: { 'joints.0.slots.1.depth_mm': 14.9 },
    right: { 'joints.0.slots.1.depth_mm': 15 },
  },
  {
    // 12 - sqrt(12² - 3²) is 0.38
    bait: 'a slot that the knuckle has bent away from before its edge',
    code: 'joints/slot-too-shallow',
    path: 'joints.0.slots.2.depth_mm',
    says: 'no cheeks in this knuckle; more than 0.38 mm is needed',
    wrong: { 'joints.0.slots': [...KNUCKLE_SLOTS, { in: 'aft', width_mm: 6, depth_mm: 0.37, z_mm: [-2, 2] }] },
    right: { 'joints.0.slots': [...KNUCKLE_SLOTS, { in: 'aft', width_mm: 6, depth_mm: 0.39, z_mm: [-2, 2] }] },
  },
  {
    // half the body is 9.98 at a height of 1
    bait: 'a slot in the hollow as wide as the body',
    code: 'joints/slot-through-skin',
    path: 'joints.0.slots.2',
    says: 'breaks through the skin',
    wrong: { 'joints.0.slots': [...KNUCKLE_SLOTS, { in: 'fore', width_mm: 20, depth_mm: 3, z_mm: [-1, 1] }] },
    right: { 'joints.0.slots': [...KNUCKLE_SLOTS, { in: 'fore', width_mm: 19.6, depth_mm: 3, z_mm: [-1, 1] }] },
  },
  {
    bait: 'a gap that paint on nose and hollow closes',
    code: 'joints/coats-close-gap',
    path: 'joints.0.gap_mm',
    says: 'close a gap of 0.4 mm',
    wrong: { coats: PAINT, 'joints.0.gap_mm': 0.4, 'joints.0.faces.radius_mm': 12.8 },
    right: { coats: PAINT, 'joints.0.gap_mm': 0.42, 'joints.0.faces.radius_mm': 12.8 },
  },
  {
    // at the flank, 9.9 off the middle, the nose has fallen back to 73 - sqrt(12² - 9.9²) = 66.2
    bait: 'a hole through the flank where the knuckle has none left',
    code: 'holes/in-a-joint',
    path: 'setups.0.holes.1.x_mm',
    says: 'reaches into a joint',
    wrong: { 'setups.0.holes.1': { name: 'side hole', from: 'port', x_mm: 67, diameter_mm: 2, depth_mm: 3 } },
    right: { 'setups.0.holes.1': { name: 'side hole', from: 'port', x_mm: 67.5, diameter_mm: 2, depth_mm: 3 } },
  },
];

/* Loops reach 3; the fore one stands at 58.5, the aft one at 61.5; faces at 59 and 61, floors of the slots at 54 and 66. */
const LINKED: readonly Case[] = [
  {
    bait: 'linked eyes of a wire as thick as their bore',
    code: 'joints/eyes-do-not-link',
    path: 'joints.0.hinge.wire_mm',
    says: 'does not go through loops of 1.5 mm',
    wrong: { [`${HINGE}.bore_mm`]: 1.5 },
    right: { [`${HINGE}.bore_mm`]: 1.6 },
  },
  {
    bait: 'two pairs of eyes whose loops meet',
    code: 'joints/eyes-meet',
    path: 'joints.0.hinge.z_mm',
    says: 'stand 6 mm apart; loops of 6 mm need more',
    wrong: {
      [`${HINGE}.z_mm`]: [3, -3],
      'joints.0.slots': (['fore', 'aft'] as const).map((side) => ({ ...LINKED_SLOTS[0], in: side, z_mm: [-7, 7] })),
    },
    right: {
      [`${HINGE}.z_mm`]: [3.1, -3.1],
      'joints.0.slots': (['fore', 'aft'] as const).map((side) => ({ ...LINKED_SLOTS[0], in: side, z_mm: [-7, 7] })),
    },
  },
  {
    // bore and wire less half the gap: 3.5 behind the face
    bait: 'an upright loop deeper than the slot of its own link',
    code: 'joints/eye-without-slot',
    path: 'joints.0.hinge.z_mm.0',
    says: 'no slot in link "head" holds the fore eye at 8 mm: coats counted it needs 1.5 mm across, 3.5 mm deep',
    wrong: { 'joints.0.slots.0.depth_mm': 3.4 },
    right: { 'joints.0.slots.0.depth_mm': 3.5 },
  },
  {
    bait: 'an upright loop taller than the slot of its own link',
    code: 'joints/eye-without-slot',
    path: 'joints.0.hinge.z_mm.0',
    says: 'from 5 mm to 11 mm',
    wrong: { 'joints.0.slots.0.z_mm': [5.1, 11.5] },
    right: { 'joints.0.slots.0.z_mm': [5, 11] },
  },
  {
    bait: 'a flat loop wider than the slot of its own link',
    code: 'joints/eye-without-slot',
    path: 'joints.0.hinge.z_mm.1',
    says: 'no slot in link "tail" holds the aft eye at -8 mm: coats counted it needs 6 mm across',
    wrong: { 'joints.0.slots.3.width_mm': 5.9 },
    right: { 'joints.0.slots.3.width_mm': 6 },
  },
  {
    bait: 'a flat loop that reaches into a slot of the other link that is too narrow for it',
    code: 'joints/eye-without-slot',
    path: 'joints.0.hinge.z_mm.1',
    says: 'no slot in link "head" holds the aft eye at -8 mm: coats counted it needs 6 mm across, 0.5 mm deep',
    wrong: { 'joints.0.slots.1.width_mm': 5.9 },
    right: { 'joints.0.slots.1.width_mm': 6 },
  },
  {
    // pulled taut at the middle the loops reach bore + wire, 4.5, to either side
    bait: 'linked eyes without slots in a gap that does not hold them',
    code: 'joints/eye-without-slot',
    path: 'joints.0.hinge.z_mm.0',
    says: 'holds the fore eye',
    wrong: { 'joints.0.slots': [], 'joints.0.gap_mm': 8.9 },
    right: { 'joints.0.slots': [], 'joints.0.gap_mm': 9 },
  },
  {
    bait: 'linked eyes whose slots hold them only before they are painted',
    code: 'joints/eye-without-slot',
    path: 'joints.0.hinge.z_mm.0',
    says: '3.7 mm deep',
    wrong: { coats: PAINT, 'joints.0.slots.0.depth_mm': 3.6 },
    right: { coats: PAINT, 'joints.0.slots.0.depth_mm': 3.7 },
  },
  {
    // from the floor of its slot, at 54, to 5, where the nose is only 7.2 high
    bait: 'a shank of a linked eye longer than its link',
    code: 'hardware/shank-out-of-wood',
    path: 'joints.0.hinge.shank_mm',
    says: 'a shank of 49 mm comes out of link "head"',
    wrong: { [`${HINGE}.shank_mm`]: 49 },
    right: { [`${HINGE}.shank_mm`]: 9 },
  },
  {
    // shank of the fore eye below: from 54 to 46 at -8, hole of 8 up to -7 or so
    bait: 'a hole that meets the shank of a linked eye',
    code: 'hardware/parts-meet',
    path: 'joints.0.hinge',
    says: 'the shank of "joint 1, fore eye 2"',
    wrong: { 'setups.0.holes.0.x_mm': 42 },
    right: { 'setups.0.holes.0.x_mm': 24 },
  },
];

describe.each([
  ...KNUCKLES.map((one) => [one.bait, KNUCKLE_DESIGN, one] as const),
  ...LINKED.map((one) => [one.bait, LINKED_DESIGN, one] as const),
])('%s', (_, file, { code, path, says, wrong, right }) => {
  test('is refused, with its place, what was given and the cure', () => {
    const issue = soundIssuesOf(edited(file, wrong)).find((one) => one.code === code);
    expect(issue).toMatchObject({ code, path });
    expect(issue?.message).toContain(says);
    expect(issue?.message).toMatch(/\d/);
    expect(issue?.hint).toMatch(/^[a-z]+ /);
  });

  test('is sound with a hair more room', () => {
    expect(soundIssuesOf(edited(file, right)).filter((one) => one.code === code)).toEqual([]);
  });
});

describe('a link between two joints', () => {
  /** The plain bait of three with knuckles of 12 mm on both ends of its middle link, or hollows. */
  function between(x_mm: number, on: readonly ['fore' | 'aft', 'fore' | 'aft']): readonly string[] {
    const file = makeDesignFile({ pieces: 3 });
    const joints = file.joints.map((joint, j) => {
      if (joint.hinge.kind !== 'pin') throw new Error('the plain bait hinges on pins');
      const { x_mm: _, ...pin } = joint.hinge.pin;
      const faces = { kind: 'knuckle', on: on[j], radius_mm: 12 } as const;
      return { ...joint, x_mm: j === 1 ? x_mm : joint.x_mm, faces, hinge: { ...joint.hinge, pin } };
    });
    const { design, hull, links } = partsOf({ ...file, joints });
    return jointIssues(hull, links, design.joints).map(({ code, path }) => `${code} ${path}`);
  }

  test('on whose flank two knuckles would meet is refused', () => {
    // each nose falls back 12 - sqrt(12² - 10²) = 5.37 at the flank; from 51 to 62.7 at 63.7 that leaves 0.97
    expect(between(63.6, ['aft', 'fore'])).toEqual(['links/faces-meet joints.1.x_mm']);
    expect(between(63.8, ['aft', 'fore'])).toEqual([]);
  });

  test('on whose centre line two hollows would meet is refused', () => {
    expect(between(56.9, ['fore', 'aft'])).toEqual(['links/link-too-short joints.1.x_mm']);
    expect(between(57, ['fore', 'aft'])).toEqual([]);
  });

  test('with a slot that comes nearest to a hollow on the centre line is refused there', () => {
    const file = edited(makeDesignFile({ pieces: 3 }), {
      'joints.1.faces': { kind: 'knuckle', on: 'aft', radius_mm: 12 },
      'joints.1.hinge.pin.x_mm': undefined,
    });
    const { hull, links } = partsOf(file);
    // from the face at 51 to 83 on the centre line; 1 mm has to stay
    const codesAt = (depth: number) => {
      const slot = { in: 'aft', opens: 'fore', width: 6, depth, z: [-2, 2], path: 'joints.0.slots.0' } as const;
      return slotIssues(hull, { ...links[1], slots: [slot] }, 0).map(({ code }) => code);
    };
    expect(codesAt(31)).toEqual([]);
    expect(codesAt(31.1)).toEqual(['joints/slot-too-deep']);
  });
});
