import { expect, test, vi } from 'vitest';
import { layOutSheet, viewStore } from '../../../../src/view/view.ts';

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
