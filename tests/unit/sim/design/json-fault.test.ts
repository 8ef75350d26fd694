import { expect, test } from 'vitest';
import { jsonFault, repeatedName } from '../../../../sim/design/json-fault.ts';

test.each([
  ['{"a": [1, -2.5e3, true, false, null, "x\\u00e9\\n"], "b": {}, "c": []}'],
  ['  "text"  '],
  ['0'],
  ['[[],[{}]]'],
])('%s is whole', (text) => {
  expect(jsonFault(text)).toBeNull();
});

test.each([
  ['', 1, 1, 'a value', ''],
  ['{"a" 1}', 1, 6, '":"', '1}'],
  ['{"a": 1,}', 1, 9, 'a name in double quotes', '}'],
  ['[1,]', 1, 4, 'a value', ']'],
  ['[1 2]', 1, 4, '"," or "]"', '2]'],
  ['{"a": 1 "b": 2}', 1, 9, '"," or "}"', '"b": 2}'],
  ['{a: 1}', 1, 2, 'a name in double quotes or "}"', 'a: 1}'],
  ["{'a': 1}", 1, 2, 'a name in double quotes or "}"', "'a': 1}"],
  ['{"a": 1]', 1, 8, '"," or "}"', ']'],
  ['[1}', 1, 3, '"," or "]"', '}'],
  ['{} {}', 1, 4, 'the end of the text', '{}'],
  ['{\r\n  "a": NaN\r\n}', 2, 8, 'a value', 'NaN'],
  ['[01]', 1, 3, '"," or "]"', '1]'],
  ['[.5]', 1, 2, 'a value or "]"', '.5]'],
  ['[1.]', 1, 3, '"," or "]"', '.]'],
  ['["a]', 1, 2, 'a text that ends with a double quote on its own line', '"a]'],
  ['["a\nb"]', 1, 2, 'a text that ends with a double quote on its own line', '"a'],
  ['["\\x"]', 1, 2, 'a text that ends with a double quote on its own line', '"\\x"]'],
  ['{"a": "b', 1, 7, 'a text that ends with a double quote on its own line', '"b'],
  ['{"a": {"b": [', 1, 14, 'a value or "]"', ''],
])('%j stops being JSON at line %i, column %i', (text, line, column, wanted, given) => {
  expect(jsonFault(text)).toEqual({ line, column, wanted, given });
  expect(() => JSON.parse(text)).toThrow(SyntaxError);
});

test.each([
  ['{"a": 1, "b": 2, "a": 3}', { line: 1, column: 18, path: 'a' }],
  ['{"body": {\n "x": 1,\n "x": 2}}', { line: 3, column: 2, path: 'body.x' }],
  ['[{"a": 1}, {"a": 1, "\\u0061": 2}]', { line: 1, column: 21, path: '1.a' }],
  ['{"a": [[0, 1], {}, {"b": {"c": ",", "c": 1}}]}', { line: 1, column: 37, path: 'a.2.b.c' }],
])('%j has a name twice in one object', (text, found) => {
  expect(repeatedName(text)).toEqual(found);
  expect(() => JSON.parse(text)).not.toThrow();
});

test.each([
  '{"a": {"a": 1}, "b": {"a": 1}}',
  '[{"a": 1}, {"a": 1}]',
  '{"a": "a", "b": ["a", "a"]}',
  '{"a": "{\\"a\\": 1", "b": "\\\\", "c": 2}',
])('%j has every name once in its object', (text) => {
  expect(repeatedName(text)).toBeNull();
});
