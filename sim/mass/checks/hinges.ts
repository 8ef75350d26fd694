import type { Joint, LinkedEyes, PinHinge, Side } from '../../design/design.ts';
import type { Issue } from '../../flow/outcome.ts';
import type { Hull } from '../../hull/hull.ts';
import { type Face, type LinkSpec, slotFloor } from '../../links/cut.ts';
import type { Mm } from '../../units/brand.ts';
import { linkedLoopAt, loopReach } from '../place.ts';
import { faceOf } from './slots.ts';
import { betweenFaces, inBody, mm } from './wood.ts';

/** The pin fits the eyes and stands in wood, or the eyes link; every loop that reaches into a link has a slot that holds it. */
export function hingeIssues(
  hull: Hull,
  links: readonly LinkSpec[],
  joint: Joint,
  j: number,
  faceGrowth: Mm,
): readonly Issue[] {
  const path = `joints.${j}.hinge`;
  const { hinge } = joint;
  if (hinge.kind === 'linked-eyes') return linkedIssues(links, joint, hinge, j, path, faceGrowth);
  return [...pinIssues(hull, links, hinge, j, path), ...eyeIssues(links, joint, hinge, j, path, faceGrowth)];
}

function pinIssues(hull: Hull, links: readonly LinkSpec[], hinge: PinHinge, j: number, path: string): readonly Issue[] {
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

function eyeIssues(
  links: readonly LinkSpec[],
  { faces }: Joint,
  hinge: PinHinge,
  j: number,
  path: string,
  growth: Mm,
): readonly Issue[] {
  const reach = loopReach(hinge);
  return hinge.eyes.flatMap((eye, i): readonly Issue[] => {
    const where = `${path}.eyes.${i}`;
    if (faces.kind === 'knuckle' && eye.in === faces.on) {
      const message = `the pin stands ${mm(faces.radius)} inside the knuckle of link "${links[eye.in === 'fore' ? j : j + 1].name}", so an eye of that link cannot reach round it`;
      return [{ code: 'joints/loop-in-wood', path: where, message, hint: 'let the link with the hollow hold the eye' }];
    }
    const ends = endsOf(links, j, eye.in);
    const away = eye.in === 'fore' ? 1 : -1;
    const stand = (hinge.pin.x - ends.own.face.at) * away;
    if (stand < reach) {
      const message = `the pin stands ${mm(stand)} out of the face that holds this eye; its loop needs ${mm(reach)}`;
      return [{ code: 'joints/loop-in-wood', path: where, message, hint: 'move the pin away from that face' }];
    }
    if (eye.z <= hinge.pin.z[0] || eye.z >= hinge.pin.z[1]) {
      const message = `the eye at ${mm(eye.z)} is not on the pin, which runs from ${mm(hinge.pin.z[0])} to ${mm(hinge.pin.z[1])}`;
      return [{ code: 'joints/eye-off-pin', path: `${where}.z_mm`, message, hint: 'lengthen the pin or move the eye' }];
    }
    const inside = (hinge.pin.x + reach * away - ends.other.face.at) * away;
    return heldIssues(ends.other, { z: eye.z, across: 2 * reach, tall: hinge.wire, inside }, growth, 'this eye', where);
  });
}

/** Wire that goes through the loops, pairs clear of each other, and slots for all that reaches into either link. */
function linkedIssues(
  links: readonly LinkSpec[],
  joint: Joint,
  hinge: LinkedEyes,
  j: number,
  path: string,
  growth: Mm,
): readonly Issue[] {
  if (hinge.wire >= hinge.bore) {
    const message = `wire of ${mm(hinge.wire)} does not go through loops of ${mm(hinge.bore)}; it must be thinner`;
    const hint = 'take thinner wire or larger eyes';
    return [{ code: 'joints/eyes-do-not-link', path: `${path}.wire_mm`, message, hint }];
  }
  const reach = loopReach(hinge);
  const heights = hinge.z.toSorted((a, b) => a - b);
  const apart = Math.min(...heights.slice(1).map((z, i) => z - heights[i]));
  if (apart <= 2 * reach) {
    const message = `two pairs of eyes stand ${mm(apart)} apart; loops of ${mm(2 * reach)} need more than that`;
    return [{ code: 'joints/eyes-meet', path: `${path}.z_mm`, message, hint: 'move the pairs apart' }];
  }
  return hinge.z.flatMap((z, i) =>
    (['fore', 'aft'] as const).flatMap((side): readonly Issue[] => {
      const { own, other } = endsOf(links, j, side);
      const loop = linkedLoopAt(joint.x, hinge, side);
      const away = side === 'fore' ? 1 : -1;
      const [across, tall] = side === 'fore' ? [hinge.wire, 2 * reach] : [2 * reach, hinge.wire];
      const [where, what] = [`${path}.z_mm.${i}`, `the ${side} eye at ${mm(z)}`];
      const inOwn = (own.face.at - (loop - reach * away)) * away;
      const inOther = (loop + reach * away - other.face.at) * away;
      return [
        ...heldIssues(own, { z, across, tall, inside: inOwn }, growth, what, where),
        ...heldIssues(other, { z, across, tall, inside: inOther }, growth, what, where),
      ];
    }),
  );
}

/** A link at a joint, by the bare face it has there. */
interface LinkEnd {
  readonly spec: LinkSpec;
  readonly face: Face;
}

/** Both links of a joint as an eye of one of them sees them. */
function endsOf(links: readonly LinkSpec[], j: number, side: Side): { readonly own: LinkEnd; readonly other: LinkEnd } {
  const [foreSpec, aftSpec] = [links[j], links[j + 1]];
  const fore = { spec: foreSpec, face: foreSpec.aftFace as Face };
  const aft = { spec: aftSpec, face: aftSpec.foreFace as Face };
  return side === 'fore' ? { own: fore, other: aft } : { own: aft, other: fore };
}

/** What of a loop a slot has to hold; inside: how far it reaches in behind the bare face, on the centre line. */
interface Loop {
  readonly z: Mm;
  readonly across: Mm;
  readonly tall: Mm;
  readonly inside: Mm;
}

/** A loop that reaches into a link lies in one of its slots, coats counted. */
function heldIssues({ spec, face }: LinkEnd, loop: Loop, growth: Mm, what: string, path: string): readonly Issue[] {
  if (loop.inside <= 0) return [];
  const needs = { width: loop.across + 2 * growth, height: loop.tall + 2 * growth, depth: loop.inside + growth };
  const [from, to] = [loop.z - needs.height / 2, loop.z + needs.height / 2];
  const holds = spec.slots.some(
    (slot) =>
      faceOf(spec, slot) === face &&
      slot.width >= needs.width &&
      slot.depth >= needs.depth &&
      slot.z[0] <= from &&
      slot.z[1] >= to,
  );
  if (holds) return [];
  const message = `no slot in link "${spec.name}" holds ${what}: coats counted it needs ${mm(needs.width)} across, ${mm(needs.depth)} deep, from ${mm(from)} to ${mm(to)}`;
  return [{ code: 'joints/eye-without-slot', path, message, hint: 'add such a slot, or enlarge the one there' }];
}
