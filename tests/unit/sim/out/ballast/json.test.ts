import { describe, expect, test } from 'vitest';
import type { Obstacle } from '../../../../../sim/ballast/plan.ts';
import { ballastJson } from '../../../../../sim/out/ballast/json.ts';
import type { CheckedBait } from '../../../../../sim/out/checked-bait.ts';
import { makeCheckedBait, makeFloat, makeWhatIf } from '../../../../support/make-checked-bait.ts';
import { CANNOT, PLANNED } from '../../../../support/make-planned-bait.ts';

const DEGREE = Math.PI / 180;

function jsonOf(bait: CheckedBait) {
  return JSON.parse(JSON.stringify(ballastJson(bait)));
}

describe('the keys of ballast --json', () => {
  const json = jsonOf({ ...PLANNED, whatIfs: [makeWhatIf()] });
  const [head] = json.links;
  const [, tail] = jsonOf(CANNOT).links;
  test.each([
    ['the whole', json, ['design', 'setup', 'links', 'assembled', 'what_ifs']],
    [
      'a link',
      head,
      [...['name', 'need', 'state', 'holes', 'lead_g', 'left', 'fill_last', 'cannot', 'cures', 'float'], 'forgiveness'],
    ],
    ['need', head.need, ['net_g', 'at_mm']],
    ['left', head.left, ['trim_deg', 'net_g']],
    [
      'a hole',
      head.holes[0],
      [
        ...['name', 'from', 'x_mm', 'across_mm', 'diameter_mm', 'depth_mm', 'point_deg', 'lead', 'air', 'plug_g'],
        ...['wall_mm', 'wall_at_mm'],
      ],
    ],
    ['its lead', head.holes[0].lead, ['of', 'mass_g']],
    ['forgiveness', head.forgiveness, ['trim_deg_per_mm', 'trim_deg_per_g_at_nose', 'trim_deg_per_g_at_tail', 'hung']],
    ['a hung item', head.forgiveness.hung[0], ['name', 'trim_deg', 'level_x_mm', 'level_mass_g']],
    ['a cure', tail.cures[0], ['kind', 'says', 'sets', 'link', 'assembled', 'lead_g', 'target_met', 'pin']],
    ['a pin', tail.cures[0].pin, ['shear_g', 'moment_g_mm', 'curl_deg', 'curled_heel_deg']],
    ['assembled', json.assembled, ['float', 'target_met']],
    [
      'a what-if',
      json.what_ifs[0],
      ['name', 'state', 'net_wet_g', 'trim_deg', 'proud_mm', 'first_foot_s', 'change', 'lead'],
    ],
  ])('%s', (_, object, keys) => {
    expect(Object.keys(object)).toEqual(keys);
  });
});

test('a planned link has its need, its holes with the wood round them, and what the rounding leaves', () => {
  const json = jsonOf(PLANNED);
  const [head, tail] = json.links;
  expect(json).toMatchObject({ design: 'Boathouse Plain', setup: 'still pond', assembled: { target_met: true } });
  expect(json.assembled.float.proud_mm).toBe(2.75);
  expect(head).toMatchObject({
    name: 'head',
    state: 'planned',
    need: { net_g: 3.6, at_mm: [25.5, 0, -9] },
    lead_g: 4,
    left: { net_g: 0.03 },
    fill_last: 'head, hole 1',
    cannot: null,
    cures: [],
  });
  expect(head.left.trim_deg).toBeCloseTo(0.4, 12);
  expect(head.holes).toEqual([
    {
      name: 'head, hole 1',
      from: 'belly',
      x_mm: 24,
      across_mm: 0,
      diameter_mm: 8,
      depth_mm: 10,
      point_deg: 180,
      lead: { of: '8 mm rod', mass_g: 4 },
      air: null,
      plug_g: 0.15,
      wall_mm: 3.25,
      wall_at_mm: [24, 6, -12],
    },
  ]);
  expect(tail).toMatchObject({ name: 'tail', state: 'enough', holes: [], need: { at_mm: null }, fill_last: null });
});

test('forgiveness is in degrees; of a link that does not stand there is none', () => {
  const [head, tail] = jsonOf(PLANNED).links;
  expect(head.forgiveness.trim_deg_per_mm).toBeCloseTo(0.5, 12);
  expect(head.forgiveness.trim_deg_per_g_at_nose).toBeCloseTo(2, 12);
  expect(head.forgiveness.trim_deg_per_g_at_tail).toBeCloseTo(-3, 12);
  expect(head.forgiveness.hung).toEqual([
    { name: 'fore treble', trim_deg: expect.closeTo(1.5, 12), level_x_mm: 44, level_mass_g: null },
  ]);
  expect(tail.forgiveness).toBeNull();
});

test('a chamber has the length of its plug and no lead, and a hole without a settled place no wall', () => {
  const [plan] = PLANNED.ballast.links;
  const [hole] = plan.holes;
  const chamber = { ...hole, lead: null, air: { plug: 4 } };
  const bait = {
    ...PLANNED,
    ballast: { ...PLANNED.ballast, links: [{ ...plan, holes: [chamber] }, PLANNED.ballast.links[1]] },
  };
  expect(jsonOf(bait).links[0].holes[0]).toMatchObject({
    lead: null,
    air: { plug_mm: 4 },
    plug_g: null,
    wall_mm: null,
    wall_at_mm: null,
  });
});

describe('why a link cannot be ballasted has the unit in every key, and its words', () => {
  test.each<readonly [Obstacle, object]>([
    [
      { kind: 'too-heavy', over: 1.2 },
      { kind: 'too-heavy', over_g: 1.2 },
    ],
    [
      { kind: 'no-weight-left', net: 0.1, moment: 30 },
      { kind: 'no-weight-left', net_g: 0.1, moment_g_mm: 30 },
    ],
    [
      { kind: 'empty-shop', lacks: 'lead' },
      { kind: 'empty-shop', lacks: 'lead' },
    ],
    [
      { kind: 'outside', x: 61, from: 66, to: 104 },
      { kind: 'outside', x_mm: 61, from_mm: 66, to_mm: 104 },
    ],
    [
      { kind: 'no-room', wanted: 12, most: 8 },
      { kind: 'no-room', wanted_g: 12, most_g: 8 },
    ],
    [{ kind: 'not-level' }, { kind: 'not-level' }],
  ])('%o', (why, wanted) => {
    const [head, tail] = CANNOT.ballast.links;
    const ballast = { ...CANNOT.ballast, links: [head, { ...tail, why }] };
    const { cannot } = jsonOf({ ...CANNOT, ballast }).links[1];
    expect(cannot).toEqual({ ...wanted, text: expect.stringMatching(/\.$/) });
  });
});

test('a cure has its edit, how the bait floats after it, and what the pin carries', () => {
  const [, tail] = jsonOf(CANNOT).links;
  expect(tail.cures[0]).toMatchObject({
    kind: 'neighbour',
    says: 'put the rest into head',
    sets: [{ path: 'setups.0.holes', value: [] }],
    link: { proud_mm: 1.25 },
    assembled: { proud_mm: 2.5 },
    lead_g: 3,
    target_met: true,
    pin: { shear_g: 0.4, moment_g_mm: -12, curl_deg: (0.5 * 180) / Math.PI, curled_heel_deg: (-0.25 * 180) / Math.PI },
  });
  expect(tail.cures[1].pin).toBeNull();
});

test('a what-if has its change, and its lead only where the target stays', () => {
  const rows = [
    makeWhatIf(),
    makeWhatIf({ proud: null, change: { netWet: 1, trim: DEGREE, proud: null, firstFoot: -0.5 } }),
  ];
  const withLead = makeWhatIf({ name: 'same target', lead: { mass: 6.2, change: 0.7 } });
  const json = jsonOf(makeCheckedBait({ whatIfs: [...rows, withLead] })).what_ifs;
  expect(json[0]).toEqual({
    name: 'in other water',
    state: 'floats',
    net_wet_g: -2.75,
    trim_deg: expect.closeTo(-0.5, 12),
    proud_mm: 2.9,
    first_foot_s: null,
    change: { net_wet_g: -0.5, trim_deg: expect.closeTo(-0.5, 12), proud_mm: 0.4, first_foot_s: null },
    lead: null,
  });
  expect(json[1]).toMatchObject({
    proud_mm: null,
    change: { proud_mm: null, trim_deg: expect.closeTo(1, 12), first_foot_s: -0.5 },
  });
  expect(json[2].lead).toEqual({ mass_g: 6.2, change_g: 0.7 });
});

test('a target that the plan misses is said to be', () => {
  const { planned } = PLANNED;
  const missed = { ...planned, assembled: makeFloat(), target: { ...planned.target, met: false } };
  expect(jsonOf({ ...PLANNED, planned: missed }).assembled.target_met).toBe(false);
});
