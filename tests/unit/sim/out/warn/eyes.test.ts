import { expect, test } from 'vitest';
import type { DesignFile } from '../../../../../sim/design/file.ts';
import { withValueAt } from '../../../../../sim/design/place.ts';
import { warn } from '../../../../../sim/out/warn.ts';
import { LINKED_DESIGN, makeDesignFile, PLAIN_DESIGN } from '../../../../support/make-design.ts';
import { warnPartsOf } from '../../../../support/quiet-warn-parts.ts';

function eyesOf(file: DesignFile) {
  return warn(warnPartsOf(file)).filter(({ code }) => code === 'embedment-short');
}

function hanger(index: number, shank: number): readonly (readonly [string, number | null, number | null])[] {
  return eyesOf(withValueAt(PLAIN_DESIGN, `hangers.${index}.shank_mm`, shank))
    .filter(({ where }) => where === PLAIN_DESIGN.hangers[index].name)
    .map(({ where, number, limit }) => [where, number, limit]);
}

test('an eye in side grain should stand in ten times its wire, one in end grain in thirteen times', () => {
  expect(hanger(1, 14.9)).toEqual([['belly, fore', 14.9, 15]]);
  expect(hanger(1, 15)).toEqual([]);
  expect(hanger(0, 19.4)).toEqual([['line tie', 19.4, 19.5]]);
  expect(hanger(0, 19.5)).toEqual([]);
});

test('those furthest from it come first, and eyes of a joint are told once', () => {
  const said = eyesOf(makeDesignFile({ pieces: 3 }));
  expect(said.map(({ where }) => where)).toEqual(['joint 1', 'joint 2', 'line tie', 'belly, aft', 'belly, fore']);
  expect(said[0].at).toEqual([51, 0, 8]);
  expect(said[0].text).toBe(
    'The eyes of joint 1 stand 8.0 mm deep in end grain, which holds 75 % of side grain at most; 13 times the wire, 19.5 mm, is common practice and no promise of strength.',
  );
});

test('each has the place where its own eye enters the wood, linked eyes too', () => {
  const places = Object.fromEntries(eyesOf(LINKED_DESIGN).map(({ where, at }) => [where, at]));
  expect(places['joint 1']).toEqual([54, 0, 8]);
  expect(places['line tie']).toEqual([0, 0, 0]);
  expect(places['belly, aft']?.[0]).toBe(96);
});
