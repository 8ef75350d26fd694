import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { share } from '../../../../sim/flow/share.ts';

describe('a copy of the last design', () => {
  test('comes back as the very same object', () => {
    const old = { body: { length_mm: 120 }, joints: [{ x_mm: 60 }], notes: '' };
    expect(share(old, structuredClone(old))).toBe(old);
  });

  test('with one joint moved keeps everything that is not on the way to it', () => {
    const old = {
      body: { length_mm: 120 },
      joints: [
        { x_mm: 40, slots: [] },
        { x_mm: 80, slots: [] },
      ],
    };
    const next = structuredClone(old);
    next.joints[1].x_mm = 81;
    const shared = share(old, next);
    expect(shared).toStrictEqual(next);
    expect(shared.body).toBe(old.body);
    expect(shared.joints[0]).toBe(old.joints[0]);
    expect(shared.joints[1].slots).toBe(old.joints[1].slots);
    expect(shared.joints[1]).not.toBe(old.joints[1]);
    expect(shared.joints).not.toBe(old.joints);
  });

  test('with a hole more or less keeps the holes that are left', () => {
    const [first, second] = [{ x_mm: 20 }, { x_mm: 70 }];
    expect(share([first], [{ x_mm: 20 }, { x_mm: 70 }])[0]).toBe(first);
    const fewer = share([first, second], [{ x_mm: 20 }]);
    expect(fewer).toStrictEqual([{ x_mm: 20 }]);
    expect(fewer[0]).toBe(first);
  });

  test('is left alone: neither the old nor the next value is written to', () => {
    const old = Object.freeze({ a: Object.freeze([1, Object.freeze({ b: 2 })]) });
    const next = Object.freeze({ a: Object.freeze([1, Object.freeze({ b: 3 })]) });
    expect(share(old, next)).toStrictEqual({ a: [1, { b: 3 }] });
  });
});

describe('sharing', () => {
  test('keeps empty lists and empty records, each its own kind', () => {
    const [list, record] = [[] as unknown[], {}];
    expect(share(list, [])).toBe(list);
    expect(share(record, {})).toBe(record);
    expect(share<unknown>(list, {})).toStrictEqual({});
    expect(share<unknown>(record, [])).toStrictEqual([]);
    expect(share<unknown>([1], [])).toStrictEqual([]);
  });

  test('tells a field that is undefined from a field that is not there', () => {
    expect(share<object>({ hint: 1 }, { path: undefined })).toStrictEqual({ path: undefined });
    expect(share<object>({ hint: undefined }, { path: undefined })).toStrictEqual({ path: undefined });
    expect(share<object>({}, { path: undefined })).toStrictEqual({ path: undefined });
    expect(share<object>({ path: undefined }, {})).toStrictEqual({});
    expect(share<unknown>([], [undefined])).toStrictEqual([undefined]);
    const old = { path: undefined };
    expect(share(old, { path: undefined })).toBe(old);
  });

  test('knows numbers apart that only look alike', () => {
    expect(Object.is(share(0, -0), -0)).toBe(true);
    const old = { gm: Number.NaN };
    expect(share(old, { gm: Number.NaN })).toBe(old);
  });

  test('takes typed arrays as they come, without comparing them', () => {
    const [old, next] = [{ positions: new Float64Array(3) }, { positions: new Float64Array(3) }];
    expect(share(old, next).positions).toBe(next.positions);
  });

  test('of any two plain values gives the next one, in old parts where it can', () => {
    const leaf = fc.oneof(fc.integer({ min: 0, max: 2 }), fc.constant(undefined), fc.constant(null), fc.constant('a'));
    const { value } = fc.letrec((tie) => ({
      value: fc.oneof({ maxDepth: 3 }, leaf, tie('list'), tie('record')),
      list: fc.array(tie('value'), { maxLength: 3 }),
      record: fc.dictionary(fc.constantFrom('a', 'b', 'c'), tie('value'), { maxKeys: 3, noNullPrototype: true }),
    }));
    fc.assert(
      fc.property(value, value, (old, next) => {
        expect(share(old, next)).toStrictEqual(next);
        expect(Object.is(share(old, structuredClone(old)), old)).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });
});
