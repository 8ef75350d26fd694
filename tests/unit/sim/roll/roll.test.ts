import { describe, expect, test } from 'vitest';
import { floatBody } from '../../../../sim/hydro/float.ts';
import { rollOf } from '../../../../sim/roll/roll.ts';
import { bodyOf } from '../../../support/float-mesh.ts';
import { makeDesignFile } from '../../../support/make-design.ts';
import { barMesh } from '../../../support/meshes.ts';
import { answersOf } from '../../../support/worked-bait.ts';

const DEGREE = Math.PI / 180;

/** The block with so much net ballast 3 mm over its keel. */
function rolled(ballast: number) {
  const mass = 18 + ballast;
  const body = bodyOf(barMesh(60, 20, 30), mass / 36, [0, 0, (-12 * ballast) / mass]);
  return rollOf(body, floatBody(body));
}

describe('a block', () => {
  test('with too little lead lays over to its angle of loll, and its arms begin there', () => {
    const { steadiness, gm, loll, arms, fromBellyUp } = rolled(6);
    expect(steadiness).toBe('lays over');
    expect(gm).toBeCloseTo(-0.333, 2);
    expect((loll ?? 0) / DEGREE).toBeGreaterThan(30);
    expect(arms?.port.limit ?? 1).toBeCloseTo(0, 5);
    expect(fromBellyUp).toBe(true);
  });

  test('with a trace more than stands it up is tender, then steady, then stiff', () => {
    expect([6.6, 7, 8].map((ballast) => rolled(ballast).steadiness)).toEqual(['tender', 'steady', 'steady']);
    expect(rolled(8)).toMatchObject({ loll: null, steadyFrom: 0.2, isAfloat: true });
    expect(rolled(8).width).toBeCloseTo(20, 12);
    expect(rolled(18.5).steadiness).toBe('stiff');
  });

  test('that has a rest belly up stays there', () => {
    // wide and light: as steady upside down
    const body = bodyOf(barMesh(60, 30, 10), 0.4, [0, 0, -1]);
    expect(rollOf(body, floatBody(body)).fromBellyUp).toBe(false);
  });

  test('under water is judged by buoyancy over weight, and belly up lays over', () => {
    const [low, high] = [-3, 3].map((z) => {
      const body = bodyOf(barMesh(60, 20, 30), 1.2, [0, 0, z]);
      return rollOf(body, floatBody(body));
    });
    expect(low).toMatchObject({ isAfloat: false, steadiness: 'steady', loll: null, fromBellyUp: true });
    expect(low.gm).toBeCloseTo(3, 12);
    expect(high.steadiness).toBe('lays over');
    expect(Math.abs(high.loll ?? 0)).toBeCloseTo(Math.PI, 12);
    expect(high.gm).toBeCloseTo(-3, 12);
  });

  test('on its end has no word, and no arms', () => {
    const body = bodyOf(barMesh(80, 10, 10), 0.7, [28, 0, 0]);
    expect(rollOf(body, floatBody(body))).toMatchObject({
      steadiness: null,
      arms: null,
      loll: null,
      fromBellyUp: null,
    });
  });
});

describe('a bait', () => {
  const file = makeDesignFile({ pieces: 2 });
  const { bait, links } = answersOf(file);

  test('has its word from its float: both say the same', () => {
    for (const { roll, float } of links) {
      expect(roll.gm).toBe(float.gmUpright);
      expect(roll.loll === null).toBe(!float.laysOver);
      expect(roll.width).toBe(float.width);
    }
  });

  test('without lead has none to be off its middle, and is told how much would stand each link up', () => {
    const [setup] = file.setups;
    const bare = answersOf({ ...file, setups: [{ ...setup, holes: [] }] });
    expect(bare.bait.assembledRoll.offCentre).toBeNull();
    for (const { roll } of bare.links) {
      expect(roll.offCentre).toBeNull();
      if (roll.steadiness !== null) expect(roll.least?.of).not.toBe('own');
    }
  });

  test('heels to starboard by its lead off the middle: alone by that link’s own, whole by all together most', () => {
    const { offCentre } = bait.assembledRoll;
    if (offCentre === null) throw new Error('the plain bait has lead');
    links.forEach(({ roll }, i) => {
      const joined = offCentre.links[i];
      expect(joined === null).toBe(roll.offCentre === null);
      if (roll.offCentre !== null) expect(roll.offCentre).toBeGreaterThan(0);
      if (joined !== null) expect(joined).toBeLessThanOrEqual(offCentre.all + 1e-9);
    });
  });
});
