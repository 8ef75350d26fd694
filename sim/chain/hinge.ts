import type { Joint, LinkedEyes, PinHinge, Side } from '../design/design.ts';
import type { LinkSpec } from '../links/cut.ts';
import type { Vec3 } from '../numerics/vec3.ts';
import type { Mm, Radian } from '../units/brand.ts';

/**
 * What a joint lets its two links do. The links turn freely about the pin as far as they reach; beside that each loop has
 * some room round the pin (or round the other loop), which is all the play there is: convex sets, so that contact never
 * depends on the way it was come to.
 */
export interface Hinge {
  /** Middle of the pin between its loops, in the body frame of the straight bait. */
  readonly pivot: Vec3;
  /** Which link the pin moves with. Of linked eyes the fore one. */
  readonly holder: Side;
  /** Heights of the loops over the pivot. */
  readonly loops: readonly Mm[];
  /** How far a loop's middle may go off the pin: half of bore less pin. */
  readonly room: Mm;
  /** How far the other link may sink and rise on the pin, between the floors and roofs of its slots. */
  readonly rise: readonly [down: Mm, up: Mm];
  /** Tilt at which a single loop jams. Two loops a distance h apart are out of room at `2 room/h` long before. */
  readonly jam: Radian;
  /** Radius that the pin turns on. */
  readonly radius: Mm;
}

/** Yaw of each joint at which something meets: the aft link's tail to port, and to starboard. Both positive. */
export interface YawRange {
  readonly port: Radian;
  readonly starboard: Radian;
}

/** The hinges of a bait, from nose to tail, as they are without coats in their bores. */
export function hingesOf(joints: readonly Joint[], links: readonly LinkSpec[]): readonly Hinge[] {
  return joints.map((joint, j) =>
    joint.hinge.kind === 'pin' ? pinHinge(joint.hinge, links[j], links[j + 1]) : linkedHinge(joint.hinge, joint.x),
  );
}

function pinHinge(hinge: PinHinge, fore: LinkSpec, aft: LinkSpec): Hinge {
  const { pin, bore, wire } = hinge;
  // an eye of the link that holds the pin moves with it and gives way to nothing
  const given = hinge.eyes.filter((eye) => eye.in !== pin.heldBy);
  const holding = (given.length > 0 ? given : hinge.eyes).map(({ z }) => z);
  const middle = (Math.min(...holding) + Math.max(...holding)) / 2;
  const [holder, opens] = pin.heldBy === 'fore' ? [fore, 'aft'] : [aft, 'fore'];
  const slots = holder.slots.filter((slot) => slot.opens === opens);
  let [down, up] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const z of holding) {
    const slot = slots.find((each) => each.z[0] < z && z < each.z[1]);
    // a loop out in the gap is stopped by the ends of the pin
    const [low, high] = slot?.z ?? pin.z;
    down = Math.min(down, z - wire / 2 - low);
    up = Math.min(up, high - z - wire / 2);
  }
  return {
    pivot: [pin.x, 0, middle],
    holder: pin.heldBy,
    loops: holding.map((z) => z - middle),
    room: (bore - pin.diameter) / 2,
    rise: [Math.max(0, down), Math.max(0, up)],
    // the ring of a loop, of radius (bore + wire)/2, seen along the pin is narrowed to its cosine
    jam: Math.acos(Math.min(1, (pin.diameter + wire) / (bore + wire))),
    radius: pin.diameter / 2,
  };
}

/** Loops through each other: their middles stand between a wire and a bore apart, so half of the difference either way. */
function linkedHinge({ bore, wire, z }: LinkedEyes, x: Mm): Hinge {
  const middle = (Math.min(...z) + Math.max(...z)) / 2;
  const room = (bore - wire) / 2;
  return {
    pivot: [x, 0, middle],
    holder: 'fore',
    loops: z.map((each) => each - middle),
    room,
    rise: [room, room],
    // a single pair turns about its wire until the shanks meet the loops
    jam: Math.PI / 3,
    radius: wire / 2,
  };
}

/** How far loops let the links pitch or lean: room over half their distance. null: a single loop carries no moment. */
export function slopOf({ loops, room, jam }: Hinge): Radian | null {
  const half = Math.max(...loops.map(Math.abs));
  return half > 0 ? Math.min(jam, room / half) : null;
}
