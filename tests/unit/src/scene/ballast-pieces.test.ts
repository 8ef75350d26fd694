import { describe, expect, test } from 'vitest';
import type { Hole } from '../../../../sim/design/design.ts';
import { holeMouth, placeHole } from '../../../../sim/mass/hole.ts';
import { type BallastPiece, ballastPieces, rimDrops } from '../../../../src/scene/ballast-pieces.ts';
import { makePlug, plugRim } from '../../../../src/scene/upright.ts';
import { makeDesignFile } from '../../../support/make-design.ts';
import { answersOf, partsOf } from '../../../support/worked-bait.ts';

const file = makeDesignFile({ pieces: 1, joints: [] });
const { design, hull, setup } = partsOf(file);
const [plain] = setup.holes;
const filled = design.shop.lead.find(({ kind }) => kind === 'filled');
const slug = design.shop.lead.find(({ kind }) => kind === 'slug');
if (!filled || !slug) throw new Error('the plain shop has both');
const POINT = (118 * Math.PI) / 180;

const placed = (change: Partial<Hole>) => placeHole(hull, { ...plain, ...change }, 0);
const drawn = (change: Partial<Hole>) => ballastPieces(placed(change));
const volumeOf = ({ shape, long, diameter }: BallastPiece) =>
  (Math.PI * diameter ** 2 * long) / (shape === 'point' ? 12 : 4);
const leadOf = (pieces: readonly BallastPiece[]) => pieces.filter(({ of }) => of === 'lead');
const sum = (numbers: readonly number[]) => numbers.reduce((all, next) => all + next, 0);

describe('what is drawn of a hole', () => {
  test.each([
    ['a slug on a flat floor', { point: Math.PI, lead: { stock: slug, mass: 2 } }, ['plug plug', 'lead rod']],
    ['a slug over a point', { point: POINT, lead: { stock: slug, mass: 2 } }, ['plug plug', 'lead rod', 'plug point']],
    [
      'lead that fills the point',
      { point: POINT, lead: { stock: filled, mass: 2 } },
      ['plug plug', 'lead rod', 'lead point'],
    ],
    ['lead in the tip alone', { point: POINT, lead: { stock: filled, mass: 0.1 } }, ['plug plug', 'lead point']],
    ['a chamber', { point: POINT, lead: null, air: { plug: 3 } }, ['plug plug', 'air rod', 'air point']],
    ['plug alone', { point: POINT, lead: null }, ['plug plug', 'plug point']],
  ] as const)('%s', (_, change, kinds) => {
    expect(drawn(change).map(({ of, shape }) => `${of} ${shape}`)).toEqual(kinds);
  });

  test.each([0.05, 0.1, 0.5, 2, 3])('is as much lead as %d g are', (mass) => {
    for (const stock of [filled, slug]) {
      const pieces = leadOf(drawn({ point: POINT, lead: { stock, mass } }));
      expect(sum(pieces.map(volumeOf)) * stock.density).toBeCloseTo(mass, 9);
    }
  });

  test('is from the mouth to the drill’s tip without a gap, but for what is left out over lead in the tip', () => {
    for (const change of [{ point: POINT }, { point: POINT, lead: null }, { lead: null, air: { plug: 2 } }]) {
      const hole = placed(change);
      const pieces = ballastPieces(hole);
      let reached = 0;
      for (const { from, long } of pieces) {
        expect(from).toBeCloseTo(reached, 9);
        reached = from + long;
      }
      expect(reached).toBeCloseTo(hole.depth + hole.pointDepth, 9);
    }
  });

  test('is picked out as lead, or as what there is instead', () => {
    const picked = (change: Partial<Hole>) => drawn(change).flatMap(({ of, isCore }) => (isCore ? [of] : []));
    expect(new Set(picked({ point: POINT }))).toEqual(new Set(['lead']));
    expect(new Set(picked({ lead: null, air: { plug: 2 } }))).toEqual(new Set(['air']));
    expect(new Set(picked({ lead: null }))).toEqual(new Set(['plug']));
  });
});

describe('a plug', () => {
  const { links } = answersOf(file);
  const [link] = links;
  if (!link) throw new Error('the bait has a link');
  const { mesh, skinGrowth } = link.wetted;

  test.each([
    ['belly', 0],
    ['back', 3],
    ['port', 4],
    ['starboard', -4],
  ] as const)('from the %s ends at the bare skin all round', (from, across) => {
    const hole = placed({ from, across, x: 30, depth: 6 });
    const rim = plugRim(hole.inward);
    const drops = rimDrops(mesh, skinGrowth, hole, rim);
    const mouth = holeMouth(hull, hole.hole);
    // the mouth's own measure of the skin under the drill is taken inside the rim: the rim is no nearer than its deepest
    expect(Math.max(...drops)).toBeGreaterThan((mouth?.deepest ?? 0) - 0.05);
    for (const [i, direction] of rim.entries()) {
      const at = [0, 1, 2].map(
        (axis) => hole.mouth[axis] + (hole.diameter / 2) * direction[axis] + (drops[i] ?? 0) * hole.inward[axis],
      );
      // the plain body: an ellipsoid of semi-axes 60, 10 and 18
      const round = ((at[0] - 60) / 60) ** 2 + (at[1] / 10) ** 2 + (at[2] / 18) ** 2;
      expect(Math.abs(round - 1)).toBeLessThan(0.02);
    }
  });

  test('has its near end moved to its rim and nothing else', () => {
    const plug = makePlug(Array.from({ length: 32 }, (_, i) => (i < 16 ? 0.2 : -0.1)));
    const position = plug.getAttribute('position');
    const ends = Array.from({ length: position.count }, (_, i) => position.getZ(i));
    expect(Math.max(...ends)).toBe(1);
    expect(Math.min(...ends)).toBeCloseTo(-0.1, 6);
    expect(ends.filter((z) => z === 1)).toHaveLength(3 * 33);
    plug.dispose();
  });
});
