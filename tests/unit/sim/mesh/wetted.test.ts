import { describe, expect, test } from 'vitest';
import type { Coat } from '../../../../sim/design/design.ts';
import type { JointEntry } from '../../../../sim/design/file.ts';
import { SimError } from '../../../../sim/flow/outcome.ts';
import { buildHull } from '../../../../sim/hull/hull.ts';
import { buildRing } from '../../../../sim/hull/section.ts';
import { cutLinks } from '../../../../sim/links/cut.ts';
import { loftLink } from '../../../../sim/mesh/loft.ts';
import { measureVolume } from '../../../../sim/mesh/measure.ts';
import type { Mesh } from '../../../../sim/mesh/mesh.ts';
import { linkTopology } from '../../../../sim/mesh/topology.ts';
import { measureSolid, meshLink, type Wetted, wetLink } from '../../../../sim/mesh/wetted.ts';
import { scale, type Vec3 } from '../../../../sim/numerics/vec3.ts';
import { ellipsoidBody } from '../../../support/bodies.ts';
import { makeDesignFile } from '../../../support/make-design.ts';
import { validateMesh } from '../../../support/meshes.ts';
import { partsOf } from '../../../support/worked-bait.ts';

function film(thickness: number, covers: 'all' | 'skin', name = 'paint'): Coat {
  return { kind: 'film', name, thickness, density: 0.00115, covers };
}

/** The plain bait of two links, its head's face bevelled by an angle. */
function bait(degrees = 0) {
  const file = makeDesignFile();
  const faces: JointEntry['faces'] = { kind: 'bevel', fore_deg: degrees, aft_deg: degrees };
  return partsOf({ ...file, joints: file.joints.map((joint) => ({ ...joint, faces })) });
}

function wet(coats: readonly Coat[], degrees = 0, index = 0): { readonly bare: Mesh; readonly wetted: Wetted } {
  const { hull, links } = bait(degrees);
  const bare = meshLink(hull, links[index], 'full');
  return { bare, wetted: wetLink(hull, links[index], 'full', bare, coats) };
}

/** What the patches of slots enclose by themselves, one after the other. */
function slotVolumes({ topology, positions }: Mesh): readonly number[] {
  const corner = (i: number): Vec3 => {
    const at = 3 * topology.index[i];
    return [positions[at], positions[at + 1], positions[at + 2]];
  };
  return topology.patches
    .filter(({ kind }) => kind === 'slot')
    .map(({ from, count }) => {
      let six = 0;
      for (let i = 3 * from; i < 3 * (from + count); i += 3) {
        const [a, b, c] = [corner(i), corner(i + 1), corner(i + 2)];
        six +=
          a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
      }
      return -six / 6;
    });
}

describe('a link without coats', () => {
  test('displaces what it is made of', () => {
    const { bare, wetted } = wet([]);
    const solid = measureSolid(bare);
    expect(wetted.mesh).toBe(bare);
    expect(wetted.volume).toBe(solid.volume);
    expect(wetted.centre).toEqual(solid.centre);
    expect(wetted.films).toEqual([]);
    expect([wetted.skinGrowth, wetted.faceGrowth]).toEqual([0, 0]);
  });

  test.each([0, 20, 45])('floods slots of their closed form behind a bevel of %d degrees', (degrees) => {
    const { wetted } = wet([], degrees);
    const back = Math.tan((degrees * Math.PI) / 180);
    // width · height · (depth - what the mouth falls back on average, a quarter of lean · width)
    const wanted = 7.5 * 2.5 * (7.5 - (back * 7.5) / 4);
    for (const slot of wetted.slots) {
      expect(slot.volume).toBeCloseTo(wanted, 9);
      expect([slot.opens, slot.width, slot.floor]).toEqual(['aft', 7.5, 51.5]);
    }
    expect(wetted.slots.map(({ z }) => z)).toEqual([
      [6.75, 9.25],
      [-9.25, -6.75],
    ]);
  });

  test('that only soaks its coats up grows by nothing', () => {
    const { bare, wetted } = wet([
      { kind: 'soak-share', name: 'oil', share: 0.04 },
      { kind: 'soak-area', name: 'oil', perArea: 3e-5 },
    ]);
    expect(wetted.mesh).toBe(bare);
    expect(wetted.films).toEqual([]);
  });
});

describe('a coated link', () => {
  const COATS = [
    film(0.06, 'all', 'primer'),
    { kind: 'soak-share', name: 'oil', share: 0.1 } as const,
    film(0.29, 'skin', 'epoxy'),
  ];

  test.each([
    ['head', 0, 0],
    ['tail', 1, 0],
    ['head', 0, 30],
    ['tail', 1, 30],
  ] as const)('is its wood and its films, to the last digits: %s %d, bevels of %d degrees', (_, index, degrees) => {
    const { bare, wetted } = wet(COATS, degrees, index);
    const solid = measureSolid(bare);
    expect(validateMesh(wetted.mesh)).toEqual([]);
    expect(wetted.films.map(({ name }) => name)).toEqual(['primer', 'epoxy']);
    const added = wetted.films.reduce((sum, { volume }) => sum + volume, 0);
    expect(Math.abs(solid.volume + added - wetted.volume)).toBeLessThan(1e-9 * wetted.volume);
    for (const axis of [0, 1, 2]) {
      const moment = [solid, ...wetted.films].reduce((sum, { volume, centre }) => sum + volume * centre[axis], 0);
      expect(Math.abs(moment / wetted.volume - wetted.centre[axis])).toBeLessThan(1e-9);
    }
    expect(measureVolume(wetted.mesh)).toEqual({ volume: wetted.volume, centre: wetted.centre });
  });

  test('has grown by its films, on the faces only by those that cover all', () => {
    const { wetted } = wet(COATS);
    expect(wetted.skinGrowth).toBeCloseTo(0.35, 12);
    expect(wetted.faceGrowth).toBeCloseTo(0.06, 12);
  });

  test.each([0, 20, 45])('has slots narrowed by the coat, as its mesh has them, behind %d degrees', (degrees) => {
    const { wetted } = wet([film(0.1, 'all'), film(0.2, 'skin')], degrees);
    const inMesh = slotVolumes(wetted.mesh);
    const back = Math.tan((degrees * Math.PI) / 180);
    const out = 0.1 / Math.cos((degrees * Math.PI) / 180);
    const wanted = 7.3 * 2.3 * (7.5 - 0.1 + out - (back * 7.3) / 4);
    wetted.slots.forEach((slot, i) => {
      expect(slot.volume).toBeCloseTo(wanted, 9);
      expect(inMesh[i]).toBeCloseTo(wanted, 9);
      expect(slot.width).toBeCloseTo(7.3, 12);
      expect(slot.floor).toBeCloseTo(51.6, 12);
    });
    expect(inMesh).toHaveLength(2);
  });

  test('leaves masked slots and faces as they were sawn', () => {
    const { bare, wetted } = wet([film(0.3, 'skin')]);
    expect(slotVolumes(wetted.mesh)).toEqual(slotVolumes(bare));
    expect(wetted.slots.map(({ floor }) => floor)).toEqual([51.5, 51.5]);
  });

  test('of a coat of no thickness has gained nothing', () => {
    const { wetted } = wet([film(0, 'all')]);
    expect(wetted.films).toMatchObject([{ volume: 0 }]);
    expect(wetted.films[0].centre.every(Number.isFinite)).toBe(true);
  });
});

/** Semi-axes 60, 40 and 20 mm. */
const ELLIPSOID = buildHull(ellipsoidBody(60, 40, 20));

function grownVolume(thickness: number, fineness: number): number {
  const [spec] = cutLinks(120, [{ name: 'whole', density: null }], []);
  const counts = { bands: 60 * fineness, steps: 32 * fineness, foreTip: true, aftTip: true, slots: 0 };
  const positions = loftLink(ELLIPSOID, buildRing(ELLIPSOID.section, counts.steps), spec, counts, {
    skin: thickness,
    face: 0,
  });
  return measureVolume({ topology: linkTopology(counts), positions }).volume;
}

describe('a coat on an ellipsoid', () => {
  // Carlson's R_G for semi-axes 3, 2, 1, computed apart from the product; twenty times as large
  const AREA = 48.882146303 * 20 ** 2;

  test('adds its area times its thickness, and more only by the square of that', () => {
    // a mesh so fine that its own error is far under the second order of the thinnest coat
    const bare = grownVolume(0, 6);
    const beyond = [1.6, 0.8, 0.4].map((thickness) => grownVolume(thickness, 6) - bare - AREA * thickness);
    for (const i of [1, 2]) {
      const order = Math.log2(beyond[i - 1] / beyond[i]);
      expect(order).toBeGreaterThan(1.9);
      expect(order).toBeLessThan(2.1);
    }
  });

  test('is as thick everywhere', () => {
    const [spec] = cutLinks(120, [{ name: 'whole', density: null }], []);
    const counts = { bands: 60, steps: 32, foreTip: true, aftTip: true, slots: 0 };
    const [bare, grown] = [0, 0.5].map((skin) =>
      loftLink(ELLIPSOID, buildRing(ELLIPSOID.section, counts.steps), spec, counts, { skin, face: 0 }),
    );
    let [least, most] = [Number.POSITIVE_INFINITY, 0];
    for (let i = 0; i < bare.length; i += 3) {
      const moved = Math.hypot(grown[i] - bare[i], grown[i + 1] - bare[i + 1], grown[i + 2] - bare[i + 2]);
      least = Math.min(least, moved);
      most = Math.max(most, moved);
    }
    // each skin straddles its own smooth one, which takes a thousandth of a millimetre either way
    expect(least).toBeGreaterThan(0.499);
    expect(most).toBeLessThan(0.501);
  });

  test('moves each point along the normal of the skin', () => {
    const [spec] = cutLinks(120, [{ name: 'whole', density: null }], []);
    const counts = { bands: 60, steps: 32, foreTip: true, aftTip: true, slots: 0 };
    const [bare, grown] = [0, 0.5].map((skin) =>
      loftLink(ELLIPSOID, buildRing(ELLIPSOID.section, counts.steps), spec, counts, { skin, face: 0 }),
    );
    for (let i = 0; i < bare.length; i += 3) {
      // the gradient of the ellipsoid's equation; each skin straddles its own smooth one, which turns this by a degree
      const normal: Vec3 = [(bare[i] - 60) / 60 ** 2, bare[i + 1] / 40 ** 2, bare[i + 2] / 20 ** 2];
      const unitNormal = scale(normal, 1 / Math.hypot(...normal));
      const along = unitNormal.reduce((sum, part, axis) => sum + part * (grown[i + axis] - bare[i + axis]), 0);
      expect(along / 0.5).toBeGreaterThan(1 - 3e-4);
    }
  });
});

describe('detail', () => {
  test('while dragging is a quarter of the full mesh', () => {
    const { hull, links } = bait();
    const [full, drag] = (['full', 'drag'] as const).map((detail) => meshLink(hull, links[0], detail));
    const skins = [full, drag].map(({ topology }) => topology.patches[0].count);
    expect(skins[0] / skins[1]).toBeCloseTo(4, 1);
    expect(skins[0]).toBeGreaterThan(7000);
    expect(Math.abs(measureVolume(drag).volume / measureVolume(full).volume - 1)).toBeLessThan(2e-3);
  });
});

test('a link whose aft face lies before its nose is refused instead of floated', () => {
  const { hull, links } = bait();
  const inverted = { ...links[0], aftFace: { at: -5, lean: 0, looks: 'aft' as const } };
  expect(() => meshLink(hull, inverted, 'drag')).toThrow(SimError);
});
