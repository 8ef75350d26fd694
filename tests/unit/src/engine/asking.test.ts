import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createAsking } from '../../../../src/engine/asking.ts';
import type { Ask } from '../../../../src/engine/protocol.ts';
import { makeDesignFile } from '../../../support/make-design.ts';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

function asker() {
  const asks: Ask[] = [];
  const marked: number[] = [];
  const asking = createAsking({ ask: (each) => asks.push(each) }, (seq) => marked.push(seq));
  return { asking, asks, marked };
}

/** What was asked, in short: `2 drag`. */
const inShort = (asks: readonly Ask[]) => asks.map(({ seq, detail }) => `${seq} ${detail}`);

test('A design is asked for coarsely at once and fully when the hand rests', async () => {
  const { asking, asks } = asker();
  asking.changed(makeDesignFile(), 'still pond');
  await vi.advanceTimersByTimeAsync(0);
  expect(inShort(asks)).toEqual(['1 drag']);
  await vi.advanceTimersByTimeAsync(1000);
  expect(inShort(asks)).toEqual(['1 drag', '1 full']);
  expect(asks.map(({ setup }) => setup)).toEqual(['still pond', 'still pond']);
});

test('While the hand moves nothing is asked for fully; at rest the last design is', async () => {
  const { asking, asks } = asker();
  for (let move = 0; move < 5; move += 1) {
    asking.changed(makeDesignFile({ name: `move ${move}` }), null);
    await vi.advanceTimersByTimeAsync(50);
  }
  expect(asks.every(({ detail }) => detail === 'drag')).toBe(true);
  await vi.advanceTimersByTimeAsync(1000);
  const full = asks.filter(({ detail }) => detail === 'full');
  expect(full.map(({ seq, file }) => [seq, file.name])).toEqual([[5, 'move 4']]);
});

test('Changes within one turn are one design: only the last is asked for', async () => {
  const { asking, asks, marked } = asker();
  asking.changed(makeDesignFile({ name: 'put back' }), null);
  asking.changed(makeDesignFile({ name: 'let go' }), null);
  await vi.advanceTimersByTimeAsync(0);
  expect(asks.map(({ seq, file }) => [seq, file.name])).toEqual([[2, 'let go']]);
  expect(marked.at(-1)).toBe(2);
});

test('The worker is asked before the page, told of it, draws itself anew', async () => {
  const order: string[] = [];
  const asking = createAsking({ ask: () => order.push('asked') }, () => queueMicrotask(() => order.push('drawn')));
  asking.changed(makeDesignFile(), null);
  await vi.advanceTimersByTimeAsync(0);
  expect(order).toEqual(['asked', 'drawn']);
});
