import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Hole } from '../../sim/design/design.ts';
import type { DesignFile, HoleEntry } from '../../sim/design/file.ts';
import { hungShare, leadShare } from '../../sim/equations/balance.ts';
import { ballastNet, ballastStation, ballastWanted, lineMass } from '../../sim/equations/ballast.ts';
import type { Equation, SymbolUnit } from '../../sim/equations/equation.ts';
import { BM, floatingVolume, GM, tipAngle } from '../../sim/equations/floating.ts';
import { pointHeight, pointVolume, roundVolume } from '../../sim/equations/parts.ts';
import { freshWater } from '../../sim/equations/water.ts';
import type { FloatingBody } from '../../sim/hydro/body.ts';
import { floatBody } from '../../sim/hydro/float.ts';
import { placeHole } from '../../sim/mass/hole.ts';
import { sumsPage } from '../../sim/out/sums/page.ts';
import { freshWaterDensity, TANAKA } from '../../sim/tables/waters.ts';
import { Refusal } from '../../src/cli/exit.ts';
import { arbitraryDesignFile } from '../support/arbitrary-design.ts';
import { plankHull } from '../support/bodies.ts';
import { treeOf, WATER } from '../support/float-mesh.ts';
import { makeDesignFile } from '../support/make-design.ts';
import { barMesh } from '../support/meshes.ts';
import { printedSums, ROUNDED } from '../support/printed-sums.ts';
import { casesOf, checkedBaitOf, withUnits } from '../support/sums-of.ts';
import { answersOf } from '../support/worked-bait.ts';

/** Each run prints and reads back a whole page: a tenth of what cheaper laws get. */
const PAGES = { numRuns: Math.ceil(Number(process.env.FLOATWRIGHT_RUNS ?? 200) / 10) };
const RUNS = { numRuns: Number(process.env.FLOATWRIGHT_RUNS ?? 200) };

/** A formula with plain numbers put in, each in the unit that its symbol has, worked out by mathjs with units. */
function got<Name extends string>(equation: Equation<Name>, values: Readonly<Record<Name, number>>): number {
  const amounts = Object.entries<number>(values).map(([name, value]) => {
    const unit: SymbolUnit = equation.uses[name as Name].unit;
    return [name, { value, unit, origin: 'any', column: null }] as const;
  });
  return withUnits(equation.formula, Object.fromEntries(amounts), equation.gives.unit);
}

function between(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true });
}

test('the page of any bait that can be made adds up as printed and agrees with the tool, units and all', async () => {
  let made = 0;
  await fc.assert(
    fc.asyncProperty(arbitraryDesignFile(), async (file) => {
      const bait = baitOrNone(file);
      if (bait === null) return;
      made++;
      const page = await sumsPage(bait, null);
      expect(page).not.toMatch(/NaN|undefined|Infinity/);
      expect(printedSums(page).filter(({ missed }) => !(missed <= ROUNDED))).toEqual([]);
      for (const { equation, label, values, result } of casesOf(bait)) {
        const off = Math.abs(withUnits(equation.formula, values, result.unit) - result.value);
        // an angle is the difference of two near points, which the solver leaves 1e-8 of a length apart
        expect(off, `${equation.id} ${label}`).toBeLessThan(
          result.unit === 'deg' ? 1e-3 : 1e-6 * (1 + Math.abs(result.value)),
        );
      }
    }),
    PAGES,
  );
  expect(made).toBeGreaterThan(0.3 * PAGES.numRuns);
});

function baitOrNone(file: DesignFile) {
  try {
    return checkedBaitOf(file);
  } catch (fault) {
    if (fault instanceof Refusal) return null;
    throw fault;
  }
}

describe('a formula of the page is what the tool does', () => {
  test('for the density of water at any temperature', () => {
    const { a1: a_1, a2: a_2, a3: a_3, a4: a_4, a5 } = TANAKA;
    fc.assert(
      fc.property(between(-2, 40), (t) => {
        expect(got(freshWater, { t, a_1, a_2, a_3, a_4, a_5: a5 / 1e6 })).toBeCloseTo(freshWaterDensity(t), 15);
      }),
      RUNS,
    );
  });

  test('for the wood that a drill takes out of a plank', () => {
    const plank = plankHull(30, 40);
    fc.assert(
      fc.property(between(3, 12), between(5, 20), between(60, 170), (diameter, depth, alpha) => {
        const hole: Hole = {
          name: 'hole',
          from: 'belly',
          x: 5e6,
          across: 0,
          diameter,
          depth,
          point: (alpha * Math.PI) / 180,
          lead: null,
          air: null,
          plugDensity: 0.00115,
          done: false,
        };
        const placed = placeHole(plank, hole, 0);
        const p = got(pointHeight, { d: diameter, alpha });
        expect(p).toBeCloseTo(placed.pointDepth, 9);
        const volume = got(pointVolume, { d: diameter, p }) + got(roundVolume, { d: diameter, l: depth });
        // the plank's faces are flat to a billionth
        expect(volume / placed.volume).toBeCloseTo(1, 6);
      }),
      RUNS,
    );
  });

  test('for what a filled hole brings to a link, and what a further gram of lead counts for', () => {
    const wood = between(0.25, 0.8);
    fc.assert(
      fc.property(wood, between(0.5, 2.5), between(7, 11.3), between(0.9, 1.5), (density, mass, metal, plug) => {
        const linkOf = (holes: readonly HoleEntry[]) => {
          const [setup] = PLAIN.setups;
          const lead = [{ name: 'fill', kind: 'filled', density_g_cm3: metal } as const];
          const setups = [{ ...setup, holes, hung: [] }];
          return answersOf({ ...PLAIN, coats: [], wood: { density_g_cm3: density }, shop: { lead }, setups }, DRAG);
        };
        const hole = { name: 'hole', from: 'belly', x_mm: 24, diameter_mm: 8, depth_mm: 10, point_deg: 180 } as const;
        const filled = linkOf([{ ...hole, lead: { of: 'fill', mass_g: mass }, plug_g_cm3: plug }]);
        const bare = linkOf([]).links[0].ledger.mass;
        const [placed] = filled.bait.hardware.holes;
        const densities = { rho_l: metal / 1000, rho_w: density / 1000, rho_p: plug / 1000 };
        const net = got(ballastNet, { ...densities, v_l: placed.lead?.volume ?? 0, v_p: placed.plug.volume });
        expect(filled.links[0].ledger.mass - bare).toBeCloseTo(net, 9);
        // a plug of wood is no plug: what is left is the lead alone
        const plugged = linkOf([{ ...hole, lead: { of: 'fill', mass_g: mass }, plug_g_cm3: density }]);
        const share = got(leadShare, { rho_l: densities.rho_l, rho_w: densities.rho_w });
        expect(plugged.links[0].ledger.mass - bare).toBeCloseTo(share * mass, 9);
      }),
      { numRuns: Math.ceil(RUNS.numRuns / 10) },
    );
  });

  test('for what a hook counts for when it hangs in the water', () => {
    fc.assert(
      fc.property(between(0.2, 10), between(0.0011, 0.02), (mass, density) => {
        const item = { mass, volume: mass / density, eye: [0, 0, -10], hang: 20 } as const;
        const more = floatBody({ ...BOX, hung: [item] }).netWet - floatBody(BOX).netWet;
        expect(more).toBeCloseTo(got(hungShare, { rho_h: density, rho: WATER }) * mass, 8);
      }),
      RUNS,
    );
  });

  test('for the volume and the metacentric height of a box', () => {
    const sizes = fc.record({ l: between(40, 120), w: between(15, 40), h: between(10, 40), share: between(0.2, 0.9) });
    fc.assert(
      fc.property(sizes, ({ l, w, h, share }) => {
        const m = share * WATER * l * w * h;
        // weight low enough to stand up
        const low = -0.3 * h;
        const body = { ...BOX, trees: [treeOf(barMesh(l, w, h))], mass: m, centre: [0, 0, low] } as const;
        const float = floatBody(body);
        const V = got(floatingVolume, { m, rho: WATER });
        const draft = V / (l * w);
        const height = (moment: number) => got(GM, { KB: draft / 2, BM: got(BM, { I: moment, V }), KG: h / 2 + low });
        fc.pre(height((l * w ** 3) / 12) > 0.1 && height((w * l ** 3) / 12) > 0.1);
        expect(float.displaced).toBeCloseTo(V, 4);
        expect(float.gm).toBeCloseTo(height((l * w ** 3) / 12), 6);
        expect(float.gmLong).toBeCloseTo(height((w * l ** 3) / 12), 6);
      }),
      RUNS,
    );
  });

  test('for the angle that a small hook tips a box by, the better the smaller the hook', () => {
    fc.assert(
      fc.property(between(-20, 20), between(0.2, 1), (ahead, mass) => {
        fc.pre(Math.abs(ahead) > 2);
        const [large, small] = [mass, mass / 8].map((each) => {
          const float = floatBody({ ...BOX, hung: [{ mass: each, volume: 0, eye: [-ahead, 0, 0], hang: 20 }] });
          const tip = got(tipAngle, { w: each, d: ahead, m: float.mass, R: float.gmLong });
          return Math.abs(tip / ((float.trim * 180) / Math.PI) - 1);
        });
        expect(large).toBeLessThan(0.1);
        expect(small).toBeLessThan(Math.max(large / 4, 1e-4));
      }),
      RUNS,
    );
  });

  test('for the ballast that a waterline wants and its station: so loaded, the box rides there, and level', () => {
    const wish = fc.record({ draft: between(8, 16), rest: between(4, 12), off: between(-3, 3) });
    fc.assert(
      fc.property(wish, ({ draft, rest, off }) => {
        const m_a = got(lineMass, { rho: WATER, V_a: 80 * 30 * draft });
        const n_a = got(ballastWanted, { m_a, m_r: rest });
        const x_a = got(ballastStation, { m_a, x_B: 0, m_r: rest, x_r: off, n_a });
        const centre = [(rest * off + n_a * x_a) / m_a, 0, -8] as const;
        const float = floatBody({ ...BOX, mass: rest + n_a, centre });
        expect(float.draft).toBeCloseTo(draft, 6);
        expect(float.trim).toBeCloseTo(0, 6);
      }),
      // (regression) a station so near 0 that its reciprocal is none
      { ...RUNS, examples: [[{ draft: 10 / 1.01, rest: 4, off: 1e-300 }]] },
    );
  });
});

const DRAG = { detail: 'drag' } as const;
const PLAIN = makeDesignFile();
const BOX: FloatingBody = {
  trees: [treeOf(barMesh(80, 30, 20))],
  waterDensity: WATER,
  mass: 24,
  centre: [0, 0, -5],
  outside: [],
  hung: [],
};
