import { describe, expect, test } from 'vitest';
import { ballastReport } from '../../../../../sim/out/ballast/report.ts';
import type { CheckedBait } from '../../../../../sim/out/checked-bait.ts';
import { makeCheckedBait, makePlan, makeWhatIf } from '../../../../support/make-checked-bait.ts';
import { CANNOT, PLANNED } from '../../../../support/make-planned-bait.ts';

function blockOf(bait: CheckedBait, head: string): readonly string[] {
  return (
    ballastReport(bait)
      .split('\n\n')
      .find((block) => block.startsWith(head))
      ?.trimEnd()
      .split('\n') ?? []
  );
}

test('it begins with the design and its setup, and with what lead and drills ask of whoever handles them', () => {
  const [first] = ballastReport(PLANNED).split('\n\n');
  expect(first.split('\n')[0]).toBe('Boathouse Plain: still pond, ballast plan');
  expect(first).toContain('Lead is poisonous');
  expect(first).toContain('Never let a\ndrill near a screw eye');
});

test('each link comes from the nose, then the whole bait, then other conditions', () => {
  const heads = ballastReport(PLANNED)
    .split('\n\n')
    .map((block) => block.split('\n')[0]);
  expect(heads.slice(1)).toEqual([
    'Link 1: head, wants +3.60 g net at x 25.5',
    'Link 2: tail, wants nothing',
    'Whole bait with this plan, as rounded, held straight',
    'What if (against the setup as it stands in the file)',
  ]);
});

test('a planned link has its holes in a table, which to fill last, how it then floats, and how forgiving it is', () => {
  expect(blockOf(PLANNED, 'Link 1').slice(1)).toEqual([
    '  4.0 g of lead in head, 0.4° nose-down as rounded.',
    '  hole          from      x  across  drill  deep  lead g  of        wall',
    '  head, hole 1  belly  24.0     0.0    8.0  10.0     4.0  8 mm rod   3.3',
    '  Fill "head, hole 1" last, when the sealed link has been weighed.',
    '  With the plan: Head floats 3.0 mm proud, level.',
    '  As it stands now: 0.5° nose-down for each mm its weight lies further forward; a gram more at its nose 2.0° nose-down, at its tail 3.0° tail low.',
    '  fore treble trims it 1.5° nose-down; level with its eye at 44.0 mm.',
  ]);
});

test('a link that needs none has no table, and one that does not stand no forgiveness', () => {
  expect(blockOf(PLANNED, 'Link 2').slice(1)).toEqual([
    '  Tail rests as it should without lead.',
    '  With the plan: Tail floats 1.5 mm proud, level.',
    '  As it stands now it has no trim that a little more would change a little.',
  ]);
});

test('a chamber stands in the table with its plug', () => {
  const [plan, tail] = PLANNED.ballast.links;
  const chamber = { ...plan.holes[0], lead: null, air: { plug: 4 } };
  const bait = { ...PLANNED, ballast: { ...PLANNED.ballast, links: [{ ...plan, holes: [chamber] }, tail] } };
  expect(blockOf(bait, 'Link 1')[3]).toMatch(/ {2}10\.0 +air under 4\.0 mm of plug$/);
});

describe('a link that cannot be ballasted', () => {
  test('is told why, and what cures it with how it then floats', () => {
    const lines = blockOf(CANNOT, 'Link 2');
    expect(lines.slice(1, 2)).toEqual([
      '  Lead for tail would have to stand 61.0 mm from the nose tip; its holes fit from 66.0 mm to 104.0 mm.',
    ]);
    expect(lines.slice(3, 6)).toEqual([
      '  Any one of these cures it:',
      '    put the rest into head (alone 3.0° nose-down; whole bait level, -1.25 g in the water; the pin carries 0.40 g and 12 g mm; let go it curls by 29° and heels by 14°)',
      '    let it ride 1.5 mm lower (alone level; whole bait level, -2.00 g in the water)',
    ]);
  });

  test('is told when nothing does', () => {
    const [head, tail] = CANNOT.links;
    expect(blockOf({ ...CANNOT, links: [head, { ...tail, cures: [] }] }, 'Link 2')).toContain(
      '  None of the changes that were tried cures it.',
    );
  });

  test('is told when its neighbour bears the rest already', () => {
    const [, tail] = CANNOT.ballast.links;
    const kept = makePlan(0, 'head', { state: 'kept', lead: 4, left: null });
    const borne = { ...CANNOT, ballast: { ...CANNOT.ballast, links: [kept, tail] } };
    expect(blockOf(borne, 'Link 2')).toContain('  Joined up, its neighbour bears the rest over the pin.');
    expect(blockOf(borne, 'Link 2')).toContain('  Any one of these cures it:');
    const [head, alone] = CANNOT.links;
    const none = blockOf({ ...borne, links: [head, { ...alone, cures: [] }] }, 'Link 2').join('\n');
    expect(none).toContain('bears the rest');
    expect(none).not.toContain('None of the changes');
  });

  test('and only such a one is told of cures', () => {
    const [head, tail] = CANNOT.links;
    const bait = { ...PLANNED, links: [head, tail] };
    expect(ballastReport(bait)).not.toMatch(/cures it/);
  });
});

test('the whole bait has its verdict and its targets', () => {
  expect(blockOf(PLANNED, 'Whole bait').slice(1)).toEqual([
    '  The bait floats 2.8 mm proud, level.',
    '  met: proud 3.0 mm wanted, 2.8 mm got (within 0.5 mm)',
  ]);
});

test('other conditions stand in a table, one under water without a height', () => {
  const under = makeWhatIf({ name: 'wet through', netWet: 0.3, trim: 0, proud: null });
  const same = makeWhatIf({ name: 'in the sea, same target', lead: { mass: 6.2, change: 0.7 } });
  expect(blockOf({ ...PLANNED, whatIfs: [makeWhatIf(), under, same] }, 'What if').slice(1)).toEqual([
    '  what if                  net g  trim           proud  the change',
    '  in other water           -2.75  0.5° tail low    2.9  -0.50 g in the water, 0.4 mm higher, turns 0.5° tail low',
    '  wet through               0.30  level                 -0.50 g in the water, 0.4 mm higher, turns 0.5° tail low',
    '  in the sea, same target  -2.75  0.5° tail low    2.9  +0.7 g of lead, 6.2 g in all',
  ]);
});

test('no line ends in a space, and no number is none', () => {
  for (const bait of [PLANNED, CANNOT, makeCheckedBait({ whatIfs: [makeWhatIf()] })]) {
    const report = ballastReport(bait);
    expect(report.split('\n').filter((line) => /\s$/.test(line))).toEqual([]);
    expect(report).not.toMatch(/NaN|undefined|null|Infinity/);
    expect(report.endsWith('\n')).toBe(true);
  }
});
