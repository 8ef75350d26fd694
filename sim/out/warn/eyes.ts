import type { Wire } from '../../design/design.ts';
import { shiftAt } from '../../design/edit.ts';
import type { PlacedEye } from '../../mass/placed.ts';
import { add, scale } from '../../numerics/vec3.ts';
import { STEEL } from '../../tables/metals.ts';
import { END_GRAIN_HOLDS, EYE_DEPTH_IN_WIRES } from '../../tables/screw-eyes.ts';
import type { Mm } from '../../units/brand.ts';
import { formatLength, formatNumber, formatPercent } from '../../units/format.ts';
import type { ProposedEdit, Warning } from '../../warnings.ts';
import { isBetter } from './cure.ts';
import type { TrialFloat, WarnParts } from './parts.ts';

/** Depths are said to this: one that reads as enough is no warning. */
const SAID_TO_MM = 0.1;
/** Shanks are cut to this. */
const STEP_MM = 0.5;

/** Eyes of one size that stand in the wood alike: those of a joint, or a single hanger. */
interface Seat {
  readonly where: string;
  /** How a sentence about them begins: `The eyes of joint 1 stand`. */
  readonly subject: string;
  /** What is made longer: `the shanks of joint 1`. */
  readonly object: string;
  readonly path: string;
  readonly size: Wire;
  readonly eyes: readonly PlacedEye[];
}

/** Eyes that stand in the wood less deep than is usual for their wire, those shortest of it first. */
export function embedmentWarnings(parts: WarnParts, refloat?: TrialFloat): readonly Warning[] {
  return seatsOf(parts)
    .map((seat) => ({ seat, ...wantedOf(seat) }))
    .filter(({ seat, limit }) => seat.size.shank < limit - SAID_TO_MM / 2)
    .toSorted((a, b) => a.seat.size.shank / a.limit - b.seat.size.shank / b.limit)
    .map(({ seat, limit, grain }) => ({
      code: 'embedment-short',
      where: seat.where,
      text: `${seat.subject} ${formatLength(seat.size.shank)} deep in ${GRAIN_WORDS[grain]}; ${formatNumber(EYE_DEPTH_IN_WIRES[grain].value, { digits: 0 })} times the wire, ${formatLength(limit)}, is common practice and no promise of strength.`,
      at: seat.eyes[0].entry,
      number: seat.size.shank,
      limit,
      unit: 'mm',
      fix: refloat ? longer(parts, refloat, seat, limit) : null,
    }));
}

const GRAIN_WORDS = {
  side: 'side grain',
  end: `end grain, which holds ${formatPercent(END_GRAIN_HOLDS.value, { digits: 0 })} of side grain at most`,
} as const;

/** A shank along the body stands in end grain. */
function wantedOf({ size, eyes }: Seat): { readonly limit: Mm; readonly grain: 'side' | 'end' } {
  const grain = eyes[0].inward[0] === 0 ? 'side' : 'end';
  return { limit: EYE_DEPTH_IN_WIRES[grain].value * size.wire, grain };
}

/** Hinge eyes come first among the eyes, joint by joint, then hangers. */
function seatsOf({ hardware, drawn }: WarnParts): readonly Seat[] {
  let next = 0;
  const take = (count: number) => {
    next += count;
    return hardware.eyes.slice(next - count, next);
  };
  const joints = drawn.joints.map(({ hinge }, j): Seat => {
    const where = `joint ${j + 1}`;
    return {
      where,
      subject: `The eyes of ${where} stand`,
      object: `the shanks of ${where}`,
      path: `joints.${j}.hinge.shank_mm`,
      size: hinge,
      // of linked eyes there are two at each height
      eyes: take(hinge.kind === 'pin' ? hinge.eyes.length : 2 * hinge.z.length),
    };
  });
  const hangers = drawn.hangers.map(
    (hanger, i): Seat => ({
      where: hanger.name,
      subject: `Eye "${hanger.name}" stands`,
      object: `the shank of "${hanger.name}"`,
      path: `hangers.${i}.shank_mm`,
      size: hanger,
      eyes: take(1),
    }),
  );
  return [...joints, ...hangers].filter(({ eyes }) => eyes.length > 0);
}

/** Shanks as long as they should be, if the wood has room for that. */
function longer(
  parts: WarnParts,
  refloat: TrialFloat,
  { object, path, size, eyes: own }: Seat,
  limit: Mm,
): ProposedEdit | null {
  const shank = Math.ceil(limit / STEP_MM) * STEP_MM;
  const set = shiftAt(parts.drawn.file, path, shank - size.shank, size.shank);
  if (!set) return null;
  const eyes = parts.hardware.eyes.map((eye) => (own.includes(eye) ? lengthened(eye, shank) : eye));
  return isBetter(parts, refloat, { eyes })
    ? { says: `make ${object} ${formatLength(shank)} long`, sets: [set] }
    : null;
}

function lengthened(eye: PlacedEye, shank: Mm): PlacedEye {
  const shankVolume = (eye.shankVolume * shank) / eye.shank;
  return {
    ...eye,
    shank,
    shankVolume,
    shankCentre: add(eye.entry, scale(eye.inward, shank / 2)),
    mass: eye.weighed ? eye.mass : eye.mass + (shankVolume - eye.shankVolume) * STEEL.value,
  };
}
