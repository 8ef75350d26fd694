import { describe, expect, test } from 'vitest';
import { makeDesignFile } from '../../../support/make-design.ts';
import { degrees, reachOf } from '../../../support/square-bait.ts';

const [joint] = makeDesignFile({ pieces: 3 }).joints;

/** A slim bait of 160 mm cut at these places, its joints bevelled alike, 3 mm apart. */
function chain(cuts: readonly number[], bevel: number) {
  return makeDesignFile({
    body: { length_mm: 160, width_mm: 12, deepest_x_mm: 80, widest_x_mm: 80 },
    links: [...cuts, 0].map((_, i) => ({ name: `link ${i + 1}` })),
    joints: cuts.map((x_mm) => ({
      ...joint,
      x_mm,
      gap_mm: 3,
      faces: { kind: 'bevel' as const, fore_deg: bevel, aft_deg: bevel },
      hinge: {
        ...joint.hinge,
        pin: { diameter_mm: 2, z_mm: [-9, 9] as const, x_mm, held_by: 'fore' as const },
      } as typeof joint.hinge,
      slots: [],
    })),
    hangers: [],
    coats: [],
    setups: [
      { name: 'pond', water: { temperature_c: 20, salinity_g_kg: 0 }, target: { proud_mm: 3 }, hung: [], holes: [] },
    ],
  });
}

describe('the whole bait curled to one side', () => {
  test('folds what its joints swing together, where nothing else is in the way', () => {
    const { joints, whole } = reachOf(chain([60, 110], 20));
    const sum = joints.reduce((all, { port }) => all + port.angle, 0);
    expect(whole.port).toEqual({ fold: sum, joints: sum, far: null });
    expect(whole.starboard.fold).toBeCloseTo(sum, 9);
    expect(whole.turnsRound).toBe(sum >= Math.PI);
  });

  test('stops where its nose meets its tail, with less than its joints would give', () => {
    const { whole } = reachOf(chain([26, 52, 78, 104, 130], 35));
    expect(degrees(whole.port.joints)).toBeGreaterThan(400);
    // six links of one length would close into a ring at five sixths of a turn, 300°
    expect(Math.abs(degrees(whole.port.fold) - 300)).toBeLessThan(10);
    expect(whole.port.far?.links).toEqual([0, 5]);
    expect(whole.turnsRound).toBe(true);
    expect(whole.starboard.fold).toBeCloseTo(whole.port.fold, 2);
    // at the nose
    expect(Math.abs(whole.port.far?.at[0] ?? 9)).toBeLessThan(1);
  });
});
