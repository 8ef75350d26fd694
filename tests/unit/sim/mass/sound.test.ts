import { describe, expect, test } from 'vitest';
import type { DesignFile } from '../../../../sim/design/file.ts';
import { jointIssues } from '../../../../sim/mass/checks/joints.ts';
import { slotIssues } from '../../../../sim/mass/checks/slots.ts';
import { checkSound } from '../../../../sim/mass/sound.ts';
import { changed } from '../../../support/change-file.ts';
import { makeDesignFile, PLAIN_DESIGN } from '../../../support/make-design.ts';
import { partsOf, soundIssuesOf } from '../../../support/worked-bait.ts';

type Changes = Readonly<Record<string, unknown>>;

function edited(file: DesignFile, changes: Changes): DesignFile {
  return Object.entries(changes).reduce<unknown>(
    (sum, [place, value]) => changed(sum, place, value),
    file,
  ) as DesignFile;
}

const [JOINT] = PLAIN_DESIGN.joints;
const [SETUP] = PLAIN_DESIGN.setups;
const SLOTS = JOINT.slots ?? [];
const [HEAD_HOLE, TAIL_HOLE] = SETUP.holes;
const HANGERS = PLAIN_DESIGN.hangers;
const { lead: _, ...EMPTY_HOLE } = HEAD_HOLE;
const PAINT = [{ name: 'paint', thickness_mm: 0.2, density_g_cm3: 1.2 }];
const JOINT_PLACE = 'joints.0';
const HINGE = 'joints.0.hinge';
const HOLE = 'setups.0.holes.0';

function hanger(x_mm: number, shank_mm: number) {
  return { name: 'third eye', on: 'belly' as const, x_mm, wire_mm: 1.5, bore_mm: 3, shank_mm };
}

function facing(depth_mm: number) {
  return (['port', 'starboard'] as const).map((from) => ({
    ...EMPTY_HOLE,
    ...{ name: from, from, x_mm: 24, across_mm: 0, diameter_mm: 4, depth_mm },
  }));
}

interface Case {
  /** What is wrong with the bait. */
  readonly bait: string;
  readonly code: string;
  /** Where the issue points. */
  readonly path: string;
  readonly wrong: Changes;
  /** Hardly different, and sound. */
  readonly right: Changes;
}

/*
 * The plain bait: an ellipsoid of semi-axes 60, 10, 18 sawn at 60 with a gap of 2; pin of 2 at 56 through eyes of the
 * tail at +8 and -8 (loops reach 3), in slots 7.5 wide, 7.5 deep, 2.5 high.
 */
const CASES: readonly Case[] = [
  {
    bait: 'a joint behind the tail',
    code: 'links/joint-outside-body',
    path: 'joints.0.x_mm',
    wrong: { 'joints.0.x_mm': 121 },
    right: {},
  },
  {
    // the body is 16 wide at x = 24: 8.2 from either flank overlap, 7.75 leave half a millimetre between two flat ends
    bait: 'two holes that come to meet each other from either flank',
    code: 'hardware/parts-meet',
    path: HOLE,
    wrong: { 'setups.0.holes': facing(8.2) },
    right: { 'setups.0.holes': facing(7.75) },
  },
  {
    // the skin at the slot's upper edge, 9.25 over the datum, is 8.4 to 8.6 from the middle
    bait: 'a slot as wide as the body',
    code: 'joints/slot-through-skin',
    path: 'joints.0.slots.0',
    wrong: { 'joints.0.slots.0.width_mm': 17.2 },
    right: { 'joints.0.slots.0.width_mm': 16.6 },
  },
  {
    bait: 'a slot that runs into another',
    code: 'joints/slots-crossing',
    path: 'joints.0.slots.0',
    wrong: { 'joints.0.slots': [...SLOTS, { in: 'fore', width_mm: 5, depth_mm: 5, z_mm: [9.2, 11] }] },
    right: { 'joints.0.slots': [...SLOTS, { in: 'fore', width_mm: 5, depth_mm: 5, z_mm: [9.25, 11] }] },
  },
  {
    // at 60 degrees the mouth lies 2.25 tan 60° = 3.9 back at the edge of a slot 4.5 wide
    bait: 'a slot so shallow that a bevelled face has left it before its edge',
    code: 'joints/slot-too-shallow',
    path: 'joints.0.slots.2.depth_mm',
    wrong: {
      'joints.0.faces': { kind: 'bevel', fore_deg: 60, aft_deg: 0 },
      'joints.0.slots': [...SLOTS, { in: 'fore', width_mm: 4.5, depth_mm: 3.8, z_mm: [-2, 2] }],
    },
    right: {
      'joints.0.faces': { kind: 'bevel', fore_deg: 60, aft_deg: 0 },
      'joints.0.slots': [...SLOTS, { in: 'fore', width_mm: 4.5, depth_mm: 4, z_mm: [-2, 2] }],
    },
  },
  {
    bait: 'a slot that its own paint fills up',
    code: 'joints/coats-close-slot',
    path: 'joints.0.slots.2',
    wrong: { coats: PAINT, 'joints.0.slots': [...SLOTS, { in: 'fore', width_mm: 5, depth_mm: 5, z_mm: [0, 0.4] }] },
    right: { coats: PAINT, 'joints.0.slots': [...SLOTS, { in: 'fore', width_mm: 5, depth_mm: 5, z_mm: [0, 0.5] }] },
  },
  {
    bait: 'a pin as thick as the eyes are wide',
    code: 'joints/pin-too-thick',
    path: 'joints.0.hinge.pin.diameter_mm',
    wrong: { [`${HINGE}.pin.diameter_mm`]: 3 },
    right: { [`${HINGE}.pin.diameter_mm`]: 2.9 },
  },
  {
    // the back at 56 stands at 17.96
    bait: 'a pin that comes out of the back',
    code: 'joints/pin-outside-wood',
    path: 'joints.0.hinge.pin',
    wrong: { [`${HINGE}.pin.z_mm`]: [-12, 18] },
    right: { [`${HINGE}.pin.z_mm`]: [-12, 17.8] },
  },
  {
    bait: 'a pin that stands half out of the face',
    code: 'joints/pin-outside-wood',
    path: 'joints.0.hinge.pin',
    wrong: { [`${HINGE}.pin.x_mm`]: 58 + 0.01, [`${HINGE}.bore_mm`]: 2.9 },
    right: { [`${HINGE}.pin.x_mm`]: 58, [`${HINGE}.bore_mm`]: 2.9 },
  },
  {
    bait: 'a pin that ends in a slot, with no wood to hold it there',
    code: 'joints/pin-outside-wood',
    path: 'joints.0.hinge.pin',
    wrong: { [`${HINGE}.pin.z_mm`]: [-12, 9] },
    right: { [`${HINGE}.pin.z_mm`]: [-12, 9.5] },
  },
  {
    // the loop reaches 3, the face of the tail stands at 61
    bait: 'a loop that would stand in the face it comes out of',
    code: 'joints/loop-in-wood',
    path: 'joints.0.hinge.eyes.0',
    wrong: { [`${HINGE}.pin.diameter_mm`]: 1, [`${HINGE}.pin.x_mm`]: 58.1 },
    right: { [`${HINGE}.pin.diameter_mm`]: 1, [`${HINGE}.pin.x_mm`]: 58 },
  },
  {
    bait: 'an eye over the end of its pin',
    code: 'joints/eye-off-pin',
    path: 'joints.0.hinge.eyes.0.z_mm',
    wrong: { [`${HINGE}.pin.z_mm`]: [-12, 6.7] },
    right: { [`${HINGE}.pin.z_mm`]: [-12, 9.5] },
  },
  {
    bait: 'an eye whose slot is too narrow for its loop',
    code: 'joints/eye-without-slot',
    path: 'joints.0.hinge.eyes.0',
    wrong: { 'joints.0.slots.0.width_mm': 5.9 },
    right: { 'joints.0.slots.0.width_mm': 6 },
  },
  {
    // the loop reaches from 59, the face, to 53
    bait: 'an eye whose slot is too shallow for its loop',
    code: 'joints/eye-without-slot',
    path: 'joints.0.hinge.eyes.0',
    wrong: { 'joints.0.slots.0.depth_mm': 5.9 },
    right: { 'joints.0.slots.0.depth_mm': 6 },
  },
  {
    bait: 'an eye whose slot lies too high for its wire',
    code: 'joints/eye-without-slot',
    path: 'joints.0.hinge.eyes.0',
    wrong: { 'joints.0.slots.0.z_mm': [7.3, 9.25] },
    right: { 'joints.0.slots.0.z_mm': [7.25, 9.25] },
  },
  {
    bait: 'an eye with no slot at all',
    code: 'joints/eye-without-slot',
    path: 'joints.0.hinge.eyes.1',
    wrong: { 'joints.0.slots': SLOTS.slice(0, 1) },
    right: { 'joints.0.slots': SLOTS },
  },
  {
    // 6 for the loop, 0.2 of paint on either cheek
    bait: 'an eye whose slot is wide enough only before it is painted',
    code: 'joints/eye-without-slot',
    path: 'joints.0.hinge.eyes.0',
    wrong: { coats: PAINT, 'joints.0.slots.0.width_mm': 6.3 },
    right: { coats: PAINT, 'joints.0.slots.0.width_mm': 6.5 },
  },
  {
    bait: 'a gap that paint on both faces closes',
    code: 'joints/coats-close-gap',
    path: 'joints.0.gap_mm',
    wrong: { coats: PAINT, [`${JOINT_PLACE}.gap_mm`]: 0.4 },
    right: { coats: PAINT, [`${JOINT_PLACE}.gap_mm`]: 0.42 },
  },
  {
    bait: 'an eye in the gap of a joint',
    code: 'hardware/in-a-gap',
    path: 'hangers.3',
    wrong: { hangers: [...HANGERS, hanger(60.2, 4)] },
    right: { hangers: [...HANGERS, hanger(61.8, 4)] },
  },
  {
    bait: 'an eye half in the gap of a joint',
    code: 'hardware/in-a-gap',
    path: 'hangers.3',
    wrong: { hangers: [...HANGERS, hanger(58.3, 4)] },
    right: { hangers: [...HANGERS, hanger(58.2, 4)] },
  },
  {
    bait: 'an eye before the nose',
    code: 'hardware/in-a-gap',
    path: 'hangers.1',
    wrong: { 'hangers.1.x_mm': -3 },
    right: {},
  },
  {
    // 28.8 of wood on the axis
    bait: 'a shank that comes out of the back',
    code: 'hardware/shank-out-of-wood',
    path: 'hangers.2.shank_mm',
    wrong: { 'hangers.2.shank_mm': 28.7 },
    right: { 'hangers.2.shank_mm': 28 },
  },
  {
    bait: 'a hinge shank longer than its link',
    code: 'hardware/shank-out-of-wood',
    path: 'joints.0.hinge.eyes.0.shank_mm',
    wrong: { [`${HINGE}.shank_mm`]: 54 },
    right: { [`${HINGE}.shank_mm`]: 14 },
  },
  {
    // hole of 8 at 24, wire of 1.5: 4.75 apart they touch
    bait: 'a shank that meets a hole',
    code: 'hardware/parts-meet',
    path: 'hangers.1',
    wrong: { 'hangers.1.x_mm': 28.7 },
    right: { 'hangers.1.x_mm': 28.85 },
  },
  {
    bait: 'a shank that meets a shank',
    code: 'hardware/parts-meet',
    path: 'hangers.1',
    wrong: { hangers: [...HANGERS, hanger(37.45, 12)] },
    right: { hangers: [...HANGERS, hanger(37.55, 12)] },
  },
  {
    bait: 'a hole that meets a hole',
    code: 'hardware/parts-meet',
    path: HOLE,
    wrong: { 'setups.0.holes': [HEAD_HOLE, TAIL_HOLE, { ...EMPTY_HOLE, name: 'fore hole', x_mm: 16.05 }] },
    right: { 'setups.0.holes': [HEAD_HOLE, TAIL_HOLE, { ...EMPTY_HOLE, name: 'fore hole', x_mm: 15.9 }] },
  },
  {
    // the slot's floor is at 51.5
    bait: 'a hole that meets a slot',
    code: 'hardware/parts-meet',
    path: HOLE,
    wrong: { [`${HOLE}.x_mm`]: 47.6 },
    right: { [`${HOLE}.x_mm`]: 47.4 },
  },
  {
    // belly at -17.96, the pin's lower end at -12
    bait: 'a shank that meets the bore of the pin',
    code: 'hardware/parts-meet',
    path: 'hangers.3',
    wrong: { hangers: [...HANGERS, hanger(56, 6)] },
    right: { hangers: [...HANGERS, hanger(56, 5)] },
  },
  {
    bait: 'a hole through the flank instead of the belly',
    code: 'holes/off-the-body',
    path: HOLE,
    wrong: { [HOLE]: { ...EMPTY_HOLE, across_mm: 4.3 } },
    right: { [HOLE]: { ...EMPTY_HOLE, across_mm: 3.5 } },
  },
  {
    bait: 'a hole beside the body',
    code: 'holes/off-the-body',
    path: HOLE,
    wrong: { [HOLE]: { ...EMPTY_HOLE, across_mm: 12 } },
    right: { [HOLE]: EMPTY_HOLE },
  },
  {
    // 28.8 of wood on the axis, the back 2 lower at the edge of the drill
    bait: 'a hole that comes out of the back',
    code: 'holes/through-the-body',
    path: `${HOLE}.depth_mm`,
    wrong: { [`${HOLE}.depth_mm`]: 27.5 },
    right: { [`${HOLE}.depth_mm`]: 26 },
  },
  {
    // a point of 60 degrees on a drill of 4 is 3.46 long
    bait: 'a hole whose point alone comes out of the back',
    code: 'holes/through-the-body',
    path: `${HOLE}.depth_mm`,
    wrong: { [HOLE]: { ...EMPTY_HOLE, diameter_mm: 4, depth_mm: 26, point_deg: 60 } },
    right: { [HOLE]: { ...EMPTY_HOLE, diameter_mm: 4, depth_mm: 26, point_deg: 118 } },
  },
  {
    // the face of the tail is at 61, the drill's radius 3
    bait: 'a hole that reaches into a joint',
    code: 'holes/in-a-joint',
    path: 'setups.0.holes.1.x_mm',
    wrong: { 'setups.0.holes.1.x_mm': 63.9 },
    right: { 'setups.0.holes.1.x_mm': 64.1 },
  },
  {
    bait: 'lead wider than its hole',
    code: 'holes/lead-too-wide',
    path: `${HOLE}.lead.of`,
    wrong: { [`${HOLE}.diameter_mm`]: 7.7 },
    right: { [`${HOLE}.diameter_mm`]: 7.8 },
  },
  {
    // 1.85 mm a gram; 10 deep, less 1.8 that the skin falls away at the drill's edge
    bait: 'lead that stands out of its hole',
    code: 'holes/lead-too-long',
    path: `${HOLE}.lead.mass_g`,
    wrong: { [`${HOLE}.lead.mass_g`]: 4.6 },
    right: { [`${HOLE}.lead.mass_g`]: 4.3 },
  },
];

describe.each([
  ['in one piece', makeDesignFile({ pieces: 1 })],
  ['of two links', PLAIN_DESIGN],
  ['of three links', makeDesignFile({ pieces: 3 })],
])('the plain bait %s', (_, file) => {
  test('can be made', () => {
    expect(soundIssuesOf(file)).toEqual([]);
  });
});

describe.each(CASES)('$bait', ({ code, path, wrong, right }) => {
  const issues = soundIssuesOf(edited(PLAIN_DESIGN, wrong));

  test(`is refused as ${code}`, () => {
    expect(issues.map((issue) => [issue.code, issue.path])).toContainEqual([code, path]);
  });

  test('is said in words with its numbers and a cure', () => {
    for (const { message, hint } of issues) {
      expect(message).toMatch(/\d/);
      expect(message).not.toMatch(/\.$|NaN|undefined|Infinity/);
      expect(hint).toMatch(/^[a-z]+ /);
    }
  });

  test('can be made with a hair’s difference', () => {
    expect(soundIssuesOf(edited(PLAIN_DESIGN, right))).toEqual([]);
  });
});

describe('joints and links', () => {
  const THREE = makeDesignFile({ pieces: 3 });

  function jointCodes(changes: Changes): readonly string[] {
    const { design, hull, links } = partsOf(edited(THREE, changes));
    return jointIssues(hull, links, design.joints).map((issue) => `${issue.code} ${issue.path}`);
  }

  test('a joint before the one before it is refused, and then only that', () => {
    const issues = soundIssuesOf(edited(THREE, { 'joints.1.x_mm': 49 }));
    expect(new Set(issues.map(({ code }) => code))).toEqual(new Set(['links/joints-crossing']));
    expect(issues.map(({ path }) => path)).toContain('joints.1.x_mm');
  });

  test('a joint before the nose is refused', () => {
    expect(jointCodes({ 'joints.0.x_mm': -4 })).toContain('links/joint-outside-body joints.0.x_mm');
  });

  test('a link under 5 mm long is refused, one of 5 mm is not', () => {
    expect(jointCodes({ 'joints.1.x_mm': 56.9 })).toEqual(['links/link-too-short joints.1.x_mm']);
    expect(jointCodes({ 'joints.1.x_mm': 57 })).toEqual([]);
  });

  test('bevels that leave less than 1 mm along the flank are refused', () => {
    const bevels = (degrees: number) => ({
      'joints.0.faces': { kind: 'bevel', fore_deg: 0, aft_deg: degrees },
      'joints.1.faces': { kind: 'bevel', fore_deg: degrees, aft_deg: 0 },
    });
    // the middle link is 32 long and 10 to its flank: 32 - 20 tan β is 1.2 at 57° and -2.6 at 60°
    expect(jointCodes(bevels(60))).toEqual(['links/bevels-meet joints.1.x_mm']);
    expect(jointCodes(bevels(57))).toEqual([]);
  });

  test('a slot that leaves less than 1 mm behind it in a link sawn at both ends is refused', () => {
    const codesAt = (depth: number) => {
      const { hull, links } = partsOf(edited(THREE, { 'joints.1.slots.0.depth_mm': depth }));
      return slotIssues(hull, links[1], 0).map((issue) => `${issue.code} ${issue.path}`);
    };
    // from the face at 83 back to 51
    expect(codesAt(31.1)).toEqual(['joints/slot-too-deep joints.1.slots.0.depth_mm']);
    expect(codesAt(30.9)).toEqual([]);
  });

  test('slots that open to opposite faces may pass over each other only while they do not meet', () => {
    const slots = [
      { in: 'aft', width_mm: 5, depth_mm: 10, z_mm: [-2, 2] },
      { in: 'fore', width_mm: 5, depth_mm: 10, z_mm: [-2, 2] },
    ];
    const codesAt = (depth: number) => {
      const changes = { 'joints.0.slots': [slots[0]], 'joints.1.slots': [{ ...slots[1], depth_mm: depth }] };
      const { hull, links } = partsOf(edited(THREE, changes));
      return slotIssues(hull, links[1], 0).map(({ code }) => code);
    };
    expect(codesAt(21.9)).toEqual([]);
    expect(codesAt(22)).toEqual(['joints/slots-crossing']);
  });

  test('a slot that is upside down is refused even where no file was read', () => {
    const { hull, links } = partsOf(PLAIN_DESIGN);
    const [slot] = links[0].slots;
    const spec = { ...links[0], slots: [{ ...slot, z: [slot.z[1], slot.z[0]] as const }] };
    expect(slotIssues(hull, spec, 0)).toMatchObject([{ code: 'joints/slot-upside-down' }]);
  });

  test('a pin that is upside down is refused even where no file was read', () => {
    const { design, setup, hull, links, hardware } = partsOf(PLAIN_DESIGN);
    const [joint] = design.joints;
    if (joint.hinge.kind !== 'pin') throw new Error('the plain bait hinges on a pin');
    const hinge = { ...joint.hinge, pin: { ...joint.hinge.pin, z: [12, -12] as const } };
    const check = () => checkSound(hull, links, [{ ...joint, hinge }], hardware, setup.coats, 0);
    expect(check).toThrow('the second must be higher');
  });
});

test('a bait with several faults is told all of them at once', () => {
  const issues = soundIssuesOf(
    edited(PLAIN_DESIGN, {
      [`${HINGE}.pin.diameter_mm`]: 3,
      'hangers.2.shank_mm': 40,
      [`${HOLE}.diameter_mm`]: 7.5,
      'setups.0.holes.1.x_mm': 63.9,
    }),
  );
  expect(issues.map(({ code }) => code)).toEqual([
    'joints/pin-too-thick',
    'hardware/shank-out-of-wood',
    'holes/lead-too-wide',
    'holes/in-a-joint',
  ]);
});

test('a fault in the second setup is found at its place there', () => {
  const { design, setup, hull, links, hardware } = partsOf(edited(PLAIN_DESIGN, { [`${HOLE}.depth_mm`]: 35 }));
  const check = () => checkSound(hull, links, design.joints, hardware, setup.coats, 1);
  expect(check).toThrow('setups.1.holes.0.depth_mm');
});
