import { describe, expect, test } from 'vitest';
import { type CheckJson, checkJson } from '../../../../sim/out/check-json.ts';
import {
  makeAssembly,
  makeCheckedBait,
  makeJointed,
  makeJointReach,
  makeJointRest,
  makeReach,
  makeWhatIf,
} from '../../../support/make-checked-bait.ts';

const BAIT = makeCheckedBait({ whatIfs: [makeWhatIf({ lead: { mass: 6.2, change: 0.7 } })] });
const JSON_BAIT = JSON.parse(JSON.stringify(checkJson(BAIT))) as CheckJson;

/** What others may rely on: the keys of every object, in their order. */
const FLOAT_KEYS = [
  ...['state', 'up', 'offset_mm', 'trim_deg', 'heel_deg', 'displaced_mm3', 'cb_mm', 'reserve_percent'],
  ...['gm_mm', 'gm_long_mm', 'gm_min_mm', 'proud_mm', 'net_wet_g', 'sink_mm_s', 'neutral', 'tender', 'hump_g_mm'],
];

const JUDGED = ['other_attitudes', 'accuracy', 'film', 'air_in_slots_g'];
const ROLL_KEYS = [
  ...['word', 'gm_mm', 'width_mm', 'gm_percent_of_width', 'steady_from_mm', 'stiff_from_mm', 'afloat', 'loll_deg'],
  ...['starboard', 'port', 'comes_back_from_belly_up', 'arms', 'drops'],
];
const BALLAST_KEYS = [
  ...['name', 'need', 'state', 'holes', 'lead_g', 'left', 'fill_last', 'cannot', 'cures', 'float', 'forgiveness'],
];
const JOINTED_KEYS = ['straight', 'let_go', 'yaw_curvature_g_mm', 'friction_deg', 'folded'];
const JOINT_KEYS = [
  ...['yaw_deg', 'sag_deg', 'lean_deg', 'shift_mm', 'rise_mm'],
  ...['shear_g', 'moment_g_mm', 'twist_g_mm', 'stops'],
];
const OTHER_KEYS = ['hump_back_g_mm', 'starts_percent', 'starts_error_percent', 'mirror_of'];

describe('the keys of check --json', () => {
  const [head] = JSON_BAIT.links;
  test.each<[place: string, object: object | null | undefined, keys: readonly string[]]>([
    [
      'the whole',
      JSON_BAIT,
      [...['design', 'setup', 'water', 'links', 'assembled', 'drop', 'warnings', 'what_ifs'], 'folded_at'],
    ],
    ['water', JSON_BAIT.water, ['density_g_mm3', 'temperature_c', 'salinity_g_kg']],
    [
      'a link',
      head,
      [
        ...['name', 'span_mm', 'fixed', 'outside', 'hung', 'ledger', 'target', 'float', 'sinking'],
        ...[...JUDGED, 'roll', 'ballast'],
      ],
    ],
    ['fixed', head?.fixed, ['mass_g', 'cg_mm']],
    ['outside', head?.outside[0], ['name', 'volume_mm3', 'at_mm']],
    ['hung', head?.hung[0], ['name', 'mass_g', 'volume_mm3', 'eye_mm', 'hang_mm']],
    ['ledger', head?.ledger[0], ['name', 'kind', 'mass_g', 'at_mm', 'source']],
    ['target', head?.target, ['up', 'offset_mm', 'net_wet_g']],
    ['float of a link', head?.float, FLOAT_KEYS],
    [
      'assembled',
      JSON_BAIT.assembled,
      ['float', 'sinking', ...JUDGED, 'roll', 'links', 'pins', 'total_fold_deg', 'reach', 'jointed'],
    ],
    ['its joints in play', JSON_BAIT.assembled.jointed, JOINTED_KEYS],
    ['held straight', JSON_BAIT.assembled.jointed?.straight, ['links', 'joints', 'converged']],
    ['a joint there', JSON_BAIT.assembled.jointed?.straight.joints[0], JOINT_KEYS],
    ['a fold', JSON_BAIT.assembled.jointed?.folded?.port, ['points', 'rolls_from_deg']],
    ['another attitude', head?.other_attitudes[0], [...FLOAT_KEYS, ...OTHER_KEYS]],
    ['accuracy', head?.accuracy, ['mesh', 'solver']],
    ['error of the mesh', head?.accuracy.mesh, ['draft_mm', 'proud_mm', 'trim_deg', 'heel_deg', 'gm_mm']],
    ['error of the solver', head?.accuracy.solver, ['draft_mm', 'angle_deg']],
    ['roll of a link', head?.roll, [...ROLL_KEYS, 'off_centre', 'least_lead']],
    ['roll of the whole', JSON_BAIT.assembled.roll, [...ROLL_KEYS, 'off_centre']],
    ['one way over', head?.roll.starboard, ['limit_deg', 'most_arm_mm', 'most_arm_deg', 'energy_g_mm', 'on_end_deg']],
    ['an arm', head?.roll.arms[0], ['heel_deg', 'arm_mm', 'energy_g_mm']],
    ['drops', head?.roll.drops, ['starts', 'first_percent', 'first_error_percent']],
    ['lead off the middle', head?.roll.off_centre, ['by_mm', 'heel_deg', 'assembled_heel_deg']],
    ['least lead', head?.roll.least_lead, ['at_mm', 'place', 'stands', 'steady']],
    ['a mass of lead', head?.roll.least_lead?.stands, ['net_g', 'lead_g']],
    ['film', head?.film, ['edge_mm', 'force_g', 'draft_mm', 'trim_deg', 'heel_deg', 'too_close']],
    ['float of the whole', JSON_BAIT.assembled.float, FLOAT_KEYS],
    ['pose of a link', JSON_BAIT.assembled.links[0], ['up', 'offset_mm']],
    ['a pin', JSON_BAIT.assembled.pins[0], ['x_mm', 'shear_g', 'moment_g_mm', 'twist_g_mm', 'slop_deg', 'reach_deg']],
    ['a warning', JSON_BAIT.warnings[0], ['code', 'where', 'text', 'at_mm', 'number', 'limit', 'unit', 'fix']],
    ['a cure', JSON_BAIT.warnings[0]?.fix, ['says', 'sets']],
    ['a step of it', JSON_BAIT.warnings[0]?.fix?.sets[0], ['path', 'value']],
    ['ballast of a link', head?.ballast, BALLAST_KEYS],
    ['its need', head?.ballast.need, ['net_g', 'at_mm']],
    ['what its rounding leaves', head?.ballast.left, ['trim_deg', 'net_g']],
    ['its float', head?.ballast.float, FLOAT_KEYS],
    [
      'a what-if',
      JSON_BAIT.what_ifs[0],
      ['name', 'state', 'net_wet_g', 'trim_deg', 'proud_mm', 'first_foot_s', 'change', 'lead'],
    ],
    ['its change', JSON_BAIT.what_ifs[0]?.change, ['net_wet_g', 'trim_deg', 'proud_mm', 'first_foot_s']],
    ['its lead', JSON_BAIT.what_ifs[0]?.lead, ['mass_g', 'change_g']],
  ])('%s', (_, object, keys) => {
    expect(Object.keys(object ?? {})).toEqual(keys);
  });
});

test('every answer stands under the key that names it', () => {
  const [head, tail] = JSON_BAIT.links;
  expect(JSON_BAIT).toMatchObject({ design: 'Boathouse Plain', setup: 'still pond' });
  expect(JSON_BAIT.water).toEqual({ density_g_mm3: 0.0009982, temperature_c: 20, salinity_g_kg: 0 });
  expect(head).toMatchObject({
    name: 'head',
    span_mm: [0, 59],
    fixed: { mass_g: 12.65, cg_mm: [31, 0, 0.5] },
    outside: [{ name: 'line tie', volume_mm3: 21, at_mm: [-3, 0, 0] }],
    hung: [{ name: 'fore treble', mass_g: 2, volume_mm3: 254.8, eye_mm: [36, 0, -19], hang_mm: 30 }],
    target: { up: [0, 0, 1], offset_mm: 15, net_wet_g: null },
  });
  expect(head?.ledger[0]).toEqual({
    name: 'wood',
    kind: 'wood',
    mass_g: 12.25,
    at_mm: [31, 0, 0.5],
    source: 'density in the design',
  });
  expect(tail?.hung.map(({ name }) => name)).toEqual(['aft treble']);
  expect(tail?.target).toEqual({ up: [0, 0, 1], offset_mm: null, net_wet_g: 0 });
  expect(tail?.float).toMatchObject({ state: 'sinks', offset_mm: null, proud_mm: null, net_wet_g: 0.8 });
  expect(JSON_BAIT.assembled.float).toMatchObject({
    displaced_mm3: 20_000,
    cb_mm: [30, 0, -1],
    gm_mm: 3,
    gm_long_mm: 40,
    gm_min_mm: 3,
    proud_mm: 2.5,
    net_wet_g: -2.25,
    neutral: false,
    tender: false,
  });
});

test('what sinks has its speed, and all that is known of its fall', () => {
  const [, tail] = JSON_BAIT.links;
  expect(tail.float.sink_mm_s).toEqual([100, 115, 130]);
  expect(tail.sinking).toMatchObject({
    first_foot_s: [3.1, 3.4, 3.7],
    trim_deg: expect.closeTo(1.2, 12),
    net_wet_g: 0.8,
  });
});

test('a warning has its place, its number and limit with their unit, and its cure', () => {
  expect(JSON_BAIT.warnings).toEqual([
    {
      code: 'wall-thin',
      where: 'head hole',
      text: 'Hole "head hole" leaves 2.1 mm of wood.',
      at_mm: [24, -5, -12],
      number: 2.125,
      limit: 3,
      unit: 'mm',
      fix: { says: 'drill "head hole" 1.5 mm less deep', sets: [{ path: 'setups.0.holes.0.depth_mm', value: 8.5 }] },
    },
  ]);
});

test('angles are degrees and the reserve is a percentage', () => {
  // pi/60 rad, -pi/36 rad, a share of 0.054
  expect(JSON_BAIT.links[0]?.float.trim_deg).toBeCloseTo(3, 12);
  expect(JSON_BAIT.assembled.float.heel_deg).toBeCloseTo(-5, 12);
  expect(JSON_BAIT.what_ifs[0]?.trim_deg).toBeCloseTo(-0.5, 12);
  expect(JSON_BAIT.what_ifs[0]?.change.trim_deg).toBeCloseTo(-0.5, 12);
  expect(JSON_BAIT.assembled.float.reserve_percent).toBeCloseTo(5.4, 12);
});

test('what is not worked out is null, never 0', () => {
  for (const part of [...JSON_BAIT.links, JSON_BAIT.assembled]) expect(part.float.hump_g_mm).toBeNull();
  for (const part of [JSON_BAIT.links[0], JSON_BAIT.assembled]) {
    expect(part.float.sink_mm_s).toBeNull();
    expect(part.sinking).toBeNull();
  }
  expect(JSON_BAIT.drop).toBeNull();
  const joint = makeJointRest({ load: { shear: 0.4, moment: -13, twist: 2 }, slop: null });
  const bearing = checkJson(makeCheckedBait({ jointed: makeJointed({ straight: makeAssembly({ joints: [joint] }) }) }));
  const loads = { shear_g: 0.4, moment_g_mm: -13, twist_g_mm: 2, slop_deg: null };
  expect(bearing.assembled.pins).toMatchObject([{ x_mm: 56, ...loads }]);
  expect(bearing.assembled.jointed?.let_go).toBeNull();
  const jointless = { reach: makeReach([]), jointed: null, folded: null };
  const noJoint = checkJson(makeCheckedBait({ hardware: { ...BAIT.hardware, pins: [] }, ...jointless }));
  expect(noJoint.assembled.total_fold_deg).toBeNull();
  expect(noJoint.assembled.jointed).toBeNull();
});

test('reach is in degrees, to port and to starboard, and the whole folds what its worse side does', () => {
  const { pins, total_fold_deg, reach } = JSON_BAIT.assembled;
  expect(pins[0]?.reach_deg[0]).toBeCloseTo(30, 12);
  expect(pins[0]?.reach_deg[1]).toBeCloseTo(32, 12);
  expect(total_fold_deg).toBeCloseTo(30, 12);
  expect(reach.joints[0]).toMatchObject({ joint: 1, hinge: 'pin', x_mm: 56, play_mm: [-0.5, 0.5] });
  expect(reach.joints[0]?.port).toMatchObject({ touches: ['face', 'face'], at_mm: [54, -9, -2] });
  expect(reach.joints[0]?.least_deg[1]).toBeCloseTo(29, 12);
  expect(reach.joints[0]?.most_deg[0]).toBeCloseTo(33, 12);
  expect(reach.joints[0]?.without_coats_deg[1]).toBeCloseTo(33, 12);
  expect(reach).toMatchObject({ turns_round: false, port: { far: null } });
});

test('far links are counted from 1, as makers do', () => {
  const { joints, whole } = makeReach();
  const port = { ...whole.port, far: { links: [0, 2] as const, at: [10, -4, 1] as const } };
  const json = checkJson(makeCheckedBait({ reach: { joints, whole: { ...whole, port } } }));
  expect(json.assembled.reach.port.far).toEqual({ links: [1, 3], at_mm: [10, -4, 1] });
});

test('other attitudes carry the hump from the first, and how many starts end there with its sampling error', () => {
  const [head, tail] = JSON_BAIT.links;
  expect(head?.other_attitudes).toHaveLength(1);
  expect(head?.other_attitudes[0]).toMatchObject({
    up: [0, 0, -1],
    offset_mm: -11,
    hump_g_mm: 6.25,
    hump_back_g_mm: 1.5,
  });
  expect(head?.other_attitudes[0]).toMatchObject({ starts_percent: 25, mirror_of: null });
  // sqrt(0.25 * 0.75/162)
  expect(head?.other_attitudes[0]?.starts_error_percent).toBeCloseTo(3.402, 3);
  expect(tail?.other_attitudes).toEqual([]);
  expect(JSON_BAIT.assembled.other_attitudes).toEqual([]);
});

test('bands and errors stand in the units of their keys', () => {
  const [head, tail] = JSON_BAIT.links;
  expect(head?.accuracy.mesh).toMatchObject({ draft_mm: 0.004, proud_mm: 0.003, heel_deg: 0, gm_mm: 0.002 });
  expect(head?.accuracy.mesh?.trim_deg).toBeCloseTo(0.0057296, 7);
  expect(head?.film).toMatchObject({ edge_mm: 90, force_g: 0.67, draft_mm: 0.7, too_close: false });
  expect(tail?.film).toMatchObject({ edge_mm: 110, draft_mm: null, trim_deg: null, heel_deg: null, too_close: true });
  // 224 mm³ of slot at 0.0009982 g/mm³, in the head alone
  expect(head?.air_in_slots_g).toBeCloseTo(0.2235968, 12);
  expect(tail?.air_in_slots_g).toBe(0);
  expect(JSON_BAIT.assembled.air_in_slots_g).toBeCloseTo(0.2235968, 12);
});

test('held straight, every link stands as the whole bait does', () => {
  const { up, offset_mm } = JSON_BAIT.assembled.float;
  expect(JSON_BAIT.assembled.links).toEqual([
    { up, offset_mm },
    { up, offset_mm },
  ]);
});

test('water whose density was measured has neither temperature nor salt', () => {
  const water = { density: 0.001004, temperature: null, salinity: null, source: 'measured by you' };
  const json = checkJson(makeCheckedBait({ water }));
  expect(json.water).toEqual({ density_g_mm3: 0.001004, temperature_c: null, salinity_g_kg: null });
});

test('a link that no target is set for has none', () => {
  const bait = makeCheckedBait();
  const json = checkJson({ ...bait, target: { ...bait.target, links: [] } });
  expect(json.links.map(({ target }) => target)).toEqual([null, null]);
});

test('the pins are listed from the nose, whichever link carries them', () => {
  const [pin] = BAIT.hardware.pins;
  if (pin === undefined) throw new Error('the plain bait has a pin');
  const pins = [{ ...pin, joint: 1, x: 90 }, pin];
  const json = checkJson(
    makeCheckedBait({
      hardware: { ...BAIT.hardware, pins },
      reach: makeReach([0, 1].map((joint) => makeJointReach({ joint }))),
    }),
  );
  expect(json.assembled.pins.map(({ x_mm }) => x_mm)).toEqual([56, 90]);
});

test('numbers keep their full precision through the text', () => {
  const float = { ...BAIT.assembled, displaced: 20_000 / 3 };
  const json = JSON.parse(JSON.stringify(checkJson(makeCheckedBait({ assembled: float })))) as CheckJson;
  expect(json.assembled.float.displaced_mm3).toBe(20_000 / 3);
});
