import { describe, expect, test } from 'vitest';
import type { CoatEntry, DesignFile } from '../../../../sim/design/file.ts';
import { type Ledger, type LedgerKind, type LedgerLine, writeLedger } from '../../../../sim/mass/ledger.ts';
import { measureSolid, meshLink, wetLink } from '../../../../sim/mesh/wetted.ts';
import { PLAIN_DESIGN } from '../../../support/make-design.ts';
import { answersOf, partsOf } from '../../../support/worked-bait.ts';

/** Ledgers of the plain bait, some fields of its file changed. */
function ledgersOf(changes: Partial<DesignFile> = {}): readonly Ledger[] {
  const { design, setup, hull, links, hardware } = partsOf({ ...PLAIN_DESIGN, ...changes });
  return links.map((spec, index) => {
    const mine = (item: { readonly link: number }) => item.link === index;
    const mesh = meshLink(hull, spec, 'drag');
    return writeLedger({
      link: design.links[index],
      wood: design.wood,
      coats: setup.coats,
      solid: measureSolid(mesh),
      wetted: wetLink(hull, spec, 'drag', mesh, setup.coats),
      hardware: {
        eyes: hardware.eyes.filter(mine),
        pins: hardware.pins.filter(mine),
        holes: hardware.holes.filter(mine),
        fittings: hardware.fittings.filter(mine),
        fins: hardware.fins.filter(mine),
        finFaults: hardware.finFaults,
      },
    });
  });
}

function line(ledger: Ledger, kind: LedgerKind, name?: string): LedgerLine {
  const found = ledger.lines.find((one) => one.kind === kind && (name === undefined || one.name === name));
  if (found === undefined) throw new Error(`no line for ${name ?? kind}`);
  return found;
}

const [head, tail] = ledgersOf();

describe('a ledger', () => {
  test('has one line for each thing fixed to its link, wood first', () => {
    expect(head.lines.map(({ kind, name }) => `${kind}: ${name}`)).toEqual([
      'wood: wood',
      'soak: sealer',
      'coat: epoxy',
      'hanger: line tie',
      'hanger: belly, fore',
      'pin: joint 1, pin',
      'lead: head hole',
      'plug: head hole, plug',
    ]);
    expect(tail.lines.map(({ kind, name }) => `${kind}: ${name}`)).toEqual([
      'wood: wood',
      'soak: sealer',
      'coat: epoxy',
      'eye: joint 1, eye 1',
      'eye: joint 1, eye 2',
      'hanger: belly, aft',
      'lead: middle hole',
      'plug: middle hole, plug',
    ]);
  });

  test('adds up: masses to the mass, moments to the centre', () => {
    for (const { lines, mass, centre } of [head, tail]) {
      expect(mass).toBeCloseTo(
        lines.reduce((sum, one) => sum + one.mass, 0),
        12,
      );
      for (const axis of [0, 1, 2]) {
        const moment = lines.reduce((sum, one) => sum + one.mass * one.at[axis], 0);
        expect(centre[axis]).toBeCloseTo(moment / mass, 12);
      }
    }
  });

  test('holds nothing that hangs: a hook ten times as heavy changes no ledger', () => {
    const [setup] = PLAIN_DESIGN.setups;
    const hung = setup.hung.map((hook) => ({ ...hook, mass_g: 20 }));
    expect(ledgersOf({ setups: [{ ...setup, hung }] })).toEqual([head, tail]);
    expect(ledgersOf({ setups: [{ ...setup, hung: [] }] })).toEqual([head, tail]);
  });

  test('says where every number comes from', () => {
    for (const { source } of [...head.lines, ...tail.lines]) expect(source).toMatch(/\S{3}/);
    expect(line(head, 'hanger').source).toContain('7.85 g/cm³');
  });
});

describe('wood', () => {
  const { links, hull, hardware } = partsOf(PLAIN_DESIGN);

  test('is what is left of the shape: less slots, holes, shanks and pin bores', () => {
    const solid = measureSolid(meshLink(hull, links[0], 'drag'));
    const shanks = 2 * Math.PI * 0.75 ** 2 * 12;
    // the pin is 24 mm long, 2.5 mm of it in each of two slots
    const bore = Math.PI * (24 - 5);
    const [hole] = hardware.holes;
    expect(line(head, 'wood').mass).toBeCloseTo((solid.volume - shanks - bore - hole.volume) * 0.0006, 9);
  });

  test('has its centre moved away from what was taken out', () => {
    const solid = measureSolid(meshLink(hull, links[0], 'drag'));
    const [setup] = PLAIN_DESIGN.setups;
    const [undrilled] = ledgersOf({ setups: [{ ...setup, holes: [] }] });
    const [hole] = hardware.holes;
    const [with_, without] = [line(head, 'wood'), line(undrilled, 'wood')];
    expect(without.mass - with_.mass).toBeCloseTo(hole.volume * 0.0006, 9);
    for (const axis of [0, 1, 2]) {
      const moment = without.mass * without.at[axis] - with_.mass * with_.at[axis];
      expect(moment).toBeCloseTo(hole.volume * 0.0006 * hole.centre[axis], 8);
    }
    expect(solid.volume * 0.0006).toBeGreaterThan(without.mass);
  });

  test('of a link that was weighed apart has its own density and says so', () => {
    const [own, other] = ledgersOf({ links: [{ name: 'head', density_g_cm3: 0.3 }, { name: 'tail' }] });
    expect(line(own, 'wood').mass).toBeCloseTo(line(head, 'wood').mass / 2, 9);
    expect(line(own, 'wood').source).toContain('this link');
    expect(other).toEqual(tail);
  });

  test('that is denser never makes a link lighter', () => {
    const masses = [0.1, 0.2, 0.35, 0.6, 0.9, 1.3].map((density_g_cm3) =>
      ledgersOf({ wood: { density_g_cm3 } }).map(({ mass }) => mass),
    );
    for (const [i, [fore, aft]] of masses.slice(1).entries()) {
      expect(fore).toBeGreaterThan(masses[i][0]);
      expect(aft).toBeGreaterThan(masses[i][1]);
    }
  });
});

describe('coats', () => {
  function coated(...coats: CoatEntry[]): readonly Ledger[] {
    return ledgersOf({ coats });
  }

  test('that soak in weigh a share of the wood, more of it in end grain', () => {
    const soak = line(head, 'soak');
    expect(soak.mass).toBeCloseTo(0.04 * line(head, 'wood').mass, 12);
    const { links, hull } = partsOf(PLAIN_DESIGN);
    const [ledger] = coated({ name: 'oil', soak_percent: 30 });
    const { soakCentre } = measureSolid(meshLink(hull, links[0], 'drag'));
    expect(line(ledger, 'soak').at).toEqual(soakCentre);
    expect(line(ledger, 'soak').source).toContain('4 times as thick in end grain');
    expect(soak.outsideVolume).toBe(0);
  });

  test('that soak in by area weigh that for each square metre of bare wood, more of it in end grain', () => {
    const { links, hull } = partsOf(PLAIN_DESIGN);
    const [ledger] = coated({ name: 'oil', soak_g_m2: 30 });
    const { area, soakCentre } = measureSolid(meshLink(hull, links[0], 'drag'));
    // 30 g/m² is 30e-6 g/mm²
    expect(line(ledger, 'soak').mass).toBeCloseTo(area * 30e-6, 12);
    expect(line(ledger, 'soak').at).toEqual(soakCentre);
    expect(line(ledger, 'soak').source).toContain('4 times as thick in end grain');
  });

  test('that dry as a film weigh the volume they add', () => {
    const { links, hull, setup } = partsOf(PLAIN_DESIGN);
    const mesh = meshLink(hull, links[0], 'drag');
    const [film] = wetLink(hull, links[0], 'drag', mesh, setup.coats).films;
    expect(line(head, 'coat').mass).toBeCloseTo(film.volume * 0.00115, 12);
    // about area times thickness: 0.2 mm on the skin, the faces masked
    const { area } = measureSolid(mesh);
    expect(film.volume).toBeGreaterThan(0.8 * 0.2 * area * 0.8);
    expect(film.volume).toBeLessThan(0.2 * area);
  });

  test('that leave faces masked differ from those that cover all by the faces and slots alone', () => {
    const films = (['all', 'skin'] as const).map((covers) => {
      const entry: CoatEntry = { name: 'paint', thickness_mm: 0.2, density_g_cm3: 1.2, covers };
      const { hull, links, setup } = partsOf({ ...PLAIN_DESIGN, coats: [entry] });
      const mass = line(coated(entry)[0], 'coat').mass;
      const mesh = meshLink(hull, links[0], 'full');
      return { mass, wetted: wetLink(hull, links[0], 'full', mesh, setup.coats) };
    });
    const [all, skin] = films;
    // the head's face at 59 is an ellipse of 10 by 18 but for a ten-thousandth, grown by 0.2 all round: A + P t + π t²
    // (perimeter by Ramanujan's second approximation, 1914, good to a millionth here)
    const [a, b, t] = [10, 18, 0.2];
    const h = ((a - b) / (a + b)) ** 2;
    const perimeter = Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
    const face = t * (Math.PI * a * b + perimeter * t + Math.PI * t * t);
    // each of two slots, 7.5 by 2.5 and 7.5 deep: narrower by two coats, its floor and its mouth both one further aft
    const slots = 2 * (7.5 * 2.5 * 7.5 - 7.1 * 2.1 * 7.5);
    expect((all.wetted.volume - skin.wetted.volume) / (face + slots)).toBeCloseTo(1, 3);
    // ledgers here are of the coarse mesh
    expect((all.mass - skin.mass) / ((face + slots) * 1.2e-3)).toBeCloseTo(1, 2);
  });

  test('each find their own film, also between others that soak in', () => {
    const [ledger] = coated(
      { name: 'primer', thickness_mm: 0.1, density_g_cm3: 1.4 },
      { name: 'oil', soak_percent: 5 },
      { name: 'varnish', thickness_mm: 0.3, density_g_cm3: 1.1, covers: 'skin' },
    );
    const [primer, varnish] = ['primer', 'varnish'].map((name) => line(ledger, 'coat', name));
    // three times as thick, on nearly as much surface
    expect(varnish.mass / 1.1 / (primer.mass / 1.4)).toBeGreaterThan(2.2);
    expect(varnish.mass / 1.1 / (primer.mass / 1.4)).toBeLessThan(3.1);
  });
});

describe('hardware', () => {
  test('displaces outside the wood what stands outside it, and only that', () => {
    const outside = [head, tail].flatMap(({ lines }) => lines.filter((one) => one.outsideVolume > 0));
    expect(outside.map(({ kind }) => kind)).toEqual(['hanger', 'hanger', 'pin', 'eye', 'eye', 'hanger']);
  });

  test('of an eye has its centre between loop and shank, each by its wire', () => {
    const eye = line(head, 'hanger', 'belly, fore');
    const loop = Math.PI ** 2 * 0.25 * 1.5 ** 2 * 4.5;
    const shank = Math.PI * 0.75 ** 2 * 12;
    const skin = -18 * Math.sqrt(1 - 0.16);
    expect(eye.mass).toBeCloseTo((loop + shank) * 0.00785, 10);
    expect(eye.at[2]).toBeCloseTo((loop * (skin - 3) + shank * (skin + 6)) / (loop + shank), 5);
    expect(eye.outsideVolume).toBeCloseTo(loop, 10);
    expect(eye.outsideAt[2]).toBeCloseTo(skin - 3, 5);
  });

  test('of a pin weighs all its length, and is wet where it stands in slots', () => {
    const pin = line(head, 'pin');
    expect(pin.mass).toBeCloseTo(Math.PI * 24 * 0.00785, 10);
    expect(pin.at).toEqual([56, 0, 0]);
    expect(pin.outsideVolume).toBeCloseTo(Math.PI * 5, 10);
    expect(pin.outsideAt[2]).toBeCloseTo(0, 12);
  });

  test('of lead and plug weighs what was put in', () => {
    const { hardware } = partsOf(PLAIN_DESIGN);
    expect(line(head, 'lead')).toMatchObject({ mass: 4, at: hardware.holes[0].lead?.centre });
    expect(line(head, 'plug').mass).toBe(hardware.holes[0].plug.mass);
  });
});

test('the whole bait weighs what its links and its hooks weigh', () => {
  const { bait, links } = answersOf(PLAIN_DESIGN);
  const fixed = links.reduce((sum, { ledger }) => sum + ledger.mass, 0);
  const hooks = bait.hardware.hung.reduce((sum, { mass }) => sum + mass, 0);
  expect(bait.assembled.mass).toBeCloseTo(fixed + hooks, 9);
  for (const axis of [0, 1, 2]) {
    const moment =
      links.reduce((sum, { ledger }) => sum + ledger.mass * ledger.centre[axis], 0) +
      bait.hardware.hung.reduce((sum, { mass, eye }) => sum + mass * eye[axis], 0);
    expect(bait.assembled.gravityCentre[axis]).toBeCloseTo(moment / bait.assembled.mass, 9);
  }
});
