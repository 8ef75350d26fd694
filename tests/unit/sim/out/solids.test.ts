import { expect, test } from 'vitest';
import { linkSolids } from '../../../../sim/out/solids.ts';
import { makeCheckedBait } from '../../../support/make-checked-bait.ts';
import { openEdgesOf, readStl, volumeOf } from '../../../support/read-stl.ts';

const BAIT = makeCheckedBait();

test('each link gives a solid, and one for the water in its slots only where it has slots', () => {
  expect(linkSolids(BAIT).map(({ name }) => name)).toEqual(['1-head.stl', '1-head.flooded.stl', '2-tail.stl']);
});

test('the solid less its flooded part is what displaces water', () => {
  const [head, flooded, tail] = linkSolids(BAIT).map(({ bytes }) => readStl(bytes));
  if (head === undefined || flooded === undefined || tail === undefined) throw new Error('three files are wanted');
  expect([head, flooded, tail].flatMap(openEdgesOf)).toEqual([]);
  expect(volumeOf(flooded)).toBeGreaterThan(0);
  expect(volumeOf(head) - volumeOf(flooded)).toBeCloseTo(BAIT.links[0]?.wetted.volume ?? 0, 6);
  expect(volumeOf(tail)).toBeCloseTo(BAIT.links[1]?.wetted.volume ?? 0, 6);
});

test('links whose names are no file names are told apart by their number', () => {
  const links = BAIT.links.map((link) => ({ ...link, spec: { ...link.spec, name: '../..' } }));
  const names = linkSolids({ ...BAIT, links }).map(({ name }) => name);
  expect(names).toEqual(['1-link.stl', '1-link.flooded.stl', '2-link.stl']);
});
