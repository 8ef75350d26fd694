import { expect, test } from 'vitest';
import { draftAt } from '../../../sim/hydro/draft.ts';
import { floatBody } from '../../../sim/hydro/float.ts';
import { bodyOf, rightingArm } from '../../support/float-mesh.ts';
import { barMesh } from '../../support/meshes.ts';
import book from './case.json' with { type: 'json' };

const { given, expect: wanted } = book;
const barge = bodyOf(barMesh(given.length, given.width, given.height), given.draught / given.height, [
  0,
  0,
  given.KG - given.height / 2,
]);

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

test('a box barge has the metacentric height of the handbook', () => {
  const float = floatBody(barge);
  expect(float.draft).toBeCloseTo(given.draught, 9);
  expect(Math.abs(float.gm - wanted.GM.value)).toBeLessThan(wanted.GM.tolerance);
});

test('its righting moment at 5 degrees is the one printed', () => {
  const moment = rightingArm(barge, radians(5)) * given.weight_t;
  expect(Math.abs(moment - wanted.moment_at_5_deg.value)).toBeLessThan(wanted.moment_at_5_deg.tolerance);
});

test('a box with the KB and KM of example 1 rights itself at 25 degrees by the arm and the moment printed', () => {
  const { weight_t, KB, KM, KG, heel_deg, GZ, unrounded, moment } = wanted.example_1;
  const draught = 2 * KB;
  const breadth = Math.sqrt(12 * draught * (KM - KB));
  const height = 2 * draught;
  const body = bodyOf(barMesh(80, breadth, height), draught / height, [0, 0, KG - height / 2]);
  const arm = rightingArm(body, radians(heel_deg));
  expect(Math.abs(arm - GZ.value)).toBeLessThan(GZ.tolerance);
  expect(Math.abs(arm - unrounded.value)).toBeLessThan(unrounded.tolerance);
  expect(Math.abs(weight_t * arm - moment.value)).toBeLessThan(moment.tolerance);
});

test('its centre of buoyancy goes across by what Attwood has for the wedges that change sides', () => {
  const { heel_deg, wedge, between, displaced, GZ, tolerance } = wanted.attwood;
  const [sin, cos] = [Math.sin(radians(heel_deg)), Math.cos(radians(heel_deg))];
  const { potential } = draftAt(barge, [0, -sin, cos], [1, 0, 0], [0, cos, sin], null, 1e-13 * barge.mass);
  const { buoyancyCentre: to } = potential;
  const from = floatBody(barge).buoyancyCentre;
  const across = (to[1] - from[1]) * cos + (to[2] - from[2]) * sin;
  const { length, width, draught, height, KG } = given;
  expect(length * width * draught).toBe(displaced);
  expect(Math.abs(potential.displaced / displaced - 1)).toBeLessThan(1e-12);
  expect(Math.abs(across - (wedge * between) / displaced)).toBeLessThan(tolerance);
  const BG = KG - (from[2] + height / 2);
  expect(Math.abs(across - BG * sin - GZ)).toBeLessThan(tolerance);
});

test.each(wanted.wall_sided.heel_deg)('it rights itself by the wall-sided formula at %d degrees', (heel) => {
  const tan = Math.tan(radians(heel));
  const arm = (1 + 0.5 * 3 * tan * tan) * Math.sin(radians(heel));
  expect(Math.abs(rightingArm(barge, radians(heel)) - arm)).toBeLessThan(wanted.wall_sided.tolerance);
});

test('past the emergence of the bilge it follows the section, not the formula', () => {
  const { heel_deg, value, tolerance } = wanted.past_the_bilge;
  heel_deg.forEach((heel, i) => {
    expect(Math.abs(rightingArm(barge, radians(heel)) - value[i])).toBeLessThan(tolerance);
  });
});

/** KM of a box 10 wide at a draught: where its weight would have to sit for GM = 0, over the keel. */
function heightOfMetacentre(draught: number): number {
  const height = 12;
  const float = floatBody(bodyOf(barMesh(400, wanted.least_KM.width, height), draught / height, [0, 0, -height / 2]));
  return float.gm;
}

test('a box has its least KM where the handbook says', () => {
  const draught = wanted.least_KM.width / Math.sqrt(6);
  const least = heightOfMetacentre(draught);
  expect(Math.abs(least - wanted.least_KM.value)).toBeLessThan(wanted.least_KM.tolerance);
  expect(heightOfMetacentre(draught - 0.2)).toBeGreaterThan(least);
  expect(heightOfMetacentre(draught + 0.2)).toBeGreaterThan(least);
  const bm = heightOfMetacentre(3.5) - 3.5 / 2;
  expect(Math.abs(bm - wanted['BM_at_3.5'].value)).toBeLessThan(wanted['BM_at_3.5'].tolerance);
});
