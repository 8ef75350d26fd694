import { describe, expect, test } from 'vitest';
import { meetingWords, reachLines } from '../../../../sim/out/reach-words.ts';
import type { Surface } from '../../../../sim/reach/slice.ts';
import { makeJointReach, makeReach } from '../../../support/make-checked-bait.ts';

const angle = (degrees: number) => (degrees * Math.PI) / 180;
const SAME = makeJointReach({
  port: { angle: angle(31), touch: ['face', 'face'], at: [54, -9, -2] },
  starboard: { angle: angle(31.01), touch: ['face', 'face'], at: [54, 9, -2] },
  play: {
    moves: [-0.3, 0.5],
    least: { port: angle(28), starboard: angle(28) },
    most: { port: angle(33), starboard: angle(33) },
  },
  bare: {
    port: { angle: angle(32), touch: ['face', 'face'], at: [54, -9, -2] },
    starboard: { angle: angle(32), touch: ['face', 'face'], at: [54, 9, -2] },
  },
});

describe('how a joint swings', () => {
  test('is said for either side at once where both are alike', () => {
    expect(reachLines(makeReach([SAME]))).toEqual([
      'joint 1: 31.0° to either side; the faces touch first, at x 54.0, y -9.0, z -2.0.',
      '  28.0 to 33.0° over -0.30 to +0.50 mm of play on the pin; 32.0° to either side without its coats.',
      'whole bait: folds 31.0° to either side; it does not turn right round, which takes 180°.',
    ]);
  });

  test('is said for each where they are not', () => {
    expect(reachLines(makeReach())).toEqual([
      'joint 1: 30.0° to port, 32.0° to starboard; the faces touch first, at x 54.0, y -9.0, z -2.0.',
      '  27.0 to 33.0° to port, 29.0 to 35.0° to starboard over ±0.50 mm of play on the pin; 31.0° to port, 33.0° to starboard without its coats.',
      'whole bait: folds 30.0° to port, 32.0° to starboard; it does not turn right round, which takes 180°.',
    ]);
  });

  test('names what stops either side where that is not the same', () => {
    const joint = makeJointReach({ starboard: { angle: angle(32), touch: ['slot', 'eye'], at: [58, 3, 8] } });
    expect(reachLines(makeReach([joint]))[0]).toContain(
      'to port the faces touch first, at x 54.0, y -9.0, z -2.0; to starboard slot cheek and shank touch first, at x 58.0, y 3.0, z 8.0.',
    );
  });

  test('on linked eyes is said to be near enough only, with their slack', () => {
    const linked = {
      ...SAME,
      hinge: 'linked-eyes' as const,
      approximate: true,
      play: { ...SAME.play, moves: [-1.3, 0] as const },
    };
    const [first, second] = reachLines(makeReach([linked]));
    expect(first).toContain('31.0° to either side, near enough: linked eyes turn about their middle only roughly;');
    expect(second).toContain('over 1.3 mm of slack in its eyes');
  });

  test('that nothing stops is half a turn', () => {
    const free = { angle: Math.PI, touch: null, at: null };
    const [line] = reachLines(makeReach([makeJointReach({ port: free, starboard: free })]));
    expect(line).toBe('joint 1: 180.0° to either side; nothing touches: it turns right round.');
  });
});

test('links that are no neighbours and meet are said once where both sides are alike', () => {
  const { joints } = makeReach([SAME]);
  const curl = { fold: angle(200), joints: angle(260.4), far: { links: [0, 3], at: [2, -1, 0.5] } } as const;
  expect(reachLines({ joints, whole: { port: curl, starboard: curl, turnsRound: true } }).slice(2)).toEqual([
    'whole bait: folds 200.0° to either side; it can turn right round.',
    '  Links 1 and 4 meet there, at x 2.0, y -1.0, z 0.5 of link 1; its joints alone would fold 260.4°.',
  ]);
});

test.each([
  ['face', 'face', 'the faces'],
  ['slot', 'face', 'the faces'],
  ['skin', 'face', 'face and flank'],
  ['skin', 'skin', 'the flanks'],
  ['knuckle', 'knuckle', 'knuckle and hollow'],
  ['knuckle', 'skin', 'knuckle and flank'],
  ['eye', 'knuckle', 'slot cheek and shank'],
  ['slot', 'eye', 'slot cheek and shank'],
  ['skin', 'eye', 'flank and shank'],
  ['fin', 'fin', 'the fins'],
  ['fin', 'skin', 'fin and flank'],
  ['fin', 'eye', 'fin and shank'],
  ['hanger', 'skin', 'hanger and flank'],
  ['hanger', 'fin', 'hanger and fin'],
] as const)('%s on %s is "%s"', (a, b, words) => {
  expect(meetingWords([a, b] as readonly [Surface, Surface])).toBe(words);
  expect(meetingWords([b, a] as readonly [Surface, Surface])).toBe(words);
});
