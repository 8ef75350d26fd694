import { expect, test } from 'vitest';
import type { Issue } from '../../../../sim/index.ts';
import { issuesByField, issuesOf } from '../../../../src/engine/issues.ts';

const issue = (path: string, message = 'is wrong'): Issue => ({ code: 'design/wrong', path, message });

const FIELDS = [
  { paths: ['joints.0.x_mm'] },
  { paths: ['joints.0.gap_mm'] },
  { paths: ['dimensions.tail_mm', 'joints.1.x_mm'] },
  { paths: ['body.deepest_x_mm'] },
  { paths: ['wood.density_g_cm3'] },
] as const;
const [place, gap, tail, deepest] = FIELDS;

const fieldOf = (path: string) => [...issuesByField([issue(path)], FIELDS).keys()][0];

test('An issue stands beside the field at its very path', () => {
  expect(fieldOf('joints.0.gap_mm')).toBe(gap);
});

test('A field that shows a dimension of the design has the issues of both places', () => {
  expect(fieldOf('joints.1.x_mm')).toBe(tail);
  expect(fieldOf('dimensions.tail_mm')).toBe(tail);
});

test('An issue of a whole joint stands beside the first field of that joint, one of a whole list beside none', () => {
  expect(fieldOf('joints.0')).toBe(place);
  expect(fieldOf('joints')).toBeUndefined();
  expect(fieldOf('')).toBeUndefined();
});

test('A name that merely begins alike is another place', () => {
  expect(fieldOf('joints.0.x_mm_more')).toBeUndefined();
  expect(fieldOf('joints.01.x_mm')).toBeUndefined();
});

test('An issue deeper than the field stands beside it', () => {
  expect(fieldOf('body.deepest_x_mm.1')).toBe(deepest);
});

test('Of two issues of one field the first is shown', () => {
  const first = issue('joints.0.x_mm', 'first');
  const found = issuesByField([first, issue('joints.0.x_mm', 'second')], FIELDS);
  expect(found.get(place)).toBe(first);
});

test('Issues are gathered from the bait and its links, each once, and blocked answers have none', () => {
  const one = issue('joints.0.x_mm');
  const other = issue('setups.0.holes.1', 'meets a slot');
  const found = issuesOf({
    bait: { links: { status: 'failed', issues: [one] }, hardware: { status: 'blocked', by: ['links'] } },
    links: [{ mesh: { status: 'failed', issues: [one, other] } }],
  });
  expect(found).toEqual([one, other]);
});
