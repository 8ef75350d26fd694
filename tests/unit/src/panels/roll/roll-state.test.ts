import { expect, test } from 'vitest';
import { rollState } from '../../../../../src/panels/roll/roll-state.ts';

type Known = Parameters<typeof rollState>[0];

const assembledRoll = { status: 'ok', value: {} } as NonNullable<Known['bait']['assembledRoll']>;
const KNOWN: Known = { fresh: true, detail: 'full', done: true, bait: { assembledRoll }, fault: null };

test.each<[why: string, known: Partial<Known>, state: string]>([
  ['worked out for the design as it stands', {}, 'current'],
  ['a newer design is asked for', { fresh: false }, 'awaited'],
  ['a hand is on a number', { detail: 'drag' }, 'awaited'],
  ['the run has not come to it', { done: false, bait: {} }, 'awaited'],
  ['the run ended without it', { bait: {} }, 'blocked'],
  ['it was blocked', { bait: { assembledRoll: { status: 'blocked', by: ['sound'] } } }, 'blocked'],
  ['the sums broke', { fault: 'a bug' }, 'blocked'],
])('%s', (_, known, state) => {
  expect(rollState({ ...KNOWN, ...known })).toBe(state);
});
