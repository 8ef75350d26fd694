import { expect, test } from 'vitest';
import { jointsState } from '../../../../../src/panels/joints/joints-state.ts';
import { makeReach } from '../../../../support/make-checked-bait.ts';

const REACH = { status: 'ok', value: makeReach() } as const;
const FULL = { fresh: true, detail: 'full', done: true, bait: { reach: REACH }, fault: null } as const;

test('is current once the reach of the newest design is there, even where more is to come', () => {
  expect(jointsState(FULL)).toBe('current');
  expect(jointsState({ ...FULL, done: false })).toBe('current');
});

test('is awaited while a newer design is worked out, or a hand is on a number', () => {
  expect(jointsState({ ...FULL, fresh: false })).toBe('awaited');
  expect(jointsState({ ...FULL, detail: 'drag' })).toBe('awaited');
  expect(jointsState({ ...FULL, done: false, bait: {} })).toBe('awaited');
});

test('is blocked where something stands against the design, or the sums broke', () => {
  expect(jointsState({ ...FULL, done: false, bait: { reach: { status: 'blocked', by: ['sound'] } } })).toBe('blocked');
  expect(jointsState({ ...FULL, bait: {} })).toBe('blocked');
  expect(jointsState({ ...FULL, fault: 'broke' })).toBe('blocked');
});
