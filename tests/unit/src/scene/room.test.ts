import { expect, test } from 'vitest';
import { roomForBoth } from '../../../../src/scene/room.ts';

test('two baits in one water have room over it for the higher, under it for the lower, and from the first end to the last', () => {
  const floating = { above: 6, below: 40, middle: 60, length: 120 };
  const sinking = { above: 0, below: 75, middle: 63, length: 122 };
  const both = { above: 6, below: 75, middle: 62, length: 124, noted: true };
  expect(roomForBoth(floating, sinking)).toEqual(both);
  expect(roomForBoth(sinking, floating)).toEqual(both);
});
