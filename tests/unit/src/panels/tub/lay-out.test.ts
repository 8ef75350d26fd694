import { describe, expect, test } from 'vitest';
import { layOutTub } from '../../../../../src/panels/tub/lay-out.ts';

describe.each([
  ['a long thin bait on a wide sheet', 1070, 430, { length: 165, height: 22, hang: 30, past: 0 }],
  ['a tall bait with big hooks', 1070, 430, { length: 200, height: 70, hang: 55, past: 26 }],
  ['a bait on a phone', 366, 337, { length: 140, height: 48, hang: 34, past: 18 }],
  ['a bait with no hooks', 672, 368, { length: 90, height: 20, hang: 0, past: 0 }],
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
