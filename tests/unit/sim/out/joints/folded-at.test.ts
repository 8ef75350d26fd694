import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readDesignText } from '../../../../../sim/design/read.ts';
import { foldedAt, foldedAtLines, foldFault } from '../../../../../sim/out/joints/folded-at.ts';
import { workOut } from '../../../../../src/cli/work-out.ts';
import { goodOf } from '../../../../support/change-file.ts';
import { makeCheckedBait } from '../../../../support/make-checked-bait.ts';

const DEGREE = Math.PI / 180;
const file = goodOf(readDesignText(readFileSync('presets/tin-whistle-90.json', 'utf8')));
const bait = workOut({ from: 'tin-whistle-90.json', file }, null);

test('a bait held as it comes to rest when it is folded by itself lies and carries the same', () => {
  const { starboard } = bait.folded ?? {};
  const half = starboard?.points[5];
  if (!half) throw new Error('the demo folds');
  const held = foldedAt(
    bait,
    half.bait.joints.map(({ yaw }) => yaw),
  );
  held.links.forEach(({ heel, trim }, i) => {
    expect(Math.abs(heel - (half.bait.links[i]?.heel ?? Number.NaN))).toBeLessThan(0.1 * DEGREE);
    expect(Math.abs(trim - (half.bait.links[i]?.trim ?? Number.NaN))).toBeLessThan(0.1 * DEGREE);
  });
  const [title, head] = foldedAtLines(bait, held);
  expect(title).toMatch(/^Held at joint 1 21\.\d° to starboard:$/);
  expect(head).toMatch(/^ {2}head: \d\.\d° nose-down, heels \d+\.\d° to starboard$/);
});

test('as many angles are wanted as there are joints, each within what its joint reaches to that side', () => {
  const plain = makeCheckedBait();
  expect(foldFault(plain, [])).toBe('the bait has 1 joint, and 0 angles were given');
  expect(foldFault(plain, [0.1, 0.1])).toBe('the bait has 1 joint, and 2 angles were given');
  expect(foldFault(plain, [-30 * DEGREE])).toBeNull();
  expect(foldFault(plain, [-31 * DEGREE])).toBe('joint 1 turns 30.0° to port at most, 31.0° was given');
  expect(foldFault(plain, [33 * DEGREE])).toBe('joint 1 turns 32.0° to starboard at most, 33.0° was given');
});
