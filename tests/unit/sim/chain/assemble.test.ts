import { describe, expect, test } from 'vitest';
import { assemble, chainOf } from '../../../../sim/chain/assemble.ts';
import { floatBody } from '../../../../sim/hydro/float.ts';
import { assembled, type BoxLink, boxChain, rigidOf } from '../../../support/box-chain.ts';

const DEGREE = Math.PI / 180;
const PLAY = { room: 0.4, rise: [0.5, 0.5], jam: 0.5 } as const;

/** Links of 60 mm, 20 wide and 30 high, weighted low; lead is shifted aft by so much in each. */
function links(shifts: readonly number[], mass = 26, aside = 0): readonly BoxLink[] {
  return shifts.map((shift, i) => {
    const from = 64 * i;
    return { from, to: from + 60, wide: 20, high: 30, mass, centre: [from + 30 + shift, aside, -8] as const };
  });
}

describe('a bait whose joints have no play and are held straight', () => {
  test('rests as one rigid piece does', () => {
    const chain = boxChain(links([4, -1, 3]));
    const { straight, start } = assembled(chain);
    for (const link of straight.links) {
      for (const axis of [0, 1, 2] as const) expect(link.up[axis]).toBeCloseTo(start.up[axis], 9);
      expect(link.offset).toBeCloseTo(start.offset as number, 8);
    }
  });

  test('carries what its links lack: the loads of its pins are sums over all that is forward of them', () => {
    const { straight } = assembled(boxChain(links([1, -1])));
    const { load } = straight.joints[0];
    // 26 g moved 1 mm towards the pin, from either side
    expect(load.moment).toBeCloseTo(26, 3);
    expect(load.shear).toBeCloseTo(0, 6);
    expect(load.twist).toBeCloseTo(0, 9);
  });
});

describe('a bait whose links are balanced each alone', () => {
  const chain = boxChain(links([0, 0, 0]), PLAY);

  test('loads no pin, and has no reason to curl', () => {
    const { straight, loose } = assembled(chain);
    for (const { load, stops } of straight.joints) {
      expect(Math.abs(load.shear)).toBeLessThan(1e-6);
      expect(Math.abs(load.moment)).toBeLessThan(1e-5);
      expect(stops).toEqual([]);
    }
    expect(loose).toBeNull();
  });
});

describe('two links that would each dip their tail, and their nose', () => {
  // so that 27 g mm of sag meet at the pin
  const shift = 27 / 26;
  const chain = boxChain(links([shift, -shift]));

  test('are straight on a saddle as sharp as M²/(W GM)', () => {
    const { straight, yawCurve, start } = assembled(chain);
    expect(straight.joints[0].load.moment).toBeCloseTo(27, 3);
    const expected = -(27 ** 2) / (52 * start.gm);
    expect((yawCurve as number) / expected).toBeGreaterThan(0.98);
    expect((yawCurve as number) / expected).toBeLessThan(1.02);
  });

  test('curl when they are let go, up to where the joint stops them, and heel by M sin(yaw)/(W GM)', () => {
    const reach = { port: 8 * DEGREE, starboard: 8 * DEGREE };
    const { loose, start } = assembled(chain, reach);
    const [joint] = loose?.joints ?? [];
    expect(joint.stops).toEqual(['starboard']);
    expect(joint.yaw).toBeCloseTo(8 * DEGREE, 6);
    const heel = (27 * Math.sin(8 * DEGREE)) / (52 * start.gm);
    for (const link of loose?.links ?? []) {
      expect(Math.abs(link.heel) / heel).toBeGreaterThan(0.97);
      expect(Math.abs(link.heel) / heel).toBeLessThan(1.03);
    }
  });

  test('curl the one way that is left where the joint stops where it is straight', () => {
    for (const reach of [
      { port: 0, starboard: 20 * DEGREE },
      { port: 20 * DEGREE, starboard: 0 },
    ]) {
      const { loose } = assembled(chain, reach);
      expect(loose?.converged).toBe(true);
      const yaw = loose?.joints[0].yaw ?? Number.NaN;
      expect(yaw / (reach.starboard - reach.port)).toBeCloseTo(1, 4);
    }
  });

  test('sag by their play when that is held, not more', () => {
    const { straight } = assembled(boxChain(links([shift, -shift]), PLAY));
    expect(straight.joints[0].sag).toBeCloseTo(0.4 / 10, 6);
    expect(straight.joints[0].stops).toContain('loops');
  });
});

describe('a pin of a single loop', () => {
  test('shares the weight of a link that dips with the other by how stiffly both float', () => {
    const shift = 0.05;
    const [one, other] = links([shift, 0]);
    const { straight } = assembled(boxChain([one, other], { ...PLAY, loops: [0], rise: [0, 0], jam: 0.6 }));
    // a push S at the pin lifts the first link by S/k and turns it by S a/c, and the second the other way
    const heave = 0.001 * 60 * 20;
    const trim = 26 * floatBody(rigidOf(boxChain([{ ...one, centre: [30, 0, -8] }]))).gmLong;
    const arm = 32;
    const push = (arm * 26 * shift) / trim / (2 / heave + (2 * arm ** 2) / trim);
    expect(-straight.joints[0].load.shear / push).toBeGreaterThan(0.99);
    expect(-straight.joints[0].load.shear / push).toBeLessThan(1.01);
  });

  test('carries weight and no moment', () => {
    const chain = boxChain(links([0.4, -0.2]), { ...PLAY, loops: [0], jam: 0.6 });
    const { straight } = assembled(chain);
    expect(Math.abs(straight.joints[0].load.moment)).toBeLessThan(1e-3);
    expect(straight.joints[0].sag).toBeGreaterThan(0.01);
  });
});

test('a bait that is the mirror image of another curls, leans and heels the other way', () => {
  const one = assembled(boxChain(links([1.5, -1], 26, 0.3), PLAY));
  const other = assembled(boxChain(links([1.5, -1], 26, -0.3), PLAY));
  const [a, b] = [one.loose ?? one.straight, other.loose ?? other.straight];
  expect(a.joints[0].yaw).toBeCloseTo(-b.joints[0].yaw, 5);
  expect(a.joints[0].lean).toBeCloseTo(-b.joints[0].lean, 5);
  a.links.forEach((link, i) => {
    expect(link.heel).toBeCloseTo(-b.links[i].heel, 5);
    expect(link.trim).toBeCloseTo(b.links[i].trim, 5);
  });
});

test('which link holds the pin does not change how links rest that are stiffly joined', () => {
  const fore = assembled(boxChain(links([2, -1])));
  const aft = assembled(boxChain(links([2, -1]), { holder: 'aft' }));
  fore.straight.links.forEach((link, i) => {
    expect(link.trim).toBeCloseTo(aft.straight.links[i].trim, 9);
  });
});

describe('a bait that falls', () => {
  // 36 cm³ a link: each a gram heavier than its water
  const heavy = links([0, 0], 37).map((link) => ({ ...link, centre: [link.centre[0], 0, -4] as const }));
  const falling = (shares: readonly number[]) => {
    const { bodies, hinges } = boxChain(heavy);
    const drags = heavy.map(({ from, to }, i) => ({ share: shares[i], at: [(from + to) / 2, 0, 0] as const }));
    const chain = chainOf(bodies, hinges, true, drags);
    return assemble(chain, { up: [0, 0, 1], offset: null }, [{ port: 0.5, starboard: 0.5 }]);
  };

  test('loads no pin where each link is borne by its own drag', () => {
    const { straight, loose } = falling([0.5, 0.5]);
    expect(Math.abs(straight.joints[0].load.shear)).toBeLessThan(1e-6);
    expect(Math.abs(straight.joints[0].load.moment)).toBeLessThan(1e-4);
    expect(straight.links.map(({ offset }) => offset)).toEqual([null, null]);
    expect(loose).toBeNull();
  });

  test('hangs the link that is borne less on the one that is borne more, over the pin', () => {
    const { straight } = falling([0.6, 0.4]);
    // 1.2 g of drag under 1 g
    expect(straight.joints[0].load.shear).toBeCloseTo(0.2, 5);
    // the fore link, borne more, comes up by the nose until weight low down rights it
    expect(straight.links[0].trim).toBeLessThan(0);
  });
});
