import { describe, expect, test } from 'vitest';
import { checkReport } from '../../../../sim/out/check-report.ts';
import {
  makeAccuracy,
  makeAttitudes,
  makeCheckedBait,
  makeFloat,
  makeWhatIf,
} from '../../../support/make-checked-bait.ts';

const REPORT = checkReport(makeCheckedBait());

describe('the report on a bait', () => {
  test('begins with the design, its setup and its water', () => {
    expect(REPORT.split('\n').slice(0, 5)).toEqual([
      'Boathouse Plain: still pond',
      'Body   120.0 × 36.0 × 20.0 mm, 2 links',
      'Wood   0.600 g/cm³',
      'Water  20.0 °C, 0.0 g/kg salt, 0.99820 g/cm³ (a table of water, p. 3)',
      'Places in mm from the nose tip: x aft, y to starboard, z up.',
    ]);
  });

  test('gives the whole bait first, then the links from the nose, then the rest', () => {
    const heads = REPORT.split('\n').filter(
      (line) => /^[A-Z]/.test(line) && !/^(Boathouse|Body|Wood|Water|Places)/.test(line),
    );
    expect(heads).toEqual([
      'Whole bait, held straight',
      'Link 1 of 2, alone: head (0.0 to 59.0 mm)',
      'Link 2 of 2, alone: tail (61.0 to 120.0 mm)',
      'Swing',
      'Pins',
      'Other ways it can rest',
      'Hung',
      'Warnings',
      'Target',
      'Ballast plan (floatwright ballast)',
      'What if',
      'How far to trust it',
    ]);
  });

  test('says each verdict in words', () => {
    expect(REPORT).toContain('  The bait floats 2.5 mm proud, leans 5.0° to port.\n');
    expect(REPORT).toContain('  Head floats 3.0 mm proud, 3.0° nose-down.\n');
    expect(REPORT).toContain('  Tail sinks, 0.80 g heavier than its water, level.\n');
  });

  test('says of what sinks how it falls, and of a timed drop what it comes to', () => {
    expect(REPORT).toContain(
      '  sinks: first foot in 3.4 s (3.1–3.7), first metre in 9.6 s (8.6–10.6), 115 mm/s (100–130); 1.2° nose-down as it falls\n',
    );
    expect(REPORT.match(/first foot/g)).toHaveLength(1);
    const timed = checkReport(makeCheckedBait({ drop: { kind: 'too-fast', least: 0.612 } }));
    expect(timed).toContain(
      'The timed drop is faster than any: with next to no drag it takes 0.61 s. It is left out.\n',
    );
  });

  test('gives the numbers behind a verdict', () => {
    const [, whole = ''] = REPORT.split('\n\n');
    expect(whole.split('\n').slice(2)).toEqual([
      '  mass         41.50 g, 4.10 g of it hung',
      '  reserve      2.25 g, 5.4 % of the mass',
      '  attitude     trim 0.0° (nose-down +), heel -5.0° (starboard down +)',
      '  water        draft 30.0 mm, proud 2.5 mm',
      '  displaced    20.00 cm³ by the body, 0.25 cm³ by what hangs',
      '  weight at    x 30.0, y 0.0, z -4.0',
      '  buoyancy at  x 30.0, y 0.0, z -1.0',
      '  steadiness   GM: across 3.00, along 40.00, least 3.00 mm',
      '  film         at most ±0.67 g, draft ±0.7 mm, heel ±2.9°, trim ±1.1°, by 90 mm of wet edge',
      '  Roll: steady, GM 2.25 mm (11 % of its width).',
      '  Comes back from up to 74° either way; 31 g mm of work takes it there; most arm 2.1 mm at 41°; let go belly up it comes back.',
      '  All lead 3 mm off the middle heels it 5.2°.',
    ]);
  });

  test('says of a link how it takes being rolled, and what lead has to do with it', () => {
    const head = REPORT.split('\n\n').find((block) => block.startsWith('Link 1 of 2')) ?? '';
    expect(head.split('\n').slice(-4)).toEqual([
      '  Roll: steady, GM 1.90 mm (9.5 % of its width).',
      '  Comes back from up to 74° either way; 31 g mm of work takes it there; most arm 2.1 mm at 41°; let go belly up it comes back.',
      '  Its lead 3 mm off the middle heels it 4.1° alone, 1.3° joined up.',
      '  At least 3.2 g of lead where its lead is, 14.0 mm below the datum, stands it up; 3.5 g of lead makes it steady.',
    ]);
  });

  test('lists what weighs on a link, adds it up, and keeps what hangs apart', () => {
    const table = REPORT.split('\n\n').find((block) => block.startsWith('  ledger'));
    expect(table?.split('\n')).toEqual([
      '  ledger             kind        g     x    y      z  from',
      '  wood               wood    12.25  31.0  0.0    0.5  density in the design',
      '  line tie           hanger   0.40  -2.0  0.0    0.0  weighed by you',
      '  all that is fixed          12.65  31.0  0.0    0.5',
      '  fore treble        hung     2.00  36.0  0.0  -19.0  pulls at its eye',
    ]);
  });

  test('shows warnings, and targets with what was wanted and got', () => {
    expect(REPORT).toContain('Warnings\n  Hole "head hole" leaves 2.1 mm of wood.\n    One edit cures it: drill');
    expect(REPORT).toContain('  met: proud 3.0 mm wanted, 2.5 mm got (within 0.5 mm)\n');
    expect(REPORT).toContain('  missed: heel 0.0° wanted, -5.0° got (within 2.0°)\n');
  });

  test('says what each link is planned to have, and what becomes of the bait in other conditions', () => {
    const bait = makeCheckedBait();
    const whatIfs = [makeWhatIf({ name: 'in sea water' })];
    const blocks = checkReport({ ...bait, whatIfs }).split('\n\n');
    expect(
      blocks
        .find((block) => block.startsWith('Ballast plan'))
        ?.split('\n')
        .slice(1),
    ).toEqual(['  Head rests as it should without lead.', '  Tail rests as it should without lead.']);
    expect(
      blocks
        .find((block) => block.startsWith('What if'))
        ?.split('\n')
        .slice(1),
    ).toEqual(['  in sea water: -0.50 g in the water, 0.4 mm higher, turns 0.5° tail low']);
  });

  test('ends with how far to trust it, and does not call it close while the film is weaker than the reserve', () => {
    expect(REPORT).toContain('How far to trust it\n');
    expect(REPORT).not.toContain('Too close to the film');
    expect(REPORT).toContain('draft ±0.004 mm, trim ±0.006°, heel ±0.000°, GM ±0.002 mm');
    expect(REPORT.endsWith('.\n')).toBe(true);
  });

  test('leaves no space at the end of a line', () => {
    expect(REPORT.split('\n').filter((line) => /\s$/.test(line))).toEqual([]);
  });
});

test('a bait that the film can hold is told so, with the cure', () => {
  const { film } = makeAccuracy();
  const report = checkReport(
    makeCheckedBait({ assembledAccuracy: makeAccuracy({ film: { ...film, tooClose: true } }) }),
  );
  expect(report).toMatch(/Too close to the film to call.*Push it under, wet\n {2}its back, let go/);
});

describe('other ways it can rest', () => {
  const block = (report: string) => report.split('\n\n').find((part) => part.startsWith('Other ways')) ?? '';

  test('are told with what it takes to get there and back, and in how many drops it comes to that', () => {
    // 6.25 g mm against 20.2 g raised by a millimetre
    expect(block(REPORT).split('\n').slice(1)).toEqual([
      '  The whole bait: none, it comes back from anywhere.',
      '  head, alone: in 25 % ± 3 % of drops it comes to rest belly up, 180.0° over (roughly: hooks lie on it); it takes 6.3 g mm to get there (less than lifting it a millimetre: a ripple does it) and 1.5 g mm to get back.',
      '  tail, alone: none, it comes back from anywhere.',
    ]);
  });

  test('are none, but for a bait without a preferred way up', () => {
    const assembledAttitudes = { ...makeAttitudes(), firstIsNeutral: true };
    expect(block(checkReport(makeCheckedBait({ assembledAttitudes })))).toContain(
      'The whole bait: no preferred way up.',
    );
  });
});

test('decimals that are not meant are not shown', () => {
  const digits = { draft: 0, proud: 0, trim: 0, heel: 1, gm: 1 };
  const report = checkReport(makeCheckedBait({ assembledAccuracy: makeAccuracy({ digits }) }));
  expect(report).toContain('draft 30 mm, proud 3 mm');
  expect(report).toContain('trim 0° (nose-down +), heel -5.0°');
  expect(report).toContain('GM: across 3.0, along 40.0, least 3.0 mm');
});

test('a bait under water has no draft, and what rights it is buoyancy over weight', () => {
  const assembled = makeFloat({ state: 'sinks', netWet: 1.2, offset: null, draft: null, proud: null, gmMin: 3.25 });
  const report = checkReport(makeCheckedBait({ assembled }));
  expect(report).toContain('  water        over its back\n');
  expect(report).toContain('  steadiness   buoyancy 3.25 mm over weight\n');
  expect(report).not.toMatch(/NaN|null|undefined/);
});

test('a target that cannot be read off, because all is under water, says so', () => {
  const bait = makeCheckedBait();
  const checks = [{ what: 'proud', wanted: 3, got: null, tolerance: 0.5, met: false }] as const;
  const report = checkReport({ ...bait, target: { ...bait.target, checks } });
  expect(report).toContain('  missed: proud 3.0 mm wanted, it is wholly under water (within 0.5 mm)\n');
});

test('a target has the decimals that are meant for what is got, and a tolerance has no sign', () => {
  const bait = makeCheckedBait({
    assembledAccuracy: makeAccuracy({ digits: { draft: 0, proud: 0, trim: 0, heel: 0, gm: 0 } }),
  });
  const checks = [
    { what: 'net', wanted: 1.2, got: 1.5, tolerance: 0.2, met: false },
    { what: 'waterline', wanted: 2.5, got: 3.3, tolerance: 1, met: true },
  ] as const;
  const report = checkReport({ ...bait, target: { ...bait.target, checks } });
  expect(report).toContain('missed: net weight under water +1.20 g wanted, +1.50 g got (within 0.20 g)\n');
  expect(report).toContain('met: waterline above the datum 2.5 mm wanted, 3 mm got (within 1.0 mm)\n');
});

test('a bait without hooks or warnings says so, and water of measured density gives only that', () => {
  const bait = makeCheckedBait();
  const report = checkReport({
    ...bait,
    warnings: [],
    hardware: { ...bait.hardware, hung: [] },
    water: { density: 0.001004, temperature: null, salinity: null, source: 'measured by you' },
  });
  expect(report).toContain('Hung\n  nothing\n');
  expect(report).toContain('Warnings\n  none\n');
  expect(report).toContain('Water  1.00400 g/cm³ (measured by you)\n');
});
