import { describe, expect, test } from 'vitest';
import type { Hole } from '../../../sim/design/design.ts';
import type { DesignFile } from '../../../sim/design/file.ts';
import { fillHole, holeMouth, pointHeight, takenOut } from '../../../sim/mass/hole.ts';
import { plankHull } from '../../support/bodies.ts';
import { type DesignChanges, makeDesignFile } from '../../support/make-design.ts';
import { plannedOf, withHoles } from '../../support/planned-bait.ts';
import { answersOf } from '../../support/worked-bait.ts';
import book from './case.json' with { type: 'json' };

const { given, expect: wanted } = book;
const SLAB = plankHull(100, 100);
const DEGREE = Math.PI / 180;
const DRAG = { detail: 'drag' } as const;

describe('lead in a drill hole', () => {
  test.each([
    ['1/4', 1 / 4],
    ['5/16', 5 / 16],
    ['3/8', 3 / 8],
    ['7/16', 7 / 16],
    ['1/2', 1 / 2],
  ] as const)('of %s inch weighs what is printed for each millimetre of depth', (name, inches) => {
    const diameter = inches * given.inch_mm;
    const stock = { name: 'poured lead', kind: 'filled' as const, density: given.lead_g_cm3 / 1000 };
    const hole = { name: 'h', from: 'belly', x: 5e6, across: 0, diameter, depth: 30, point: 118 * DEGREE } as const;
    const mouth = holeMouth(SLAB, hole);
    const from = (mass: number) =>
      fillHole(mouth, { ...hole, lead: { stock, mass }, air: null, plugDensity: 0.00115, done: false }, 0).lead?.from ??
      Number.NaN;
    // past the point, so much more lead stands so much nearer to the mouth
    const perMm = 10 / (from(20) - from(30));
    expect(Math.abs(perMm - wanted.g_per_mm[name])).toBeLessThan(wanted.g_per_mm.tolerance);
  });

  test('20 mm deep fills what the drill and its point take out', () => {
    const { drill_mm: diameter, depth_mm: depth, poured_g_cm3 } = given;
    const mouth = holeMouth(SLAB, { from: 'belly', x: 5e6, across: 0, diameter });
    const volume = (point: number) => takenOut(mouth, depth, pointHeight({ diameter, point: point * DEGREE })).volume;
    const { flat, pointed, tolerance } = wanted.hole_mm3;
    expect(Math.abs(volume(180) - flat)).toBeLessThan(tolerance);
    expect(Math.abs(volume(118) - pointed)).toBeLessThan(tolerance);
    expect(Math.abs((volume(118) * poured_g_cm3) / 1000 - wanted.full_g.value)).toBeLessThan(wanted.full_g.tolerance);
  });
});

const DRILLS = [4, 5, 6, 8].map((diameter_mm) => ({ name: `${diameter_mm} mm`, diameter_mm }));

/** A bait in one piece, plugs as heavy as its wood, no sealer: all that its holes do is done by lead. */
function bait(density_g_cm3: number, changes: DesignChanges = {}): DesignFile {
  const plain = makeDesignFile({ pieces: 1, hangers: [], wood: { density_g_cm3 }, coats: [], ...changes });
  const [setup] = plain.setups;
  const lead = { of: 'shot in epoxy', mass_g: 0.4 };
  const hole = {
    name: 'as it was',
    from: 'belly' as const,
    x_mm: 60,
    diameter_mm: 5,
    depth_mm: 8,
    plug_g_cm3: density_g_cm3,
  };
  return {
    ...plain,
    shop: { drills: DRILLS, lead: [{ name: 'shot in epoxy', kind: 'filled', density_g_cm3: given.lead_g_cm3 }] },
    setups: [
      {
        ...setup,
        hung: [],
        holes: [{ ...hole, lead }],
        target: { reserve_g: 4 + 40 * Math.max(0, 0.6 - density_g_cm3) },
      },
    ],
  };
}

/** Broad and low: it stands on its own. */
const BROAD: DesignChanges = { body: { height_mm: 22, width_mm: 30 } };

describe('lead in wood', () => {
  test.each([
    [wanted.counts.wood_g_cm3[0], wanted.counts.from],
    [wanted.counts.wood_g_cm3[1], wanted.counts.to],
  ])('of %d g/cm³ counts by %d of its weight', (density, share) => {
    const [{ state, need, lead, left }] = plannedOf(bait(density, BROAD)).links;
    expect(state).toBe('planned');
    const counts = (need.net - (left?.net ?? Number.NaN)) / lead;
    expect(Math.abs(counts - share)).toBeLessThan(wanted.counts.tolerance);
    expect(counts).toBeCloseTo((given.lead_g_cm3 - density) / given.lead_g_cm3, 9);
  });
});

/** The planned bait and the same with one hole elsewhere. */
function moved(density: number, to: (hole: Hole) => Hole) {
  const file = bait(density, BROAD);
  const { plan, settled } = plannedOf(file);
  const index = plan.holes.findIndex(({ name }) => name === plan.links[0].last);
  const holes = plan.holes.map((hole, i) => (i === index ? to(hole) : hole));
  const { assembled } = answersOf(withHoles(file, holes), DRAG).bait;
  const lead = plan.holes[index].lead?.mass ?? Number.NaN;
  const net = lead * (1 - density / given.lead_g_cm3);
  return { before: settled.assembled, after: assembled, net };
}

describe('planned lead moved', () => {
  test.each([0.45, 0.6])('1 mm aft in wood of %d g/cm³ trims the tail down by w d/(W GM)', (density) => {
    const { before, after, net } = moved(density, (hole) => ({ ...hole, x: hole.x + 1 }));
    const tan = net / (before.mass * before.gmLong);
    expect(tan).toBeGreaterThan(0.001);
    expect(Math.abs((Math.tan(before.trim) - Math.tan(after.trim)) / tan - 1)).toBeLessThan(wanted.shift.tolerance);
  });

  test.each([0.6, 0.68])('3 mm to starboard in wood of %d g/cm³ lists by w d/(W GM)', (density) => {
    const { before, after, net } = moved(density, (hole) => ({ ...hole, across: 3 }));
    const tan = (3 * net) / (before.mass * before.gm);
    expect(tan).toBeGreaterThan(0.005);
    expect(Math.abs(Math.tan(after.heel) / tan - 1)).toBeLessThan(wanted.list.tolerance);
  });
});
