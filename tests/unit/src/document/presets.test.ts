import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { FIRST_PRESET, presets, titleFromKey } from '../../../../src/document/presets.ts';

test('A file name reads as the bait is called', () => {
  expect(titleFromKey('slate-shad-140')).toBe('Slate Shad 140');
});

test('Every design in presets/ is offered, shortest first, and its title is the name it gives itself', async () => {
  const files = readdirSync(new URL('../../../../presets', import.meta.url)).filter((name) => name.endsWith('.json'));
  expect(presets.map(({ key }) => `${key}.json`).toSorted()).toEqual(files.toSorted());
  const loaded = await Promise.all(presets.map((preset) => preset.load()));
  expect(loaded.map(({ name }) => name)).toEqual(presets.map(({ title }) => title));
  const lengths = loaded.map(({ body }) => Number(body.length_mm));
  expect(lengths).toEqual(lengths.toSorted((a, b) => a - b));
});

test('The bait shown first is one of them', () => {
  expect(presets.map(({ key }) => key)).toContain(FIRST_PRESET);
});
