import { expect, test } from 'vitest';
import { keyRows, NO_ROWS } from '../../../../../src/panels/margin/row-keys.ts';

const keysOf = (...lists: readonly (readonly string[])[]) => {
  let keyed = NO_ROWS;
  return lists.map((names) => {
    keyed = keyRows(keyed, names);
    expect(keyed.rows.map(({ name }) => name)).toEqual(names);
    return keyed.rows.map(({ key }) => key);
  });
};

test('Rows keep their keys when one is added, taken away and brought back', () => {
  const [first, added, gone, back] = keysOf(['a', 'b'], ['a', 'b', 'c'], ['a', 'c'], ['a', 'b', 'c']);
  expect(added?.slice(0, 2)).toEqual(first);
  expect(gone).toEqual([added?.[0], added?.[2]]);
  expect([back?.[0], back?.[2]]).toEqual(gone);
  expect(added).not.toContain(back?.[1]);
});

test('A row that is called otherwise is still that row', () => {
  const [before, after] = keysOf(['a', 'b', 'c'], ['a', 'x', 'c']);
  expect(after).toEqual(before);
});

test('Two that are called alike are two rows', () => {
  const [twins, one] = keysOf(['a', 'a'], ['a']);
  expect(new Set(twins).size).toBe(2);
  expect(one).toEqual([twins?.[0]]);
});

test('Another list altogether has other rows', () => {
  const [before, after] = keysOf(['a', 'b'], ['c', 'd']);
  expect(before?.some((key) => after?.includes(key))).toBe(false);
});
