import { describe, expect, test } from 'vitest';
import { KNUCKLE_DESIGN, LINKED_DESIGN } from '../../support/make-design.ts';
import { answersOf } from '../../support/worked-bait.ts';
import { displacedBlock, mouthSlack } from './displaced.ts';
import { blockOf, measure, middleOf, release, slackOf, slotBlocks } from './solids.ts';

const LINKS = [
  ['a knuckle', KNUCKLE_DESIGN],
  ['linked eyes', LINKED_DESIGN],
].flatMap(([what, file]) => {
  const { bait, links } = answersOf(file as typeof KNUCKLE_DESIGN);
  return links.map(({ wetted }, i) => {
    const spec = bait.links[i];
    return [spec.name, what as string, { spec, wetted }] as const;
  });
});

describe.each(LINKS)('the %s of a bait on %s', (_name, _what, link) => {
  const { spec, wetted } = link;

  test('closes without holes, and so do its slots', () => {
    const origin = middleOf(wetted.mesh);
    const whole = blockOf(wetted.mesh, ['skin', 'fore-face', 'aft-face'], origin);
    const slots = slotBlocks(wetted.mesh, origin);
    expect(slots).toHaveLength(spec.slots.length);
    for (const block of [whole, ...slots]) {
      expect(block.solid.genus()).toBe(0);
      expect(block.solid.volume()).toBeGreaterThan(0);
    }
    release(whole, ...slots);
  });

  test('displaces what the library says when its slots are sawn out, but for the facets of their mouths', () => {
    const block = displacedBlock(link);
    const most = mouthSlack(link) + block.solid.surfaceArea() * slackOf(block);
    expect(Math.abs(measure(block).volume - wetted.volume)).toBeLessThan(most);
    release(block);
  });
});
