import { expect, test } from 'vitest';
import { isSameChoice } from '../../../../src/ui/options.ts';

const CHOICE = {
  label: 'Setup',
  options: [
    { key: 'a', text: 'topwater' },
    { key: 'b', text: 'slow-sink' },
  ],
  chosen: 'a',
} as const;

test('A list made anew with the same in it is the same choice', () => {
  expect(isSameChoice(CHOICE, structuredClone(CHOICE))).toBe(true);
});

test('Another name, order, length, key or thing chosen is another choice', () => {
  const [first, second] = CHOICE.options;
  for (const change of [
    { label: 'Beside' },
    { chosen: 'b' },
    { chosen: null },
    { options: [second, first] },
    { options: [first] },
    { options: [first, { ...second, text: 'hanging' }] },
    { options: [first, { ...second, key: 'c' }] },
  ]) {
    expect(isSameChoice(CHOICE, { ...CHOICE, ...change }), JSON.stringify(change)).toBe(false);
  }
});
