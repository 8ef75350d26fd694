import { expect, test } from 'vitest';
import { failed, issueLine, ok, SimError } from '../../../../sim/flow/outcome.ts';

const SAWN_OUTSIDE = {
  code: 'links/joint-outside-body',
  path: 'joints.1.x_mm',
  message: 'joint 2 at 200 mm does not fall between 60 mm and 150 mm',
  hint: 'move the joint inside the body',
};
const TOO_LONG = { code: 'design/too-long', path: '', message: 'the file is too long' };

test('an issue reads as where, what is wrong, and the cure', () => {
  expect(issueLine(SAWN_OUTSIDE)).toBe(
    'joints.1.x_mm: joint 2 at 200 mm does not fall between 60 mm and 150 mm (move the joint inside the body)',
  );
});

test('an issue of the whole file without a cure is its message alone', () => {
  expect(issueLine(TOO_LONG)).toBe('the file is too long');
});

test('an error carries every issue, and says each on a line of its own', () => {
  const error = new SimError([SAWN_OUTSIDE, TOO_LONG]);
  expect(error).toBeInstanceOf(Error);
  expect(error.name).toBe('SimError');
  expect(error.issues).toEqual([SAWN_OUTSIDE, TOO_LONG]);
  expect(error.message).toBe(`${issueLine(SAWN_OUTSIDE)}\nthe file is too long`);
});

test('a good outcome has a value and no issues; a failed one issues and no value', () => {
  expect(ok(undefined)).toStrictEqual({ status: 'ok', value: undefined });
  expect(failed([TOO_LONG])).toStrictEqual({ status: 'failed', issues: [TOO_LONG] });
});
