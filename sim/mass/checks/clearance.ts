import type { Issue } from '../../flow/outcome.ts';
import { faceAt, type LinkSlot, type LinkSpec, slotFloor } from '../../links/cut.ts';
import {
  type Box,
  cylinderBoxDistance,
  type Segment,
  segmentBoxDistance,
  segmentCylinderDistance,
} from '../../numerics/distance.ts';
import { add, length, scale, subtract, type Vec3 } from '../../numerics/vec3.ts';
import type { Mm } from '../../units/brand.ts';
import type { FixedHardware } from '../placed.ts';
import { faceOf } from './slots.ts';
import { mm } from './wood.ts';

/** A round thing in the wood: a shank, a pin bore, a ballast hole. */
interface Rod {
  readonly name: string;
  readonly path: string;
  readonly segment: Segment;
  readonly radius: Mm;
}

/** Everything round that takes up wood in one link. */
export function rodsOf(hardware: FixedHardware, link: number, pathOf: PathOf): readonly Rod[] {
  const shanks = hardware.eyes.flatMap((eye, i): Rod[] =>
    eye.link !== link || eye.shank === 0
      ? []
      : [
          {
            name: `the shank of "${eye.name}"`,
            path: pathOf.eye(i),
            segment: { from: eye.entry, to: add(eye.entry, scale(eye.inward, eye.shank)) },
            radius: eye.wire / 2,
          },
        ],
  );
  const bores = hardware.pins.flatMap((pin): Rod[] =>
    pin.link !== link
      ? []
      : pin.bored.map(([from, to]) => ({
          name: `the bore of "${pin.name}"`,
          path: `joints.${pin.joint}.hinge.pin`,
          segment: { from: [pin.x, 0, from], to: [pin.x, 0, to] },
          radius: pin.diameter / 2,
        })),
  );
  const holes = hardware.holes.flatMap((hole, i): Rod[] =>
    hole.link !== link
      ? []
      : [
          {
            name: `hole "${hole.name}"`,
            path: pathOf.hole(i),
            segment: { from: hole.mouth, to: add(hole.mouth, scale(hole.inward, hole.depth + hole.pointDepth)) },
            radius: hole.diameter / 2,
          },
        ],
  );
  return [...shanks, ...bores, ...holes];
}

/** Where eyes and holes, by their number in the hardware list, stand in the design file. */
export interface PathOf {
  readonly eye: (i: number) => string;
  readonly hole: (i: number) => string;
}

/** Nothing round in a link meets anything else round, nor a slot. Touching counts as meeting. */
export function clearanceIssues(spec: LinkSpec, hardware: FixedHardware, pathOf: PathOf): readonly Issue[] {
  const rods = rodsOf(hardware, spec.index, pathOf);
  const crossing = rods.flatMap((rod, i) =>
    rods.slice(i + 1).flatMap((other): Issue[] => {
      // two runs of one bore meet nothing but each other
      if (rod.path === other.path && rod.name === other.name) return [];
      if (farApart(rod, other)) return [];
      const clear = clearBetween(rod, other);
      return clear > 0 ? [] : [meeting(rod, other.name, other.path, clear)];
    }),
  );
  const slotted = spec.slots.flatMap((slot) => {
    const floor = slotFloor(slot, faceOf(spec, slot));
    const box = slotBox(spec, slot);
    return rods.flatMap((rod): Issue[] => {
      if (rod.name.startsWith('the bore') || outside(rod, box)) return [];
      // the shank of a linked eye begins at the floor of the slot its loop stands in
      if (rod.path.startsWith('joints.') && rod.segment.from[0] === floor) return [];
      if (cylinderBoxDistance({ ...rod.segment, radius: rod.radius }, box) > 0) return [];
      return [meeting(rod, 'a hinge slot', slot.path, segmentBoxDistance(rod.segment, box) - rod.radius)];
    });
  });
  return [...crossing, ...slotted];
}

/** Between two rods; as deep as they run into each other where negative. */
function clearBetween(rod: Rod, other: Rod): Mm {
  const side = alongside(rod, other);
  if (side) return side.ends > 0 ? Math.hypot(Math.max(0, side.flanks), side.ends) : side.flanks;
  // the thicker keeps its flat ends; the thinner is taken as round-ended, which errs by less than its radius
  const [thick, thin] = rod.radius > other.radius ? [rod, other] : [other, rod];
  return segmentCylinderDistance(thin.segment, { ...thick.segment, radius: thick.radius }) - thin.radius;
}

/** Of two rods along one of the axes, such as a pair of holes from either flank: gaps between flanks and between flat ends. */
function alongside(rod: Rod, other: Rod): { readonly flanks: Mm; readonly ends: Mm } | null {
  const isAlong = ({ segment: { from, to } }: Rod, axis: number) =>
    [0, 1, 2].every((each) => each === axis || from[each] === to[each]);
  const axis = [0, 1, 2].find((each) => isAlong(rod, each) && isAlong(other, each));
  if (axis === undefined) return null;
  const [a, b] = [rod.segment, other.segment];
  const beside = Math.hypot(...[0, 1, 2].map((each) => (each === axis ? 0 : a.from[each] - b.from[each])));
  const ends =
    Math.max(Math.min(a.from[axis], a.to[axis]), Math.min(b.from[axis], b.to[axis])) -
    Math.min(Math.max(a.from[axis], a.to[axis]), Math.max(b.from[axis], b.to[axis]));
  return { flanks: beside - rod.radius - other.radius, ends };
}

/** The box round a slot. */
export function slotBox(spec: LinkSpec, slot: LinkSlot): Box {
  const face = faceOf(spec, slot);
  // a hollow's slot opens furthest out at its edges
  const ends = [slotFloor(slot, face), face.at, faceAt(face, slot.width / 2)];
  return {
    low: [Math.min(...ends), -slot.width / 2, slot.z[0]],
    high: [Math.max(...ends), slot.width / 2, slot.z[1]],
  };
}

/** True only where two rods cannot meet: the balls round them do not. Spares nearly every pair the long search. */
function farApart(a: Rod, b: Rod): boolean {
  const apart = length(subtract(middle(a.segment), middle(b.segment)));
  return apart > halfLength(a.segment) + a.radius + halfLength(b.segment) + b.radius;
}

/** True only where a rod cannot meet a box: they lie apart along an axis. */
function outside({ segment: { from, to }, radius }: Rod, { low, high }: Box): boolean {
  return [0, 1, 2].some(
    (axis) =>
      Math.min(from[axis], to[axis]) - radius > high[axis] || Math.max(from[axis], to[axis]) + radius < low[axis],
  );
}

function middle({ from, to }: Segment): Vec3 {
  return scale(add(from, to), 1 / 2);
}

function halfLength({ from, to }: Segment): Mm {
  return length(subtract(to, from)) / 2;
}

function meeting(rod: Rod, what: string, where: string, clear: Mm): Issue {
  return {
    code: 'hardware/parts-meet',
    path: rod.path,
    message: `${rod.name} runs ${mm(-clear)} into ${what} (${where})`,
    hint: 'move one of them, or shorten it',
  };
}
