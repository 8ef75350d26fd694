import type { Design, Slot } from '../design/design.ts';
import type { Mm } from '../units/brand.ts';

/**
 * A joint face: x = at + lean·|y|, an upright ridge (or a flat face) symmetric about the centre plane. The ridge is the
 * part of the link that reaches furthest into the gap.
 */
export interface Face {
  /** The bare face on the centre line. */
  readonly at: Mm;
  /** Negative on the aft end of a link, positive on its fore end, 0 when flat. */
  readonly lean: number;
  /** Which way out of the wood is. */
  readonly looks: 'fore' | 'aft';
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
    const foreFace: Face | null = fore && { at: fore.x + fore.gap / 2, lean: Math.tan(fore.faces.aft), looks: 'fore' };
    const aftFace: Face | null = aft && { at: aft.x - aft.gap / 2, lean: -Math.tan(aft.faces.fore), looks: 'aft' };
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

/** Where a face stands at a distance y from the centre plane. */
export function faceAt(face: Face, y: Mm): Mm {
  return face.at + face.lean * Math.abs(y);
}

/** x of a slot's square end inside the wood, bare. `face`: the bare face it opens to. */
export function slotFloor(slot: LinkSlot, face: Face): Mm {
  return slot.opens === 'aft' ? face.at - slot.depth : face.at + slot.depth;
}

/** The link that holds what stands at x: the one on its side of each joint. */
export function ownerAt(joints: Design['joints'], x: Mm): number {
  return joints.filter((joint) => joint.x < x).length;
}
