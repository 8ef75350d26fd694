import type { Design, Joint } from '../../design/design.ts';
import type { Issue } from '../../flow/outcome.ts';
import type { Hull } from '../../hull/hull.ts';
import { type Face, type LinkSpec, slotFloor } from '../../links/cut.ts';
import type { Mm } from '../../units/brand.ts';
import { loopReach } from '../place.ts';
import { faceOf } from './slots.ts';
import { betweenFaces, inBody, mm, widestOf } from './wood.ts';

/** Shorter than this there is nothing to hold while shaping a link. Common practice. */
const SHORTEST_LINK_MM = 5;
/** Wood left along the flank of a bevelled link. */
const SHORTEST_FLANK_MM = 1;

/** Joints in order inside the body, every link long enough to hold on the centre line and along its flanks. */
export function jointIssues(hull: Hull, links: readonly LinkSpec[], joints: Design['joints']): readonly Issue[] {
  const placed = joints.flatMap((joint, j): Issue[] => {
    const from = joints[j - 1]?.x ?? 0;
    const to = joints[j + 1]?.x ?? hull.length;
    const before = joint.x - joint.gap / 2;
    const after = joint.x + joint.gap / 2;
    if (before > from && after < to && before > 0 && after < hull.length) return [];
    return [
      {
        code: joint.x <= 0 || joint.x >= hull.length ? 'links/joint-outside-body' : 'links/joints-crossing',
        path: `joints.${j}.x_mm`,
        message: `joint ${j + 1} at ${mm(joint.x)}, gap ${mm(joint.gap)}, does not fall between ${mm(from)} and ${mm(to)}`,
        hint: 'move the joint inside the body, after the joint before it',
      },
    ];
  });
  if (placed.length > 0) return placed;
  return links.flatMap((spec): Issue[] => {
    const long = spec.span[1] - spec.span[0];
    const where = spec.aftFace ? `joints.${spec.index}.x_mm` : `joints.${spec.index - 1}.x_mm`;
    if (long < SHORTEST_LINK_MM) {
      const message = `link "${spec.name}" is ${mm(long)} long on the centre line; at least ${mm(SHORTEST_LINK_MM)} is needed`;
      return [{ code: 'links/link-too-short', path: where, message, hint: 'move a joint or narrow its gap' }];
    }
    const half = widestOf(hull, spec.span);
    const reach = (face: Face | null) => (face ? Math.abs(face.lean) * half : 0);
    const flank = long - reach(spec.foreFace) - reach(spec.aftFace);
    if (flank >= SHORTEST_FLANK_MM) return [];
    const message = `the bevels of link "${spec.name}" leave ${mm(flank)} along its flank; at least ${mm(SHORTEST_FLANK_MM)} is needed`;
    return [{ code: 'links/bevels-meet', path: where, message, hint: 'lessen the bevels or lengthen the link' }];
  });
}

/** The pin fits the eyes, stands in wood, and every loop that reaches into the other link has a slot that holds it. */
export function hingeIssues(
  hull: Hull,
  links: readonly LinkSpec[],
  joint: Joint,
  j: number,
  faceGrowth: Mm,
): readonly Issue[] {
  const path = `joints.${j}.hinge`;
  return [...pinIssues(hull, links, joint, j, path), ...eyeIssues(links, joint, j, path, faceGrowth)];
}

function pinIssues(hull: Hull, links: readonly LinkSpec[], joint: Joint, j: number, path: string): readonly Issue[] {
  const { hinge } = joint;
  const { pin } = hinge;
  const issues: Issue[] = [];
  if (pin.diameter >= hinge.bore) {
    const message = `a pin of ${mm(pin.diameter)} does not turn in eyes of ${mm(hinge.bore)}; it must be thinner`;
    issues.push({
      code: 'joints/pin-too-thick',
      path: `${path}.pin.diameter_mm`,
      message,
      hint: 'take a thinner pin or larger eyes',
    });
  }
  if (pin.z[1] <= pin.z[0]) {
    const message = `the pin runs from ${mm(pin.z[0])} to ${mm(pin.z[1])}; the second must be higher`;
    issues.push({ code: 'joints/pin-upside-down', path: `${path}.pin.z_mm`, message, hint: 'swap the two heights' });
    return issues;
  }
  const holder = links[pin.heldBy === 'fore' ? j : j + 1];
  const radius = pin.diameter / 2;
  const opens = pin.heldBy === 'fore' ? 'aft' : 'fore';
  // a pin that ends in a slot has nothing to hold it at that end
  const inSlot = (z: Mm) =>
    holder.slots.some((slot) => {
      const reaches = (slotFloor(slot, faceOf(holder, slot)) - pin.x) * (opens === 'aft' ? 1 : -1) < radius;
      return slot.opens === opens && reaches && z >= slot.z[0] && z <= slot.z[1];
    });
  const inWood = (z: Mm) => {
    const sides = [pin.x - radius, pin.x + radius].map((x) => [x, 0, z] as const);
    return !inSlot(z) && sides.every((point) => inBody(hull, point) && betweenFaces(holder, point));
  };
  if (!pin.z.every(inWood)) {
    const message = `the pin at ${mm(pin.x)}, from ${mm(pin.z[0])} to ${mm(pin.z[1])}, does not end in the wood of link "${holder.name}", ${mm(holder.span[0])} to ${mm(holder.span[1])}`;
    issues.push({
      code: 'joints/pin-outside-wood',
      path: `${path}.pin`,
      message,
      hint: 'move or shorten the pin, or let the other link hold it',
    });
  }
  return issues;
}

function eyeIssues(links: readonly LinkSpec[], joint: Joint, j: number, path: string, growth: Mm): readonly Issue[] {
  const { hinge } = joint;
  const reach = loopReach(hinge);
  return hinge.eyes.flatMap((eye, i): Issue[] => {
    const where = `${path}.eyes.${i}`;
    const [own, other] = eye.in === 'fore' ? [links[j], links[j + 1]] : [links[j + 1], links[j]];
    const ownFace = (eye.in === 'fore' ? own.aftFace : own.foreFace) as Face;
    const otherFace = (eye.in === 'fore' ? other.foreFace : other.aftFace) as Face;
    const away = eye.in === 'fore' ? 1 : -1;
    const stand = (hinge.pin.x - ownFace.at) * away;
    if (stand < reach) {
      const message = `the pin stands ${mm(stand)} out of the face that holds this eye; its loop needs ${mm(reach)}`;
      return [{ code: 'joints/loop-in-wood', path: where, message, hint: 'move the pin away from that face' }];
    }
    if (eye.z <= hinge.pin.z[0] || eye.z >= hinge.pin.z[1]) {
      const message = `the eye at ${mm(eye.z)} is not on the pin, which runs from ${mm(hinge.pin.z[0])} to ${mm(hinge.pin.z[1])}`;
      return [{ code: 'joints/eye-off-pin', path: `${where}.z_mm`, message, hint: 'lengthen the pin or move the eye' }];
    }
    const inside = (hinge.pin.x + reach * away - otherFace.at) * away;
    if (inside <= 0) return [];
    const needs = { width: 2 * reach + 2 * growth, height: hinge.wire + 2 * growth, depth: inside + growth };
    const holds = other.slots.some(
      (slot) =>
        faceOf(other, slot) === otherFace &&
        slot.width >= needs.width &&
        slot.depth >= needs.depth &&
        slot.z[0] <= eye.z - needs.height / 2 &&
        slot.z[1] >= eye.z + needs.height / 2,
    );
    if (holds) return [];
    const message = `no slot in link "${other.name}" holds this eye: coats counted it needs ${mm(needs.width)} across, ${mm(needs.depth)} deep, from ${mm(eye.z - needs.height / 2)} to ${mm(eye.z + needs.height / 2)}`;
    return [
      { code: 'joints/eye-without-slot', path: where, message, hint: 'add such a slot, or enlarge the one there' },
    ];
  });
}

/** Coats on the two faces leave some of the gap. */
export function gapIssues(joints: Design['joints'], faceGrowth: Mm): readonly Issue[] {
  return joints.flatMap((joint, j): Issue[] => {
    if (faceGrowth < joint.gap / 2) return [];
    const message = `coats of ${mm(faceGrowth)} on both faces close a gap of ${mm(joint.gap)}; they must be thinner than half of it`;
    return [
      { code: 'joints/coats-close-gap', path: `joints.${j}.gap_mm`, message, hint: 'widen the gap, or mask the faces' },
    ];
  });
}
