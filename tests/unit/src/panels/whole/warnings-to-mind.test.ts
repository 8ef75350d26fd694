import { expect, test } from 'vitest';
import { WORDS_ALONE } from '../../../../../sim/warnings.ts';
import { warningsToMind } from '../../../../../src/panels/whole/warnings-to-mind.ts';

const thin = { ...WORDS_ALONE, code: 'thin', where: 'tail', text: 'The tail is thin.' };
const film = { ...WORDS_ALONE, code: 'film', where: 'tail', text: 'Too close to the film to call.' };
const rest = { ...WORDS_ALONE, code: 'other-rest', where: 'tail', text: 'Once over, tail may stay belly up.' };

test('All warnings stand where they have come, those that come with the picture until then', () => {
  expect(warningsToMind({ warnings: [thin] })).toEqual([thin]);
  expect(warningsToMind({ warnings: [thin], allWarnings: [film, thin] })).toEqual([film, thin]);
  expect(warningsToMind({})).toEqual([]);
});

test('How else it can rest stands with the verdict, and not once more among the warnings', () => {
  expect(warningsToMind({ warnings: [thin], allWarnings: [thin, rest] })).toEqual([thin]);
});
