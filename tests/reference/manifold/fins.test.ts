import { describe, expect, test } from 'vitest';
import type { FinEntry } from '../../../sim/design/file.ts';
import { linkTree } from '../../../sim/hydro/link-tree.ts';
import { planeAxes } from '../../../sim/hydro/potential.ts';
import { submerge, WET } from '../../../sim/hydro/submerge.ts';
import type { PlacedFin } from '../../../sim/mass/placed.ts';
import type { Vec3 } from '../../../sim/numerics/vec3.ts';
import { makeDesignFile } from '../../support/make-design.ts';
import { answersOf } from '../../support/worked-bait.ts';
import { blockOf, measure, middleOf, release, slackOf, wetPart } from './solids.ts';

const PLATE = { thickness_mm: 1.6, density_g_cm3: 1.3 } as const;

/** One that crosses a joint and leans over the back, one whose edge dips into the belly, one behind the tail. */
const FINS: readonly FinEntry[] = [
  {
    name: 'back',
    on: 'back',
    ...PLATE,
    edge_mm: [
      [36, 10],
      [52, 31],
      [60, 26],
      [86, 32],
      [72, 10],
    ],
  },
  {
    name: 'belly',
    on: 'belly',
    ...PLATE,
    edge_mm: [
      [66, -24],
      [74, -26],
      [78, -10],
      [82, -24],
      [88, -22],
    ],
  },
  {
    name: 'tail',
    on: 'tail',
    ...PLATE,
    edge_mm: [
      [110, 10],
      [134, 22],
      [126, 0],
      [134, -20],
      [114, -9],
    ],
  },
];

const { hardware } = answersOf(makeDesignFile({ fins: FINS })).bait;
const [sin, cos] = [Math.sin(Math.PI / 5), Math.cos(Math.PI / 5)];
const WAYS_UP: readonly Vec3[] = [
  [0, 0, 1],
  [0, -sin, cos],
  [sin * cos, sin * sin, -cos],
];

function wetOf({ mesh }: PlacedFin, up: Vec3, offset: number) {
  const [u, v] = planeAxes(up);
  const out = new Float64Array(WET.size);
  submerge(linkTree(mesh), up, u, v, offset, [0, 0, 0], out);
  return out[WET.volume];
}

test('the three fins stand as four pieces', () => {
  expect(hardware.fins.map(({ name, link }) => `${name} ${link}`)).toEqual(['back 0', 'back 1', 'belly 1', 'tail 1']);
});

describe.each(hardware.fins.map((fin) => [fin.name, fin.link, fin] as const))(
  'the %s fin on link %i',
  (name, _, fin) => {
    const block = () => blockOf(fin.mesh, ['skin'], middleOf(fin.mesh));

    test('is closed, outward and without handles: one plate, or two where its edge dips into the body', () => {
      const whole = block();
      const parts = whole.solid.decompose();
      expect(parts).toHaveLength(name === 'belly' ? 2 : 1);
      for (const part of parts) {
        expect(part.genus()).toBe(0);
        expect(part.volume()).toBeGreaterThan(1);
        part.delete();
      }
      release(whole);
    });

    test('has the volume and middle that the library finds', () => {
      const whole = block();
      const most = whole.solid.surfaceArea() * slackOf(whole);
      const found = measure(whole);
      expect(Math.abs(found.volume - fin.outsideVolume)).toBeLessThan(most);
      for (const axis of [0, 1, 2]) {
        expect(Math.abs(found.centre[axis] - fin.outsideCentre[axis])).toBeLessThan((most * 50) / found.volume);
      }
      release(whole);
    });

    test('displaces under a plane what the library cuts off there', () => {
      const whole = block();
      const most = whole.solid.surfaceArea() * slackOf(whole);
      for (const up of WAYS_UP) {
        const offset = up.reduce((sum, part, axis) => sum + part * fin.outsideCentre[axis], 0.4);
        const wet = wetPart(whole, up, offset);
        expect(Math.abs(measure(wet).volume - wetOf(fin, up, offset))).toBeLessThan(most);
        expect(measure(wet).volume).toBeGreaterThan(0.1 * fin.outsideVolume);
        release(wet);
      }
      release(whole);
    });
  },
);
