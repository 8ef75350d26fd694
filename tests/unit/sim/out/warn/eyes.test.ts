import { describe, expect, test } from 'vitest';
import type { DesignFile } from '../../../../../sim/design/file.ts';
import { withValueAt } from '../../../../../sim/design/place.ts';
import { warn } from '../../../../../sim/out/warn.ts';
import { END_GRAIN_HOLDS, EYE_DEPTH_IN_WIRES } from '../../../../../sim/tables/screw-eyes.ts';
import { LINKED_DESIGN, makeDesignFile, PLAIN_DESIGN } from '../../../../support/make-design.ts';
import { warnPartsOf } from '../../../../support/quiet-warn-parts.ts';

function eyesOf(file: DesignFile) {
  return warn(warnPartsOf(file)).filter(({ code }) => code === 'embedment-short');
}

/** The warning that names one hanger of the plain bait, its shank this long. */
function hanger(index: number, shank: number): readonly (readonly [string, number | null, number | null])[] {
  const { name } = PLAIN_DESIGN.hangers[index];
  return eyesOf(withValueAt(PLAIN_DESIGN, `hangers.${index}.shank_mm`, shank))
    .filter(({ text }) => text.includes(`"${name}"`))
    .map(({ where, number, limit }) => [where, number, limit]);
}

/** The plain bait in three pieces, its hangers as deep as these in the order of the file, its joints 8 mm. */
function deep(...shanks: readonly number[]): DesignFile {
  return shanks.reduce(
    (file, shank, i) => withValueAt(file, `hangers.${i}.shank_mm`, shank),
    makeDesignFile({ pieces: 3 }),
  );
}

test('an eye in side grain should stand in six times its wire, one in end grain in eight times', () => {
  expect(hanger(1, 8.9)).toEqual([['belly, fore', 8.9, 9]]);
  expect(hanger(1, 9)).toEqual([]);
  expect(hanger(0, 11.9)).toEqual([['line tie', 11.9, 12]]);
  expect(hanger(0, 12)).toEqual([]);
});

test('end grain is asked for as many wires more as it holds less', () => {
  expect(EYE_DEPTH_IN_WIRES.end.value).toBeCloseTo(EYE_DEPTH_IN_WIRES.side.value / END_GRAIN_HOLDS.value, 12);
});

test('those furthest from it come first', () => {
  // 8 of 12, 9 of 12, 7 of 9, 8 of 9
  expect(eyesOf(deep(9, 8, 7)).map(({ where }) => where)).toEqual([
    'joints 1 and 2',
    'line tie',
    'belly, aft',
    'belly, fore',
  ]);
});

describe('eyes that stand alike share one warning', () => {
  const said = (file: DesignFile) => eyesOf(file).map(({ where, text }) => [where, text.split(' deep')[0]]);

  test('of joints, at the place of the first', () => {
    const [joints, ...more] = eyesOf(deep(12, 9, 9));
    expect(more).toEqual([]);
    expect(joints).toMatchObject({ where: 'joints 1 and 2', number: 8, limit: 12, at: [51, 0, 8] });
    expect(joints.text).toBe(
      'The eyes of joints 1 and 2 stand 8.0 mm deep in end grain, which holds 75 % of side grain at most; 8 times the wire, 12.0 mm, is common practice and no promise of strength.',
    );
  });

  test('of hangers, by their names', () => {
    const [, hangers] = eyesOf(deep(12, 7, 7));
    expect(hangers).toMatchObject({ where: 'belly, fore, belly, aft', number: 7, limit: 9 });
    expect(hangers.text).toMatch(/^Eyes "belly, fore" and "belly, aft" stand 7\.0 mm deep in side grain; 6 times/);
    expect(hangers.at?.[0]).toBe(36);
  });

  test('of joints and hangers, the joints first', () => {
    expect(said(deep(8, 9, 9))).toEqual([
      ['joints 1 and 2, line tie', 'The eyes of joints 1 and 2 and eye "line tie" stand 8.0 mm'],
    ]);
  });

  test('of three joints: 1, 2 and 3', () => {
    const parts = warnPartsOf(deep(12, 9, 9));
    const [first, second] = parts.drawn.joints;
    const [a, b, c, d, ...rest] = parts.hardware.eyes;
    const drawn = { ...parts.drawn, joints: [first, second, second] };
    const hardware = { ...parts.hardware, eyes: [a, b, c, d, c, d, ...rest] };
    const three = warn({ ...parts, drawn, hardware }).filter(({ code }) => code === 'embedment-short');
    expect(three.map(({ where, text }) => [where, text.split(' deep')[0]])).toEqual([
      ['joints 1, 2 and 3', 'The eyes of joints 1, 2 and 3 stand 8.0 mm'],
    ]);
  });

  test('one whose shank is another, or whose grain is, has its own', () => {
    const other = withValueAt(deep(12, 8, 8), 'joints.1.hinge.shank_mm', 9);
    expect(said(other)).toEqual([
      ['joint 1', 'The eyes of joint 1 stand 8.0 mm'],
      ['joint 2', 'The eyes of joint 2 stand 9.0 mm'],
      ['belly, fore, belly, aft', 'Eyes "belly, fore" and "belly, aft" stand 8.0 mm'],
    ]);
    // a wire of 2 across the grain is held against the same 12 mm as one of 1.5 along it
    const thick = withValueAt(deep(12, 8, 9), 'hangers.1.wire_mm', 2);
    expect(said(thick).map(([where]) => where)).toEqual(['joints 1 and 2', 'belly, fore']);
  });

  test('a shank written as an expression stands like one written as a number', () => {
    const file = withValueAt(deep(12, 9, 9), 'joints.1.hinge.shank_mm', '0.8 * 10.000000000000002');
    expect(said(file).map(([where]) => where)).toEqual(['joints 1 and 2']);
  });
});

test('each has the place where its own eye enters the wood, linked eyes too', () => {
  const shallow = [7, 6, 5].reduce(
    (file, shank, i) => withValueAt(file, `hangers.${i}.shank_mm`, shank),
    LINKED_DESIGN,
  );
  const places = Object.fromEntries(eyesOf(shallow).map(({ where, at }) => [where, at]));
  expect(places['joint 1']).toEqual([54, 0, 8]);
  expect(places['line tie']).toEqual([0, 0, 0]);
  expect(places['belly, aft']?.[0]).toBe(96);
});
