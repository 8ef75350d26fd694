import { expect, test } from 'vitest';
import { makeTreble } from '../../../../src/scene/hook-shape.ts';

const treble = makeTreble();
const place = treble.getAttribute('position');
const corners = Array.from({ length: place.count }, (_, i) => [place.getX(i), place.getY(i), place.getZ(i)] as const);

test('a hung hook ends exactly its hang below the middle of its eye', () => {
  const lowest = Math.min(...corners.map(([, , z]) => z));
  // one of the tube's eight sides may lie a little inside its round
  expect(lowest).toBeGreaterThanOrEqual(-1);
  expect(lowest).toBeLessThan(-0.99);
});

test('a hung hook passes through the loop it hangs from and stands nowhere above it', () => {
  const highest = Math.max(...corners.map(([, , z]) => z));
  expect(highest).toBeGreaterThanOrEqual(0);
  expect(highest).toBeLessThan(0.05);
});

test('a treble looks the same after a third of a turn', () => {
  // widths along three directions: points only, the ring and eye above lie within them
  const reach = (turn: number) => Math.max(...corners.map(([x, y]) => x * Math.cos(turn) + y * Math.sin(turn)));
  expect(reach((2 * Math.PI) / 3)).toBeCloseTo(reach(0), 6);
  expect(reach((4 * Math.PI) / 3)).toBeCloseTo(reach(0), 6);
  expect(reach(0)).toBeGreaterThan(1.2 * reach(Math.PI));
});
