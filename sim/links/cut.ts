import type { Design, Joint, Side, Slot } from '../design/design.ts';
import type { Mm } from '../units/brand.ts';

/** A joint face, symmetric about the centre plane. */
export type Face = BevelFace | RoundFace;

/**
 * x = at + lean·|y|: an upright ridge, or a flat face. The ridge is the part of the link that reaches furthest into the
 * gap.
 */
export interface BevelFace {
  /** The bare face on the centre line. */
  readonly at: Mm;
  /** Negative on the aft end of a link, positive on its fore end, 0 when flat. */
  readonly lean: number;
  /** Which way out of the wood is. */
  readonly looks: Side;
}

/**
 * A part of an upright cylinder, x = axis ∓ √(radius² - y²): the nose of a knuckle where the axis lies in the wood, its
 * hollow where the axis lies before the face.
 */
export interface RoundFace {
  readonly at: Mm;
  readonly axis: Mm;
  readonly radius: Mm;
  readonly looks: Side;
}

/** One link of the bait: the piece of the body between two faces. */
export interface LinkSpec {
  /** Counted from the nose, from 0. */
  readonly index: number;
  readonly name: string;
  /** Where the link begins and ends on the centre line, bare. */
  readonly span: readonly [Mm, Mm];
  /** null at the nose. */
  readonly foreFace: Face | null;
  /** null at the tail. */
  readonly aftFace: Face | null;
  readonly slots: readonly LinkSlot[];
}

/** A slot in the link's own face. */
export interface LinkSlot extends Slot {
  /** Which of the link's faces it opens to. */
  readonly opens: 'fore' | 'aft';
  /** Its place in the design file, for messages. */
  readonly path: string;
}

/** Cuts the body at its joints. A bait without joints is one link from nose to tail. */
export function cutLinks(length: Mm, links: Design['links'], joints: Design['joints']): readonly LinkSpec[] {
  return links.map((link, index) => {
    const fore = joints[index - 1] ?? null;
    const aft = joints[index] ?? null;
    const foreFace = fore && faceOfJoint(fore, 'aft');
    const aftFace = aft && faceOfJoint(aft, 'fore');
    const slotsOf = (joint: number, side: 'fore' | 'aft', opens: 'fore' | 'aft') =>
      (joints[joint]?.slots ?? []).flatMap((slot, i) =>
        slot.in === side ? [{ ...slot, opens, path: `joints.${joint}.slots.${i}` }] : [],
      );
    return {
      index,
      name: link.name,
      span: [foreFace?.at ?? 0, aftFace?.at ?? length],
      foreFace,
      aftFace,
      slots: [...slotsOf(index - 1, 'aft', 'fore'), ...slotsOf(index, 'fore', 'aft')],
    };
  });
}

/** The face that a joint gives to the link on one of its sides. */
function faceOfJoint({ x, gap, faces }: Joint, side: Side): Face {
  const [at, looks] = side === 'fore' ? ([x - gap / 2, 'aft'] as const) : ([x + gap / 2, 'fore'] as const);
  if (faces.kind === 'bevel') {
    return { at, lean: side === 'fore' ? -Math.tan(faces.fore) : Math.tan(faces.aft), looks };
  }
  return { at, axis: faces.axis, radius: side === faces.on ? faces.radius : faces.radius + gap, looks };
}

/** Whether a face is a knuckle's, nose or hollow. */
export function isRound(face: Face): face is RoundFace {
  return 'radius' in face;
}

/** Where a face stands at a distance y from the centre plane. */
export function faceAt(face: Face, y: Mm): Mm {
  if (!isRound(face)) return face.at + face.lean * Math.abs(y);
  const behind = sagitta(face.radius, y);
  return face.axis > face.at ? face.at + behind : face.at - behind;
}

/** How far a face lies further into its wood at y than on the centre line; negative in a hollow. */
export function fallBack(face: Face, y: Mm): Mm {
  if (!isRound(face)) return Math.abs(face.lean) * Math.abs(y);
  return face.looks === 'fore' ? faceAt(face, y) - face.at : face.at - faceAt(face, y);
}

/** The mean of `fallBack` over |y| <= half. On a circle: R - (√(R² - h²) + R²/h · asin(h/R))/2, by its segment. */
export function meanFallBack(face: Face, half: Mm): Mm {
  if (!isRound(face)) return fallBack(face, half) / 2;
  const { radius } = face;
  const share = Math.min(1, half / radius);
  const mean = radius - (radius * (Math.sqrt(1 - share * share) + Math.asin(share) / share)) / 2;
  return fallBack(face, half) < 0 ? -mean : mean;
}

/**
 * R - √(R² - y²), written so that a large radius keeps its digits. Past the end of the radius, where no face is made,
 * it goes on rising, so that whoever looks for where a line meets the face always finds his way back.
 */
function sagitta(radius: Mm, y: Mm): Mm {
  return (y * y) / (radius + Math.sqrt(Math.max(0, radius * radius - y * y)));
}

/** x of a slot's square end inside the wood, bare. `face`: the bare face it opens to. */
export function slotFloor(slot: LinkSlot, face: Face): Mm {
  return slot.opens === 'aft' ? face.at - slot.depth : face.at + slot.depth;
}

/** The link that holds what stands at x: the one on its side of each joint. */
export function ownerAt(joints: Design['joints'], x: Mm): number {
  return joints.filter((joint) => joint.x < x).length;
}
