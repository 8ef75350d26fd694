import { expect, test } from 'vitest';
import { warnedPart } from '../../../../../src/panels/whole/warned-part.ts';
import { PLAIN_DESIGN } from '../../../../support/make-design.ts';
import { partsOf } from '../../../../support/worked-bait.ts';

const { hardware } = partsOf(PLAIN_DESIGN);
const part = (code: string, where: string) => warnedPart({ code, where }, hardware);

test('A warning of a hole, a hook or a hanger leads to it', () => {
  expect(part('wall-thin', 'middle hole')).toBe('hole:middle hole');
  expect(part('hook-at-joint', 'aft treble')).toBe('hung:aft treble');
  expect(part('embedment-short', 'belly, fore')).toBe('hanger:belly, fore');
});

test('One of several leads to the first that is named', () => {
  expect(part('hooks-meet', 'fore treble, aft treble')).toBe('hung:fore treble');
  expect(part('hooks-meet', 'aft treble, fore treble')).toBe('hung:aft treble');
  expect(part('embedment-short', 'belly, aft, belly, fore')).toBe('hanger:belly, aft');
  expect(part('embedment-short', 'line tie, belly, aft')).toBe('hanger:line tie');
});

test('A name with a comma is not taken for the one that it begins with', () => {
  const [fore, ...others] = hardware.eyes.filter(({ kind }) => kind === 'hanger');
  const eyes = [{ ...fore, name: 'belly' }, ...others];
  const first = (where: string) => warnedPart({ code: 'embedment-short', where }, { ...hardware, eyes });
  expect(first('belly, fore, belly')).toBe('hanger:belly, fore');
  expect(first('belly, line tie')).toBe('hanger:belly');
});

test('One of the whole, of a link or of the eyes of a joint leads nowhere, nor does one of a part that is gone', () => {
  expect(part('target-missed', 'the whole bait')).toBeNull();
  expect(part('not-level-alone', 'head')).toBeNull();
  expect(part('embedment-short', 'joint 1')).toBeNull();
  expect(part('embedment-short', 'joints 1 and 2, line tie')).toBeNull();
  expect(part('wall-thin', 'no such hole')).toBeNull();
});
