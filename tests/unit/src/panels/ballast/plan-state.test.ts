import { expect, test } from 'vitest';
import { filledUp } from '../../../../../src/panels/ballast/filled-up.ts';
import { isComplete, planState } from '../../../../../src/panels/ballast/plan-state.ts';

const OK = { status: 'ok', value: {} } as never;
const BLOCKED = { status: 'blocked', by: ['sound'] } as never;
const KNOWN = {
  fresh: true,
  detail: 'full',
  done: true,
  fault: null,
  bait: { ballast: OK, planned: OK },
} as const;

test('A plan is current when the newest full run has come to it, and not before', () => {
  expect(planState(KNOWN)).toBe('current');
  expect(planState({ ...KNOWN, done: false })).toBe('current');
  expect(planState({ ...KNOWN, fresh: false })).toBe('awaited');
  expect(planState({ ...KNOWN, detail: 'drag' })).toBe('awaited');
  expect(planState({ ...KNOWN, done: false, bait: { ballast: OK } })).toBe('awaited');
});

test('A plan is blocked when the whole run came to none, and when the sums broke', () => {
  expect(planState({ ...KNOWN, bait: { ballast: BLOCKED, planned: BLOCKED } })).toBe('blocked');
  expect(planState({ ...KNOWN, bait: {} })).toBe('blocked');
  expect(planState({ ...KNOWN, fault: 'a step went astray' })).toBe('blocked');
  expect(planState({ ...KNOWN, fresh: false, bait: {} })).toBe('awaited');
});

test('Nothing more comes once a full run of the newest design is done', () => {
  expect(isComplete(KNOWN)).toBe(true);
  for (const changes of [{ fresh: false }, { detail: 'drag' }, { done: false }] as const) {
    expect(isComplete({ ...KNOWN, ...changes })).toBe(false);
  }
});

test('A list that grows is filled up with what the last complete one had further on', () => {
  const before = ['a', 'b', 'c'];
  expect(filledUp(['A'], true, before)).toEqual([
    { item: 'A', isOld: false },
    { item: 'b', isOld: true },
    { item: 'c', isOld: true },
  ]);
  expect(filledUp(['A', 'B', 'C', 'D'], true, before).map(({ isOld }) => isOld)).toEqual([false, false, false, false]);
  expect(filledUp(before, false, before).map(({ item, isOld }) => `${item} ${isOld}`)).toEqual([
    'a true',
    'b true',
    'c true',
  ]);
});
