import { expect, test } from 'vitest';
import type { LastGood } from '../../../../../src/engine/answers.ts';
import { comparedAt } from '../../../../../src/panels/ballast/compared.ts';
import { makeDesignFile } from '../../../../support/make-design.ts';
import { answersOf } from '../../../../support/worked-bait.ts';

const PLAIN = makeDesignFile();
const [SETUP] = PLAIN.setups;
const FILE = { ...PLAIN, setups: [SETUP, { ...SETUP, name: 'second', holes: [] }] } as typeof PLAIN;
const first = answersOf(FILE) as LastGood;
const second = answersOf(FILE, { setup: 'second' }) as LastGood;

test('Two setups of one bait are compared, what is looked at first', () => {
  const comparison = comparedAt(first, second, 'second');
  expect(comparison?.setups).toEqual([SETUP?.name, 'second']);
  expect(comparison?.links).toHaveLength(2);
});

test('Nothing is compared while one of them is not there, is another one, or is of another bait', () => {
  const nothing: LastGood = { bait: {}, links: [] };
  expect(comparedAt(nothing, second, 'second')).toBeNull();
  expect(comparedAt(first, nothing, 'second')).toBeNull();
  expect(comparedAt(first, second, null)).toBeNull();
  expect(comparedAt(second, second, 'second')).toBeNull();
  expect(comparedAt(first, { ...second, links: [] }, 'second')).toBeNull();
  const longer = answersOf({ ...makeDesignFile({ pieces: 3 }), setups: FILE.setups } as typeof PLAIN, {
    setup: 'second',
  }) as LastGood;
  expect(comparedAt(first, longer, 'second')).toBeNull();
});
