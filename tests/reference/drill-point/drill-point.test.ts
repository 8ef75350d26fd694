import { describe, expect, test } from 'vitest';
import type { Hole } from '../../../sim/design/design.ts';
import { placeHole } from '../../../sim/mass/hole.ts';
import { plankHull } from '../../support/bodies.ts';
import { given, expect as wanted } from './case.json';

const { diameter_mm: diameter, depth_mm: depth } = given;
/** Grams per cubic millimetre. */
const LEAD = given.lead_g_cm3 / 1000;
const SLAB = plankHull(100, 100);

function drilled(point_deg: number, mass?: number, from: Hole['from'] = 'belly') {
  const stock = { name: 'poured lead', kind: 'filled' as const, density: LEAD };
  const lead = mass === undefined ? null : { stock, mass };
  const point = (point_deg * Math.PI) / 180;
  const hole = {
    name: 'h',
    from,
    x: 5e6,
    across: 0,
    diameter,
    depth,
    point,
    lead,
    air: null,
    plugDensity: 0.00115,
    done: false,
  };
  return placeHole(SLAB, hole, 0);
}

describe('a hole 20 mm deep by a 1/4 inch drill', () => {
  test.each(['belly', 'back', 'port', 'starboard'] as const)('from the %s takes out a cylinder and a cone', (from) => {
    const flat = drilled(180, undefined, from);
    const pointed = drilled(118, undefined, from);
    expect(Math.abs(flat.volume - wanted.flat_bottom_mm3.value)).toBeLessThan(wanted.flat_bottom_mm3.tolerance);
    expect(Math.abs(pointed.volume - wanted.with_point_mm3.value)).toBeLessThan(wanted.with_point_mm3.tolerance);
  });

  test.each(['118', '135'] as const)('with a point of %s degrees ends in a cone of the textbook', (angle) => {
    const { point_height_over_D: height, point_volume_over_D3: volume } = wanted;
    const hole = drilled(Number(angle));
    const cone = hole.volume - drilled(180).volume;
    expect(Math.abs(hole.pointDepth / diameter - height[angle])).toBeLessThan(height.tolerance);
    expect(Math.abs(cone / diameter ** 3 - volume[angle])).toBeLessThan(volume.tolerance);
  });

  test('is full to the skin with 7.411 g of lead', () => {
    const { value, tolerance } = wanted.full_of_lead_g;
    const { volume } = drilled(118);
    expect(Math.abs(volume * LEAD - value)).toBeLessThan(tolerance);
    const full = drilled(118, volume * LEAD);
    expect(full.lead?.from).toBeCloseTo(0, 6);
    expect(full.plug.volume).toBeCloseTo(0, 6);
  });

  test('has its centre where cylinder and cone have theirs', () => {
    const hole = drilled(118);
    const [cylinder, cone] = [(Math.PI / 4) * diameter ** 2 * depth, hole.volume - drilled(180).volume];
    const height = hole.pointDepth;
    // from the belly at z = -50 upwards
    const centre = -50 + (cylinder * (depth / 2) + cone * (depth + height / 4)) / hole.volume;
    expect(hole.centre[2]).toBeCloseTo(centre, 6);
  });
});
