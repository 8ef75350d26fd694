import { expect, test } from 'vitest';
import { MIGRATIONS, type Migration, migrate } from '../../../../sim/design/migrate.ts';
import { designFileSchema } from '../../../../sim/design/schema.ts';
import { goodOf, issuesOf } from '../../../support/change-file.ts';
import { makeDesignFile } from '../../../support/make-design.ts';

const STEPS: readonly Migration[] = [
  { name: 'tags became marks', step: ({ tags, ...rest }) => ({ ...rest, marks: tags ?? [] }) },
  {
    name: 'marks are counted',
    step: (design) => ({ ...design, count: Array.isArray(design.marks) ? design.marks.length : 0 }),
  },
];

function old(version: unknown, more: object = {}): unknown {
  return { format: 'floatwright-design', version, ...more };
}

test('a design of the first version goes through every step in turn', () => {
  expect(goodOf(migrate(old(1, { tags: ['a', 'b'] }), STEPS))).toEqual(old(3, { marks: ['a', 'b'], count: 2 }));
});

test('a design of a later version goes only through the steps after it', () => {
  expect(goodOf(migrate(old(2, { tags: 1, marks: ['a'] }), STEPS))).toEqual(
    old(3, { tags: 1, marks: ['a'], count: 1 }),
  );
});

test('a design of the newest version is left as it is', () => {
  const newest = old(3, { tags: 1 });
  expect(goodOf(migrate(newest, STEPS))).toBe(newest);
});

test('a design newer than the last step is refused with both versions', () => {
  expect(issuesOf(migrate(old(4), STEPS))[0]).toEqual({
    code: 'design/newer-version',
    path: 'version',
    message: 'made by a newer Floatwright: version 4, this one reads up to 3',
    hint: 'update Floatwright to open it',
  });
});

test('the steps there are lead to the version that the schema describes', () => {
  const newest = MIGRATIONS.length + 1;
  expect(designFileSchema.safeParse({ ...makeDesignFile(), version: newest }).success).toBe(true);
});
