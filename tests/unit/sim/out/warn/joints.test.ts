import { expect, test } from 'vitest';
import { jointWarnings } from '../../../../../sim/out/warn/joints.ts';
import { makeAssembly, makeFolded, makeJointed, makeJointRest } from '../../../../support/make-checked-bait.ts';
import { quietWarnParts } from '../../../../support/quiet-warn-parts.ts';

const DEGREE = Math.PI / 180;
const PARTS = quietWarnParts();

/** A bait that curls by so many degrees when it is let go, and then heels by so many. */
function curling(yaw: number, heel: number) {
  return makeJointed({
    loose: makeAssembly({
      links: [0, 1].map(() => ({ up: [0, 0, 1], offset: 12, trim: 0, heel: heel * DEGREE })),
      joints: [makeJointRest({ yaw: yaw * DEGREE })],
    }),
  });
}

test('a bait that stays straight and upright, or has no joint, is not warned of', () => {
  expect(jointWarnings(PARTS, makeJointed(), makeFolded(0.2))).toEqual([]);
  expect(jointWarnings(PARTS, null, null)).toEqual([]);
});

test('a bait whose joints the sums did not settle for is warned of first', () => {
  const loose = makeAssembly({ converged: false });
  expect(jointWarnings(PARTS, makeJointed({ loose }), makeFolded())[0]).toMatchObject({ code: 'not-settled' });
});

test('a bait that rolls when it is folded comes first, with how far it lies over', () => {
  const [rolls, curls] = jointWarnings(PARTS, curling(40, 18), makeFolded(0.7));
  expect(rolls).toMatchObject({ code: 'rolls-folded', where: 'the whole bait', unit: 'deg' });
  expect(rolls.number).toBeCloseTo(0.7 / DEGREE, 9);
  expect(curls.code).toBe('curls');
});

test('a bait curls by itself where friction does not hold it and it turns by what is seen', () => {
  expect(jointWarnings(PARTS, curling(40, 18), makeFolded())).toMatchObject([
    { code: 'curls', limit: 10, unit: 'deg' },
  ]);
  // its eyes hold it up to 3° of heel
  expect(jointWarnings(PARTS, curling(40, 2), makeFolded())).toEqual([]);
  expect(jointWarnings(PARTS, curling(6, 18), makeFolded())).toEqual([]);
});

test('a pin whose play is used up by what it carries is told with both angles', () => {
  const joint = makeJointRest({ sag: -2 * DEGREE, load: { shear: 0, moment: -13, twist: 0 }, stops: ['loops'] });
  const warned = jointWarnings(PARTS, makeJointed({ straight: makeAssembly({ joints: [joint] }) }), makeFolded());
  expect(warned).toMatchObject([{ code: 'pin-loaded', where: 'joint 1', unit: 'deg' }]);
  expect(warned[0].number).toBeCloseTo(2, 9);
  expect(warned[0].limit).toBeCloseTo(2, 9);
  expect(warned[0].text).toContain(
    'Joint 1 arches 2.0°, all that its play of 2.0° lets it: its pin carries 13 g mm of arch.',
  );
  // a pin that is hardly loaded, and one with a single loop, which never bears
  const light = { ...joint, load: { shear: 0, moment: -2, twist: 0 } };
  const single = { ...joint, slop: null };
  for (const each of [light, single]) {
    const straight = makeAssembly({ joints: [each] });
    expect(jointWarnings(PARTS, makeJointed({ straight }), makeFolded())).toEqual([]);
  }
});
