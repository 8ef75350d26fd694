import { expect, test } from 'vitest';
import { textTable } from '../../../../sim/out/table.ts';

test('columns are as wide as their widest cell, words left, numbers right, nothing after the last', () => {
  const columns = [
    { head: 'what', right: false },
    { head: 'g', right: true },
    { head: 'from', right: false },
  ];
  const rows = [['wood', '12.25', 'scale'], ['fore treble', '2.10', ''], ['käse 𐐀']];
  expect(textTable(columns, rows)).toEqual([
    'what             g  from',
    'wood         12.25  scale',
    'fore treble   2.10',
    'käse 𐐀',
  ]);
});
