import { describe, expect, test } from 'vitest';
import { pivotHeight, type Room, STANDS, shiftOf, waterAt } from '../../../../src/scene/stand.ts';

const TUB = { width: 900, height: 400 };
const SHEET = { scale: 4, left: 50 };
const LOW: Room = { above: 5, below: 40, middle: 60, length: 120 };

describe('the side view', () => {
  test('has the nose tip where the sheet has it, whatever part of the bait is shown', () => {
    for (const middle of [20, 60, 110]) {
      const [right] = shiftOf('side', TUB, SHEET, { ...LOW, middle });
      // the middle of what is shown is drawn in the middle of the tub, shifted; the nose stands middle mm to its left
      expect(TUB.width / 2 + right - middle * SHEET.scale).toBeCloseTo(SHEET.left, 9);
    }
  });

  test('has the water at two fifths of the tub as long as the bait fits over and under it', () => {
    expect(waterAt(TUB, LOW, SHEET.scale)).toBe(160);
  });

  test('lowers the water for a bait that rides high and raises it for hooks that hang deep', () => {
    // 50 mm at 4 px and 30 px overhead
    expect(waterAt(TUB, { ...LOW, above: 50, below: 20 }, SHEET.scale)).toBe(230);
    // 70 mm at 4 px and 34 px underneath, from the bottom
    expect(waterAt(TUB, { ...LOW, below: 70 }, SHEET.scale)).toBe(86);
  });

  test('shares what room there is when the bait does not fit at all', () => {
    const crowded = { ...LOW, above: 100, below: 100 };
    // 430 px wanted above and 434 px below
    expect(waterAt(TUB, crowded, SHEET.scale)).toBeCloseTo((400 * 430) / 864, 9);
  });

  test('leaves room for a note over the numbers', () => {
    expect(waterAt(TUB, { ...LOW, above: 50, below: 20, noted: true }, SHEET.scale)).toBe(250);
  });

  test('has still water where it says, although the view turns about the middle of the bait', () => {
    const [, down] = shiftOf('side', TUB, SHEET, LOW);
    const water = TUB.height / 2 + down + pivotHeight(LOW) * SHEET.scale;
    expect(water).toBeCloseTo(waterAt(TUB, LOW, SHEET.scale), 9);
  });
});

test('the top view keeps the side view’s x and has the bait in the middle of the tub', () => {
  expect(shiftOf('top', TUB, SHEET, LOW)).toEqual([shiftOf('side', TUB, SHEET, LOW)[0], 0]);
});

test('the front view keeps the side view’s waterline and has the bait in the middle of the tub', () => {
  expect(shiftOf('front', TUB, SHEET, LOW)).toEqual([0, shiftOf('side', TUB, SHEET, LOW)[1]]);
});

test('the waterline view keeps the side view’s waterline, and that from below has the bait in the middle', () => {
  expect(shiftOf('waterline', TUB, SHEET, LOW)).toEqual(shiftOf('side', TUB, SHEET, LOW));
  expect(shiftOf('below', TUB, SHEET, LOW)).toEqual(shiftOf('top', TUB, SHEET, LOW));
});

test('at the waterline the viewer is over the water by less than 8 degrees, and from below well under it', () => {
  const climb = ([x, y, z]: readonly number[]) => (Math.atan2(z, Math.hypot(x, y)) * 180) / Math.PI;
  expect(climb(STANDS.waterline)).toBeGreaterThan(3);
  expect(climb(STANDS.waterline)).toBeLessThan(8);
  expect(climb(STANDS.below)).toBeLessThan(-30);
});

test('the viewer stands to port, over the back, and before the nose', () => {
  expect(STANDS.side).toEqual([0, -1, 0]);
  expect(STANDS.front).toEqual([-1, 0, 0]);
  expect(STANDS.top[2]).toBe(1);
  // to port by less than a pixel over any bait, so that starboard is up
  expect(STANDS.top[1]).toBeLessThan(0);
  expect(Math.abs(STANDS.top[1]) * 100).toBeLessThan(0.1);
});
