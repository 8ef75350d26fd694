import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Box, type LabelBox, placeLabels } from '../../../../src/scene/labels.ts';

const TUB = { width: 400, height: 300 };
/** Rounding, in CSS pixels. */
const ROUNDING = 1e-5;

function label(wantedX: number, wantedY: number, width = 30, height = 14): LabelBox {
  return { wantedX, wantedY, width, height, x: Number.NaN, y: Number.NaN, placed: false };
}

const place = (labels: readonly LabelBox[], fixed: readonly Box[] = []) =>
  placeLabels(labels, fixed, TUB.width, TUB.height);

const covers = (a: Box, b: Box) =>
  (a.width + b.width) / 2 - Math.abs(a.x - b.x) > ROUNDING &&
  (a.height + b.height) / 2 - Math.abs(a.y - b.y) > ROUNDING;

const px = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const sizes = [px(4, 90), px(10, 20)] as const;
/** Crowded about one place, as over a short bait, some of them outside the tub. */
const wanted = fc.tuple(px(-50, 450), px(-50, 350), ...sizes).map((numbers) => label(...numbers));
const labels = fc.array(wanted, { maxLength: 13 });
const crowd = fc.array(fc.tuple(px(190, 210), px(140, 160), ...sizes), { maxLength: 13 });
const signs = fc.array(
  fc.tuple(px(0, 400), px(0, 300)).map(([x, y]) => ({ x, y, width: 15, height: 15 })),
  { maxLength: 3 },
);

test('a dozen words never cover each other or a centre, and all stand inside the tub', () => {
  const everywhere = fc.oneof(
    labels,
    crowd.map((all) => all.map((numbers) => label(...numbers))),
  );
  fc.assert(
    fc.property(everywhere, signs, (all, fixed) => {
      place(all, fixed);
      for (const [i, one] of all.entries()) {
        expect(one.placed).toBe(true);
        expect(Math.abs(one.x - TUB.width / 2) + one.width / 2).toBeLessThan(TUB.width / 2 + ROUNDING);
        expect(Math.abs(one.y - TUB.height / 2) + one.height / 2).toBeLessThan(TUB.height / 2 + ROUNDING);
        for (const other of [...fixed, ...all.slice(0, i)]) expect(covers(one, other)).toBe(false);
      }
    }),
  );
});

test('the same words stand at the same places, wherever they stood before', () => {
  fc.assert(
    fc.property(labels, signs, px(0, 300), (all, fixed, before) => {
      const again = all.map((one) => ({ ...one, x: before, y: before, placed: true }));
      place(all, fixed);
      place(again, fixed);
      expect(again).toEqual(all);
    }),
  );
});

test('no free place on a grid of pixels is nearer to where a word is wanted than the one it got', () => {
  fc.assert(
    fc.property(labels, signs, wanted, (all, fixed, last) => {
      place([...all, last], fixed);
      const inside = (at: number, size: number, tub: number) => Math.min(tub - size / 2, Math.max(size / 2, at));
      const [nearX, nearY] = [
        inside(last.wantedX, last.width, TUB.width),
        inside(last.wantedY, last.height, TUB.height),
      ];
      const far = (x: number, y: number) => Math.hypot(x - nearX, y - nearY);
      const got = far(last.x, last.y);
      for (let x = last.width / 2; x <= TUB.width - last.width / 2; x += 7) {
        for (let y = last.height / 2; y <= TUB.height - last.height / 2; y += 7) {
          if (far(x, y) > got - ROUNDING) continue;
          const there = { ...last, x, y };
          expect([...fixed, ...all].some((other) => covers(there, other))).toBe(true);
        }
      }
    }),
    { numRuns: 30 },
  );
});

test('a word with room to stand stands where it is wanted', () => {
  const [one, other] = [label(100, 100), label(140, 100)];
  place([one, other]);
  expect([one.x, one.y, other.x, other.y]).toEqual([100, 100, 140, 100]);
});

test('a word for which the tub has no room is not placed, and stands in nobody’s way', () => {
  const [wide, small] = [label(200, 150, 500), label(200, 150)];
  place([wide, small]);
  expect([wide.placed, small.placed]).toEqual([false, true]);
  expect([small.x, small.y]).toEqual([200, 150]);
});
