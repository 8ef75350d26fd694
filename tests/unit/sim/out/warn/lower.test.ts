import { describe, expect, test } from 'vitest';
import { withEdit } from '../../../../../sim/design/edit.ts';
import type { DesignFile } from '../../../../../sim/design/file.ts';
import { makeDesignFile, PLAIN_DESIGN } from '../../../../support/make-design.ts';
import { answersOf } from '../../../../support/worked-bait.ts';

const [POND] = PLAIN_DESIGN.setups;

/** The plain bait in one piece, 8 g of lead in a hole this deep: the deeper it is, the higher the lead. */
function drilled(depth_mm: number, more: object = {}): DesignFile {
  const holes = [{ ...POND.holes[0], depth_mm, lead: { of: '8 mm rod', mass_g: 8 }, ...more }];
  const file = makeDesignFile({ pieces: 1, setups: [{ ...POND, hung: [], holes }] });
  return { ...file, shop: { ...file.shop, wall_mm: 0.5 } };
}

function saidOf(file: DesignFile) {
  const { bait } = answersOf(file);
  return bait.allWarnings.filter(({ code }) => code === 'tender' || code === 'no-rest-upright');
}

describe('a bait whose lead lies too high', () => {
  const [said, ...more] = saidOf(drilled(22));

  test('is warned of with its GM upright, against none', () => {
    expect(more).toEqual([]);
    expect(said).toMatchObject({ code: 'no-rest-upright', limit: 0, unit: 'mm' });
    expect(said.number ?? 0).toBeLessThan(0);
  });

  test('is stood up by the least change of its hole, one edit, after which nothing is said any more', () => {
    expect(said.fix?.says).toBe('drill "head hole" 3.0 mm less deep');
    if (said.fix === null) throw new Error('there is an edit');
    const cured = withEdit(drilled(22), said.fix);
    expect(saidOf(cured)).toEqual([]);
    const [short] = saidOf(drilled(19.5));
    expect(short).toMatchObject({ code: 'tender' });
  });

  test('has no such edit where the hole is done', () => {
    expect(saidOf(drilled(22, { done: true }))[0]?.fix).toBeNull();
  });
});
