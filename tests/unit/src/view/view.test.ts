import { expect, test, vi } from 'vitest';
import { keyShortcut } from '../../../../src/view/keys.ts';
import { cutAt, cutWithin, layOutSheet, show, toggleCut, viewStore } from '../../../../src/view/view.ts';

test('Measuring the page again to the same sheet redraws nothing', () => {
  layOutSheet({ scale: 3, left: 40 });
  const listener = vi.fn();
  const stop = viewStore.subscribe(listener);
  layOutSheet({ scale: 3, left: 40 });
  expect(listener).not.toHaveBeenCalled();
  layOutSheet({ scale: 3.5, left: 40 });
  expect(listener).toHaveBeenCalledTimes(1);
  expect(viewStore.getState().sheet).toEqual({ scale: 3.5, left: 40 });
  stop();
});

test('A bait is first cut at its middle, and is whole again when it is no longer cut', () => {
  expect(viewStore.getState().cut).toBeNull();
  toggleCut();
  expect(viewStore.getState().cut).toBe(0);
  cutAt(-4.5);
  expect(viewStore.getState().cut).toBe(-4.5);
  toggleCut();
  expect(viewStore.getState().cut).toBeNull();
});

test('A cut stays where it is when another link is shown', () => {
  cutAt(3);
  show(1);
  expect(viewStore.getState().cut).toBe(3);
  show('whole');
  toggleCut();
});

test('A plane that was set on a wide bait cuts a narrow one at its flank', () => {
  expect(cutWithin(-4, 20)).toBe(-4);
  expect(cutWithin(14, 20)).toBe(10);
  expect(cutWithin(-14, 20)).toBe(-10);
});

test('C cuts the bait away and C again makes it whole; held down it does so once, and with Ctrl it copies', () => {
  const press = (key: string, more: object = {}) =>
    keyShortcut({ key, repeat: false, target: null, ...more } as KeyboardEvent, 3);
  vi.stubGlobal('Element', class {});
  try {
    press('c', { ctrlKey: true });
    expect(viewStore.getState().cut).toBeNull();
    press('C');
    press('c', { repeat: true });
    expect(viewStore.getState().cut).toBe(0);
    press('c');
    expect(viewStore.getState().cut).toBeNull();
  } finally {
    vi.unstubAllGlobals();
  }
});
