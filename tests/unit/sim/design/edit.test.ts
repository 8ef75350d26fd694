import { describe, expect, test } from 'vitest';
import { type FieldPath, setValue, valueAt } from '../../../../sim/design/edit.ts';
import { checkDesignFile } from '../../../../sim/design/read.ts';
import { SimError } from '../../../../sim/flow/outcome.ts';
import { goodOf } from '../../../support/change-file.ts';
import { makeDesignFile } from '../../../support/make-design.ts';

const plain = makeDesignFile({ pieces: 3, dimensions: { head_mm: 50 } });

describe('setting a number of a design', () => {
  test.each<readonly [FieldPath, number | string]>([
    [['body', 'length_mm'], 150],
    [['body', 'back_mm'], 'height_mm * 0.46'],
    [['body', 'tail', 'depth_mm'], 8],
    [['body', 'plan', 'tail_fullness'], 0.8],
    [['body', 'section', 'breadth'], 0.45],
    [['dimensions', 'head_mm'], 'length_mm / 3'],
    [['joints', 1, 'x_mm'], 90],
    [['joints', 0, 'hinge', 'pin', 'z_mm', 1], 13],
    [['joints', 0, 'hinge', 'eyes', 1, 'z_mm'], -7],
    [['joints', 0, 'slots', 0, 'width_mm'], 8],
    [['wood', 'density_g_cm3'], 0.41],
    [['coats', 0, 'soak_percent'], 6],
    [['setups', 0, 'target', 'proud_mm'], 4],
    [['setups', 0, 'target', 'trim_deg'], -2],
    [['setups', 0, 'hung', 1, 'mass_g'], 2.5],
    [['setups', 0, 'holes', 0, 'lead', 'mass_g'], 3.9],
    [['setups', 0, 'water', 'temperature_c'], 4],
  ])('puts it at %j and nowhere else', (path, value) => {
    const edited = setValue(plain, path, value);
    expect(valueAt(edited, path)).toBe(value);
    const before = valueAt(plain, path);
    if (before !== undefined) expect(setValue(edited, path, before)).toEqual(plain);
    expect(goodOf(checkDesignFile(edited))).toEqual(edited);
  });

  test('leaves the file as it was and shares every part it did not touch', () => {
    const before = structuredClone(plain);
    const edited = setValue(plain, ['joints', 1, 'x_mm'], 90);
    expect(plain).toEqual(before);
    expect(edited.body).toBe(plain.body);
    expect(edited.joints[0]).toBe(plain.joints[0]);
    expect(edited.joints[1]?.hinge).toBe(plain.joints[1]?.hinge);
    expect(edited.joints[1]).not.toBe(plain.joints[1]);
    expect(edited.setups).toBe(plain.setups);
  });

  test('works on a frozen file', () => {
    const frozen = Object.freeze(structuredClone(plain));
    Object.freeze(frozen.body);
    expect(setValue(frozen, ['body', 'length_mm'], 130).body.length_mm).toBe(130);
  });

  test.each<readonly [string, FieldPath, number | string, string]>([
    ['a field misspelt', ['body', 'lenght_mm'], 1, 'body.lenght_mm'],
    ['a name', ['links', 0, 'name'], 'x', 'links.0.name'],
    ['a kind', ['body', 'section', 'kind'], 'oval', 'body.section.kind'],
    ['the version', ['version'], 1, 'version'],
    ['a whole part', ['body'], 1, 'body'],
    ['nothing at all', [], 1, ''],
    ['a joint that is not there', ['joints', 2, 'x_mm'], 1, 'joints.2.x_mm'],
    ['a joint before the first', ['joints', -1, 'x_mm'], 1, 'joints.-1.x_mm'],
    ['a place within a number', ['body', 'length_mm', 0], 1, 'body.length_mm.0'],
    ['a name where a number counts', ['joints', 'first', 'x_mm'], 1, 'joints.first.x_mm'],
    ['a number where a name counts', ['body', 0, 'length_mm'], 1, 'body.0.length_mm'],
    ['a dimension that is not there', ['dimensions', 'tail_mm'], 1, 'dimensions.tail_mm'],
    ['a second target', ['setups', 0, 'target', 'reserve_g'], 1, 'setups.0.target'],
    ['half a nose', ['body', 'nose', 'depth_mm'], 4, 'body.nose.width_mm'],
    ['a prototype', ['__proto__', 'length_mm'], 1, '__proto__'],
    ['NaN', ['body', 'length_mm'], Number.NaN, 'body.length_mm'],
    ['infinity', ['body', 'length_mm'], Number.POSITIVE_INFINITY, 'body.length_mm'],
    ['an empty expression', ['body', 'length_mm'], '', 'body.length_mm'],
    ['an endless expression', ['body', 'length_mm'], '1+'.repeat(100), 'body.length_mm'],
  ])('is refused for %s, by a message that names the place', (_, path, value, place) => {
    const caught = thrownBy(() => setValue(plain, path, value));
    expect(caught).toBeInstanceOf(SimError);
    expect((caught as SimError).issues.map((issue) => issue.path)).toContain(place);
    expect(({} as Record<string, unknown>).length_mm).toBeUndefined();
  });
});

describe('looking up a number of a design', () => {
  test.each<readonly [FieldPath, number | string | undefined]>([
    [['body', 'height_mm'], 36],
    [['joints', 1, 'hinge', 'pin', 'z_mm', 0], -12],
    [['body', 'back_mm'], undefined],
    [['body', 'nose', 'depth_mm'], undefined],
    [['joints', 7, 'x_mm'], undefined],
    [['joints', 0, 'hinge', 'pin', 'z_mm'], undefined],
    [['links', 0, 'name'], undefined],
    [['body', 'length_mm', 'x_mm'], undefined],
    [['constructor', 'x_mm'], undefined],
    [[], undefined],
  ])('at %j gives %s', (path, value) => {
    expect(valueAt(plain, path)).toBe(value);
  });
});

function thrownBy(work: () => unknown): unknown {
  try {
    work();
  } catch (error) {
    return error;
  }
  return undefined;
}
