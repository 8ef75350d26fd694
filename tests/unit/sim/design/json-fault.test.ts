import { expect, test } from 'vitest';
import { jsonFault } from '../../../../sim/design/json-fault.ts';

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
