import { describe, expect, test } from 'vitest';
import { checkDesignFile, readDesignText } from '../../../../sim/design/read.ts';
import { changed, goodOf, issuesOf } from '../../../support/change-file.ts';
import { makeDesignFile } from '../../../support/make-design.ts';

const plain = makeDesignFile({ pieces: 3 });
const text = JSON.stringify(plain);

/** What is put where, the place it must be reported at if another, and what the message must say. */
type Case = readonly [what: string, place: string, value: unknown, path: string, says: string];

const BAD_SHAPES: readonly Case[] = [
  ['a name missing', 'name', undefined, 'name', 'text in quotes is wanted, got nothing'],
  ['a number for a name', 'name', 12, 'name', 'text in quotes is wanted, got 12'],
  ['an empty name', 'name', '', 'name', 'something to see in it'],
  ['a name of spaces', 'links.1.name', '   ', 'links.1.name', 'something to see in it'],
  ['a name that moves the cursor', 'setups.0.name', 'pond\u001b[2J', 'setups.0.name', 'on one line'],
  ['a name over sixty characters', 'name', 'x'.repeat(61), 'name', 'at most 60 characters are allowed, got 61'],
  ['notes over four thousand characters', 'notes', 'x'.repeat(4001), 'notes', 'at most 4000 characters'],
  ['a field misspelt', 'body.lenght_mm', 120, 'body.lenght_mm', 'unknown field; fields allowed here: length_mm'],
  ['a field from elsewhere', 'wood.mass_g', 3, 'wood.mass_g', 'unknown field'],
  ['an unknown field at the top', 'camera', {}, 'camera', 'unknown field'],
  ['a field without a name', '', 1, '""', 'unknown field'],
  ['a body that is a list', 'body', [], 'body', 'an object in braces is wanted, got an empty list'],
  ['no body', 'body', undefined, 'body', 'an object in braces is wanted, got nothing'],
  ['a length missing', 'body.length_mm', undefined, 'body.length_mm', 'got nothing'],
  [
    'null for a number',
    'setups.0.holes.1.depth_mm',
    null,
    'setups.0.holes.1.depth_mm',
    'in quotes is wanted, got null',
  ],
  ['an object for a number', 'body.width_mm', { mm: 20 }, 'body.width_mm', 'got an object with "mm"'],
  ['a list for a number', 'body.width_mm', [20], 'body.width_mm', 'got a list of 1'],
  ['true for a number', 'body.width_mm', true, 'body.width_mm', 'got true'],
  ['an empty expression', 'body.width_mm', '', 'body.width_mm', 'got ""'],
  ['an expression too long', 'body.width_mm', '1+'.repeat(60) + 1, 'body.width_mm', 'at most 120 characters, got 121'],
  ['a station of three numbers', 'body.deepest_x_mm', [1, 2, 3], 'body.deepest_x_mm', '[from, to] is wanted'],
  ['a station in words', 'body.widest_x_mm', { at: 5 }, 'body.widest_x_mm', '[from, to] is wanted'],
  ['a section of no kind', 'body.section', { above: 2, below: 2 }, 'body.section.kind', '"oval" or "board" is wanted'],
  [
    'an unknown section',
    'body.section.kind',
    'square',
    'body.section.kind',
    '"oval" or "board" is wanted, got "square"',
  ],
  ['half a section', 'body.section', { kind: 'oval', above: 2 }, 'body.section.below', 'got nothing'],
  ['half a bevel', 'joints.0.faces', { kind: 'bevel', fore_deg: 20 }, 'joints.0.faces.aft_deg', 'got nothing'],
  ['unknown faces', 'joints.1.faces.kind', 'bevelled', 'joints.1.faces.kind', '"flat", "bevel" or "knuckle"'],
  ['an angle on a flat face', 'joints.1.faces.fore_deg', 20, 'joints.1.faces.fore_deg', 'allowed here: kind'],
  ['an unknown hinge', 'joints.0.hinge.kind', 'rope', 'joints.0.hinge.kind', '"pin" or "linked-eyes" is wanted'],
  ['no eye on a pin', 'joints.0.hinge.eyes', [], 'joints.0.hinge.eyes', 'at least 1 entry is wanted, got 0'],
  ['an eye in neither link', 'joints.0.hinge.eyes.0.in', 'left', 'joints.0.hinge.eyes.0.in', '"fore" or "aft"'],
  [
    'a pin of one height',
    'joints.0.hinge.pin.z_mm',
    [3],
    'joints.0.hinge.pin.z_mm',
    'a list of two numbers is wanted, got a list of 1',
  ],
  ['a pin that nobody holds', 'joints.0.hinge.pin.held_by', undefined, 'joints.0.hinge.pin.held_by', 'got nothing'],
  ['a slot of no depth', 'joints.0.slots.0.depth_mm', undefined, 'joints.0.slots.0.depth_mm', 'got nothing'],
  ['joints that are no list', 'joints', { 0: {} }, 'joints', 'a list in square brackets is wanted'],
  ['a joint that is a number', 'joints.0', 50, 'joints.0', 'an object in braces is wanted, got 50'],
  ['links that are missing', 'links', undefined, 'links', 'a list in square brackets is wanted, got nothing'],
  ['no links', 'links', [], 'links', 'at least 1 entry is wanted'],
  ['ten links', 'links', Array(10).fill({ name: 'a' }), 'links', 'at most 9 entries are allowed, got 10'],
  [
    'a coat that is only a name',
    'coats.0',
    { name: 'oil' },
    'coats.0',
    'thickness_mm and density_g_cm3, or with soak_percent',
  ],
  ['a coat without a density', 'coats.0', { name: 'oil', thickness_mm: 0.1 }, 'coats.0.density_g_cm3', 'got nothing'],
  ['a coat that soaks and grows', 'coats.0.thickness_mm', 0.1, 'coats.0.thickness_mm', 'unknown field'],
  ['a coat over half of it', 'coats.1.covers', 'half', 'coats.1.covers', '"all" or "skin" is wanted, got "half"'],
  ['a coat that is a word', 'coats.1', 'epoxy', 'coats.1', 'is wanted, got "epoxy"'],
  ['a hanger on the flank', 'hangers.1.on', 'flank', 'hangers.1.on', '"belly", "back", "nose" or "tail"'],
  ['a hanger without wire', 'hangers.1.wire_mm', undefined, 'hangers.1.wire_mm', 'got nothing'],
  ['a fin of one point', 'fins', [fin([[1, 2]])], 'fins.0.edge_mm', 'at least 2 entries are wanted, got 1'],
  ['a fin of half points', 'fins', [fin([[1], [2, 3]])], 'fins.0.edge_mm.0', 'a list of two numbers'],
  [
    'a pair that is a number',
    'fittings',
    [{ name: 'eye', x_mm: 1, z_mm: 1, mass_g: 1, pair: 2 }],
    'fittings.0.pair',
    'true or false',
  ],
  ['lead of no kind', 'shop.lead.0.kind', 'shot', 'shop.lead.0.kind', '"slug" or "filled"'],
  ['no setups', 'setups', [], 'setups', 'at least 1 entry is wanted'],
  ['water half described', 'setups.0.water', { temperature_c: 20 }, 'setups.0.water.salinity_g_kg', 'got nothing'],
  ['water described twice', 'setups.0.water.measured_g_cm3', 1, 'setups.0.water.measured_g_cm3', 'unknown field'],
  ['water that is a word', 'setups.0.water', 'fresh', 'setups.0.water', 'or measured_g_cm3, is wanted, got "fresh"'],
  ['no target', 'setups.0.target', {}, 'setups.0.target', 'exactly one of proud_mm'],
  ['two targets', 'setups.0.target.reserve_g', 2, 'setups.0.target', 'exactly one of proud_mm'],
  ['a target only of trim', 'setups.0.target', { trim_deg: 3 }, 'setups.0.target', 'exactly one of proud_mm'],
  ['a target in words', 'setups.0.target.proud_mm', { mm: 3 }, 'setups.0.target.proud_mm', 'a number or an expression'],
  ['a link target in words', 'setups.0.link_targets', { head: 'up' }, 'setups.0.link_targets.head', 'exactly one of'],
  ['a hook from nowhere', 'setups.0.hung.0.from', undefined, 'setups.0.hung.0.from', 'got nothing'],
  [
    'a hole from the nose',
    'setups.0.holes.0.from',
    'nose',
    'setups.0.holes.0.from',
    '"belly", "back", "port" or "starboard"',
  ],
  ['lead without mass', 'setups.0.holes.0.lead', { of: '8 mm rod' }, 'setups.0.holes.0.lead.mass_g', 'got nothing'],
  ['a hole done maybe', 'setups.0.holes.0.done', 'yes', 'setups.0.holes.0.done', 'true or false is wanted, got "yes"'],
  [
    'thirty-seven holes',
    'setups.0.holes',
    Array(37).fill(plain.setups[0]?.holes[0]),
    'setups.0.holes',
    'at most 36 entries',
  ],
  ['a dimension without a unit', 'dimensions', { head: 40 }, 'dimensions.head', 'ends in _mm, _g, _deg'],
  ['a dimension in capitals', 'dimensions', { Head_mm: 40 }, 'dimensions.Head_mm', 'small letters'],
  ['a dimension that is a list', 'dimensions', { head_mm: [4] }, 'dimensions.head_mm', 'got a list of 1'],
  [
    'a hundred and one dimensions',
    'dimensions',
    manyDimensions(101),
    'dimensions',
    'at most 100 dimensions are allowed, got 101',
  ],
];

function fin(edge_mm: unknown): unknown {
  return { name: 'fin', on: 'back', edge_mm, thickness_mm: 1, density_g_cm3: 1.2 };
}

function manyDimensions(count: number): Record<string, number> {
  return Object.fromEntries(Array.from({ length: count }, (_, index) => [`d${index}_mm`, index]));
}

describe('a design file with the wrong shape', () => {
  test.each(BAD_SHAPES)('is refused for %s at its place', (_, place, value, path, says) => {
    const issues = issuesOf(readDesignText(JSON.stringify(changed(plain, place, value))));
    expect(issues.map((issue) => issue.path)).toContain(path);
    expect(issues.find((issue) => issue.path === path)?.message).toContain(says);
  });

  test('is told every problem at once', () => {
    const once = changed(plain, 'body.length_mm', null);
    const twice = changed(once, 'joints.1.gap_mm', {});
    const thrice = changed(twice, 'setups.0.colour', 'red');
    const paths = issuesOf(checkDesignFile(thrice)).map(({ path }) => path);
    expect(paths).toEqual(['body.length_mm', 'joints.1.gap_mm', 'setups.0.colour']);
  });

  test('is told a hundred problems and how many more there are', () => {
    const drills = Array.from({ length: 200 }, () => ({ name: 7 }));
    const issues = issuesOf(checkDesignFile(changed(plain, 'shop.drills', drills)));
    expect(issues).toHaveLength(101);
    expect(issues.at(-1)).toEqual({ code: 'design/more', path: '', message: '300 more problems not listed' });
  });

  test('is refused in good time where a list has a hundred thousand entries', () => {
    const started = performance.now();
    const issues = issuesOf(readDesignText(JSON.stringify(changed(plain, 'joints', Array(100_000).fill(null)))));
    expect(issues.map(({ path }) => path)).toContain('joints');
    // a slow machine needs some 50 ms; what must not happen is a message for every entry
    expect(performance.now() - started).toBeLessThan(5000);
    expect(issues.length).toBeLessThanOrEqual(101);
  });
});

describe('a file that is no design file', () => {
  const bytes = new TextEncoder().encode(text);

  test.each([
    ['nothing', '', 'design/empty'],
    ['only spaces', ' \n\t ', 'design/empty'],
    ['nothing but a byte order mark', '\uFEFF', 'design/empty'],
    ['text cut short', text.slice(0, -20), 'design/not-json'],
    ['a comma too many', text.replace('}]', '},]'), 'design/not-json'],
    ['single quotes', "{'format': 1}", 'design/not-json'],
    ['a comment', `// mine\n${text}`, 'design/not-json'],
    ['two designs in a row', text + text, 'design/not-json'],
    ['NaN for a number', text.replace('120', 'NaN'), 'design/not-json'],
    ['NUL in the text', `${text}\0`, 'design/not-text'],
    ['bytes of a picture', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]), 'design/not-text'],
    ['bytes cut inside a letter', new Uint8Array([...bytes, 0xc3]), 'design/not-text'],
    ['UTF-16', new Uint8Array([0xff, 0xfe, 0x7b, 0x00, 0x7d, 0x00]), 'design/not-text'],
    ['over a megabyte of text', text + ' '.repeat(1_000_000), 'design/too-large'],
    ['over a megabyte of bytes', new Uint8Array(1_000_001), 'design/too-large'],
    ['over a megabyte in UTF-8 alone', `"${'é'.repeat(600_000)}"`, 'design/too-large'],
    ['a list', '[]', 'design/wrong-type'],
    ['a number', '12', 'design/wrong-type'],
    ['null', 'null', 'design/wrong-type'],
    ['brackets a hundred thousand deep', '['.repeat(100_000) + ']'.repeat(100_000), 'design/too-deep'],
  ])('is refused by one message for %s', (_, source, code) => {
    const issues = issuesOf(readDesignText(source));
    expect(issues.map((issue) => [issue.code, issue.path.slice(0, 1)])).toEqual([
      [code, code === 'design/too-deep' ? '0' : ''],
    ]);
  });

  test('is told the line and column where it stops being JSON', () => {
    const broken = '{\n  "format": "floatwright-design",\n  "version" 1\n}';
    expect(issuesOf(readDesignText(broken))[0]?.message).toBe('not JSON: line 3, column 13: ":" is wanted, got "1"');
  });

  test('is told that the text ends where it was cut short', () => {
    expect(issuesOf(readDesignText('{"format": '))[0]?.message).toBe(
      'not JSON: line 1, column 12: a value is wanted, the text ends',
    );
  });

  test.each([
    ['another format', 'format', 'boat', 'format', '"floatwright-design" is wanted, got "boat"'],
    ['no format', 'format', undefined, 'format', 'got nothing'],
    ['a newer version', 'version', 2, 'version', 'made by a newer Floatwright: version 2, this one reads up to 1'],
    ['version 0', 'version', 0, 'version', 'a whole number from 1 to 1 is wanted, got 0'],
    ['half a version', 'version', 1.5, 'version', 'got 1.5'],
    ['a version in quotes', 'version', '1', 'version', 'got "1"'],
    ['no version', 'version', undefined, 'version', 'got nothing'],
  ])('is refused for %s before anything else is looked at', (_, place, value, path, says) => {
    const issues = issuesOf(checkDesignFile(changed(changed(plain, place, value), 'body', null)));
    expect(issues.map((issue) => issue.path)).toEqual([path]);
    expect(issues[0]?.message).toContain(says);
  });

  test.each(['__proto__', 'constructor', 'prototype'])(
    'is refused for a field called %s, wherever it stands',
    (key) => {
      const hostile = JSON.stringify(changed(plain, `wood.${key}`, { density_g_cm3: 9 }));
      const named = JSON.stringify(changed(changed(plain, 'dimensions', {}), `dimensions.${key}`, 5));
      expect(issuesOf(readDesignText(hostile))).toMatchObject([{ code: 'design/forbidden-name', path: `wood.${key}` }]);
      expect(issuesOf(readDesignText(named))).toMatchObject([
        { code: 'design/forbidden-name', path: `dimensions.${key}` },
      ]);
      expect(({} as Record<string, unknown>).density_g_cm3).toBeUndefined();
    },
  );

  test('is refused for a number too large to hold', () => {
    const issues = issuesOf(readDesignText(text.replace('"length_mm":120', '"length_mm":1e999')));
    expect(issues).toMatchObject([{ path: 'body.length_mm', message: expect.stringContaining('got Infinity') }]);
  });

  test('is refused where parsed values hold what JSON cannot: NaN, a function, themselves', () => {
    const loop: Record<string, unknown> = { ...plain };
    loop.body = loop;
    expect(issuesOf(checkDesignFile(changed(plain, 'body.length_mm', Number.NaN)))).toMatchObject([
      { path: 'body.length_mm', message: expect.stringContaining('got NaN') },
    ]);
    expect(issuesOf(checkDesignFile({ ...plain, name: () => 1 }))).toMatchObject([{ path: 'name' }]);
    expect(issuesOf(checkDesignFile({ ...plain, name: 12n }))).toMatchObject([{ path: 'name' }]);
    expect(issuesOf(checkDesignFile(loop))).toMatchObject([{ code: 'design/too-deep' }]);
  });
});

describe('a good design file', () => {
  test('is read back as it was written, from text and from bytes, with and without a byte order mark', () => {
    expect(goodOf(readDesignText(text))).toEqual(plain);
    expect(goodOf(readDesignText(`\uFEFF${text}`))).toEqual(plain);
    expect(goodOf(readDesignText(new TextEncoder().encode(`\uFEFF${text}`)))).toEqual(plain);
  });

  test('keeps names in any script', () => {
    const file = makeDesignFile({ name: 'Žalm 釣り ½ "quoted" 🐟' });
    expect(goodOf(readDesignText(JSON.stringify(file))).name).toBe('Žalm 釣り ½ "quoted" 🐟');
  });

  test.each<readonly [string, string, unknown]>([
    [
      'three numbers and a section',
      'body',
      { length_mm: 90, height_mm: 20, width_mm: 13, section: plain.body.section },
    ],
    ['an expression of pi', 'body.height_mm', 'pi * 12'],
    ['knuckle faces', 'joints.0.faces', { kind: 'knuckle', on: 'aft', radius_mm: 12 }],
    ['linked eyes', 'joints.0.hinge', { kind: 'linked-eyes', z_mm: [5, -5], wire_mm: 1, bore_mm: 2, shank_mm: 9 }],
    ['a board', 'body.section', { kind: 'board', back_edge_mm: 3, belly_edge_mm: 3 }],
    ['a straight run', 'body.deepest_x_mm', ['length_mm * 0.3', 60]],
    ['measured water', 'setups.0.water', { measured_g_cm3: 1.004 }],
    ['coats of its own', 'setups.0.coats', []],
    [
      'a fin',
      'fins',
      [
        fin([
          [1, 2],
          ['length_mm', 4],
        ]),
      ],
    ],
    ['a target with a trim', 'setups.0.target', { net_wet_g: 1, trim_deg: -4 }],
    ['notes of several lines', 'notes', 'Primed.\n\tSanded.\r\nDry.'],
  ])('may have %s', (_, place, value) => {
    const file = changed(plain, place, value);
    expect(goodOf(readDesignText(JSON.stringify(file)))).toEqual(file);
  });
});
