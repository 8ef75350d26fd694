import { describe, expect, test } from 'vitest';
import { floatBody } from '../../../../sim/hydro/float.ts';
import { type SinkParts, sinkBody } from '../../../../sim/sinking/sink.ts';
import { fitDrop } from '../../../../sim/sinking/timed-drop.ts';
import { bodyOf } from '../../../support/float-mesh.ts';
import { ellipsoidMesh } from '../../../support/meshes.ts';

const BODY = bodyOf(ellipsoidMesh([40, 8, 15], 60, 48), 1.02, [0.4, 0, -4]);
const PARTS = { body: BODY, links: [BODY], viscosity: 1 };

function fallOf(parts: SinkParts) {
  const sinking = sinkBody(parts, floatBody(parts.body));
  if (sinking === null) throw new Error('it sinks');
  return sinking;
}

const untimed = fallOf({ ...PARTS, timed: null });
const FOOT = { distance: 304.8, netWet: null };

describe('a timed drop', () => {
  test('as long as was worked out changes nothing but the band', () => {
    const fit = fitDrop(PARTS, { ...FOOT, time: untimed.firstFoot[1] });
    expect(fit).toMatchObject({ kind: 'fitted', isFar: false });
    if (fit.kind !== 'fitted') return;
    expect(fit.timed.factor).toBeCloseTo(1, 6);
    const sinking = fallOf({ ...PARTS, timed: fit.timed });
    expect(sinking.speed[1]).toBeCloseTo(untimed.speed[1], 4);
    expect(sinking.speed[2] - sinking.speed[0]).toBeLessThan(untimed.speed[2] - untimed.speed[0]);
  });

  test.each([0.92, 1.05, 1.2])(
    'of %d times that time is what the fall then takes, and 0.2 s to either side',
    (times) => {
      const time = times * untimed.firstMetre[1];
      const fit = fitDrop(PARTS, { distance: 1000, time, netWet: null });
      if (fit.kind !== 'fitted') throw new Error(fit.kind);
      const { firstMetre } = fallOf({ ...PARTS, timed: fit.timed });
      expect(firstMetre[1]).toBeCloseTo(time, 4);
      expect(firstMetre[0]).toBeCloseTo(time - 0.2, 2);
      expect(firstMetre[2]).toBeCloseTo(time + 0.2, 2);
    },
  );

  test('read as steady speed would have made far more of the drag', () => {
    const time = untimed.firstFoot[1];
    const asSteady = (untimed.speed[1] / (304.8 / time)) ** 2;
    expect(asSteady).toBeGreaterThan(1.4);
  });

  test('is of the bait as it weighed then', () => {
    const heavier = bodyOf(ellipsoidMesh([40, 8, 15], 60, 48), 1.04, [0.4, 0, -4]);
    const drop = { ...FOOT, time: untimed.firstFoot[1], netWet: untimed.netWet };
    const fit = fitDrop({ body: heavier, links: [heavier], viscosity: 1 }, drop);
    if (fit.kind !== 'fitted') throw new Error(fit.kind);
    expect(fit.timed.factor).toBeCloseTo(1, 2);
  });

  test('of a bait that floats as drawn says nothing, unless it says what it weighed', () => {
    const light = bodyOf(ellipsoidMesh([40, 8, 15], 60, 48), 0.95, [0.4, 0, -4]);
    const parts = { body: light, links: [light], viscosity: 1 };
    expect(fitDrop(parts, { ...FOOT, time: 3 })).toEqual({ kind: 'afloat' });
    expect(fitDrop(parts, { ...FOOT, time: 3, netWet: 0.4 }).kind).toBe('fitted');
  });

  test('that cannot be is said to be, with what could', () => {
    const fast = fitDrop(PARTS, { ...FOOT, time: 0.2 });
    expect(fast.kind === 'too-fast' && fast.least).toBeGreaterThan(0.3);
    const slow = fitDrop(PARTS, { ...FOOT, time: 300 });
    expect(slow.kind === 'too-slow' && slow.most).toBeLessThan(60);
    expect(fitDrop(PARTS, { ...FOOT, time: 3 * untimed.firstFoot[1] })).toMatchObject({ kind: 'fitted', isFar: true });
  });

  test('leaves a band no wider than the shape does, however short the drop', () => {
    const fit = fitDrop(PARTS, { distance: 50, time: 1, netWet: null });
    if (fit.kind !== 'fitted' || fit.timed.band === null) throw new Error(fit.kind);
    const [low, mid, high] = fit.timed.band;
    const [least, usual, most] = untimed.dragArea;
    expect(low / mid).toBeGreaterThan((0.95 * least) / usual);
    expect(high / mid).toBeLessThan((1.05 * most) / usual);
  });
});
