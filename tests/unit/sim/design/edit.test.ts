import { describe, expect, test } from 'vitest';
import { shiftAt, withEdit } from '../../../../sim/design/edit.ts';
import { withValueAt } from '../../../../sim/design/place.ts';
import { PLAIN_DESIGN } from '../../../support/make-design.ts';

const PATH = 'setups.0.holes.0.x_mm';

describe('A number moved by so much', () => {
  test('is a number where one stood, without the noise of its binary form', () => {
    expect(shiftAt(withValueAt(PLAIN_DESIGN, PATH, 24.1), PATH, 0.2, 24.1)).toEqual({ path: PATH, value: 24.3 });
  });

  test('stays an expression where one stood', () => {
    const file = withValueAt(PLAIN_DESIGN, PATH, 'length_mm * 0.2');
    expect(shiftAt(file, PATH, -1.5, 24)?.value).toBe('(length_mm * 0.2) - 1.5');
  });

  test('is what it comes to where the expression would grow too long to be read', () => {
    const file = withValueAt(
      PLAIN_DESIGN,
      PATH,
      `${'(1 + '.repeat(12)}20${')'.repeat(12)} + length_mm * 0 - 8 * ${'1'.repeat(20)} * 0`,
    );
    expect(shiftAt(file, PATH, 2, 24)?.value).toBe(26);
  });

  test('is none where it would leave the range of its field, or where no number may stand', () => {
    expect(shiftAt(PLAIN_DESIGN, 'setups.0.holes.0.depth_mm', -10, 10)).toBeNull();
    expect(shiftAt(PLAIN_DESIGN, 'hangers.0.shank_mm', 90, 12)).toBeNull();
    expect(shiftAt(PLAIN_DESIGN, 'hangers.0.name', 1, 0)).toBeNull();
  });
});

test('An edit sets its places in turn and leaves the file that it was given', () => {
  const edit = {
    says: 'move it',
    sets: [
      { path: PATH, value: 30 },
      { path: 'setups.0.holes.0.depth_mm', value: 12 },
    ],
  };
  const [hole] = withEdit(PLAIN_DESIGN, edit).setups[0].holes;
  expect([hole.x_mm, hole.depth_mm]).toEqual([30, 12]);
  expect(PLAIN_DESIGN.setups[0].holes[0].x_mm).toBe(24);
});
