import { expect, test } from 'vitest';
import { readDesignText } from '../../../../sim/design/read.ts';
import { writeDesignText } from '../../../../sim/design/write.ts';
import { SimError } from '../../../../sim/flow/outcome.ts';
import { goodOf } from '../../../support/change-file.ts';
import { makeDesignFile } from '../../../support/make-design.ts';

const plain = makeDesignFile({ pieces: 3, dimensions: { b_mm: 2, a_mm: 'b_mm * 3' } });

test('a design is written with two spaces of indent and ends in a line break', () => {
  const text = writeDesignText(plain);
  expect(text.split('\n').slice(0, 6)).toEqual([
    '{',
    '  "format": "floatwright-design",',
    '  "version": 1,',
    '  "name": "Boathouse Plain",',
    '  "dimensions": {',
    '    "b_mm": 2,',
  ]);
  expect(text.endsWith('\n}\n')).toBe(true);
});

test('a design written and read is the same design, expressions and all', () => {
  expect(goodOf(readDesignText(writeDesignText(plain)))).toEqual(plain);
});

test('the same design is written in the same bytes, whatever order its fields were in', () => {
  const shuffled = Object.fromEntries(Object.entries(plain).reverse()) as unknown as typeof plain;
  const wood = { ...plain.wood };
  const body = Object.fromEntries(Object.entries(plain.body).reverse()) as unknown as typeof plain.body;
  expect(writeDesignText({ ...shuffled, wood, body })).toBe(writeDesignText(plain));
});

test('text we wrote is written again in the same bytes', () => {
  const text = writeDesignText(plain);
  expect(writeDesignText(goodOf(readDesignText(text)))).toBe(text);
});

test('a design that could not be read again is not written', () => {
  const broken = makeDesignFile({ body: { length_mm: Number.NaN } });
  expect(() => writeDesignText(broken)).toThrow(SimError);
  expect(() => writeDesignText(broken)).toThrow('body.length_mm');
});
