import { describe, expect, test } from 'vitest';
import { cutLinks } from '../../../../sim/links/cut.ts';
import { measureArea, measureVolume } from '../../../../sim/mesh/measure.ts';
import { meshLink } from '../../../../sim/mesh/wetted.ts';
import type { Vec3 } from '../../../../sim/numerics/vec3.ts';
import { boxMesh } from '../../../support/box-mesh.ts';
import { makeDesignFile } from '../../../support/make-design.ts';
import { joinMeshes, mapMesh } from '../../../support/meshes.ts';
import { partsOf } from '../../../support/worked-bait.ts';

function expectPoint(found: Vec3, wanted: Vec3, near = 1e-12): void {
  for (const axis of [0, 1, 2]) expect(Math.abs(found[axis] - wanted[axis])).toBeLessThan(near);
}

const BOX = boxMesh({ from: [10, -5, -8], to: [50, 5, 8] });

describe('a box', () => {
  test('has the volume and area of its edges, both about its middle', () => {
    const { volume, centre } = measureVolume(BOX);
    expect(volume).toBeCloseTo(40 * 10 * 16, 9);
    expectPoint(centre, [30, 0, 0]);
    const { area, centre: areaCentre } = measureArea(BOX);
    expect(area).toBeCloseTo(2 * (40 * 10 + 40 * 16 + 10 * 16), 9);
    expectPoint(areaCentre, [30, 0, 0]);
  });

  test('drinks so many times its area where the grain ends, and plainly on its flanks', () => {
    // flanks 10 and 16 wide, ends of 160 mm² that count four times
    expect(measureArea(BOX, 4).area).toBeCloseTo(2 * (40 * 10 + 40 * 16) + 4 * 2 * 160, 9);
    // a wedge without its fore end: what is soaked in moves towards the end that is left
    const wedge = mapMesh(BOX, ([x, y, z]) => [x, (y * (x - 10)) / 40, z]);
    expect(measureArea(wedge, 4).centre[0]).toBeGreaterThan(measureArea(wedge).centre[0] + 1);
  });

  test('far from the nose keeps its digits', () => {
    const { volume, centre } = measureVolume(mapMesh(BOX, ([x, y, z]) => [x + 1e6, y - 1e6, z]));
    expect(Math.abs(volume / 6400 - 1)).toBeLessThan(1e-9);
    expectPoint(centre, [1_000_030, -1e6, 0], 1e-7);
  });

  test('with a slot has that much less, its centre moved away from it', () => {
    const slot = { from: [40, -3, -2], to: [50, 3, 2] } as const;
    const { volume, centre } = measureVolume(boxMesh({ from: [10, -5, -8], to: [50, 5, 8] }, [slot]));
    expect(volume).toBeCloseTo(6400 - 240, 9);
    expectPoint(centre, [(6400 * 30 - 240 * 45) / 6160, 0, 0]);
  });
});

test('two bodies apart measure as their sum', () => {
  const other = mapMesh(BOX, ([x, y, z]) => [x + 100, 2 * y, z]);
  const { volume, centre } = measureVolume(joinMeshes(BOX, other, false));
  expect(volume).toBeCloseTo(3 * 6400, 8);
  expectPoint(centre, [(30 + 2 * 130) / 3, 0, 0]);
});

test('nothing has no volume, and its centre is no wild number', () => {
  expect(measureVolume({ ...BOX, positions: new Float64Array(24) })).toEqual({ volume: 0, centre: [0, 0, 0] });
});

test.each([0, 25])('a slot in a face of %d degrees adds its walls and takes its mouth off the face', (lean) => {
  const file = makeDesignFile();
  const [joint] = file.joints;
  const faces = { kind: 'bevel' as const, fore_deg: lean, aft_deg: 0 };
  const { design, hull, links } = partsOf({ ...file, joints: [{ ...joint, faces }] });
  const [head] = links;
  const [plain] = cutLinks(design.body.length, design.links, [{ ...design.joints[0], slots: [] }]);
  const added = measureArea(meshLink(hull, head, 'drag')).area - measureArea(meshLink(hull, plain, 'drag')).area;
  // each of the two slots, 7.5 wide and deep, 2.5 high: end, two cheeks, floor and roof, less the mouth
  const back = Math.tan((lean * Math.PI) / 180);
  const [width, depth, height] = [7.5, 7.5, 2.5];
  const cheek = (depth - (back * width) / 2) * height;
  const roof = width * (depth - (back * width) / 4);
  const mouth = width * height * Math.hypot(1, back);
  expect(added).toBeCloseTo(2 * (width * height + 2 * cheek + 2 * roof - mouth), 9);
});
