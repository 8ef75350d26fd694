import { describe, expect, test } from 'vitest';
import { linkTree } from '../../../sim/hydro/link-tree.ts';
import { planeAxes } from '../../../sim/hydro/potential.ts';
import { submerge, WET } from '../../../sim/hydro/submerge.ts';
import type { Vec3 } from '../../../sim/numerics/vec3.ts';
import { type LinkOfBait, SETUPS, workOut } from './baits.ts';
import { cutsOf, displacedBlock, mouthSlack } from './displaced.ts';
import {
  type Block,
  blockOf,
  common,
  type Measured,
  measure,
  middleOf,
  release,
  slackOf,
  slotBlocks,
  wetPart,
} from './solids.ts';

/**
 * A surface of area A that stands off by `slack` encloses at most A · slack more, and where a volume may differ by so
 * much its moment may differ by as much times the reach of the solid. facets: what the mouths of slots in a round face may
 * differ by besides.
 */
function expectSame(got: Measured, wanted: Measured, { solid }: Block, slack: number, facets: number): void {
  const most = solid.surfaceArea() * slack + facets;
  const { min, max } = solid.boundingBox();
  const reach = Math.hypot(...max.map((high, axis) => high - min[axis]));
  expect(Math.abs(got.volume - wanted.volume)).toBeLessThan(most);
  for (let axis = 0; axis < 3; axis++) {
    expect(Math.abs(got.centre[axis] - wanted.centre[axis])).toBeLessThan((most * reach) / wanted.volume);
  }
}

/** Wet volume and centre of the meshes alone, by the kernel that every float goes through. */
function kernelWet({ wetted }: LinkOfBait, up: Vec3, offset: number): Measured {
  const [u, v] = planeAxes(up);
  const out = new Float64Array(WET.size);
  submerge(linkTree(wetted.mesh), up, u, v, offset, [0, 0, 0], out);
  const volume = out[WET.volume];
  const at = (axis: number) => out[WET.moment + axis] / volume;
  return { volume, centre: [at(0), at(1), at(2)] };
}

/** The reported waterline (through the middle of the link where it lies wholly under), and two that lie askew. */
function planesFor({ wetted, float }: LinkOfBait): readonly { readonly up: Vec3; readonly offset: number }[] {
  const through = (up: Vec3) => up[0] * wetted.centre[0] + up[1] * wetted.centre[1] + up[2] * wetted.centre[2];
  const [sin, cos] = [Math.sin(Math.PI / 5), Math.cos(Math.PI / 5)];
  const askew: readonly Vec3[] = [
    [0, -sin, cos],
    [sin * cos, sin * sin, -cos],
  ];
  return [
    { up: float.up, offset: float.offset ?? through(float.up) },
    ...askew.map((up) => ({ up, offset: through(up) + 2 })),
  ];
}

const links = SETUPS.flatMap(([name, setup]) =>
  workOut(name, setup, 'full').links.map((link) => [name, setup, link.spec.name, link] as const),
);

test('there is a link to check in every setup of every demo bait', () => {
  expect(SETUPS.length).toBeGreaterThanOrEqual(6);
  expect(links.length).toBeGreaterThan(2 * SETUPS.length);
});

describe.each(links)('%s, %s, %s', (_name, _setup, _link, link) => {
  test('its skin and faces close without holes, and so do its slots', () => {
    const origin = middleOf(link.wetted.mesh);
    const whole = blockOf(link.wetted.mesh, ['skin', 'fore-face', 'aft-face'], origin);
    const slots = slotBlocks(link.wetted.mesh, origin);
    for (const block of [whole, ...slots]) {
      expect(block.solid.genus()).toBe(0);
      expect(block.solid.volume()).toBeGreaterThan(0);
    }
    release(whole, ...slots);
  });

  test('a saw cut takes out just what the mesh of each slot holds', () => {
    const origin = middleOf(link.wetted.mesh);
    const whole = blockOf(link.wetted.mesh, ['skin', 'fore-face', 'aft-face'], origin);
    const slots = slotBlocks(link.wetted.mesh, origin);
    const cuts = cutsOf(link, origin);
    expect(slots).toHaveLength(link.wetted.slots.length);
    cuts.forEach((cut, i) => {
      const taken = common(whole, cut);
      const held = measure(slots[i]);
      // the cut lies in the frame of the whole link, so it is rounded as coarsely as that
      const slack = slackOf(whole);
      expectSame(measure(taken), held, slots[i], slack, mouthSlack(link));
      const most = slots[i].solid.surfaceArea() * slack + mouthSlack(link);
      expect(Math.abs(held.volume - link.wetted.slots[i].volume)).toBeLessThan(most);
      release(taken);
    });
    release(whole, ...slots, ...cuts);
  });

  test('it displaces what the library says when its slots are sawn out', () => {
    const block = displacedBlock(link);
    expect(block.solid.status()).toBe('NoError');
    expectSame(measure(block), link.wetted, block, slackOf(block), mouthSlack(link));
    release(block);
  });

  test('its wet part is what the library cuts off at a plane', () => {
    const block = displacedBlock(link);
    for (const { up, offset } of planesFor(link)) {
      const wet = wetPart(block, up, offset);
      const kernel = kernelWet(link, up, offset);
      expect(kernel.volume).toBeGreaterThan(0.1 * link.wetted.volume);
      expectSame(measure(wet), kernel, block, slackOf(block), mouthSlack(link));
      release(wet);
    }
    release(block);
  });
});
