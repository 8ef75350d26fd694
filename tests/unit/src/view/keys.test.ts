import { afterAll, afterEach, expect, test, vi } from 'vitest';
import { keyShortcut } from '../../../../src/view/keys.ts';
import { viewStore } from '../../../../src/view/view.ts';

// the shortcut asks whether the key went to an element that takes typing; here there is no page
vi.stubGlobal('Element', class {});
afterAll(() => vi.unstubAllGlobals());

const pressed = (key: string, more: Partial<KeyboardEvent> = {}) =>
  keyShortcut({ key, target: null, ...more } as KeyboardEvent, 3);

const marked = () => viewStore.getState().metacentre;

afterEach(() => viewStore.setState({ metacentre: false, keepOuts: false }));

test('M marks the metacentre, and M again no longer', () => {
  pressed('m');
  expect(marked()).toBe(true);
  pressed('M');
  expect(marked()).toBe(false);
});

test('M held down marks it once, and with Ctrl it is the browser’s', () => {
  pressed('m');
  pressed('m', { repeat: true });
  expect(marked()).toBe(true);
  pressed('m', { ctrlKey: true });
  expect(marked()).toBe(true);
});

test('K draws keep-outs, and K again no longer; held down it does so once', () => {
  const drawn = () => viewStore.getState().keepOuts;
  pressed('k');
  expect(drawn()).toBe(true);
  pressed('K', { repeat: true });
  expect(drawn()).toBe(true);
  pressed('K');
  expect(drawn()).toBe(false);
  expect(marked()).toBe(false);
});

test('J folds the whole bait at its joints and L lets them go, one at a time, and neither with a link alone', () => {
  const bend = () => viewStore.getState().bend;
  pressed('j');
  expect(bend()).toBe(0);
  pressed('l');
  expect(bend()).toBe('loose');
  pressed('L', { repeat: true });
  expect(bend()).toBe('loose');
  pressed('j');
  pressed('J');
  expect(bend()).toBeNull();
  pressed('1');
  pressed('j');
  pressed('l');
  expect(bend()).toBeNull();
  pressed('0');
});
