import { describe, expect, test } from 'vitest';
import { valueAt, withValueAt } from '../../../../../sim/design/place.ts';
import { type Design, type DesignFile, issueLine } from '../../../../../sim/index.ts';
import { createPipeline } from '../../../../../sim/pipeline.ts';
import { type Field, isSame } from '../../../../../src/panels/margin/field.ts';
import {
  bodyFields,
  hookFields,
  jointFields,
  slugField,
  waterFields,
  woodField,
} from '../../../../../src/panels/margin/fields.ts';
import { KNUCKLE_DESIGN, LINKED_DESIGN, makeDesignFile } from '../../../../support/make-design.ts';

function designOf(file: DesignFile): Design {
  for (const { name, outcome } of createPipeline().steps(file, { setup: null, detail: 'drag' })) {
    if (name !== 'design') continue;
    if (outcome.status === 'ok') return outcome.value;
    throw new Error(outcome.status === 'failed' ? outcome.issues.map(issueLine).join('\n') : 'no design');
  }
  throw new Error('the pipeline gives no design');
}

/** A bait drawn in expressions: joint and pin from a dimension of its own, the rest from the length. */
const DRAWN: DesignFile = (() => {
  const plain = makeDesignFile();
  const [joint] = plain.joints;
  if (joint?.hinge.kind !== 'pin') throw new Error('the plain bait has a pin hinge');
  return {
    ...plain,
    dimensions: { head_mm: 'length_mm * 0.5' },
    body: { ...plain.body, deepest_x_mm: 'length_mm * 0.4' },
    joints: [
      {
        ...joint,
        x_mm: 'head_mm',
        hinge: { ...joint.hinge, pin: { ...joint.hinge.pin, x_mm: 'head_mm - 4' } },
      },
    ],
  };
})();

function named(fields: readonly Field[], label: string): Field {
  const found = fields.find((field) => field.label === label);
  if (found === undefined) throw new Error(`no field ${label} among ${fields.map((field) => field.label).join(', ')}`);
  return found;
}

describe('A number written as a number', () => {
  const height = named(bodyFields(makeDesignFile(), undefined), 'Height');

  test('is shown before anything has been worked out, with no note', () => {
    expect(height).toMatchObject({ value: 36, note: null });
  });

  test('is replaced at its own place', () => {
    expect(valueAt(height.edit(40)(makeDesignFile()), 'body.height_mm')).toBe(40);
  });
});

describe('A number written as an expression', () => {
  const deepest = named(bodyFields(DRAWN, designOf(DRAWN)), 'Deepest at');

  test('shows what it comes to and what it is from', () => {
    expect(deepest.value).toBeCloseTo(48, 12);
    expect(deepest.note).toBe('from length_mm * 0.4');
  });

  test('is not known before it has been worked out', () => {
    expect(named(bodyFields(DRAWN, undefined), 'Deepest at').value).toBeNull();
  });

  test('gives way to a typed number', () => {
    expect(valueAt(deepest.edit(50)(DRAWN), 'body.deepest_x_mm')).toBe(50);
  });
});

describe('A joint that stands on a dimension of the design', () => {
  const place = named(jointFields(DRAWN, designOf(DRAWN), 0), 'Place');

  test('says so', () => {
    expect(place).toMatchObject({ value: 60, note: 'head_mm, from length_mm * 0.5' });
  });

  test('hands a typed number on to the dimension, so that the pin drawn from it goes along', () => {
    const moved = place.edit(63)(DRAWN);
    expect(valueAt(moved, 'dimensions.head_mm')).toBe(63);
    expect(valueAt(moved, 'joints.0.x_mm')).toBe('head_mm');
    expect(designOf(moved).joints[0]).toMatchObject({ x: 63, hinge: { pin: { x: 59 } } });
  });

  test('has the issues of both places', () => {
    expect(place.paths).toEqual(['dimensions.head_mm', 'joints.0.x_mm']);
  });
});

test('A joint in plain numbers takes its pin along', () => {
  const file = makeDesignFile();
  const moved = named(jointFields(file, designOf(file), 0), 'Place').edit(62.5)(file);
  expect(valueAt(moved, 'joints.0.x_mm')).toBe(62.5);
  expect(valueAt(moved, 'joints.0.hinge.pin.x_mm')).toBe(58.5);
});

test('A knuckle shows its radius, and takes its pin along with the joint by itself', () => {
  const fields = jointFields(KNUCKLE_DESIGN, designOf(KNUCKLE_DESIGN), 0);
  expect(fields.map(({ label, value }) => [label, value])).toEqual([
    ['Place', 60],
    ['Gap', 2],
    ['Knuckle radius', 12],
  ]);
  const larger = named(fields, 'Knuckle radius').edit(13)(KNUCKLE_DESIGN);
  expect(designOf(larger).joints[0]).toMatchObject({ hinge: { pin: { x: 74 } } });
  const moved = named(fields, 'Place').edit(62)(KNUCKLE_DESIGN);
  expect(designOf(moved).joints[0]).toMatchObject({ x: 62, hinge: { pin: { x: 75 } } });
});

test('A joint on linked eyes moves without a pin', () => {
  const moved = named(jointFields(LINKED_DESIGN, designOf(LINKED_DESIGN), 0), 'Place').edit(62)(LINKED_DESIGN);
  expect(moved.joints[0]?.hinge).toBe(LINKED_DESIGN.joints[0]?.hinge);
  expect(designOf(moved).joints[0]?.x).toBe(62);
});

test('A station that is left out says so, and shows where it stands all the same', () => {
  const { deepest_x_mm: _, ...body } = makeDesignFile().body;
  const bare: DesignFile = { ...makeDesignFile(), body };
  const deepest = named(bodyFields(bare, designOf(bare)), 'Deepest at');
  // left out it stands at 0.38 of the length: BodyEntry in sim/design/file.ts
  expect(deepest.value).toBeCloseTo(0.38 * 120, 12);
  expect(deepest.note).toContain('not given');
});

test('A hook has its own mass and the place of the hanger it hangs from', () => {
  const file = makeDesignFile();
  const fields = hookFields(file, designOf(file), 0, 1);
  expect(named(fields, 'Mass').paths).toEqual(['setups.0.hung.1.mass_g']);
  expect(named(fields, 'Hanger at')).toMatchObject({ value: 96, paths: ['hangers.2.x_mm'] });
  expect(hookFields(file, designOf(file), 0, -1)).toEqual([]);
});

test('What hangs from the nose has its hanger above the datum', () => {
  const plain = makeDesignFile();
  const [setup] = plain.setups;
  if (setup === undefined) throw new Error('the plain bait has a setup');
  const file = {
    ...plain,
    setups: [{ ...setup, hung: [{ name: 'blade', from: 'line tie', mass_g: 1, hang_mm: 20 }] }],
  };
  expect(named(hookFields(file, designOf(file), 0, 0), 'Hanger above datum').paths).toEqual(['hangers.0.z_mm']);
});

test('A hole with lead shows its mass, an empty one has nothing to show', () => {
  const plain = makeDesignFile();
  expect(slugField(plain, designOf(plain), 0, 0)).toMatchObject({ value: 4, paths: ['setups.0.holes.0.lead.mass_g'] });
  const [setup] = plain.setups;
  if (setup === undefined) throw new Error('the plain bait has a setup');
  const holes = setup.holes.map(({ lead: _, ...hole }) => hole);
  const empty = { ...plain, setups: [{ ...setup, holes }] };
  expect(slugField(empty, designOf(empty), 0, 0)).toBeNull();
});

test('Wood and water are shown in the units of the file', () => {
  const file = makeDesignFile({ wood: { density_g_cm3: '0.3 * 2' } });
  expect(woodField(file, designOf(file)).value).toBe(0.6);
  expect(waterFields(file, designOf(file), 0).map(({ label, value }) => [label, value])).toEqual([
    ['Temperature', 20],
    ['Salinity', 0],
  ]);
});

describe('A body that runs straight', () => {
  const straight = makeDesignFile({
    body: { deepest_x_mm: [50, 'length_mm * 0.6'], widest_x_mm: 60 },
  });
  const fields = bodyFields(straight, designOf(straight));

  test('shows where the run begins and where it ends', () => {
    expect(fields.map(({ label, value }) => [label, value])).toEqual([
      ['Length', 120],
      ['Height', 36],
      ['Width', 20],
      ['Deepest from', 50],
      ['Deepest to', 72],
      ['Widest at', 60],
    ]);
    expect(named(fields, 'Deepest to').note).toBe('from length_mm * 0.6');
  });

  test('has each end changed by itself', () => {
    const shorter = named(fields, 'Deepest from').edit(55)(straight);
    expect(valueAt(shorter, 'body.deepest_x_mm')).toEqual([55, 'length_mm * 0.6']);
    expect(designOf(named(fields, 'Deepest to').edit(70)(shorter)).body.deepest).toEqual([55, 70]);
  });

  test('has what stands against the whole run beside its beginning', () => {
    expect(named(fields, 'Deepest from').paths).toEqual(['body.deepest_x_mm.0', 'body.deepest_x_mm']);
    expect(named(fields, 'Deepest to').paths).toEqual(['body.deepest_x_mm.1']);
  });
});

/** Every field of a design, of its first setup. */
function allFields(file: DesignFile): readonly Field[] {
  const design = designOf(file);
  return [
    ...bodyFields(file, design),
    ...file.joints.flatMap((_, joint) => jointFields(file, design, joint)),
    woodField(file, design),
    ...(file.setups[0]?.hung.flatMap((_, hook) => hookFields(file, design, 0, hook)) ?? []),
    ...(file.setups[0]?.holes.flatMap((_, hole) => slugField(file, design, 0, hole) ?? []) ?? []),
    ...waterFields(file, design, 0),
  ];
}

const plain = makeDesignFile();
test.each<readonly [string, DesignFile]>([
  ['a board', makeDesignFile({ body: { section: { kind: 'board', back_edge_mm: 4, belly_edge_mm: 4 } } })],
  [
    'blunt ends',
    makeDesignFile({
      body: {
        nose: { depth_mm: 8, width_mm: 6, round_mm: 2 },
        tail: { z_mm: 0, depth_mm: 8, width_mm: 6, round_mm: 2 },
      },
    }),
  ],
  ['caliper readings', makeDesignFile({ body: { readings: [{ x_mm: 30, height_mm: 32 }] } })],
  ['a knuckle', KNUCKLE_DESIGN],
  ['linked eyes', LINKED_DESIGN],
  [
    'a fitting and a tail',
    makeDesignFile({
      fittings: [{ name: 'painted eye', x_mm: 12, y_mm: 5, z_mm: 4, mass_g: 0.4, pair: true }],
      tails: [{ name: 'hair', x_mm: 120, z_mm: 0, mass_g: 0.3, density_g_cm3: 1.3 }],
    }),
  ],
  [
    'an air chamber',
    {
      ...plain,
      setups: plain.setups.map((setup) => ({
        ...setup,
        holes: setup.holes.map(({ lead: _, ...hole }) => ({ ...hole, air: { plug_mm: 3 } })),
      })),
    },
  ],
])('Every field of a bait with %s has a number, and entering it again changes nothing', (_, file) => {
  for (const { value, label, edit } of allFields(file)) {
    expect(value, label).not.toBeNull();
    const again = designOf(edit(value ?? Number.NaN)(file));
    expect(again.body, label).toEqual(designOf(file).body);
    expect(again.joints, label).toEqual(designOf(file).joints);
  }
});

describe('Fields made anew after an edit', () => {
  const all = (file: DesignFile) => [
    ...bodyFields(file, designOf(file)),
    ...file.joints.flatMap((_, joint) => jointFields(file, designOf(file), joint)),
    woodField(file, designOf(file)),
    ...hookFields(file, designOf(file), 0, 0),
    ...waterFields(file, designOf(file), 0),
  ];

  test.each([
    ['drawn in expressions', DRAWN],
    ['with linked eyes', LINKED_DESIGN],
  ])('of a bait %s are the same but for those the edit touches, and edit alike', (_, file) => {
    const edited = withValueAt(file, 'body.length_mm', file.body.length_mm === 130 ? 131 : 130);
    const [before, now] = [all(file), all(edited)];
    const same = now.map((field, i) => isSame(before[i] as Field, field));
    expect(same[0]).toBe(false);
    expect(same.filter(Boolean).length).toBeGreaterThan(5);
    now.forEach((field, i) => {
      if (same[i]) expect(before[i]?.edit(7.5)(edited)).toEqual(field.edit(7.5)(edited));
    });
  });
});
