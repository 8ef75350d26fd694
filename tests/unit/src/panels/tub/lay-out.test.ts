import { describe, expect, test } from 'vitest';
import { besideNeeds, layOutTub } from '../../../../../src/panels/tub/lay-out.ts';

describe.each([
  ['a long thin bait on a wide sheet', 1070, 430, { length: 165, height: 22, hang: 30, past: 0, beside: null }],
  ['a tall bait with big hooks', 1070, 430, { length: 200, height: 70, hang: 55, past: 26, beside: null }],
  ['a bait on a phone', 366, 337, { length: 140, height: 48, hang: 34, past: 18, beside: null }],
  ['a bait with no hooks', 672, 368, { length: 90, height: 20, hang: 0, past: 0, beside: null }],
])('For %s', (_, width, height, room) => {
  const { scale, left } = layOutTub(width, height, room);

  test('nose and tail are on the sheet, fins and all, the bait in its middle', () => {
    expect(left).toBeGreaterThan(0);
    const long = room.length + room.past;
    expect(left + (long * scale) / 2).toBeCloseTo(width / 2, 9);
    expect(left + long * scale).toBeLessThan(width);
  });

  test('back and hooks fit into the tub', () => {
    expect((room.height + room.hang) * scale).toBeLessThan(height);
  });

  test('one of the two directions is used to the full', () => {
    const bigger = scale * 1.2;
    const tooLong = (room.length + room.past) * bigger > width;
    // 10 mm: as deep as a bait that does not float is drawn
    const tooTall = (room.height + room.hang + 10) * bigger > height - 80;
    expect(tooLong || tooTall).toBe(true);
  });
});

test('Two setups of a bait fit as the one does, with room for a note and for what the higher stands over the lower', () => {
  const room = { length: 60, height: 48, hang: 34, past: 0 };
  const alone = layOutTub(900, 400, { ...room, beside: null }).scale;
  const two = layOutTub(900, 400, { ...room, beside: 6 }).scale;
  expect(two / alone).toBeCloseTo(((400 - 66 - 20) / (400 - 66)) * ((48 + 34 + 18) / (48 + 34 + 18 + 6)), 9);
});

test('A bait that floats beside one that sinks needs what it stands proud; two that float alike need nothing', () => {
  expect(besideNeeds(3, null, 0)).toBe(3);
  // the fins over the water, and over the one that is drawn under it
  expect(besideNeeds(null, 3, 5)).toBe(13);
  expect(besideNeeds(null, null, 0)).toBe(0);
  expect(besideNeeds(4, 2, 0)).toBe(0);
  expect(besideNeeds(20, 2, 0)).toBe(8);
});
