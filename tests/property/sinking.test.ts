import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { DesignFile, SetupEntry } from '../../sim/design/file.ts';
import type { FloatingBody } from '../../sim/hydro/body.ts';
import { totalsOf } from '../../sim/hydro/body.ts';
import { floatBody } from '../../sim/hydro/float.ts';
import { createPipeline } from '../../sim/pipeline.ts';
import { type Sinking, sinkBody } from '../../sim/sinking/sink.ts';
import { arbitraryBody, number } from '../support/arbitrary-body.ts';
import { arbitraryDesignFile } from '../support/arbitrary-design.ts';
import { answersOf, soundIssuesOf } from '../support/worked-bait.ts';

const RUNS = { numRuns: Number(process.env.FLOATWRIGHT_RUNS ?? 200), endOnFailure: true };

/** A body made so heavy that it sinks by a share of its water, its way up held. */
function sunk(body: FloatingBody, share: number): FloatingBody {
  const { mass, volume } = totalsOf(body);
  return { ...body, mass: body.mass + (1 + share) * body.waterDensity * volume - mass };
}

function fallOf(body: FloatingBody): Sinking | null {
  return sinkBody({ body, links: [body], viscosity: 1, timed: null }, floatBody(body));
}

/** The same body as it falls with its weight under its buoyancy, where more weight does not turn it. */
function steadied(body: FloatingBody): FloatingBody {
  const { volumeCentre } = totalsOf({ ...body, hung: [] });
  return { ...body, hung: [], outside: [], centre: [volumeCentre[0], volumeCentre[1], volumeCentre[2] - 40] };
}

test('all that sinks has numbers in order, and takes longer to a foot than at its steady speed', () => {
  fc.assert(
    fc.property(arbitraryBody(), number(0.002, 0.3), (body, share) => {
      const sinking = fallOf(sunk(body, share));
      fc.pre(sinking !== null);
      const bands = [sinking.speed, sinking.firstFoot, sinking.firstMetre, sinking.dragArea];
      for (const [low, mid, high] of bands) {
        expect(low).toBeGreaterThan(0);
        expect(mid).toBeGreaterThan(low);
        expect(high).toBeGreaterThan(mid);
        expect(Number.isFinite(high)).toBe(true);
      }
      sinking.speed.forEach((speed, i) => {
        expect(sinking.firstFoot[2 - i]).toBeGreaterThan(304.8 / speed);
      });
      expect(Math.hypot(...sinking.up)).toBeCloseTo(1, 9);
      expect(sinking.addedMass).toBeGreaterThan(0);
    }),
    RUNS,
  );
});

test('heavier never sinks slower, and denser water never makes it sink faster', () => {
  fc.assert(
    fc.property(arbitraryBody(), number(0.02, 0.2), number(0.002, 0.1), (body, share, more) => {
      const plain = sunk(steadied(body), share);
      const slow = fallOf(plain);
      const heavy = fallOf({ ...plain, mass: plain.mass + more * plain.waterDensity * totalsOf(plain).volume });
      const salt = fallOf({ ...plain, waterDensity: plain.waterDensity * (1 + more / 8) });
      fc.pre(slow !== null && heavy !== null);
      // the weight hangs low, and still turns a little as more of it is borne by drag
      expect(heavy.speed[1]).toBeGreaterThan(slow.speed[1]);
      expect(heavy.firstFoot[1]).toBeLessThan(slow.firstFoot[1]);
      if (salt !== null) expect(salt.speed[1]).toBeLessThan(slow.speed[1]);
    }),
    RUNS,
  );
});

/** A random bait asked to sink at a speed, in a shop with a drill or two, and dropped once. */
function askedToSink(): fc.Arbitrary<DesignFile> {
  const drop = fc.record({ distance_mm: number(50, 3000), time_s: number(0.2, 40), net_wet_g: number(0.05, 20) });
  return fc
    .record({ file: arbitraryDesignFile(), sink_mm_s: number(5, 400), drop, own: fc.boolean() })
    .map(({ file, sink_mm_s, drop, own }): DesignFile => {
      const setups = file.setups.map((setup): SetupEntry => {
        const [{ name }] = file.links;
        const { link_targets: _, ...rest } = setup;
        const more = own ? { link_targets: { [name]: { sink_mm_s } } } : {};
        return { ...rest, ...more, target: { sink_mm_s }, drop };
      });
      return { ...file, setups };
    })
    .filter((file) => soundIssuesOf(file).length === 0);
}

/** How the whole bait and each of its links fall, without what takes longer. */
function fallsOf(file: DesignFile): readonly (Sinking | null)[] {
  const falls: (Sinking | null)[] = [];
  for (const { name, outcome } of createPipeline().steps(file, { setup: null, detail: 'full' })) {
    if (name === 'plan') break;
    if ((name === 'sinking' || name === 'assembledSinking') && outcome.status === 'ok') falls.push(outcome.value);
  }
  return falls;
}

test('a random bait asked to sink has aims in order, and numbers that are numbers', () => {
  fc.assert(
    fc.property(askedToSink(), (file) => {
      const { bait, links } = answersOf(file, { detail: 'drag' });
      const { target, drop } = bait;
      const wanted = target.links.reduce((sum, { netWet }) => sum + (netWet ?? Number.NaN), 0);
      expect(target.assembled.netWet).toBeGreaterThan(0);
      // a link's own speed may ask for more than the whole bait is to weigh
      expect(Math.abs(wanted - (target.assembled.netWet ?? 0))).toBeLessThan(links.length === 1 ? 1e3 : 1e-9);
      expect(drop).not.toBeNull();
      const falls = fallsOf(file);
      expect(falls).toHaveLength(links.length + 1);
      for (const sinking of falls) {
        if (sinking === null) continue;
        const { curve, shares, ...rest } = sinking;
        const numbers = JSON.stringify([rest, curve, shares]);
        // what is not a number is null in JSON; the only null is that of an untimed fall
        expect(numbers.replaceAll('"timed":null', '').replaceAll('"band":null', '')).not.toContain('null');
        expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
      }
    }),
    RUNS,
  );
});
