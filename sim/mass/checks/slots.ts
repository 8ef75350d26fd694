import type { Issue } from '../../flow/outcome.ts';
import type { Hull } from '../../hull/hull.ts';
import { type Face, faceAt, fallBack, isRound, type LinkSlot, type LinkSpec, slotFloor } from '../../links/cut.ts';
import type { Mm } from '../../units/brand.ts';
import { betweenFaces, inBody, mm } from './wood.ts';

/** Wood left between the end of a slot and the link's other end. */
const SLOT_BACKING_MM = 1;

/** Slots inside the skin, open under their coats, with cheeks and wood behind them, clear of each other. */
export function slotIssues(hull: Hull, spec: LinkSpec, faceGrowth: Mm): readonly Issue[] {
  const single = spec.slots.flatMap((slot): Issue[] => {
    const face = faceOf(spec, slot);
    const floor = slotFloor(slot, face);
    if (slot.z[1] <= slot.z[0]) {
      const message = `the slot runs from ${mm(slot.z[0])} to ${mm(slot.z[1])}; the second must be higher`;
      return [{ code: 'joints/slot-upside-down', path: `${slot.path}.z_mm`, message, hint: 'swap the two heights' }];
    }
    const half = slot.width / 2;
    const corners = slot.z.flatMap((z) => [[floor, half, z] as const, [faceAt(face, half), half, z] as const]);
    if (!corners.every((corner) => inBody(hull, corner))) {
      const message = `a slot ${mm(slot.width)} wide from ${mm(slot.z[0])} to ${mm(slot.z[1])} breaks through the skin`;
      const hint = 'make it narrower, or move it towards the middle of the body';
      return [{ code: 'joints/slot-through-skin', path: slot.path, message, hint }];
    }
    const tight = Math.min(slot.width, slot.z[1] - slot.z[0]);
    if (2 * faceGrowth >= tight) {
      const message = `coats of ${mm(faceGrowth)} on every side fill a slot that is ${mm(tight)} in the clear; they must be thinner than half of it`;
      return [
        { code: 'joints/coats-close-slot', path: slot.path, message, hint: 'make the slot larger, or mask the faces' },
      ];
    }
    // a face falls back from its middle: at the slot's edge it must not have reached the floor yet
    const least = fallBack(face, half);
    if (slot.depth <= least) {
      const [shape, cure] = isRound(face) ? ['knuckle', 'take a larger radius'] : ['bevel', 'lessen the bevel'];
      const message = `a slot ${mm(slot.depth)} deep and ${mm(slot.width)} wide has no cheeks in this ${shape}; more than ${mm(least)} is needed`;
      return [
        {
          code: 'joints/slot-too-shallow',
          path: `${slot.path}.depth_mm`,
          message,
          hint: `make the slot deeper or narrower, or ${cure}`,
        },
      ];
    }
    const behind = floor + (slot.opens === 'aft' ? -SLOT_BACKING_MM : SLOT_BACKING_MM);
    // at its edge a bevel comes nearest, on the centre line a hollow
    if ([half, 0].every((y) => betweenFaces(spec, [behind, y, slot.z[0]]))) return [];
    const message = `a slot ${mm(slot.depth)} deep leaves no wood behind it in link "${spec.name}", ${mm(spec.span[1] - spec.span[0])} long`;
    return [{ code: 'joints/slot-too-deep', path: `${slot.path}.depth_mm`, message, hint: 'make the slot shallower' }];
  });
  const crossing = spec.slots.flatMap((slot, i) =>
    spec.slots.slice(i + 1).flatMap((other): Issue[] => {
      const apart = slot.z[1] <= other.z[0] || other.z[1] <= slot.z[0];
      const [a, b] = [slot, other].map((each) => slotFloor(each, faceOf(spec, each)));
      // slots that open to opposite faces run towards each other
      const clearAlong = slot.opens !== other.opens && (slot.opens === 'fore' ? a < b : b < a);
      if (apart || clearAlong) return [];
      const message = `the slot from ${mm(slot.z[0])} to ${mm(slot.z[1])} runs into ${other.path}, ${mm(other.z[0])} to ${mm(other.z[1])}`;
      return [{ code: 'joints/slots-crossing', path: slot.path, message, hint: 'move one of them up or down' }];
    }),
  );
  return [...single, ...crossing];
}

/** The bare face a slot opens to. */
export function faceOf(spec: LinkSpec, slot: LinkSlot): Face {
  return (slot.opens === 'fore' ? spec.foreFace : spec.aftFace) as Face;
}
