import { describe, expect, test } from 'vitest';
import { amountsIn } from '../../../../../sim/index.ts';
import { drawingWords, foldWords, jointRows, limitWords } from '../../../../../src/panels/joints/joint-words.ts';
import { makeJointReach, makeReach } from '../../../../support/make-checked-bait.ts';

const METRIC = amountsIn('mm-g');

describe('a row of the table', () => {
  test('has each way, what touches and where, and what play and coats make of it', () => {
    expect(jointRows(makeReach(), METRIC)).toEqual([
      {
        joint: 'Joint 1',
        port: '30.0°',
        starboard: '32.0°',
        touches: 'the faces',
        where: '54.0 mm from the nose, 9.0 mm out, 2.0 mm down',
        play: '±0.50 mm',
        reach: '27.0 to 33.0° to port, 29.0 to 35.0° to starboard',
        bare: '31.0° to port, 33.0° to starboard',
      },
    ]);
  });

  test('of linked eyes says that it is near the truth only', () => {
    const { play } = makeJointReach();
    const linked = makeJointReach({
      joint: 1,
      hinge: 'linked-eyes',
      approximate: true,
      play: { ...play, moves: [-1.3, 0] },
    });
    expect(jointRows(makeReach([linked]), METRIC)[0]).toMatchObject({
      joint: 'Joint 2, linked eyes',
      port: 'about 30.0°',
      play: '1.30 mm of slack',
    });
  });

  test('has play of unlike lengths in full, and inches where the page has them', () => {
    const { play } = makeJointReach();
    const joint = makeJointReach({ play: { ...play, moves: [-0.2, 0.5] } });
    expect(jointRows(makeReach([joint]), METRIC)[0]?.play).toBe('-0.20 mm to +0.50 mm');
    expect(jointRows(makeReach([joint]), amountsIn('in-oz'))[0]?.where).toBe(
      '2.126 in from the nose, 0.354 in out, 0.079 in down',
    );
  });

  test('names what stops either side where that is not the same, and nothing where nothing does', () => {
    const free = { angle: Math.PI, touch: null, at: null };
    const joint = makeJointReach({ starboard: free });
    expect(jointRows(makeReach([joint]), METRIC)[0]).toMatchObject({
      starboard: '180.0°',
      touches: 'the faces to port, nothing to starboard',
    });
    expect(jointRows(makeReach([makeJointReach({ port: free, starboard: free })]), METRIC)[0]).toMatchObject({
      touches: 'nothing',
      where: '',
    });
  });
});

test('the fold of the whole bait is a sentence', () => {
  expect(foldWords(makeReach(), 'mm-g')).toEqual([
    'Whole bait: folds 30.0° to port, 32.0° to starboard; it does not turn right round, which takes 180°.',
  ]);
});

test('the drawing is told joint by joint', () => {
  const joints = [0, 1].map((joint) => makeJointReach({ joint }));
  expect(drawingWords(makeReach(joints))).toBe(
    'The bait from above, each link turned as far as it swings: joint 1 30.0° to port, 32.0° to starboard; joint 2 30.0° to port, 32.0° to starboard.',
  );
});

test('an angle in the drawing has a decimal where there is room for it', () => {
  const { port } = makeJointReach();
  expect([limitWords(port, false), limitWords(port, true)]).toEqual(['30.0°', '30°']);
});
