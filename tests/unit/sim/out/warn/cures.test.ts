import { describe, expect, test } from 'vitest';
import { withEdit } from '../../../../../sim/design/edit.ts';
import type { DesignFile, HoleEntry } from '../../../../../sim/design/file.ts';
import { valueAt, withValueAt } from '../../../../../sim/design/place.ts';
import type { Warning } from '../../../../../sim/warnings.ts';
import { makeDesignFile, PLAIN_DESIGN } from '../../../../support/make-design.ts';
import { answersOf } from '../../../../support/worked-bait.ts';

const [POND] = PLAIN_DESIGN.setups;

function saidOf(file: DesignFile): readonly Warning[] {
  return answersOf(file).bait.allWarnings;
}

const keyOf = ({ code, where }: Warning) => `${code}: ${where}`;

function fixOf(file: DesignFile, key: string): Warning['fix'] {
  const found = saidOf(file).find((warning) => keyOf(warning) === key);
  if (!found) throw new Error(`${key} is not said`);
  return found.fix;
}

/** A design with what is warned of, and how it is cured. */
const CASES: readonly (readonly [string, DesignFile, string])[] = [
  ['wall-thin: head hole', PLAIN_DESIGN, 'drill "head hole" 6.0 mm deeper'],
  ['wall-thin: far', drilled(slim({ x_mm: 108 })), 'move "far" 4.0 mm fore'],
  ['wall-thin: a', drilled(pair({})), 'drill "a" and "b" 1.5 mm deeper'],
  ['embedment-short: belly, fore', shallow(PLAIN_DESIGN, 1), 'make the shank of "belly, fore" 9.0 mm long'],
  ['embedment-short: joint 1', drilled([]), 'make the shanks of joint 1 12.0 mm long'],
  [
    'embedment-short: belly, fore, belly, aft',
    shallow(PLAIN_DESIGN, 1, 2),
    'make the shanks of "belly, fore" and "belly, aft" 9.0 mm long',
  ],
  [
    'embedment-short: joint 1, line tie',
    shallow(drilled([]), 0),
    'make the shanks of joint 1 and "line tie" 12.0 mm long',
  ],
  ['hooks-meet: fore treble, aft treble', hanging(62, 40), 'move "belly, fore" 2.0 mm fore'],
  ['hook-at-joint: fore treble', hanging(25, 20), 'move "belly, fore" 2.0 mm fore'],
];

describe.each(CASES)('%s', (key, file, says) => {
  const before = saidOf(file);
  const fix = before.find((warning) => keyOf(warning) === key)?.fix ?? null;

  test('has one edit that cures it', () => {
    expect(fix?.says).toBe(says);
  });

  test('whose cure sets what stands in the file already', () => {
    expect(fix?.sets.length).toBeGreaterThan(0);
    for (const { path } of fix?.sets ?? []) expect(valueAt(file, path)).toBeDefined();
  });

  test('is gone when that is made, and nothing new is said; the bait can still be made', () => {
    // a design that is not sound, or a number out of its range, throws
    const after = saidOf(withEdit(file, fix ?? { says: '', sets: [] }));
    expect(after.map(keyOf)).not.toContain(key);
    const known = new Set(before.map(keyOf));
    expect(after.map(keyOf).filter((one) => !known.has(one))).toEqual([]);
  });
});

test('an expression stays one', () => {
  const file = withValueAt(drilled(slim({ x_mm: 108 })), 'setups.0.holes.0.x_mm', 'length_mm - 12');
  expect(fixOf(file, 'wall-thin: far')?.sets).toEqual([
    { path: 'setups.0.holes.0.x_mm', value: '(length_mm - 12) - 4' },
  ]);
});

test('a hole that is drilled and glued is left as it is, and so is its image', () => {
  expect(fixOf(drilled(slim({ x_mm: 108, done: true })), 'wall-thin: far')).toBeNull();
  expect(fixOf(drilled(pair({ done: true })), 'wall-thin: b')).toBeNull();
});

describe('eyes of two joints that stand alike', () => {
  // where the belly eye hangs decides whether a longer shank of joint 2 meets its shank in the wood
  const joints = (x_mm: number) => {
    const [tie, fore, aft] = PLAIN_DESIGN.hangers;
    return makeDesignFile({ pieces: 3, hangers: [tie, fore, { ...aft, x_mm }], setups: [{ ...POND, holes: [] }] });
  };

  test('are lengthened by one edit of both', () => {
    const fix = fixOf(joints(102), 'embedment-short: joints 1 and 2');
    expect(fix).toEqual({
      says: 'make the shanks of joints 1 and 2 12.0 mm long',
      sets: [
        { path: 'joints.0.hinge.shank_mm', value: 12 },
        { path: 'joints.1.hinge.shank_mm', value: 12 },
      ],
    });
  });

  test('where the wood of one has no room, the first of them that may be', () => {
    const file = joints(96);
    const fix = fixOf(file, 'embedment-short: joints 1 and 2');
    expect(fix?.says).toBe('make the shanks of joint 1 12.0 mm long');
    const after = saidOf(withEdit(file, fix ?? { says: '', sets: [] })).filter(
      ({ code }) => code === 'embedment-short',
    );
    expect(after.map(({ where, fix: next }) => [where, next])).toEqual([['joint 2', null]]);
  });
});

describe('a shank that would grow into a hole of another setup', () => {
  // from the starboard flank at the height where the longer shank would end
  const across: HoleEntry = { ...slim({ x_mm: 36 })[0], name: 'cross', from: 'starboard', across_mm: -5, depth_mm: 11 };
  const other = { ...POND, name: 'other pond', holes: [across] };
  const setups = [{ ...POND, holes: [] }, other];

  test('does not', () => {
    const file = shallow(makeDesignFile({ setups }), 1);
    expect(fixOf(file, 'embedment-short: belly, fore')).toBeNull();
    expect(fixOf({ ...file, setups: [file.setups[0]] }, 'embedment-short: belly, fore')).not.toBeNull();
  });

  test('leaves the first of those alike that has room, alone', () => {
    const file = shallow(makeDesignFile({ setups }), 1, 2);
    expect(fixOf(file, 'embedment-short: belly, fore, belly, aft')?.says).toBe(
      'make the shank of "belly, aft" 9.0 mm long',
    );
  });
});

test('what would miss an aim that is met is not proposed', () => {
  const file = drilled([]);
  const { assembled } = answersOf(file).bait;
  const aimingFor = (more: number) => {
    const target = { reserve_g: more - assembled.netWet, trim_deg: (assembled.trim * 180) / Math.PI };
    return fixOf({ ...file, setups: [{ ...file.setups[0], target }] }, 'embedment-short: joint 1');
  };
  // longer shanks are a tenth of a gram of steel, and an aim is met within 0.2 g
  expect(aimingFor(0.15)).toBeNull();
  expect(aimingFor(-0.15)).not.toBeNull();
  expect(aimingFor(5)).not.toBeNull();
});

test('no cure is looked for until all else is known', () => {
  const { warnings } = answersOf(PLAIN_DESIGN).bait;
  expect(warnings.filter(({ fix }) => fix !== null)).toEqual([]);
});

function drilled(holes: readonly HoleEntry[]): DesignFile {
  return makeDesignFile({ setups: [{ ...POND, holes }] });
}

/** With hangers so much less deep than is usual across the grain, or for the line tie along it. */
function shallow(file: DesignFile, ...hangers: readonly number[]): DesignFile {
  return hangers.reduce((made, i) => withValueAt(made, `hangers.${i}.shank_mm`, 8), file);
}

/** Lead at half height, where the body is widest: only along it is there more wood. */
function slim(changes: Partial<HoleEntry>): readonly HoleEntry[] {
  const lead = { of: 'shot in epoxy', mass_g: 1 };
  return [{ name: 'far', from: 'belly', x_mm: 108, diameter_mm: 5, depth_mm: 13, point_deg: 180, lead, ...changes }];
}

/** One from each flank, their lead too near the skin. */
function pair(changes: Partial<HoleEntry>): readonly HoleEntry[] {
  const lead = { of: 'shot in epoxy', mass_g: 0.3 };
  const hole = { x_mm: 84, across_mm: -6, diameter_mm: 5, depth_mm: 5, point_deg: 180, lead };
  return [
    { ...hole, name: 'a', from: 'port', ...changes },
    { ...hole, name: 'b', from: 'starboard' },
  ];
}

function hanging(fore: number, aft: number): DesignFile {
  const [one, two] = POND.hung;
  const hung = [
    { ...one, hang_mm: fore },
    { ...two, hang_mm: aft },
  ];
  return makeDesignFile({ setups: [{ ...POND, hung }] });
}
