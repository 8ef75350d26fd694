import { describe, expect, test } from 'vitest';
import type { DesignFile, Num } from '../../../../sim/design/file.ts';
import { workOut } from '../../../../sim/design/work-out.ts';
import { goodOf, issuesOf } from '../../../support/change-file.ts';
import { makeDesignFile } from '../../../support/make-design.ts';

function withDimensions(dimensions: Readonly<Record<string, Num>>, back_mm: Num = 18): DesignFile {
  return makeDesignFile({ pieces: 1, dimensions, body: { back_mm } });
}

describe('the numbers of a design', () => {
  test('may be written in terms of the body, of own dimensions and of pi', () => {
    const file = withDimensions({ head_mm: 'length_mm * 0.42', lean_deg: 20 }, 'min(height_mm, width_mm) * pi / 4');
    const worked = goodOf(workOut(file));
    expect(worked.dimensions).toEqual({ head_mm: 120 * 0.42, lean_deg: 20 });
    expect(worked.body.back_mm).toBe((20 * Math.PI) / 4);
  });

  test('may name each other in any order', () => {
    const worked = goodOf(workOut(withDimensions({ a_mm: 'b_mm + 1', b_mm: 'c_mm + 1', c_mm: 'width_mm' }, 'a_mm')));
    expect(worked.body.back_mm).toBe(22);
  });

  test('may give the length itself from an own dimension', () => {
    const file = makeDesignFile({ dimensions: { hand_mm: 101.6 }, body: { length_mm: 'hand_mm * 1.5' } });
    expect(goodOf(workOut(file)).body.length_mm).toBeCloseTo(152.4, 12);
  });

  test('may be expressions within pairs and lists, and in every setup', () => {
    const plain = makeDesignFile({ pieces: 2 });
    const [joint] = plain.joints;
    const [setup] = plain.setups;
    if (joint?.hinge.kind !== 'pin' || setup === undefined) throw new Error('the plain bait has a pin and a setup');
    const pin = { ...joint.hinge.pin, z_mm: ['-height_mm / 3', 12] as const };
    const worked = goodOf(
      workOut({
        ...plain,
        joints: [{ ...joint, hinge: { ...joint.hinge, pin } }],
        setups: [{ ...setup, link_targets: { wet_g: { net_wet_g: '1 + 1' } } }],
      }),
    );
    expect(worked.joints[0]?.hinge).toMatchObject({ pin: { z_mm: [-12, 12] } });
    expect(worked.setups[0]?.link_targets).toEqual({ wet_g: { net_wet_g: 2 } });
  });

  test('leave every name and note as it is, even one that reads like an expression', () => {
    const file = makeDesignFile({ name: '1 + 1', notes: 'length_mm * 2' });
    expect(goodOf(workOut(file))).toEqual(file);
  });

  test('have no negative zero', () => {
    expect(Object.is(goodOf(workOut(withDimensions({ a_mm: -0 }, '0 * -1'))).body.back_mm, 0)).toBe(true);
    expect(goodOf(workOut(withDimensions({ a_mm: -0 }))).dimensions).toEqual({ a_mm: 0 });
  });
});

describe('a faulty expression', () => {
  test.each([
    ['an unknown name', 'lenght_mm * 2', 'unknown name "lenght_mm"; known: pi, a_mm, length_mm, height_mm, width_mm'],
    ['a name of the parser', 'e * 2', 'unknown name "e"'],
    ['a name every object has', 'constructor', 'unknown name "constructor"'],
    ['NaN in so many letters', 'NaN', '"NaN" gives no number'],
    ['infinity in so many letters', 'Infinity', '"Infinity" gives a number without end'],
    ['a division by nothing', '1 / 0', '"1 / 0" gives a number without end'],
    ['nothing by nothing', '0 / 0', '"0 / 0" gives no number'],
    ['the root of less than nothing', 'sqrt(-1)', '"sqrt(-1)" gives no number'],
    ['a tower of powers', '9^9^9^9^9', '"9^9^9^9^9" gives a number without end'],
    ['a number too large to hold', '1e999', '"1e999" gives a number without end'],
  ])('is told for %s', (_, text, says) => {
    const issues = issuesOf(workOut(withDimensions({ a_mm: 1 }, text)));
    expect(issues.map(({ path }) => path)).toEqual(['body.back_mm']);
    expect(issues[0]?.message).toContain(says);
  });

  test('of a name is told once, at the name, and what uses it says what it needs', () => {
    const issues = issuesOf(workOut(withDimensions({ a_mm: '1 / 0', b_mm: 'a_mm * 2' }, 'a_mm + b_mm')));
    expect(issues.map(({ path, message }) => `${path}: ${message}`)).toEqual([
      'dimensions.a_mm: "1 / 0" gives a number without end',
      'dimensions.b_mm: "a_mm * 2" needs a_mm, which has no value',
      'body.back_mm: "a_mm + b_mm" needs a_mm, which has no value',
    ]);
  });

  test('of the length is told at the length', () => {
    const issues = issuesOf(workOut(makeDesignFile({ body: { length_mm: 'x_mm', back_mm: 'length_mm / 9' } })));
    expect(issues.map(({ path }) => path)).toEqual(['body.length_mm', 'body.back_mm']);
  });

  test('that needs itself is a circle', () => {
    const issues = issuesOf(workOut(withDimensions({ a_mm: 'a_mm + 1' })));
    expect(issues).toMatchObject([
      { code: 'design/circle', path: 'dimensions.a_mm', message: 'a_mm needs a_mm: a circle' },
    ]);
  });

  test('is a circle through others too, told where it closes', () => {
    const issues = issuesOf(workOut(withDimensions({ a_mm: 'b_mm', b_mm: 'c_mm', c_mm: 'a_mm' }, 'a_mm')));
    expect(issues[0]).toMatchObject({
      path: 'dimensions.c_mm',
      message: 'a_mm needs b_mm needs c_mm needs a_mm: a circle',
    });
    expect(issues.map(({ path }) => path)).toEqual([
      'dimensions.c_mm',
      'dimensions.b_mm',
      'dimensions.a_mm',
      'body.back_mm',
    ]);
  });

  test('may not take the name of a measure of the body', () => {
    const issues = issuesOf(workOut(withDimensions({ length_mm: 5 })));
    expect(issues).toMatchObject([{ code: 'design/name-taken', path: 'dimensions.length_mm' }]);
  });

  test('is told together with every other one', () => {
    const file = makeDesignFile({ pieces: 2, body: { back_mm: 'x' }, wood: { density_g_cm3: '2 3' } });
    expect(issuesOf(workOut(file)).map(({ path }) => path)).toEqual(['body.back_mm', 'wood.density_g_cm3']);
  });

  test('can be worked out through a hundred names in a row', () => {
    const chain = Object.fromEntries(
      Array.from({ length: 100 }, (_, index) => [`d${index}_mm`, index === 99 ? '1' : `d${index + 1}_mm + 1`]),
    );
    expect(goodOf(workOut(withDimensions(chain))).dimensions?.d0_mm).toBe(100);
  });
});
