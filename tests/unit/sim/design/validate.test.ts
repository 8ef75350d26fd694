import { describe, expect, test } from 'vitest';
import type { Design } from '../../../../sim/design/design.ts';
import { checkDesignFile } from '../../../../sim/design/read.ts';
import { evaluateDesign } from '../../../../sim/design/validate.ts';
import type { Outcome } from '../../../../sim/flow/outcome.ts';
import { changed, goodOf, issuesOf } from '../../../support/change-file.ts';
import { makeDesignFile } from '../../../support/make-design.ts';

const plain = makeDesignFile({ pieces: 3 });
const stemmed = makeDesignFile({ pieces: 3, body: { tail: { z_mm: 1, depth_mm: 8, width_mm: 4 } } });

function evaluated(file: unknown): Outcome<Design> {
  return evaluateDesign(goodOf(checkDesignFile(file)));
}

/** What is put where, the place it must be reported at, and what the message must say. */
type Case = readonly [what: string, place: string, value: unknown, path: string, says: string];

const BAD_NUMBERS: readonly Case[] = [
  ['a body of 29 mm', 'body.length_mm', 29, 'body.length_mm', '29 mm is outside what is allowed: 30 mm to 600 mm'],
  ['a body of 601 mm', 'body.length_mm', 601, 'body.length_mm', '601 mm is outside what is allowed: 30 mm to 600 mm'],
  ['a height below nothing', 'body.height_mm', -36, 'body.height_mm', '-36 mm is outside'],
  ['a width of nothing', 'body.width_mm', 0, 'body.width_mm', '4 mm to 200 mm'],
  ['a length in metres by expression', 'body.length_mm', '120 / 1000', 'body.length_mm', '0.12 mm is outside'],
  ['a back all of the height', 'body.back_mm', 36, 'body.back_mm', 'between 3.6 mm and 32.4 mm, both excluded'],
  ['a back at a tenth of the height', 'body.back_mm', 3.6, 'body.back_mm', '3.6 mm is outside'],
  ['a back below the datum', 'body.back_mm', -1, 'body.back_mm', 'more than 0 mm, up to 200 mm'],
  ['the deepest station by the nose', 'body.deepest_x_mm', 11, 'body.deepest_x_mm', '12 mm to 108 mm'],
  ['the widest station by the tail', 'body.widest_x_mm', 'length_mm', 'body.widest_x_mm', '12 mm to 108 mm'],
  [
    'a plain nose too lean',
    'body.back',
    { nose_fullness: 0.72 },
    'body.back.nose_fullness',
    '0.72 is too lean for a plain tip: 0.73 or more is allowed',
  ],
  ['any nose too lean', 'body.back', { nose_fullness: 0.49 }, 'body.back.nose_fullness', '0.5 to 0.87'],
  ['a nose too full', 'body.plan', { nose_fullness: 0.88 }, 'body.plan.nose_fullness', '0.5 to 0.87'],
  [
    'a nose deeper than the body',
    'body.nose',
    { depth_mm: 36, width_mm: 4 },
    'body.nose.depth_mm',
    'the nose reaches from -18 mm to 18 mm; allowed is inside -18 mm to 18 mm',
  ],
  [
    'a nose as wide as the body',
    'body.nose',
    { depth_mm: 4, width_mm: 20 },
    'body.nose.width_mm',
    "20 mm is too wide; less than the body's width 20 mm",
  ],
  [
    'a round longer than the nose',
    'body.nose',
    { depth_mm: 8, width_mm: 4, round_mm: 61 },
    'body.nose.round_mm',
    '61 mm is too long; at most the 60 mm from the peak to the nose',
  ],
  ['a straight run that begins in the nose', 'body.deepest_x_mm', [11, 60], 'body.deepest_x_mm.0', '12 mm to 108 mm'],
  ['a straight run that ends in the tail', 'body.widest_x_mm', [60, 109], 'body.widest_x_mm.1', '109 mm is outside'],
  [
    'a straight run back to front',
    'body.widest_x_mm',
    [70, 50],
    'body.widest_x_mm',
    '[from, to] is wanted, from nose to tail, got 70 mm to 50 mm',
  ],
  [
    'an edge rounder than a router bit',
    'body.section',
    { kind: 'board', back_edge_mm: 101, belly_edge_mm: 2 },
    'body.section.back_edge_mm',
    '101 mm is outside what is allowed: 0 mm to 100 mm',
  ],
  [
    'a reading before the nose',
    'body.readings',
    [{ x_mm: 0, width_mm: 9 }],
    'body.readings.0.x_mm',
    '0 mm is off the body; allowed is between 0 mm and 120 mm',
  ],
  [
    'a reading behind the tail',
    'body.readings',
    [{ x_mm: 130, width_mm: 9 }],
    'body.readings.0.x_mm',
    '130 mm is off the body',
  ],
  [
    'two readings at one station',
    'body.readings',
    [
      { x_mm: 50, width_mm: 19 },
      { x_mm: 50, height_mm: 35 },
    ],
    'body.readings.1.x_mm',
    '50 mm is read twice: reading 1 stands there too',
  ],
  ['a reading of nothing', 'body.readings', [{ x_mm: 50 }], 'body.readings.0', 'nothing is read at 50 mm'],
  [
    'a reading that says one size twice',
    'body.readings',
    [{ x_mm: 50, height_mm: 35, back_mm: 17, belly_mm: 18 }],
    'body.readings.0.height_mm',
    'any two of them say it all',
  ],
  [
    'a plain tail too lean',
    'body.belly',
    { tail_fullness: 0.6 },
    'body.belly.tail_fullness',
    'too lean for a plain tip',
  ],
  ['any tail too lean', 'body.belly', { tail_fullness: 0.49 }, 'body.belly.tail_fullness', '0.5 to 0.87'],
  [
    'a plain tail above the back',
    'body.tail',
    { z_mm: 18 },
    'body.tail.z_mm',
    'from 18 mm to 18 mm; allowed is inside -18 mm to 18 mm',
  ],
  ['a plain tail below the belly', 'body.tail', { z_mm: -18 }, 'body.tail.z_mm', 'from -18 mm to -18 mm'],
  ['a stem deeper than the body', 'body.tail', { depth_mm: 40 }, 'body.tail.depth_mm', 'reaches from -20 mm to 20 mm'],
  [
    'a stem as wide as the body',
    'body.tail',
    { width_mm: 20 },
    'body.tail.width_mm',
    "less than the body's width 20 mm",
  ],
  [
    'a round longer than the tail',
    'body.tail',
    { depth_mm: 8, round_mm: 61 },
    'body.tail.round_mm',
    'at most the 60 mm',
  ],
  ['a round of nothing', 'body.tail', { depth_mm: 8, round_mm: 0 }, 'body.tail.round_mm', '0.1 mm to 200 mm'],
  ['a section like a star', 'body.section.above', 1, 'body.section.above', '1 is outside what is allowed: 1.3 to 8'],
  ['a breadth at the keel', 'body.section.breadth', 0.1, 'body.section.breadth', '0.2 to 0.8'],
  ['a link of osmium and more', 'links.1.density_g_cm3', 26, 'links.1.density_g_cm3', '0.05 g/cm³ to 25 g/cm³'],
  ['wood of no weight', 'wood.density_g_cm3', 0, 'wood.density_g_cm3', '0 g/cm³ is outside'],
  ['wood in kg/m³', 'wood.density_g_cm3', 600, 'wood.density_g_cm3', '600 g/cm³ is outside'],
  ['a joint a metre aft and more', 'joints.0.x_mm', 1001, 'joints.0.x_mm', '-1000 mm to 1000 mm'],
  ['a gap of nothing', 'joints.1.gap_mm', 0, 'joints.1.gap_mm', '0.2 mm to 10 mm'],
  [
    'a bevel of 61°',
    'joints.1.faces',
    { kind: 'bevel', fore_deg: 61, aft_deg: 0 },
    'joints.1.faces.fore_deg',
    '61° is outside',
  ],
  [
    'a bevel the wrong way',
    'joints.1.faces',
    { kind: 'bevel', fore_deg: 0, aft_deg: -1 },
    'joints.1.faces.aft_deg',
    '0° to 60°',
  ],
  ['a hair for wire', 'joints.0.hinge.wire_mm', 0.1, 'joints.0.hinge.wire_mm', '0.3 mm to 40 mm'],
  ['a loop of 41 mm', 'joints.0.hinge.bore_mm', 41, 'joints.0.hinge.bore_mm', '0.3 mm to 40 mm'],
  ['a shank of nothing', 'joints.0.hinge.shank_mm', 0, 'joints.0.hinge.shank_mm', 'more than 0 mm, up to 100 mm'],
  ['a pin of 0.2 mm', 'joints.0.hinge.pin.diameter_mm', 0.2, 'joints.0.hinge.pin.diameter_mm', '0.3 mm to 40 mm'],
  ['a pin upside down', 'joints.0.hinge.pin.z_mm', [12, -12], 'joints.0.hinge.pin.z_mm', 'got 12 mm to -12 mm'],
  ['a pin of no length', 'joints.0.hinge.pin.z_mm', [1, 1], 'joints.0.hinge.pin.z_mm', 'from below to above'],
  ['a slot upside down', 'joints.1.slots.1.z_mm', [-6, -9], 'joints.1.slots.1.z_mm', 'got -6 mm to -9 mm'],
  ['a slot of no width', 'joints.1.slots.0.width_mm', 0, 'joints.1.slots.0.width_mm', 'more than 0 mm'],
  ['a coat of 4 mm', 'coats.1.thickness_mm', 4, 'coats.1.thickness_mm', '0 mm to 3 mm'],
  ['a sealer heavier than the wood', 'coats.0.soak_percent', 101, 'coats.0.soak_percent', '0% to 100%'],
  ['a sealer by the bucket', 'coats.0', { name: 'oil', soak_g_m2: 501 }, 'coats.0.soak_g_m2', '0 g/m² to 500 g/m²'],
  ['a hanger that pulls up', 'hangers.1.mass_g', -1, 'hangers.1.mass_g', '0 g to 500 g'],
  ['a hook of a pound and a half', 'setups.0.hung.0.mass_g', 700, 'setups.0.hung.0.mass_g', '0 g to 500 g'],
  ['a hook that hangs nowhere', 'setups.0.hung.0.hang_mm', 0, 'setups.0.hung.0.hang_mm', '1 mm to 200 mm'],
  ['water under ice', 'setups.0.water.temperature_c', -3, 'setups.0.water.temperature_c', '-2 °C to 40 °C'],
  ['a salt lake', 'setups.0.water.salinity_g_kg', 43, 'setups.0.water.salinity_g_kg', '0 g/kg to 42 g/kg'],
  [
    'water lighter than oil',
    'setups.0.water',
    { measured_g_cm3: 0.8 },
    'setups.0.water.measured_g_cm3',
    '0.9 g/cm³ to 1.3',
  ],
  ['a trim of 70°', 'setups.0.target.trim_deg', -70, 'setups.0.target.trim_deg', '-60° to 60°'],
  [
    'a link that floats below water',
    'setups.0.link_targets',
    { tail: { proud_mm: -1 } },
    'setups.0.link_targets.tail.proud_mm',
    '-1 mm is outside',
  ],
  ['a hole of no depth', 'setups.0.holes.1.depth_mm', 0, 'setups.0.holes.1.depth_mm', 'more than 0 mm'],
  ['a drill like a needle', 'setups.0.holes.1.point_deg', 20, 'setups.0.holes.1.point_deg', '60° to 180°'],
  ['lead of no mass but less', 'setups.0.holes.0.lead.mass_g', -2, 'setups.0.holes.0.lead.mass_g', '0 g to 500 g'],
  [
    'coats of a setup too thick',
    'setups.0.coats',
    [{ name: 'tar', thickness_mm: 5, density_g_cm3: 1 }],
    'setups.0.coats.0.thickness_mm',
    '5 mm is outside',
  ],
];

const BAD_NAMES: readonly Case[] = [
  ['a link too few', 'links', [{ name: 'a' }, { name: 'b' }], 'links', '3 for 2 joints, got 2'],
  ['two links of one name', 'links.2.name', 'head', 'links.2.name', 'the name "head" is taken by links.0'],
  ['two hangers of one name', 'hangers.2.name', 'belly, fore', 'hangers.2.name', 'taken by hangers.1'],
  ['two setups of one name', 'setups', [plain.setups[0], plain.setups[0]], 'setups.1.name', 'taken by setups.0'],
  ['two hooks of one name', 'setups.0.hung.1.name', 'fore treble', 'setups.0.hung.1.name', 'taken by setups.0.hung.0'],
  ['two holes of one name', 'setups.0.holes.1.name', 'head hole', 'setups.0.holes.1.name', 'taken by setups.0.holes.0'],
  ['two leads of one name', 'shop.lead.1.name', '8 mm rod', 'shop.lead.1.name', 'taken by shop.lead.0'],
  ['two drills of one name', 'shop.drills', [drill(6), drill(8)], 'shop.drills.1.name', 'taken by shop.drills.0'],
  [
    'a link named like what every object has',
    'links.0.name',
    'constructor',
    'links.0.name',
    '"constructor" cannot be a name',
  ],
  [
    'a hook on a hanger that is not there',
    'setups.0.hung.0.from',
    'chin',
    'setups.0.hung.0.from',
    'there are: "line tie", "belly, fore"',
  ],
  [
    'lead that the shop has not',
    'setups.0.holes.0.lead.of',
    'gold',
    'setups.0.holes.0.lead.of',
    '"gold" is not in shop.lead',
  ],
  ['lead from no shop', 'shop', undefined, 'setups.0.holes.0.lead.of', 'there is nothing'],
  [
    'a target for a link that is not there',
    'setups.0.link_targets',
    { fin: { net_wet_g: 0 } },
    'setups.0.link_targets.fin',
    'not in links',
  ],
  [
    'a wood that nobody has weighed',
    'wood.species',
    'driftwood',
    'wood.species',
    'known: paulownia, northern white-cedar',
  ],
  [
    'a belly hanger without x',
    'hangers.1.x_mm',
    undefined,
    'hangers.1.x_mm',
    'a hanger on the belly is placed by x_mm',
  ],
  ['a belly hanger with z', 'hangers.1.z_mm', -9, 'hangers.1.z_mm', 'z_mm says nothing there'],
  ['a nose hanger without z', 'hangers.0.z_mm', undefined, 'hangers.0.z_mm', 'placed by z_mm'],
  [
    'a tail hanger with x',
    'hangers.0',
    { ...plain.hangers[0], on: 'tail', x_mm: 120 },
    'hangers.0.x_mm',
    'x_mm says nothing there',
  ],
  ['a slug without a diameter', 'shop.lead.0.diameter_mm', undefined, 'shop.lead.0.diameter_mm', 'which is missing'],
  [
    'poured lead with a diameter',
    'shop.lead.1.diameter_mm',
    8,
    'shop.lead.1.diameter_mm',
    'takes the diameter of its hole',
  ],
];

/** Joints whose parts do not go together, as what they replace in the plain bait. */
const BAD_JOINTS: readonly Case[] = [
  [
    'a knuckle whose pin is put somewhere',
    'joints.0.faces',
    { kind: 'knuckle', on: 'aft', radius_mm: 12 },
    'joints.0.hinge.pin.x_mm',
    'the pin of a knuckle stands on its axis',
  ],
  [
    'a knuckle on linked eyes',
    'joints.0',
    {
      ...plain.joints[0],
      faces: { kind: 'knuckle', on: 'aft', radius_mm: 12 },
      hinge: { kind: 'linked-eyes', z_mm: [5], wire_mm: 1, bore_mm: 2, shank_mm: 9 },
    },
    'joints.0.hinge.kind',
    'it turns on "pin" alone',
  ],
];

const APART: readonly Case[] = [
  [
    'a pair on the centre plane',
    'fittings',
    [{ name: 'eye', x_mm: 10, z_mm: 3, mass_g: 0.2, pair: true }],
    'fittings.0.y_mm',
    'stands to either side',
  ],
  [
    'a tail with less air at most than at least',
    'tails',
    [{ name: 'hair', x_mm: 120, z_mm: 0, mass_g: 0.5, density_g_cm3: 1.3, air_mm3: [300, 100] }],
    'tails.0.air_mm3',
    'less than the least',
  ],
  ['lead and air in one hole', 'setups.0.holes.0.air', { plug_mm: 4 }, 'setups.0.holes.0.air', 'not both'],
  [
    'two fittings of one name',
    'fittings',
    [
      { name: 'eye', x_mm: 10, z_mm: 3, mass_g: 0.2 },
      { name: 'eye', x_mm: 12, z_mm: 3, mass_g: 0.2 },
    ],
    'fittings.1.name',
    'taken by fittings.0',
  ],
];

function drill(diameter_mm: number): unknown {
  return { name: 'bit', diameter_mm };
}

describe('a design whose numbers make no bait', () => {
  test.each([...BAD_NUMBERS, ...BAD_NAMES, ...BAD_JOINTS, ...APART])(
    'is refused for %s, at its place',
    (_, place, value, path, says) => {
      const issues = issuesOf(evaluated(changed(plain, place, value)));
      expect(new Set(issues.map((issue) => issue.path))).toContain(path);
      expect(issues.find((issue) => issue.path === path)?.message).toContain(says);
    },
  );

  test.each(BAD_NUMBERS)('is refused by one message for %s', (_, place, value, path) => {
    expect(issuesOf(evaluated(changed(plain, place, value))).map((issue) => issue.path)).toEqual([path]);
  });

  test('is told of numbers and names at once', () => {
    const thin = changed(plain, 'joints.1.gap_mm', 0);
    const lost = changed(thin, 'setups.0.hung.1.from', 'chin');
    const sunk = changed(lost, 'setups.0.target', { sink_mm_s: 0 });
    const flown = changed(sunk, 'setups.0.drop', { distance_mm: 20, time_s: 3 });
    const paths = issuesOf(evaluated(flown)).map(({ path }) => path);
    expect(paths).toEqual([
      'joints.1.gap_mm',
      'setups.0.target.sink_mm_s',
      'setups.0.drop.distance_mm',
      'setups.0.hung.1.from',
    ]);
  });

  test('is told of expressions before anything is made of their values', () => {
    const file = changed(changed(plain, 'joints.1.gap_mm', 0), 'joints.0.x_mm', 'length_mm *');
    expect(issuesOf(evaluated(file)).map(({ path }) => path)).toEqual(['joints.0.x_mm']);
  });

  test('is not told that everything is out of proportion to a length that is itself wrong', () => {
    const file = changed(changed(plain, 'body.length_mm', 12), 'body.tail', { depth_mm: 8, width_mm: 4 });
    expect(issuesOf(evaluated(file)).map(({ path }) => path)).toEqual(['body.length_mm']);
  });
});

describe('a design at the very edge of what is allowed', () => {
  test.each<readonly [string, string, unknown]>([
    ['a peak at a tenth of the length', 'body.deepest_x_mm', 12],
    ['a peak at nine tenths of the length', 'body.widest_x_mm', 'length_mm * 0.9'],
    ['the leanest plain tail', 'body.back', { tail_fullness: 0.73 }],
    ['an empty list of fins', 'fins', []],
    ['an empty list of fittings', 'fittings', []],
    ['an empty list of readings', 'body.readings', []],
    ['a gap of 0.2 mm', 'joints.0.gap_mm', 0.2],
    ['a flat drill', 'setups.0.holes.1.point_deg', 180],
    ['no coats', 'coats', []],
    ['no hooks', 'setups.0.hung', []],
    ['a round as long as the tail', 'body.tail', { depth_mm: 8, round_mm: 60 }],
  ])('may have %s', (_, place, value) => {
    expect(evaluated(changed(plain, place, value)).status).toBe('ok');
  });

  test('may have a tail leaner than a plain tip where it runs into a stem', () => {
    const lean = changed(stemmed, 'body.back', { tail_fullness: 0.5 });
    const leanPlan = changed(lean, 'body.plan', { tail_fullness: 0.5 });
    expect(evaluated(leanPlan).status).toBe('ok');
    const deepOnly = changed(leanPlan, 'body.tail', { depth_mm: 8 });
    expect(issuesOf(evaluated(deepOnly)).map(({ path }) => path)).toEqual(['body.plan.tail_fullness']);
  });
});

describe('the design that a file means', () => {
  const design = goodOf(evaluated(plain));
  const [setup] = design.setups;

  test('has its angles, densities and shares in house units', () => {
    const bevelled = changed(plain, 'joints.0.faces', { kind: 'bevel', fore_deg: 30, aft_deg: 45 });
    const soaked = changed(bevelled, 'coats.1', { name: 'oil', soak_g_m2: 30 });
    const { joints, wood, coats } = { ...goodOf(evaluated(soaked)), coats: goodOf(evaluated(soaked)).setups[0]?.coats };
    expect(joints[0]?.faces).toEqual({
      kind: 'bevel',
      fore: expect.closeTo(Math.PI / 6, 14),
      aft: expect.closeTo(Math.PI / 4, 14),
    });
    // 1 cm^3 is 1000 mm^3, 1 m^2 is 10^6 mm^2
    expect(wood.density).toBe(0.6 / 1000);
    expect(coats).toEqual([
      { kind: 'soak-share', name: 'sealer', share: 0.04 },
      { kind: 'soak-area', name: 'oil', perArea: 30 / 1e6 },
    ]);
  });

  test('has half its height above the datum, peaks at 38 and 36 % and ellipses for outlines unless told otherwise', () => {
    const { body } = goodOf(
      evaluated(changed(changed(plain, 'body.deepest_x_mm', undefined), 'body.widest_x_mm', undefined)),
    );
    expect(body.back).toBe(18);
    expect(body.deepest).toEqual([0.38 * 120, 0.38 * 120]);
    expect(body.widest).toEqual([0.36 * 120, 0.36 * 120]);
    const ellipse = { nose: Math.PI / 4, tail: Math.PI / 4 };
    expect(body.fullness).toEqual({ back: ellipse, belly: ellipse, plan: ellipse });
    expect(body.section).toEqual({ kind: 'oval', above: 2, below: 2, breadth: 0.5 });
    expect(body.tail).toMatchObject({ z: 0, depth: 0, width: 0 });
  });

  test.each([
    ['1.5 times the smaller half of a stem', { depth_mm: 8, width_mm: 4 }, 3],
    ['1.5 times half its depth where it has no width', { depth_mm: 8 }, 6],
    ['1.5 times half its width where it has no depth', { width_mm: 4 }, 3],
    ['what the maker says', { depth_mm: 8, width_mm: 4, round_mm: 5 }, 5],
  ])('rounds its tail over %s', (_, tail, round) => {
    expect(goodOf(evaluated(changed(plain, 'body.tail', tail))).body.tail.round).toBe(round);
  });

  test('has a nose, runs, edges and readings where the maker gives them', () => {
    const given = changed(plain, 'body', {
      ...plain.body,
      deepest_x_mm: ['length_mm * 0.25', 80],
      widest_x_mm: [40, 70],
      nose: { depth_mm: 6, width_mm: 4 },
      back: { nose_fullness: 0.6 },
      section: { kind: 'board', back_edge_mm: 2, belly_edge_mm: 'width_mm / 5' },
      readings: [{ x_mm: 90, height_mm: 30, width_mm: 15 }],
    });
    const { body } = goodOf(evaluated(given));
    expect(body.deepest).toEqual([30, 80]);
    expect(body.widest).toEqual([40, 70]);
    // 1.5 times the smaller half
    expect(body.nose).toEqual({ depth: 6, width: 4, round: 3 });
    expect(body.fullness.back.nose).toBe(0.6);
    expect(body.section).toEqual({ kind: 'board', backEdge: 2, bellyEdge: 4 });
    expect(body.readings).toEqual([{ x: 90, height: 30, back: null, belly: null, width: 15 }]);
  });

  test('never rounds its tail past the peak', () => {
    const stubby = changed(plain, 'body', {
      ...plain.body,
      ...{ length_mm: 40, height_mm: 100, width_mm: 80, deepest_x_mm: 30, widest_x_mm: 20 },
      tail: { depth_mm: 60, width_mm: 50 },
    });
    // 1.5 x 25 mm is 37.5 mm; only 10 mm are left behind the deepest station
    expect(goodOf(evaluated(stubby)).body.tail.round).toBe(10);
  });

  test('has flat faces as bevels of no angle', () => {
    expect(design.joints[0]?.faces).toEqual({ kind: 'bevel', fore: 0, aft: 0 });
  });

  test('has steel pins at the joint unless told otherwise', () => {
    const { joints } = goodOf(evaluated(changed(plain, 'joints.1.hinge.pin.x_mm', undefined)));
    const pin = { x: 46, diameter: 2, z: [-12, 12], heldBy: 'fore', density: 0.00785 };
    expect(design.joints[0]?.hinge).toMatchObject({ pin });
    expect(joints[1]?.hinge).toMatchObject({ pin: { x: 84 } });
    const brass = goodOf(evaluated(changed(plain, 'joints.1.hinge.pin.density_g_cm3', 8.5)));
    expect(brass.joints[1]?.hinge).toMatchObject({ pin: { density: 0.0085 } });
  });

  test.each([
    ['aft', 63],
    ['fore', 37],
  ] as const)('has the pin of a knuckle on its axis, the radius behind the %s face', (on, axis) => {
    // sawn at 50 with a gap of 2
    const pinned = changed(plain, 'joints.0.hinge.pin.x_mm', undefined);
    const { joints } = goodOf(evaluated(changed(pinned, 'joints.0.faces', { kind: 'knuckle', on, radius_mm: 12 })));
    expect(joints[0]?.faces).toEqual({ kind: 'knuckle', on, radius: 12, axis });
    expect(joints[0]?.hinge).toMatchObject({ kind: 'pin', pin: { x: axis } });
  });

  test('has linked eyes by their heights and wire alone', () => {
    const eyes = { kind: 'linked-eyes', z_mm: [5, -5], wire_mm: 1, bore_mm: 2, shank_mm: 9 };
    const { joints } = goodOf(evaluated(changed(plain, 'joints.0.hinge', eyes)));
    expect(joints[0]?.hinge).toEqual({ kind: 'linked-eyes', z: [5, -5], wire: 1, bore: 2, shank: 9 });
  });

  test('has the loop of a hanger on the skin unless told otherwise, and its place by x or z', () => {
    const [lineTie, belly] = design.hangers;
    // bore / 2 + wire = 3 / 2 + 1.5
    expect(lineTie).toEqual({
      name: 'line tie',
      on: 'nose',
      at: 0,
      across: 0,
      wire: 1.5,
      bore: 3,
      shank: 12,
      stand: 3,
      mass: null,
    });
    expect(belly).toMatchObject({ on: 'belly', at: 36 });
    const changedHanger = { ...plain.hangers[1], stand_mm: 2, mass_g: 0.7 };
    expect(goodOf(evaluated(changed(plain, 'hangers.1', changedHanger))).hangers[1]).toMatchObject({
      stand: 2,
      mass: 0.7,
    });
  });

  test('has steel hooks, drilled holes and epoxy plugs unless told otherwise', () => {
    expect(setup?.hung[0]).toEqual({ name: 'fore treble', from: 'belly, fore', mass: 2, hang: 30, density: 0.00785 });
    expect(setup?.holes[0]?.point).toBe(Math.PI);
    expect(setup?.holes[1]).toEqual({
      name: 'middle hole',
      from: 'belly',
      x: 72,
      across: 0,
      diameter: 6,
      depth: 6,
      point: expect.closeTo((118 / 180) * Math.PI, 14),
      lead: { stock: { name: 'shot in epoxy', kind: 'filled', density: 0.0073 }, mass: 1 },
      air: null,
      plugDensity: 0.00115,
      done: false,
    });
  });

  test('lets a hole know its own slug, or have no lead', () => {
    expect(setup?.holes[0]?.lead?.stock).toEqual({
      name: '8 mm rod',
      kind: 'slug',
      diameter: 7.8,
      density: 11.3 / 1000,
    });
    const empty = goodOf(evaluated(changed(plain, 'setups.0.holes.0.lead', undefined)));
    expect(empty.setups[0]?.holes[0]?.lead).toBeNull();
  });

  test('gives each setup the coats of the design, or its own, even none', () => {
    const [first] = plain.setups;
    const file = changed(plain, 'setups', [
      { ...first, name: 'bare', coats: [] },
      { ...first, name: 'coated' },
    ]);
    const { setups } = goodOf(evaluated(file));
    expect(setups[0]?.coats).toEqual([]);
    expect(setups[1]?.coats).toEqual([
      { kind: 'soak-share', name: 'sealer', share: 0.04 },
      { kind: 'film', name: 'epoxy', thickness: 0.2, density: 0.00115, covers: 'skin' },
    ]);
  });

  test('has a film on every surface unless told otherwise', () => {
    const file = changed(plain, 'coats.1.covers', undefined);
    expect(goodOf(evaluated(file)).setups[0]?.coats[1]).toMatchObject({ covers: 'all' });
  });

  test.each<readonly [string, unknown, unknown]>([
    ['proud', { proud_mm: 3 }, { kind: 'proud', proud: 3, trim: 0 }],
    ['at a waterline', { waterline_z_mm: -2 }, { kind: 'waterline', z: -2, trim: 0 }],
    ['with a reserve', { reserve_g: 4 }, { kind: 'reserve', reserve: 4, trim: 0 }],
    ['with a share in reserve', { reserve_percent: 5 }, { kind: 'reserve-share', share: 0.05, trim: 0 }],
    ['sinking, nose up', { net_wet_g: 1.2, trim_deg: -180 / Math.PI }, { kind: 'net', net: 1.2, trim: -1 }],
    ['sinking so fast', { sink_mm_s: 100 }, { kind: 'sink', speed: 100, trim: 0 }],
  ])('may be wanted %s, whole and by link', (_, target, wanted) => {
    const file = changed(changed(plain, 'setups.0.target', target), 'setups.0.link_targets', { tail: target });
    const [one] = goodOf(evaluated(file)).setups;
    expect(one?.target).toEqual(wanted);
    expect(one?.linkTargets).toEqual({ tail: wanted });
  });

  test('may have been timed as it sank, with what it weighed then or without', () => {
    expect(setup?.drop).toBeNull();
    const dropped = (drop: unknown) => goodOf(evaluated(changed(plain, 'setups.0.drop', drop))).setups[0].drop;
    const timed = { distance_mm: 304.8, time_s: 3.2 };
    expect(dropped(timed)).toEqual({ distance: 304.8, time: 3.2, netWet: null });
    expect(dropped({ ...timed, net_wet_g: 1.1 })).toEqual({ distance: 304.8, time: 3.2, netWet: 1.1 });
  });

  test('floats in water told by temperature and salt, or by its density', () => {
    expect(setup?.water).toEqual({ kind: 'natural', temperature: 20, salinity: 0 });
    const measured = goodOf(evaluated(changed(plain, 'setups.0.water', { measured_g_cm3: 1.02 })));
    expect(measured.setups[0]?.water).toEqual({ kind: 'measured', density: 0.00102 });
  });

  test('keeps what the maker owns, notes and the wood of single links', () => {
    const shop = { kerf_mm: 1.2, drills: [{ name: '7 mm', diameter_mm: 7 }], lead: plain.shop?.lead };
    const file = changed(changed(changed(plain, 'shop', shop), 'notes', 'mine'), 'links.1.density_g_cm3', 0.45);
    const full = goodOf(evaluated(changed(file, 'wood.species', 'Western Redcedar')));
    expect(full.shop).toMatchObject({ kerf: 1.2, drills: [{ name: '7 mm', diameter: 7 }] });
    expect(design.shop).toMatchObject({ kerf: null, drills: [] });
    expect(full.notes).toBe('mine');
    expect(full.links.map(({ density }) => density)).toEqual([null, 0.00045, null]);
    // capitals aside: the name as the table has it
    expect(full.wood.species).toBe('western redcedar');
    expect(design.wood.species).toBeNull();
  });

  test('is frozen all the way down and survives being sent to another thread', () => {
    const parts: unknown[] = [design];
    for (const part of parts) {
      expect(Object.isFrozen(part)).toBe(true);
      for (const child of Object.values(part as object))
        if (typeof child === 'object' && child !== null) parts.push(child);
    }
    expect(parts.length).toBeGreaterThan(40);
    expect(structuredClone(design)).toEqual(design);
  });

  test('leaves the file as it was', () => {
    const before = JSON.stringify(plain);
    goodOf(evaluateDesign(plain));
    expect(JSON.stringify(plain)).toBe(before);
    expect(Object.isFrozen(plain.body)).toBe(false);
  });

  test.each([1, 2, 3] as const)('has as many links as the plain bait of %i pieces', (pieces) => {
    expect(goodOf(evaluateDesign(makeDesignFile({ pieces }))).links).toHaveLength(pieces);
  });
});
