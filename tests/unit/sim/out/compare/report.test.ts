import { expect, test } from 'vitest';
import { compareSetups } from '../../../../../sim/out/compare/compare.ts';
import { compareReport } from '../../../../../sim/out/compare/report.ts';
import { makeFloat, makeSinking } from '../../../../support/make-checked-bait.ts';
import { makeComparedBait } from '../../../../support/make-compared-bait.ts';
import { makeHole } from '../../../../support/make-hole.ts';

const UNDER = makeFloat({ state: 'sinks', offset: null, draft: null, proud: null, netWet: 2.5, mass: 45 });
const REPORT = compareReport(
  compareSetups(
    makeComparedBait('topwater', [makeHole()]),
    makeComparedBait('slow-sink', [makeHole({ depth: 12 }), makeHole({ x: 44, name: 'more' })], [], {
      assembled: UNDER,
      assembledSinking: makeSinking(),
    }),
  ),
);
const [TITLE, WHOLE, BENCH, HEAD, TAIL, ...MORE] = REPORT.split('\n\n').map((block) => block.trimEnd().split('\n'));

test('it names both setups, then has the whole bait, the bench and each link', () => {
  expect(TITLE).toEqual(['Boathouse Plain: topwater and slow-sink']);
  expect([WHOLE, BENCH, HEAD, TAIL].map(([head]) => head)).toEqual([
    'Whole bait, held straight',
    'At the bench',
    'Link head: 4.0 g of lead, 8.0 g',
    'Link tail: 0.0 g of lead, 0.0 g',
  ]);
  expect(MORE).toEqual([]);
});

test('numbers of both stand side by side, and what is under water is not proud', () => {
  expect(WHOLE.slice(1)).toEqual([
    '                           topwater           slow-sink',
    '  in the water              -2.25 g             +2.50 g',
    '  proud                      2.5 mm         under water',
    '  trim, nose-down              0.0°                0.0°',
    '  heel, to starboard          -5.0°                0.0°',
    '  GM                         3.0 mm              3.0 mm',
    '  mass                       41.5 g              45.0 g',
    '  first foot          does not sink  in 3.4 s (3.1–3.7)',
    '  lead                        4.0 g               8.0 g',
    '  hung                        4.1 g               4.1 g',
    '  topwater: The bait floats 2.5 mm proud, leans 5.0° to port.',
    '  slow-sink: The bait sinks, 2.50 g heavier than its water, level.',
  ]);
});

test('where neither sinks there is no word of it', () => {
  const afloat = compareReport(compareSetups(makeComparedBait('a', []), makeComparedBait('b', [])));
  expect(afloat).not.toContain('first foot');
});

test('what differs at the bench is said once for all and hole by hole; what is the same is not', () => {
  expect(BENCH.slice(1)).toEqual(['  2 holes differ for slow-sink: 4.0 g more lead.']);
  expect(HEAD.slice(1)).toEqual([
    '  head, hole 1: 2.0 mm deeper',
    '  in slow-sink only: more: from the belly at 44.0 mm, 8.0 mm wide, 10.0 mm deep, 4.0 g of 8 mm rod',
    '  topwater, alone: Head floats 3.0 mm proud, 3.0° nose-down.',
    '  slow-sink, alone: Head floats 3.0 mm proud, 3.0° nose-down.',
  ]);
  expect(TAIL).toHaveLength(3);
});

test('no line ends in a space, and no number is none', () => {
  expect(REPORT.split('\n').filter((line) => /\s$/.test(line))).toEqual([]);
  expect(REPORT).not.toMatch(/NaN|undefined|null|Infinity/);
  expect(REPORT.endsWith('\n')).toBe(true);
});
