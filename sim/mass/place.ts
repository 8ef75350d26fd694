import type { Design, Hanger, Joint, LinkedEyes, PinHinge, Setup, Side, Wire } from '../design/design.ts';
import { type Hull, sectionMeasure, skinHeight, stationOf } from '../hull/hull.ts';
import { type Face, faceAt, type LinkSpec, ownerAt, slotFloor } from '../links/cut.ts';
import { bracketedRoot } from '../numerics/root.ts';
import { add, scale, type Vec3 } from '../numerics/vec3.ts';
import { STEEL } from '../tables/metals.ts';
import type { Mm, Mm3 } from '../units/brand.ts';
import type { PlacedFins } from './fin.ts';
import { placeFittings } from './fitting.ts';
import { placeHole } from './hole.ts';
import type { Hardware, PlacedEye, PlacedHung, PlacedPin } from './placed.ts';

/**
 * Finds where every eye, pin, hole and hung item stands, and which link holds it: hinge parts by the side they name,
 * everything else by its x. Never throws: what stands where it cannot is for the checks to say.
 */
export function placeHardware(
  hull: Hull,
  links: readonly LinkSpec[],
  joints: Design['joints'],
  hangers: Design['hangers'],
  hung: Setup['hung'],
  holes: Setup['holes'],
  fittings: Design['fittings'],
  tails: Design['tails'],
  fins: PlacedFins,
): Hardware {
  const hingeEyes = joints.flatMap((joint, j) => placeHingeEyes(links, joint, j));
  const hangerEyes = hangers.map((hanger) => placeHanger(hull, joints, hanger));
  return {
    eyes: [...hingeEyes, ...hangerEyes],
    pins: joints.flatMap(({ hinge }, j) => (hinge.kind === 'pin' ? [placePin(links, hinge, j)] : [])),
    holes: holes.map((hole) => placeHole(hull, hole, ownerAt(joints, hole.x))),
    fittings: placeFittings(joints, fittings, tails),
    fins: fins.pieces,
    finFaults: fins.faults,
    hung: hung.flatMap((item): PlacedHung[] => {
      const eye = hangerEyes.find((candidate) => candidate.name === item.from);
      if (!eye) return [];
      const volume = item.mass / item.density;
      return [{ name: item.name, link: eye.link, eye: eye.loop, mass: item.mass, volume, hang: item.hang }];
    }),
  };
}

/** The outside of an eye's loop, measured from its middle. */
export function loopReach(wire: Wire): Mm {
  return wire.bore / 2 + wire.wire;
}

/** Wire bent to a ring: 2π R · π r², with R to the middle of the wire. */
function loopVolume({ wire, bore }: Wire): Mm3 {
  return (Math.PI ** 2 / 4) * wire ** 2 * (bore + wire);
}

interface EyeSeat {
  readonly name: string;
  readonly kind: PlacedEye['kind'];
  readonly link: number;
  readonly loop: Vec3;
  readonly axis: Vec3;
  readonly inward: Vec3;
  readonly entry: Vec3;
  /** Middle of the loop to the wood. */
  readonly stand: Mm;
  readonly mass: number | null;
}

function placeEye(size: Wire, seat: EyeSeat): PlacedEye {
  const section = (Math.PI / 4) * size.wire ** 2;
  const neck = Math.max(0, seat.stand - loopReach(size));
  const loop = loopVolume(size);
  const neckVolume = section * neck;
  const outsideVolume = loop + neckVolume;
  const neckMiddle = loopReach(size) + neck / 2;
  const shankVolume = section * size.shank;
  return {
    name: seat.name,
    kind: seat.kind,
    link: seat.link,
    loop: seat.loop,
    axis: seat.axis,
    inward: seat.inward,
    entry: seat.entry,
    wire: size.wire,
    bore: size.bore,
    shank: size.shank,
    neck,
    mass: seat.mass ?? (outsideVolume + shankVolume) * STEEL.value,
    weighed: seat.mass !== null,
    outsideVolume,
    outsideCentre: add(seat.loop, scale(seat.inward, (neckVolume * neckMiddle) / outsideVolume)),
    shankVolume,
    shankCentre: add(seat.entry, scale(seat.inward, size.shank / 2)),
  };
}

/** In the order of the file: eyes on a pin one by one, linked ones in pairs, the fore link's first. */
function placeHingeEyes(links: readonly LinkSpec[], joint: Joint, j: number): readonly PlacedEye[] {
  const { hinge } = joint;
  if (hinge.kind === 'pin') return hinge.eyes.map((_, i) => placePinEye(links, hinge, j, i));
  return hinge.z.flatMap((z, i) =>
    (['fore', 'aft'] as const).map((side) => placeLinkedEye(links, joint.x, hinge, side, z, j, i)),
  );
}

function placePinEye(links: readonly LinkSpec[], hinge: PinHinge, j: number, i: number): PlacedEye {
  const { z, in: side } = hinge.eyes[i];
  const inAft = side === 'aft';
  const link = inAft ? j + 1 : j;
  const face = (inAft ? links[link].foreFace : links[link].aftFace) as Face;
  return placeEye(hinge, {
    name: `joint ${j + 1}, eye ${i + 1}`,
    kind: 'hinge',
    link,
    loop: [hinge.pin.x, 0, z],
    axis: [0, 0, 1],
    inward: [inAft ? 1 : -1, 0, 0],
    entry: [face.at, 0, z],
    stand: inAft ? face.at - hinge.pin.x : hinge.pin.x - face.at,
    mass: null,
  });
}

/**
 * Middle of the loop of a linked eye. Pulled taut at the middle of the gap the two wires cross there at right angles,
 * each round the inside of the other's loop, so each loop's middle stands half a bore on its own side of it.
 */
export function linkedLoopAt(jointX: Mm, { bore }: Wire, side: Side): Mm {
  return side === 'fore' ? jointX - bore / 2 : jointX + bore / 2;
}

/** The fore link's loop stands upright and the aft link's lies flat: two loops only link when they cross. */
function placeLinkedEye(
  links: readonly LinkSpec[],
  jointX: Mm,
  hinge: LinkedEyes,
  side: Side,
  z: Mm,
  j: number,
  i: number,
): PlacedEye {
  const inAft = side === 'aft';
  const link = inAft ? j + 1 : j;
  const loop = linkedLoopAt(jointX, hinge, side);
  const entry = shankEntry(links[link], inAft ? 'fore' : 'aft', z);
  return placeEye(hinge, {
    name: `joint ${j + 1}, ${side} eye ${i + 1}`,
    kind: 'hinge',
    link,
    loop: [loop, 0, z],
    axis: inAft ? [0, 0, 1] : [0, 1, 0],
    inward: [inAft ? 1 : -1, 0, 0],
    entry: [entry, 0, z],
    stand: inAft ? entry - loop : loop - entry,
    mass: null,
  });
}

/** Where a shank along x at a height goes into the bare wood behind a face: at the floor of its slot, if one is there. */
function shankEntry(spec: LinkSpec, opens: 'fore' | 'aft', z: Mm): Mm {
  const face = (opens === 'fore' ? spec.foreFace : spec.aftFace) as Face;
  const floors = spec.slots
    .filter((slot) => slot.opens === opens && slot.z[0] < z && z < slot.z[1])
    .map((slot) => slotFloor(slot, face));
  return opens === 'fore' ? Math.max(face.at, ...floors) : Math.min(face.at, ...floors);
}

/** Where a hanger stands, and which link holds it. */
export function placeHanger(hull: Hull, joints: Design['joints'], hanger: Hanger): PlacedEye {
  const seat = (link: number, entry: Vec3, inward: Vec3): PlacedEye =>
    placeEye(hanger, {
      name: hanger.name,
      kind: 'hanger',
      link,
      loop: add(entry, scale(inward, -hanger.stand)),
      axis: [0, 1, 0],
      inward,
      entry,
      stand: hanger.stand,
      mass: hanger.mass,
    });
  if (hanger.on === 'belly' || hanger.on === 'back') {
    const station = stationOf(hull, hanger.at);
    const { at: x, across: y } = hanger;
    const up = hanger.on === 'belly' ? 1 : -1;
    const middle = hanger.on === 'belly' ? station.belly : station.back;
    const z = y === 0 ? middle : (skinHeight(hull, hanger.on, x, y) ?? middle);
    return seat(ownerAt(joints, x), [x, y, z], [0, 0, up]);
  }
  const nose = hanger.on === 'nose';
  const entry: Vec3 = [endAt(hull, hanger.on, hanger.across, hanger.at), hanger.across, hanger.at];
  return seat(nose ? 0 : joints.length, entry, [nose ? 1 : -1, 0, 0]);
}

/** Where the skin begins at y and a height z, from the nose or from the tail; the tip where the body has no wood there. */
function endAt(hull: Hull, end: 'nose' | 'tail', y: Mm, z: Mm): Mm {
  const tip = end === 'nose' ? 0 : hull.length;
  if (y !== 0) {
    // endless at the tip, where the section has no size
    const outside = (x: Mm) => Math.min(sectionMeasure(hull, stationOf(hull, x), y, z), 2) - 1;
    const inner = hull.back.peak;
    return outside(inner) < 0 ? bracketedRoot(outside, tip, inner, 1e-9).x : tip;
  }
  const tipHeight = end === 'nose' ? hull.back.nose.level : hull.back.tail.level;
  if (z === tipHeight) return tip;
  const outline = (x: Mm) => (z > tipHeight ? stationOf(hull, x).back : stationOf(hull, x).belly) - z;
  return bracketedRoot(outline, tip, hull.back.peak, 1e-9).x;
}

function placePin(links: readonly LinkSpec[], { pin }: PinHinge, j: number): PlacedPin {
  const link = pin.heldBy === 'fore' ? j : j + 1;
  const wet = wetRuns(links[link], pin.heldBy, pin.x, pin.z);
  return {
    name: `joint ${j + 1}, pin`,
    joint: j,
    link,
    heldBy: pin.heldBy,
    x: pin.x,
    z: pin.z,
    diameter: pin.diameter,
    density: pin.density,
    wet,
    bored: dryRuns(pin.z, wet),
  };
}

/** Where a pin stands free: in a slot of the link that holds it, or all the way where it stands out of that link. */
function wetRuns(spec: LinkSpec, heldBy: 'fore' | 'aft', x: Mm, z: readonly [Mm, Mm]): readonly (readonly [Mm, Mm])[] {
  const opens = heldBy === 'fore' ? 'aft' : 'fore';
  const face = (opens === 'aft' ? spec.aftFace : spec.foreFace) as Face;
  const inWood = opens === 'aft' ? x < faceAt(face, 0) : x > faceAt(face, 0);
  if (!inWood) return [z];
  return spec.slots
    .filter((slot) => slot.opens === opens && (opens === 'aft' ? x > slotFloor(slot, face) : x < slotFloor(slot, face)))
    .map((slot): readonly [Mm, Mm] => [Math.max(z[0], slot.z[0]), Math.min(z[1], slot.z[1])])
    .filter(([from, to]) => to > from)
    .toSorted((a, b) => a[0] - b[0]);
}

/** What is left of a run when others are taken out of it; those are in order and do not overlap. */
function dryRuns(whole: readonly [Mm, Mm], out: readonly (readonly [Mm, Mm])[]): readonly (readonly [Mm, Mm])[] {
  const edges = [whole[0], ...out.flat(), whole[1]];
  return edges.flatMap((from, i): (readonly [Mm, Mm])[] =>
    i % 2 === 0 && edges[i + 1] > from ? [[from, edges[i + 1]]] : [],
  );
}
