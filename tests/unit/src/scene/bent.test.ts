import { Vector3 } from 'three';
import { expect, test } from 'vitest';
import { placesOf, roomBent } from '../../../../src/scene/bent.ts';
import { roomOf } from '../../../../src/scene/room.ts';
import { shownBait } from '../../../../src/scene/shown.ts';
import { makeDesignFile } from '../../../support/make-design.ts';
import type { AllAnswers } from '../../../support/worked-bait.ts';
import { answersOf } from '../../../support/worked-bait.ts';

const { bait, links }: AllAnswers = answersOf(makeDesignFile());
const shown = shownBait({ bait: {}, links: [], lastGood: { bait, links } }, 'whole');
if (!shown) throw new Error('the plain bait is shown');
const PIN = bait.hardware.pins[0];

/** Where a point of a link's body frame is in the world. */
const at = (places: ReturnType<typeof placesOf>, link: number, x: number, y = 0, z = 0) => {
  const place = places?.[link];
  if (!place) throw new Error('the link has its place');
  return new Vector3(x, y, z).applyMatrix4(place);
};

test('a straight bait is drawn in one piece', () => {
  expect(placesOf(null, bait, shown)).toBeNull();
  expect(placesOf(1, {}, shown)).toBeNull();
});

test('folded either way both links still meet at the pin, and lie evenly about the line they lay on', () => {
  for (const bend of [-1, -0.37, 0.5, 1]) {
    const places = placesOf(bend, bait, shown);
    const [fore, aft] = [0, 1].map((link) => at(places, link, PIN.x));
    // the play of loop and pin apart
    expect(fore.distanceTo(aft)).toBeLessThan(2);
    const [nose, tail] = [at(places, 0, 0), at(places, 1, bait.design.body.length)];
    const side = Math.sign(bend);
    // the middle goes away from the side that both ends turn to
    expect(side * nose.y).toBeGreaterThan(side * fore.y);
    expect(side * tail.y).toBeGreaterThan(side * fore.y);
  }
});

test('folded by nothing it lies where it lies straight, but for what its play lets it', () => {
  const places = placesOf(0, bait, shown);
  const straight = at(places, 0, 0);
  expect(Math.abs(straight.y)).toBeLessThan(0.5);
  expect(straight.z).toBeCloseTo(-shown.pose.offset, 0);
});

test('let go it is drawn as it curls, or straight where it does not', () => {
  expect(placesOf('loose', bait, shown)).toHaveLength(2);
});

test('a bent bait is given room to either side as well, and needs less along', () => {
  const straight = roomOf(shown);
  const places = placesOf(1, bait, shown);
  if (!places) throw new Error('the bait folds');
  const bent = roomBent(straight, places, shown);
  expect(bent.length).toBeLessThan(straight.length);
  expect(bent.above).toBeGreaterThanOrEqual(straight.above);
});
