import { describe, expect, test } from 'vitest';
import { compareSetups } from '../../../../../sim/out/compare/compare.ts';
import { compareJson } from '../../../../../sim/out/compare/json.ts';
import { makeFloat } from '../../../../support/make-checked-bait.ts';
import { makeComparedBait } from '../../../../support/make-compared-bait.ts';
import { makeHole } from '../../../../support/make-hole.ts';

const [HEAD, DEEPER, MOVED, ALONE] = [
  makeHole({ name: 'first' }),
  makeHole({ x: 40, name: 'second' }),
  makeHole({ x: 42, across: 1, depth: 11, lead: null, name: 'second' }),
  makeHole({ x: 90, from: 'port', across: -4, name: 'third' }),
];
const JSON_PAIR = JSON.parse(
  JSON.stringify(
    compareJson(
      compareSetups(
        makeComparedBait('topwater', [HEAD, DEEPER]),
        makeComparedBait('slow-sink', [HEAD, MOVED], [ALONE], { assembled: makeFloat({ proud: 1.25 }) }),
      ),
    ),
  ),
);
const [LINK, TAIL] = JSON_PAIR.links;

describe('the keys of compare --json', () => {
  const PLACE = ['name', 'from', 'x_mm', 'across_mm', 'diameter_mm', 'depth_mm', 'lead_g'];
  test.each([
    ['the whole', JSON_PAIR, ['design', 'setups', 'assembled', 'first_foot_s', 'lead_g', 'hung_g', 'links']],
    ['a link', LINK, ['name', 'lead_g', 'floats', 'first_foot_s', 'holes']],
    ['a hole of both', LINK.holes[0], ['kind', 'name']],
    ['a changed hole', LINK.holes[1], ['kind', 'from', 'to', 'moved_mm', 'deeper_mm', 'lead_g', 'in_place']],
    ['a hole of one', TAIL.holes[0], ['kind', 'in', 'hole']],
    ['its place', TAIL.holes[0].hole, PLACE],
    ['where it was', LINK.holes[1].from, PLACE],
  ])('%s', (_, object, keys) => {
    expect(Object.keys(object)).toEqual(keys);
  });
});

test('pairs are in the order of the setups', () => {
  expect(JSON_PAIR).toMatchObject({ design: 'Boathouse Plain', setups: ['topwater', 'slow-sink'], lead_g: [8, 8] });
  expect(JSON_PAIR.assembled.map((float: { proud_mm: number }) => float.proud_mm)).toEqual([2.5, 1.25]);
  expect(JSON_PAIR.hung_g).toEqual([expect.closeTo(4.1, 12), expect.closeTo(4.1, 12)]);
  expect([LINK.lead_g, TAIL.lead_g]).toEqual([
    [8, 4],
    [0, 4],
  ]);
  expect(TAIL.floats.map((float: { state: string }) => float.state)).toEqual(['sinks', 'sinks']);
});

test('holes are told as they differ', () => {
  expect(LINK.holes).toEqual([
    { kind: 'same', name: 'first' },
    {
      kind: 'changed',
      from: { name: 'second', from: 'belly', x_mm: 40, across_mm: 0, diameter_mm: 8, depth_mm: 10, lead_g: 4 },
      to: { name: 'second', from: 'belly', x_mm: 42, across_mm: 1, diameter_mm: 8, depth_mm: 11, lead_g: 0 },
      moved_mm: 2,
      deeper_mm: 1,
      lead_g: -4,
      in_place: false,
    },
  ]);
  expect(TAIL.holes).toEqual([
    {
      kind: 'only',
      in: 'slow-sink',
      hole: { name: 'third', from: 'port', x_mm: 90, across_mm: -4, diameter_mm: 8, depth_mm: 10, lead_g: 4 },
    },
  ]);
});
