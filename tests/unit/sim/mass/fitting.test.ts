import { describe, expect, test } from 'vitest';
import type { DesignFile, FittingEntry, TrailingEntry } from '../../../../sim/design/file.ts';
import { goodOf } from '../../../support/change-file.ts';
import { makeDesignFile } from '../../../support/make-design.ts';
import { type AllAnswers, answersOf, outcomesOf } from '../../../support/worked-bait.ts';

/** One piece that floats steadily: an ellipsoid of semi-axes 60, 10, 18 with lead low in it. */
const STEADY = makeDesignFile({ pieces: 1 });

function floated(changes: Partial<DesignFile>): AllAnswers {
  return answersOf({ ...STEADY, ...changes });
}

const PLAIN = floated({});
const EYE: FittingEntry = { name: 'glass eye', x_mm: 14, y_mm: 6, z_mm: 3, mass_g: 0.3 };

describe('a fitting', () => {
  test('heels the bait by its moment over weight times GM, starboard down', () => {
    // small-angle heel m·y/(M·GM), with the height of the weight moved by it: naval architecture's inclining test
    const light = { ...EYE, mass_g: 0.002 };
    const { assembled } = floated({ fittings: [light] }).bait;
    const wanted = (light.mass_g * 6) / (assembled.mass * assembled.gm);
    // turned about the horizontal, which with trim on is a little less than the angle of heel
    expect(-assembled.up[1] / wanted).toBeCloseTo(1, 3);
  });

  test('in a pair heels nothing and weighs twice', () => {
    const { bait, links } = floated({ fittings: [{ ...EYE, pair: true, outside_mm3: 20 }] });
    expect(Math.abs(bait.assembled.heel)).toBeLessThan(1e-9);
    expect(bait.assembled.mass - PLAIN.bait.assembled.mass).toBeCloseTo(0.6, 9);
    const lines = links[0].ledger.lines.filter(({ kind }) => kind === 'fitting');
    expect(lines.map(({ name, at }) => [name, at[1]])).toEqual([
      ['glass eye, starboard', 6],
      ['glass eye, port', -6],
    ]);
    expect(lines[0].source).toContain('weighed');
  });

  test('to port mirrors the same to starboard', () => {
    const heelOf = (y_mm: number) => floated({ fittings: [{ ...EYE, y_mm, outside_mm3: 30 }] }).bait.assembled.heel;
    expect(heelOf(-6)).toBeCloseTo(-heelOf(6), 9);
  });

  test('lightens the bait under water by what it displaces outside the skin', () => {
    const { assembled, water } = floated({ fittings: [{ ...EYE, outside_mm3: 400 }] }).bait;
    expect(assembled.netWet - PLAIN.bait.assembled.netWet).toBeCloseTo(0.3 - 400 * water.density, 9);
  });

  test('over the gap of a joint is refused, beside it is not', () => {
    const soundAt = (x_mm: number) =>
      outcomesOf(makeDesignFile({ fittings: [{ ...EYE, x_mm }] }), {}).bait.sound as {
        status: string;
        issues?: unknown;
      };
    expect(soundAt(60.5)).toMatchObject({
      status: 'failed',
      issues: [{ code: 'hardware/in-a-gap', path: 'fittings.0.x_mm' }],
    });
    expect(soundAt(61.1).status).toBe('ok');
  });
});

describe('a limp tail', () => {
  const HAIR: TrailingEntry = {
    name: 'hair',
    x_mm: 120,
    z_mm: 0,
    mass_g: 0.65,
    density_g_cm3: 1.3,
    air_mm3: [100, 500],
  };

  test('weighs and displaces at its root, with half way between least and most air in it', () => {
    const { bait, links } = floated({ tails: [HAIR] });
    const hair = links[0].ledger.lines.find(({ kind }) => kind === 'tail');
    expect(hair).toMatchObject({ mass: 0.65, at: [120, 0, 0], outsideAt: [120, 0, 0] });
    // 0.65 g at 1.3 g/cm³ is 500 mm³, and 300 mm³ of air
    expect(hair?.outsideVolume).toBeCloseTo(800, 9);
    const change = bait.assembled.netWet - PLAIN.bait.assembled.netWet;
    expect(change).toBeCloseTo(0.65 - 800 * bait.water.density, 9);
  });

  test('says what the most and the least air make of the weight under water', () => {
    const { warnings, assembled, water } = floated({ tails: [HAIR] }).bait;
    const said = warnings.find(({ code }) => code === 'air-in-tail')?.text ?? '';
    const net = (air: number) => `${(assembled.netWet - air * water.density).toFixed(2)} g`;
    expect(said).toContain(net(200));
    expect(said).toContain(net(-200));
  });

  test('that holds no air is not warned of', () => {
    const { air_mm3: _, ...soft } = HAIR;
    expect(floated({ tails: [soft] }).bait.warnings.map(({ code }) => code)).not.toContain('air-in-tail');
  });
});

describe('a sealed air chamber', () => {
  const [setup] = STEADY.setups;
  const [head, tail] = setup.holes;
  const { lead: _, ...empty } = tail;
  const drilled = (air?: { readonly plug_mm: number }, density = 0.6) => {
    const plug = { ...empty, diameter_mm: 6, depth_mm: 10, point_deg: 180, plug_g_cm3: density, ...(air && { air }) };
    return floated({ setups: [{ ...setup, holes: [head, plug] }] });
  };

  test('lifts by the wood of its volume: a plug of wood all the way in weighs that much more', () => {
    const [sealed, plugged] = [drilled({ plug_mm: 4 }), drilled()];
    const volume = sealed.bait.hardware.holes[1].air?.volume ?? 0;
    // a cylinder of 6 mm, the 6 mm that the plug leaves
    expect(volume).toBeCloseTo(Math.PI * 9 * 6, 6);
    expect(plugged.bait.assembled.netWet - sealed.bait.assembled.netWet).toBeCloseTo(0.0006 * volume, 9);
    expect(sealed.links[0].wetted.volume).toBe(plugged.links[0].wetted.volume);
  });

  test('weighs nothing in the ledger, and says so', () => {
    const air = drilled({ plug_mm: 4 }).links[0].ledger.lines.find(({ kind }) => kind === 'air');
    expect(air).toMatchObject({ mass: 0, outsideVolume: 0 });
    expect(air?.source).toContain('air weighs nothing');
  });

  test.each([
    ['shorter than the belly is round', 0.05],
    ['as long as the hole', 10],
  ])('needs a plug that closes it: one %s is refused', (_, plug_mm) => {
    const hole = { ...empty, diameter_mm: 6, depth_mm: 10, point_deg: 180, air: { plug_mm } };
    const { sound } = outcomesOf({ ...STEADY, setups: [{ ...setup, holes: [head, hole] }] }, {}).bait;
    expect(sound).toMatchObject({
      status: 'failed',
      issues: [{ code: 'holes/no-chamber', path: 'setups.0.holes.1.air.plug_mm' }],
    });
  });
});

test('a hanger off the centre plane stands on the skin there, on the belly and at the nose', () => {
  const wire = { wire_mm: 1, bore_mm: 2, shank_mm: 6 };
  const hangers = [
    { name: 'side', on: 'belly' as const, x_mm: 40, across_mm: 4, ...wire },
    { name: 'tie', on: 'nose' as const, z_mm: 2, across_mm: -1.5, ...wire },
  ];
  const [setup] = STEADY.setups;
  const eyes = floated({ hangers, setups: [{ ...setup, hung: [] }] }).bait.hardware.eyes;
  // the ellipsoid (x - 60)²/60² + y²/10² + z²/18² = 1
  for (const { entry, loop } of eyes) {
    const [x, y, z] = entry;
    expect(((x - 60) / 60) ** 2 + (y / 10) ** 2 + (z / 18) ** 2).toBeCloseTo(1, 6);
    expect(loop[1]).toBe(y);
  }
  expect(eyes.map(({ entry }) => entry[1])).toEqual([4, -1.5]);
  expect(goodOf(outcomesOf(STEADY, {}).bait.sound as never)).toBe(true);
});
