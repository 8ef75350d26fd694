import { describe, expect, test } from 'vitest';
import type { Float } from '../../../../sim/hydro/float.ts';
import type { MeantDigits, WarnParts } from '../../../../sim/out/warn/parts.ts';
import { warn } from '../../../../sim/out/warn.ts';
import { makeFloat } from '../../../support/make-checked-bait.ts';
import { PLAIN_DESIGN } from '../../../support/make-design.ts';
import { quietWarnParts as quiet } from '../../../support/quiet-warn-parts.ts';
import { answersOf, partsOf } from '../../../support/worked-bait.ts';

const DEGREE = Math.PI / 180;
const SETTLED = { converged: true, steps: 4, passes: 9, force: 1e-9, moment: 1e-8 };
const { links } = quiet();

function codes(changes: Partial<WarnParts>): readonly string[] {
  return warn(quiet(changes)).map(({ code, where }) => `${code}: ${where}`);
}

test('a bait that rests well has nothing to be warned of', () => {
  expect(warn(quiet())).toEqual([]);
});

describe('how it rests', () => {
  const cases: readonly (readonly [string, Partial<Float>, RegExp, readonly [number | null, number | null]])[] = [
    [
      'not-settled',
      { solver: { ...SETTLED, converged: false, force: 0.02, moment: -1.54 } },
      /0\.02 g and 1\.5 g mm were left over/,
      [0.02, null],
    ],
    ['no-rest-upright', { mirrored: true }, /goes over either way/, [null, null]],
    ['neutral', { neutral: true, tender: true, gmMin: 0.002 }, /no preferred way up/, [0.002, 0.005]],
    // a hundredth of a width of 20 mm
    ['tender', { tender: true, gmMin: 0.05 }, /0\.05 mm/, [0.05, 0.2]],
    ['no-rest-upright', { laysOver: true, gmUpright: -0.3, heel: -0.5 }, /goes over to port/, [-0.3, 0]],
    ['hooks-lie', { lyingHooks: true, trim: -1.5 }, /its attitude is rough/, [(1.5 * 180) / Math.PI, 80]],
  ];

  test.each(cases)('%s is said of the whole bait', (code, changes, words, [number, limit]) => {
    const said = warn(quiet({ assembled: makeFloat(changes) }));
    expect(said[0]).toMatchObject({ at: null, number, limit, fix: null });
    expect(said.map((one) => [one.code, one.where])).toEqual([[code, 'the whole bait']]);
    expect(said[0].text).toMatch(words);
    expect(said[0].text).toContain('the whole bait');
  });

  test.each(cases)('%s is said of a link, by its name', (code, changes) => {
    const floats = [makeFloat(), makeFloat({ gravityCentre: [90, 0, -3], ...changes })];
    const [said] = warn(quiet({ floats }));
    expect(said).toMatchObject({ code, where: 'tail', at: [90, 0, -3] });
  });

  test('of the only link is said once, as of the whole bait', () => {
    const [whole] = links;
    const float = makeFloat({ mirrored: true, trim: 5 * DEGREE });
    expect(codes({ links: [whole], floats: [float], assembled: float })).toEqual(['no-rest-upright: the whole bait']);
  });
});

describe('a link alone', () => {
  function levelText(changes: Partial<Float>): string | undefined {
    return warn(quiet({ floats: [makeFloat(changes), makeFloat()] })).find(({ code }) => code === 'not-level-alone')
      ?.text;
  }

  test('within 2 degrees of level is level', () => {
    expect(levelText({ trim: 1.9 * DEGREE, heel: -1.9 * DEGREE })).toBeUndefined();
  });

  test('past that has its pins carry the difference, each way in its own words', () => {
    expect(levelText({ trim: 2.1 * DEGREE })).toBe(
      'Alone, head sits 2.1° nose-down; joined up, its pins carry the difference.',
    );
    expect(levelText({ trim: -4 * DEGREE })).toContain('4.0° tail low;');
    expect(levelText({ heel: 3 * DEGREE })).toContain('3.0° over to starboard');
    expect(levelText({ heel: -3 * DEGREE })).toContain('3.0° over to port');
  });

  test('is held against 2 degrees by its trim, or by its heel where that alone is too much', () => {
    const measured = (changes: Partial<Float>) => {
      const [{ number, limit, unit }] = warn(quiet({ floats: [makeFloat(changes), makeFloat()] }));
      return [number?.toFixed(3), limit?.toFixed(3), unit];
    };
    expect(measured({ trim: -4 * DEGREE, heel: 9 * DEGREE })).toEqual(['4.000', '2.000', 'deg']);
    expect(measured({ trim: 1 * DEGREE, heel: -9 * DEGREE })).toEqual(['9.000', '2.000', 'deg']);
  });

  test('on linked eyes has no pin to carry it', () => {
    const parts = quiet({ floats: [makeFloat({ trim: 2.1 * DEGREE }), makeFloat()] });
    const said = warn({ ...parts, hardware: { ...parts.hardware, pins: [] } });
    expect(said.find(({ code }) => code === 'not-level-alone')?.text).toBe(
      'Alone, head sits 2.1° nose-down; joined up, it sags as far as its linked eyes let it.',
    );
  });

  test('that lies over says no trim of nothing beside it', () => {
    expect(levelText({ trim: 0.001 * DEGREE, heel: 118.9 * DEGREE })).toContain('head sits 118.9° over to starboard;');
    expect(levelText({ trim: -1.9 * DEGREE, heel: 107.5 * DEGREE })).toContain('1.9° tail low and 107.5° over');
  });
});

test('joints of linked eyes are told not to hold the bait straight, and pinned ones are not', () => {
  expect(codes({ hardware: { ...quiet().hardware, pins: [] } })).toEqual(['linked-eyes: joint 1']);
  const [head, tail] = links;
  const three = { links: [head, tail, tail], floats: [makeFloat(), makeFloat(), makeFloat()] };
  expect(codes(three)).toEqual(['linked-eyes: joint 2']);
  expect(codes({ ...three, hardware: { ...quiet().hardware, pins: [] } })).toEqual(['linked-eyes: joints 1, 2']);
});

test('no warning says more decimals than are meant, and what was wanted stays as it was', () => {
  const rough = { draft: 0, proud: 0, trim: 0, heel: 0, gm: 0 };
  const checks = [{ what: 'proud', wanted: 4.5, got: 9.42, tolerance: 1, met: false }] as const;
  const parts = quiet({
    assembled: makeFloat({ tender: true, gmMin: 1.32 }),
    floats: [makeFloat({ trim: 4.4 * DEGREE, heel: -3.3 * DEGREE }), makeFloat()],
    target: { ...quiet().target, checks, met: false },
  });
  const texts = (meant?: MeantDigits) =>
    warn(parts, meant && { meant, refloat: () => null }).map(({ text }) => text.split('; joined')[0]);
  expect(texts()).toEqual([
    'GM is only 1.32 mm for the whole bait: a breath tips it.',
    'Wanted 4.5 mm proud; it comes to 9.4 mm proud.',
    'Alone, head sits 4.4° nose-down and 3.3° over to port',
  ]);
  expect(texts({ whole: rough, links: [rough, rough] })).toEqual([
    'GM is only 1 mm for the whole bait: a breath tips it.',
    'Wanted 4.5 mm proud; it comes to 9 mm proud.',
    'Alone, head sits 4° nose-down and 3° over to port',
  ]);
});

describe('a target', () => {
  type Check = WarnParts['target']['checks'][number];
  function missed(check: Pick<Check, 'what' | 'wanted' | 'got'>): string {
    const checks = [{ ...check, tolerance: 1, met: false }];
    const [said] = warn(quiet({ target: { ...quiet().target, checks, met: false } }));
    expect([said.code, said.where]).toEqual(['target-missed', 'the whole bait']);
    return said.text;
  }

  test('that is missed is told with both numbers, in the unit of what was wanted', () => {
    expect(missed({ what: 'proud', wanted: 3, got: 5.25 })).toMatch(
      /^Wanted 3\.0 mm proud; it comes to 5\.[23] mm proud\.$/,
    );
    expect(missed({ what: 'waterline', wanted: -2, got: 1 })).toContain(
      'a waterline at -2.0 mm; it comes to a waterline at 1.0 mm',
    );
    expect(missed({ what: 'net', wanted: 1.2, got: -0.5 })).toContain('+1.20 g net in the water; it comes to -0.50 g');
    const checks = [{ what: 'heel', wanted: DEGREE, got: 4 * DEGREE, tolerance: 0.01, met: false }] as const;
    const [{ number, limit, unit }] = warn(quiet({ target: { ...quiet().target, checks, met: false } }));
    expect([number?.toFixed(9), limit?.toFixed(9), unit]).toEqual(['4.000000000', '1.000000000', 'deg']);
    expect(missed({ what: 'trim', wanted: 0, got: 3 * DEGREE })).toContain('3.0° of trim');
    expect(missed({ what: 'heel', wanted: 0, got: -4 * DEGREE })).toContain('-4.0° of heel');
  });

  test('of a waterline that a sunk bait has none of says so', () => {
    expect(missed({ what: 'proud', wanted: 3, got: null })).toBe('Wanted 3.0 mm proud; it lies wholly under.');
  });

  test('that is met is not mentioned', () => {
    const checks = [{ what: 'trim', wanted: 0, got: 0.01, tolerance: 0.03, met: true }] as const;
    expect(warn(quiet({ target: { ...quiet().target, checks } }))).toEqual([]);
  });
});

describe('air in the slots', () => {
  function slotted(volume: number): WarnParts['wetted'] {
    const { wetted } = answersOf(PLAIN_DESIGN, { detail: 'drag' }).links[0];
    return [{ ...wetted, slots: [{ ...wetted.slots[0], volume }] }];
  }

  test('is told by what it can hold up, from a tenth of a gram', () => {
    // 99 and 101 mm³ at 0.001 g/mm³
    expect(codes({ wetted: slotted(99) })).toEqual([]);
    const [said] = warn(quiet({ wetted: slotted(260) }));
    expect(said).toMatchObject({ code: 'air-in-slots', where: 'the joints', number: 0.26, limit: 0.1, unit: 'g' });
    expect(said.text).toContain('0.3 g');
    expect(codes({ wetted: slotted(101) })).toEqual(['air-in-slots: the joints']);
  });

  test('is added up over all slots of all links', () => {
    expect(codes({ wetted: [...slotted(60), ...slotted(60)] })).toEqual(['air-in-slots: the joints']);
  });
});

test('what the float cannot be trusted in comes before what it misses, and that before what is tight', () => {
  const { hardware: drilled } = partsOf(PLAIN_DESIGN);
  const { links: answers, bait } = answersOf(PLAIN_DESIGN, { detail: 'drag' });
  const checks = [{ what: 'proud', wanted: 3, got: 9, tolerance: 1, met: false }] as const;
  const said = codes({
    hardware: { ...drilled, eyes: [] },
    walls: bait.walls.holes,
    wetted: answers.map(({ wetted }) => wetted),
    assembled: makeFloat({ tender: true }),
    floats: [makeFloat({ mirrored: true }), makeFloat({ trim: 0.1 })],
    target: { ...quiet().target, checks, met: false },
  });
  expect(said).toEqual([
    'tender: the whole bait',
    'target-missed: the whole bait',
    'no-rest-upright: head',
    'not-level-alone: tail',
    'wall-thin: head hole',
    'wall-thin: middle hole',
    'air-in-slots: the joints',
  ]);
});
