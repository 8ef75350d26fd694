import { describe, expect, test } from 'vitest';
import type { DesignFile, HangerEntry, PinEntry, SlotEntry } from '../../../../sim/design/file.ts';
import { loopReach } from '../../../../sim/mass/place.ts';
import { KNUCKLE_DESIGN, LINKED_DESIGN, makeDesignFile } from '../../../support/make-design.ts';
import { partsOf } from '../../../support/worked-bait.ts';

// Callister, table B.1, steel alloy 1040: 7.85 g/cm³
const STEEL = 0.00785;

function hardwareOf(changes: Partial<DesignFile> = {}, pieces: 1 | 2 | 3 = 2) {
  return partsOf(makeDesignFile({ pieces, ...changes })).hardware;
}

const EYE = { wire_mm: 1.5, bore_mm: 3, shank_mm: 12 };

/** One eye by itself on the plain bait, nothing hung from it. */
function eyeOf(hanger: Omit<HangerEntry, 'name' | 'wire_mm' | 'bore_mm' | 'shank_mm'> & Partial<HangerEntry>) {
  const [setup] = makeDesignFile().setups;
  const { eyes } = hardwareOf({ hangers: [{ name: 'eye', ...EYE, ...hanger }], setups: [{ ...setup, hung: [] }] });
  const found = eyes.find(({ kind }) => kind === 'hanger');
  if (found === undefined) throw new Error('the eye is missing');
  return found;
}

describe('a screw eye', () => {
  test('reaches half its bore and its wire from the middle of its loop', () => {
    expect(loopReach({ wire: 1.5, bore: 3, shank: 12 })).toBe(3);
  });

  test('displaces a ring of wire outside the wood: by Pappus, its section times the way of its middle', () => {
    const eye = eyeOf({ on: 'belly', x_mm: 60 });
    const [tube, ring] = [1.5 / 2, (3 + 1.5) / 2];
    expect(eye.neck).toBe(0);
    expect(eye.outsideVolume).toBeCloseTo(2 * Math.PI * ring * Math.PI * tube ** 2, 10);
    expect(eye.outsideCentre).toEqual(eye.loop);
    expect(eye.shankVolume).toBeCloseTo(Math.PI * tube ** 2 * 12, 10);
    expect(eye.mass).toBeCloseTo((eye.outsideVolume + eye.shankVolume) * STEEL, 10);
    expect(eye.weighed).toBe(false);
  });

  test('that stands off has a neck, whose wire counts', () => {
    const [flush, proud] = [eyeOf({ on: 'belly', x_mm: 60 }), eyeOf({ on: 'belly', x_mm: 60, stand_mm: 8 })];
    const neck = Math.PI * 0.75 ** 2 * 5;
    expect(proud.neck).toBe(5);
    expect(proud.outsideVolume - flush.outsideVolume).toBeCloseTo(neck, 10);
    // the neck's middle is 3 + 2.5 from the loop's, towards the wood
    expect(proud.outsideCentre[2] - proud.loop[2]).toBeCloseTo((neck * 5.5) / proud.outsideVolume, 10);
    expect(proud.mass - flush.mass).toBeCloseTo(neck * STEEL, 10);
  });

  test('screwed in past its loop has no neck less than none', () => {
    expect(eyeOf({ on: 'belly', x_mm: 60, stand_mm: 1 }).neck).toBe(0);
  });

  test('that was weighed weighs what the maker says', () => {
    expect(eyeOf({ on: 'belly', x_mm: 60, mass_g: 0.71 })).toMatchObject({ mass: 0.71, weighed: true });
  });
});

describe('an eye on the ellipsoid', () => {
  test('in the belly goes up from the skin, its loop under it', () => {
    const eye = eyeOf({ on: 'belly', x_mm: 36 });
    const z = -18 * Math.sqrt(1 - ((36 - 60) / 60) ** 2);
    expect(eye.entry[2]).toBeCloseTo(z, 5);
    expect(eye.inward).toEqual([0, 0, 1]);
    expect(eye.loop[2]).toBeCloseTo(z - 3, 5);
    expect(eye.shankCentre[2]).toBeCloseTo(z + 6, 5);
    expect(eye.axis).toEqual([0, 1, 0]);
  });

  test('in the back goes down', () => {
    const eye = eyeOf({ on: 'back', x_mm: 84 });
    expect(eye.entry[2]).toBeCloseTo(18 * Math.sqrt(1 - 0.16), 5);
    expect(eye.inward).toEqual([0, 0, -1]);
    expect(eye.loop[2]).toBeCloseTo(eye.entry[2] + 3, 12);
  });

  test.each([0, 5, -9])('in the nose at %d mm goes aft from where the skin begins at that height', (z) => {
    const eye = eyeOf({ on: 'nose', z_mm: z });
    const x = 60 - 60 * Math.sqrt(1 - (z / 18) ** 2);
    expect(eye.entry[0]).toBeCloseTo(x, 5);
    expect(eye.entry[2]).toBe(z);
    expect(eye.inward).toEqual([1, 0, 0]);
    expect(eye.loop[0]).toBeCloseTo(x - 3, 5);
    expect(eye.link).toBe(0);
  });

  test.each([0, 5, -9])('in the tail at %d mm goes forward', (z) => {
    const eye = eyeOf({ on: 'tail', z_mm: z });
    expect(eye.entry[0]).toBeCloseTo(60 + 60 * Math.sqrt(1 - (z / 18) ** 2), 5);
    expect(eye.inward).toEqual([-1, 0, 0]);
    expect(eye.link).toBe(1);
  });

  test('in the end of a stem enters at the middle of the stem', () => {
    const body = { tail: { z_mm: 2, depth_mm: 8, width_mm: 4 } };
    const { hardware } = partsOf(
      makeDesignFile({ body, hangers: [...makeDesignFile().hangers, { name: 'tail', on: 'tail', z_mm: 2, ...EYE }] }),
    );
    expect(hardware.eyes.at(-1)?.entry).toEqual([120, 0, 2]);
  });
});

describe('who holds what', () => {
  test('follows from x: eyes, holes and hooks belong to the link on their side of the joint', () => {
    const { eyes, holes, hung } = hardwareOf();
    const hangers = eyes.filter(({ kind }) => kind === 'hanger');
    expect(hangers.map(({ name, link }) => [name, link])).toEqual([
      ['line tie', 0],
      ['belly, fore', 0],
      ['belly, aft', 1],
    ]);
    expect(holes.map(({ name, link }) => [name, link])).toEqual([
      ['head hole', 0],
      ['middle hole', 1],
    ]);
    expect(hung.map(({ name, link }) => [name, link])).toEqual([
      ['fore treble', 0],
      ['aft treble', 1],
    ]);
  });

  test('changes for a hook when a joint is put in before it', () => {
    expect(hardwareOf({}, 1).hung.map(({ link }) => link)).toEqual([0, 0]);
    expect(hardwareOf({}, 3).hung.map(({ link }) => link)).toEqual([0, 2]);
  });

  test('of hinge parts is the side that they name', () => {
    const { eyes, pins } = hardwareOf({}, 3);
    const hinges = eyes.filter(({ kind }) => kind === 'hinge');
    expect(hinges.map(({ name, link }) => [name, link])).toEqual([
      ['joint 1, eye 1', 1],
      ['joint 1, eye 2', 1],
      ['joint 2, eye 1', 2],
      ['joint 2, eye 2', 2],
    ]);
    expect(pins.map(({ link, joint }) => [joint, link])).toEqual([
      [0, 0],
      [1, 1],
    ]);
  });

  test('of what hangs is its eye, from which it hangs plumb', () => {
    const { eyes, hung } = hardwareOf();
    expect(hung[0].eye).toEqual(eyes.find(({ name }) => name === 'belly, fore')?.loop);
    expect(hung[0]).toMatchObject({ mass: 2, hang: 30 });
    expect(hung[0].volume).toBeCloseTo(2 / STEEL, 9);
  });
});

describe('a hinge eye', () => {
  test('has its loop on the pin, flat, its shank along x into the link that holds it', () => {
    const [eye] = hardwareOf().eyes;
    expect(eye).toMatchObject({ loop: [56, 0, 8], axis: [0, 0, 1], inward: [1, 0, 0], entry: [61, 0, 8], link: 1 });
    // pin to face 5, less bore/2 + wire
    expect(eye.neck).toBe(2);
    expect(eye.shankCentre).toEqual([65, 0, 8]);
  });

  test('of the fore link goes forward', () => {
    const [joint] = makeDesignFile().joints;
    if (joint.hinge.kind !== 'pin') throw new Error('the plain bait hinges on a pin');
    const hinge = { ...joint.hinge, eyes: [{ in: 'fore' as const, z_mm: 2 }] };
    const [eye] = hardwareOf({ joints: [{ ...joint, hinge: { ...hinge, pin: { ...hinge.pin, x_mm: 63 } } }] }).eyes;
    expect(eye).toMatchObject({ loop: [63, 0, 2], inward: [-1, 0, 0], entry: [59, 0, 2], link: 0, neck: 1 });
  });
});

describe('a pin', () => {
  function pinOf(pin: Partial<PinEntry>, slots?: readonly SlotEntry[]) {
    const [joint] = makeDesignFile().joints;
    if (joint.hinge.kind !== 'pin') throw new Error('the plain bait hinges on a pin');
    const hinge = { ...joint.hinge, pin: { ...joint.hinge.pin, ...pin } };
    return hardwareOf({ joints: [{ ...joint, hinge, ...(slots && { slots }) }] }).pins[0];
  }

  test('is wet in the slots it stands in, lower one first, and sits in its bore between and beyond', () => {
    const pin = pinOf({});
    expect(pin.wet).toEqual([
      [-9.25, -6.75],
      [6.75, 9.25],
    ]);
    expect(pin.bored).toEqual([
      [-12, -9.25],
      [-6.75, 6.75],
      [9.25, 12],
    ]);
    expect(pin.density).toBe(STEEL);
  });

  test('that ends in a slot is wet to its end', () => {
    const pin = pinOf({ z_mm: [-12, 8] });
    expect(pin.wet).toEqual([
      [-9.25, -6.75],
      [6.75, 8],
    ]);
    expect(pin.bored).toEqual([
      [-12, -9.25],
      [-6.75, 6.75],
    ]);
  });

  test('behind the floor of a slot sits in wood all along', () => {
    const pin = pinOf({ x_mm: 50 });
    expect([pin.wet, pin.bored]).toEqual([[], [[-12, 12]]]);
  });

  test('in the gap is wet all along', () => {
    const pin = pinOf({ x_mm: 60 });
    expect([pin.wet, pin.bored]).toEqual([[[-12, 12]], []]);
  });

  test('held by the aft link is wet in that link’s slots', () => {
    const slots = [{ in: 'aft' as const, width_mm: 7.5, depth_mm: 7.5, z_mm: [2, 5] as const }];
    const pin = pinOf({ x_mm: 64, held_by: 'aft' }, slots);
    expect([pin.link, pin.wet]).toEqual([1, [[2, 5]]]);
  });

  test('through a slot that takes all of it has no bore', () => {
    const slots = [{ in: 'fore' as const, width_mm: 7.5, depth_mm: 7.5, z_mm: [-13, 13] as const }];
    expect(pinOf({}, slots).bored).toEqual([]);
  });
});

describe('the hinge of a knuckle', () => {
  const { eyes, pins } = partsOf(KNUCKLE_DESIGN).hardware;

  test('has its pin on the axis, wet in the slots of the link that holds it', () => {
    expect(pins).toMatchObject([{ x: 73, link: 1, heldBy: 'aft' }]);
    expect(pins[0].wet).toEqual([
      [-9.25, -6.75],
      [6.75, 9.25],
    ]);
  });

  test('has its loops round that pin and their shanks in the hollow', () => {
    expect(eyes[0]).toMatchObject({
      loop: [73, 0, 8],
      axis: [0, 0, 1],
      inward: [-1, 0, 0],
      entry: [59, 0, 8],
      link: 0,
    });
    // radius and gap, less what the loop reaches
    expect(eyes[0].neck).toBe(11);
  });
});

describe('linked eyes', () => {
  const { eyes, pins } = partsOf(LINKED_DESIGN).hardware;
  const hinges = eyes.filter(({ kind }) => kind === 'hinge');

  test('need no pin', () => {
    expect(pins).toEqual([]);
  });

  test('come in pairs, one of each link, at each height', () => {
    expect(hinges.map(({ name, link, loop }) => [name, link, loop[2]])).toEqual([
      ['joint 1, fore eye 1', 0, 8],
      ['joint 1, aft eye 1', 1, 8],
      ['joint 1, fore eye 2', 0, -8],
      ['joint 1, aft eye 2', 1, -8],
    ]);
  });

  test('cross at right angles, the upright wire touching the flat one at the middle of the gap', () => {
    const [fore, aft] = hinges;
    expect([fore.axis, aft.axis]).toEqual([
      [0, 1, 0],
      [0, 0, 1],
    ]);
    // each bore ends where the other loop's wire begins: at the joint
    expect(fore.loop[0] + 3 / 2).toBe(60);
    expect(aft.loop[0] - 3 / 2).toBe(60);
  });

  test('go into the wood at the floor of their own slot, by a neck that stands free', () => {
    const [fore, aft] = hinges;
    expect([fore.entry, fore.inward, fore.neck]).toEqual([[54, 0, 8], [-1, 0, 0], 1.5]);
    expect([aft.entry, aft.inward, aft.neck]).toEqual([[66, 0, 8], [1, 0, 0], 1.5]);
  });

  test('without slots go in at the faces', () => {
    const [joint] = LINKED_DESIGN.joints;
    const { hardware } = partsOf({ ...LINKED_DESIGN, joints: [{ ...joint, gap_mm: 10, slots: [] }] });
    // half the gap, less bore and wire
    expect(hardware.eyes.slice(0, 2).map(({ entry, neck }) => [entry[0], neck])).toEqual([
      [55, 0.5],
      [65, 0.5],
    ]);
  });

  test('weigh and displace by their wire: ring, neck, and a shank in the wood of their own link', () => {
    const section = Math.PI * 0.75 ** 2;
    // Pappus: the ring's middle goes round at (3 + 1.5)/2
    const outside = section * (2 * Math.PI * 2.25 + 1.5);
    for (const eye of hinges) {
      expect(eye.outsideVolume).toBeCloseTo(outside, 10);
      expect(eye.shankVolume).toBeCloseTo(section * 8, 10);
      expect(eye.mass).toBeCloseTo((outside + section * 8) * STEEL, 10);
    }
    // the neck's middle is 3 + 0.75 from the loop's
    expect(hinges[0].outsideCentre[0]).toBeCloseTo(58.5 - (section * 1.5 * 3.75) / outside, 10);
    expect(hinges.map(({ shankCentre }) => shankCentre[0])).toEqual([50, 70, 50, 70]);
  });
});
