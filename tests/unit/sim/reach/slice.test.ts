import { describe, expect, test } from 'vitest';
import { halfWidthAt, stationOf } from '../../../../sim/hull/hull.ts';
import { growthOf, reachLink } from '../../../../sim/reach/link.ts';
import { type Outline, sliceLink } from '../../../../sim/reach/slice.ts';
import { KNUCKLE_DESIGN, LINKED_DESIGN, makeDesignFile, PLAIN_DESIGN } from '../../../support/make-design.ts';
import { partsOf } from '../../../support/worked-bait.ts';

function linksOf(file = PLAIN_DESIGN, coated = false) {
  const { hull, links, hardware, setup } = partsOf(file);
  return { hull, links: links.map((spec) => reachLink(hull, spec, hardware, growthOf(coated ? setup.coats : []))) };
}

/** Positive where the corners run anticlockwise seen from above (x aft, y starboard). */
function areaOf({ x, y }: Outline): number {
  return x.reduce((sum, _, i) => {
    const next = (i + 1) % x.length;
    return sum + (x[i] * y[next] - x[next] * y[i]) / 2;
  }, 0);
}

const corners = ({ x, y, surface }: Outline) => x.map((one, i) => [one, y[i], surface[i]] as const);

describe('a link cut at a height', () => {
  test('is bounded by its skin: to 0.02 mm the half width of the body at that height', () => {
    const { hull, links } = linksOf();
    for (const link of links) {
      const [wood] = sliceLink(link, 3).wood;
      const skin = corners(wood).filter(([x, , surface]) => surface === 'skin' && x > 2 && x < 118);
      expect(skin.length).toBeGreaterThan(10);
      for (const [x, y] of skin) {
        expect(Math.abs(Math.abs(y) - (halfWidthAt(hull, stationOf(hull, x), 3) ?? 0))).toBeLessThan(0.02);
      }
    }
  });

  test('runs anticlockwise and is a mirror image of itself', () => {
    for (const file of [PLAIN_DESIGN, KNUCKLE_DESIGN, LINKED_DESIGN]) {
      for (const link of linksOf(file, true).links) {
        for (const z of [-16, -8, 0, 8, 16]) {
          for (const wood of sliceLink(link, z).wood) {
            expect(areaOf(wood)).toBeGreaterThan(0);
            expect(wood.y.reduce((sum, y) => sum + y, 0)).toBeCloseTo(0, 9);
          }
        }
      }
    }
  });

  test('has its slot at the levels of the slot and nowhere else', () => {
    const [head] = linksOf().links;
    const sawn = (z: number) => corners(sliceLink(head, z).wood[0]).filter(([, , surface]) => surface === 'slot');
    // face at 59, 7.5 deep and wide
    expect(sawn(8).map(([x, y]) => [x, y])).toEqual([
      [59, -3.75],
      [51.5, -3.75],
      [51.5, 3.75],
    ]);
    expect(sawn(6.7)).toEqual([]);
    expect(sawn(9.3)).toEqual([]);
  });

  test('loses what its slot takes and gains what its coats add', () => {
    const areaAt = (z: number, coats: boolean) => areaOf(sliceLink(linksOf(PLAIN_DESIGN, coats).links[0], z).wood[0]);
    // the slot begins at 6.75, 7.5 deep and wide
    expect(areaAt(6.749, false) - areaAt(6.751, false)).toBeCloseTo(7.5 * 7.5, 0);
    // skin only: 0.2 mm along about 60 mm of flank on either side, the rounding at the nose too
    const added = areaAt(8, true) - areaAt(8, false);
    expect(added).toBeGreaterThan(22);
    expect(added).toBeLessThan(28);
  });

  test('has a ridge on the centre line where its face is bevelled, square to the bait where it is flat', () => {
    const [joint] = PLAIN_DESIGN.joints;
    const bevelled = makeDesignFile({ joints: [{ ...joint, faces: { kind: 'bevel', fore_deg: 30, aft_deg: 20 } }] });
    const [head] = linksOf(bevelled).links;
    const face = corners(sliceLink(head, 0).wood[0]).filter(([, , surface]) => surface === 'face');
    expect(face[1].slice(0, 2)).toEqual([59, 0]);
    const [x, y] = face[0];
    expect(x).toBeCloseTo(59 - Math.abs(y) * Math.tan(Math.PI / 6), 9);
    expect(Math.abs(y)).toBeGreaterThan(9);
  });

  test('follows a knuckle and its hollow to a hundredth of a millimetre', () => {
    const [head, tail] = linksOf(KNUCKLE_DESIGN).links;
    for (const [link, radius] of [
      [head, 14],
      [tail, 12],
    ] as const) {
      const round = corners(sliceLink(link, 2).wood[0]).filter(([, , surface]) => surface === 'knuckle');
      expect(round.length).toBeGreaterThan(30);
      for (const [x, y] of round) expect(Math.hypot(x - 73, y)).toBeCloseTo(radius, 2);
    }
  });

  test('has the wire of its eyes at their heights, as thick as it is there', () => {
    const [, tail] = linksOf().links;
    expect(sliceLink(tail, 0).steel).toEqual([]);
    const [neck] = sliceLink(tail, 8).steel;
    // from the pin at 56 to the face at 61, wire 1.5
    expect([Math.min(...neck.x), Math.max(...neck.x), Math.max(...neck.y)]).toEqual([56, 61, 0.75]);
    // 0.45 above the middle of a wire of radius 0.75: √(0.75² - 0.45²) = 0.6
    expect(Math.max(...sliceLink(tail, 8.45).steel[0].y)).toBeCloseTo(0.6, 9);
  });

  test('of linked eyes has the loops too: one upright, one lying flat', () => {
    const [head, tail] = linksOf(LINKED_DESIGN).links;
    const [, upright] = sliceLink(head, 8).steel;
    const [, flat] = sliceLink(tail, 8).steel;
    // bore 3, wire 1.5: outside 3 from the middle, 1.5 to either side of the joint at 60
    expect([Math.min(...upright.x), Math.max(...upright.x), Math.max(...upright.y)]).toEqual([55.5, 61.5, 0.75]);
    expect(Math.max(...flat.y)).toBeCloseTo(3, 9);
    expect(Math.max(...flat.x)).toBeCloseTo(64.5, 9);
  });

  test('has hangers: the loop along the body under the belly, its wire up to the skin', () => {
    const [head] = linksOf().links;
    const belly = sliceLink(head, -18).steel;
    expect(belly.every(({ surface }) => surface[0] === 'hanger')).toBe(true);
    expect(belly.length).toBeGreaterThan(0);
  });

  test('has a fin as thick as its plate, over the stretch that it has at that height', () => {
    const file = makeDesignFile({
      fins: [
        {
          name: 'back fin',
          on: 'back',
          edge_mm: [
            [30, 14],
            [40, 26],
            [48, 26],
            [54, 15],
          ],
          thickness_mm: 0.8,
          tab_mm: 0,
          density_g_cm3: 1.2,
        },
      ],
    });
    const [head] = linksOf(file).links;
    const [fin] = sliceLink(head, 22).wood;
    expect(fin.surface[0]).toBe('fin');
    // edge from (30, 14) to (40, 26): x = 30 + 8·10/12; and from (48, 26) to (54, 15): x = 48 + 4·6/11
    expect(Math.min(...fin.x)).toBeCloseTo(30 + 80 / 12, 6);
    expect(Math.max(...fin.x)).toBeCloseTo(48 + 24 / 11, 6);
    expect(Math.max(...fin.y)).toBe(0.4);
  });

  test('is nothing over its back and under its belly', () => {
    const [head] = linksOf().links;
    expect(sliceLink(head, 19).wood).toEqual([]);
    expect(sliceLink(head, -18.5).wood).toEqual([]);
  });
});
