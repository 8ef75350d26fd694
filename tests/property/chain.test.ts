import fc from 'fast-check';
import { expect, test } from 'vitest';
import { energyOf, groundOf, JOINT, ROOT, stepped, straightIn } from '../../sim/chain/system.ts';
import { floatBody } from '../../sim/hydro/float.ts';
import { number } from '../support/arbitrary-body.ts';
import { assembled, type BoxLink, boxChain, rigidOf } from '../support/box-chain.ts';

const RUNS = { numRuns: Number(process.env.FLOATWRIGHT_RUNS ?? 60) };

/** Two to four boxes of a bait, each lighter than its water and weighted low, none quite balanced. */
const baits = fc
  .array(
    fc.record({
      long: number(30, 80),
      wide: number(14, 26),
      high: number(20, 44),
      share: number(0.5, 0.9),
      forward: number(-4, 4),
      aside: number(-0.4, 0.4),
      low: number(0.2, 0.4),
    }),
    { minLength: 2, maxLength: 4 },
  )
  .map((parts) => {
    let from = 0;
    return parts.map(({ long, wide, high, share, forward, aside, low }): BoxLink => {
      const to = from + long;
      const mass = share * 0.001 * long * wide * high;
      const link: BoxLink = { from, to, wide, high, mass, centre: [(from + to) / 2 + forward, aside, -low * high] };
      from = to + 3;
      return link;
    });
  });

const hinges = fc.record({
  holder: fc.constantFrom('fore' as const, 'aft' as const),
  room: number(0, 0.6),
  loops: fc.constantFrom([-9, 9], [-6, 7], [0], [-8, 0, 8]),
  rise: fc.constantFrom([0, 0] as const, [0.3, 0.5] as const, [0, 0.6] as const),
});

test('the slopes and curvatures of a jointed bait are those of its energy, at any fold', () => {
  const steps = fc.array(number(-0.2, 0.2), { minLength: 30, maxLength: 30 });
  fc.assert(
    fc.property(baits, hinges, steps, number(-0.6, 0.6), (links, hinge, offsets, yaw) => {
      const chain = boxChain(links, hinge);
      const { up, offset } = floatBody(rigidOf(chain));
      fc.pre(offset !== null);
      const count = ROOT.size + JOINT.size * chain.hinges.length;
      const off = offsets.slice(0, count).map((step, k) => ((k - ROOT.size) % JOINT.size === JOINT.yaw ? yaw : step));
      const state = stepped(straightIn(up, offset as number, chain.hinges.length), [10, 1, 0], off);
      const ground = groundOf(chain, state);
      const small = 1e-4;
      for (let k = 0; k < count; k++) {
        const by = (sign: number) =>
          stepped(
            state,
            ground.about,
            off.map((_, i) => (i === k ? sign * small : 0)),
          );
        const [more, less] = [by(1), by(-1)];
        const slope = (energyOf(chain, more) - energyOf(chain, less)) / (2 * small);
        expect(Math.abs(slope - ground.slope[k])).toBeLessThan(2e-4 * (1 + Math.abs(slope)));
        // where the root tilts its pivot moves with the water, so its own curvature is told about another point
        if (k < ROOT.size) continue;
        const [after, before] = [groundOf(chain, more).slope, groundOf(chain, less).slope];
        for (let j = ROOT.size; j < count; j++) {
          const curve = (after[j] - before[j]) / (2 * small);
          expect(Math.abs(curve - ground.curve[k * count + j])).toBeLessThan(0.02 * (5 + Math.abs(curve)));
        }
      }
    }),
    RUNS,
  );
});

test('a jointed bait rests where nothing pulls that its play and its stops do not hold', () => {
  let curled = 0;
  fc.assert(
    fc.property(baits, hinges, (links, hinge) => {
      const chain = boxChain(links, hinge);
      const start = floatBody(rigidOf(chain));
      fc.pre(start.state === 'floats' && Math.max(Math.abs(start.trim), Math.abs(start.heel)) < 0.6);
      const { straight, loose } = assembled(chain);
      expect(straight.converged).toBe(true);
      const weight = links.reduce((sum, { mass }) => sum + mass, 0);
      // held straight it can only come lower than in one piece
      const { joints } = straight;
      const pitched = joints.map(
        ({ sag, shift }) => Math.hypot(...shift) + Math.max(...chain.hinges[0].loops) * Math.abs(sag),
      );
      for (const off of pitched) expect(off).toBeLessThan(3 * chain.hinges[0].room + 20 * chain.hinges[0].jam + 1e-9);
      if (loose === null) return;
      curled++;
      expect(loose.energy).toBeLessThan(straight.energy + 1e-9 * weight);
      expect(loose.converged).toBe(true);
      for (const { yaw } of loose.joints) expect(Math.abs(yaw)).toBeLessThan(0.6 + 1e-9);
      // what keeps a pin from turning is its stop, or there is nothing that turns it
      expect(Number.isFinite(loose.energy)).toBe(true);
    }),
    RUNS,
  );
  expect(curled).toBeGreaterThan(0.2 * RUNS.numRuns);
});
