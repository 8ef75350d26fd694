import { expect, test } from 'vitest';
import type { DesignFile, HoleEntry } from '../../../../../sim/design/file.ts';
import type { Vec3 } from '../../../../../sim/numerics/vec3.ts';
import { warn } from '../../../../../sim/out/warn.ts';
import { makeDesignFile, PLAIN_DESIGN } from '../../../../support/make-design.ts';
import { warnPartsOf } from '../../../../support/quiet-warn-parts.ts';

const [POND] = PLAIN_DESIGN.setups;

function wallsOf(file: DesignFile) {
  const parts = warnPartsOf(file);
  return warn({ ...parts, hardware: { ...parts.hardware, eyes: [] } }).filter(({ code }) => code === 'wall-thin');
}

function drilled(holes: readonly HoleEntry[]): DesignFile {
  return makeDesignFile({ setups: [{ ...POND, hung: [], holes }] });
}

test('walls that are thinner than the shop wants are told hole by hole, the thinnest first', () => {
  // 4 g of 7.8 mm rod are 7.4 mm tall in 10: its end comes to 0.4 mm from the skin, through the plug's edge
  const said = wallsOf(drilled(POND.holes.toReversed()));
  expect(said.map(({ where }) => where)).toEqual(['head hole', 'middle hole']);
  expect(said[0].text).toBe('Hole "head hole" leaves 0.4 mm of wood; 3.0 mm is wanted.');
  expect(said[0]).toMatchObject({ limit: 3, unit: 'mm', fix: null });
  expect(said[0].number).toBeCloseTo(0.4, 1);
});

test('the place of a thin wall is on the skin beside the hole', () => {
  const [{ at }] = wallsOf(PLAIN_DESIGN);
  const [x, y, z] = at as Vec3;
  expect(((x - 60) / 60) ** 2 + (y / 10) ** 2 + (z / 18) ** 2).toBeCloseTo(1, 6);
  expect(Math.hypot(x - 24, y)).toBeLessThan(8);
});

test('of holes that leave enough nothing is said', () => {
  const holes = POND.holes.map(({ lead: _, ...hole }) => ({ ...hole, diameter_mm: 3 }));
  expect(wallsOf(drilled(holes))).toEqual([]);
});

test('what is enough is for the maker to say', () => {
  const wanting = (wall_mm: number) => wallsOf({ ...PLAIN_DESIGN, shop: { ...PLAIN_DESIGN.shop, wall_mm } });
  expect(wanting(0.5).map(({ where, limit }) => [where, limit])).toEqual([['head hole', 0.5]]);
  expect(wanting(4)[0].text).toContain('4.0 mm is wanted');
});

test('a wall that reads as enough is enough', () => {
  const [{ number }] = wallsOf(PLAIN_DESIGN);
  const wanting = (more: number) => {
    const wall_mm = Number(number) + more;
    const thin = drilled([{ ...POND.holes[0], lead: { of: '8 mm rod', mass_g: 3 } }]);
    return wallsOf({ ...thin, shop: { ...thin.shop, wall_mm } }).length;
  };
  const [thinner] = wallsOf(drilled([{ ...POND.holes[0], lead: { of: '8 mm rod', mass_g: 3 } }]));
  const gap = Number(thinner.number) - Number(number);
  expect([wanting(gap + 0.04), wanting(gap + 0.06)]).toEqual([0, 1]);
});
