import { describe, expect, test } from 'vitest';
import {
  fallWords,
  firstFootWords,
  sinkingWords,
  speedBandWords,
  speedWords,
  timedDropWords,
} from '../../../../../sim/out/sinking/words.ts';
import { makeSinking } from '../../../../support/make-checked-bait.ts';

const DEGREE = Math.PI / 180;

test('a fall is times first, then speed, then how it lies', () => {
  expect(sinkingWords(makeSinking())).toBe(
    'sinks: first foot in 3.4 s (3.1–3.7), first metre in 9.6 s (8.6–10.6), 115 mm/s (100–130); 1.2° nose-down as it falls',
  );
  expect(firstFootWords(makeSinking())).toBe('in 3.4 s (3.1–3.7)');
  expect(firstFootWords(null)).toBe('does not sink');
});

test('speeds are whole millimetres a second, slow ones to a tenth', () => {
  expect(speedWords(115.4)).toBe('115 mm/s');
  expect(speedWords(8.26)).toBe('8.3 mm/s');
  expect(speedBandWords([8.26, 115.4])).toBe('8.3 to 115 mm/s');
});

test('how it lies is trim and heel, as far as they show', () => {
  const lies = (changes: Parameters<typeof makeSinking>[0]) => fallWords(makeSinking({ trim: 0, ...changes }));
  expect(lies({})).toBe('level as it falls');
  expect(lies({ trim: -2 * DEGREE, heel: 3 * DEGREE })).toBe('2.0° tail low, 3.0° to starboard as it falls');
  expect(lies({ heel: -3 * DEGREE })).toBe('3.0° to port as it falls');
  expect(lies({ neutral: true })).toBe('nothing turns it: it falls as it is let go');
  expect(lies({ settled: false })).toBe('level as it falls, as near as could be found');
});

describe('a timed drop', () => {
  test('is told as a factor on the drag, and doubted where it is far', () => {
    const timed = { factor: 1.234, band: null };
    const said = 'The timed drop makes its drag 1.23 times what its shape would have.';
    expect(timedDropWords({ kind: 'fitted', timed, isFar: false })).toBe(said);
    expect(timedDropWords({ kind: 'fitted', timed, isFar: true })).toContain(`${said} So much is not to be believed`);
  });

  test('that cannot be used says why', () => {
    expect(timedDropWords({ kind: 'too-fast', least: 0.61 })).toContain('it takes 0.61 s');
    expect(timedDropWords({ kind: 'too-slow', most: 41.23 })).toContain('more than 41.2 s');
    expect(timedDropWords({ kind: 'afloat' })).toContain('does not sink');
  });
});
