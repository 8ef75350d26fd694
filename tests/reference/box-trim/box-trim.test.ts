import { expect, test } from 'vitest';
import { floatBody } from '../../../sim/hydro/float.ts';
import { bodyOf } from '../../support/float-mesh.ts';
import { barMesh } from '../../support/meshes.ts';
import book from './case.json' with { type: 'json' };

const { length, width, depth, draught, KG, lcg } = book.given;
const { trim_deg, small_angle_deg } = book.expect;
const rows = lcg.map((forward, i) => ({ forward, trim: trim_deg.value[i], small: small_angle_deg.value[i] }));

test.each(rows)(
  'a weight $forward forward of the middle puts the nose $trim degrees down',
  ({ forward, trim, small }) => {
    const box = bodyOf(barMesh(length, width, depth), draught / depth, [-forward, 0, KG - depth / 2]);
    const found = (floatBody(box).trim * 180) / Math.PI;
    expect(Math.abs(found - trim)).toBeLessThan(trim_deg.tolerance);
    expect(Math.abs(found - small)).toBeGreaterThan(10 * trim_deg.tolerance);
  },
);

test.each(rows)('a weight $forward aft of the middle puts the nose $trim degrees up', ({ forward, trim }) => {
  const box = bodyOf(barMesh(length, width, depth), draught / depth, [forward, 0, KG - depth / 2]);
  expect(Math.abs((floatBody(box).trim * 180) / Math.PI + trim)).toBeLessThan(trim_deg.tolerance);
});
