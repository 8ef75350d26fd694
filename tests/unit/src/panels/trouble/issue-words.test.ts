import { expect, test } from 'vitest';
import { issueWords, pathWords } from '../../../../../src/panels/trouble/issue-words.ts';

test.each([
  ['body.length_mm', 'Length'],
  ['joints.0.gap_mm', 'Joint 1, gap'],
  ['joints.1.hinge.pin.z_mm.0', 'Joint 2, hinge, pin, z 1'],
  ['setups.0.holes.2.lead.mass_g', 'Setup 1, hole 3, lead, mass'],
  ['wood.density_g_cm3', 'Wood, density'],
  ['dimensions.head_mm', 'Dimensions, head'],
  ['body', 'Body'],
  ['', 'The design'],
])('%j reads as %j', (path, words) => {
  expect(pathWords(path)).toBe(words);
});

test('A cure follows what is wrong', () => {
  const wrong = { code: 'x/y', path: '', message: 'the pin is 3 mm, the bore 2.5 mm' };
  expect(issueWords(wrong, 'mm-g')).toBe('the pin is 3 mm, the bore 2.5 mm');
  expect(issueWords({ ...wrong, hint: 'choose a thinner pin' }, 'mm-g')).toBe(
    'the pin is 3 mm, the bore 2.5 mm: choose a thinner pin',
  );
  expect(issueWords(wrong, 'in-oz')).toBe('the pin is 0.12 in, the bore 0.10 in');
});
