import type { Wire } from '../../design/design.ts';
import { shiftAt } from '../../design/edit.ts';
import type { PlacedEye } from '../../mass/placed.ts';
import { add, scale } from '../../numerics/vec3.ts';
import { STEEL } from '../../tables/metals.ts';
import { END_GRAIN_HOLDS, EYE_DEPTH_IN_WIRES } from '../../tables/screw-eyes.ts';
import type { Mm } from '../../units/brand.ts';
import { formatLength, formatNumber, formatPercent } from '../../units/format.ts';
import type { ProposedEdit, Warning } from '../../warnings.ts';
import { isBetter, listed, quoted } from './cure.ts';
import type { TrialFloat, WarnParts } from './parts.ts';

/** Depths are said to this: one that reads as enough is no warning. */
const SAID_TO_MM = 0.1;
/** Shanks are cut to this. */
const STEP_MM = 0.5;

/** Where eyes of one size are screwed in: both sides of a joint, or a single hanger. */
interface Seat {
  /** As makers count, from 1; null: a hanger. */
  readonly joint: number | null;
  /** A hanger's own. */
  readonly name: string;
  readonly path: string;
  readonly size: Wire;
  readonly eyes: readonly PlacedEye[];
}

/** Seats whose eyes all stand alike in the wood: as deep, in the same grain, held against the same limit. */
interface Alike {
  readonly seats: readonly Seat[];
  readonly shank: Mm;
  readonly limit: Mm;
  readonly grain: Grain;
}

type Grain = keyof typeof EYE_DEPTH_IN_WIRES;

/** Eyes that stand in the wood less deep than is usual for their wire, those shortest of it first; those alike share one. */
export function embedmentWarnings(parts: WarnParts, refloat?: TrialFloat): readonly Warning[] {
  return alike(seatsOf(parts).map((seat) => ({ seats: [seat], shank: seat.size.shank, ...wantedOf(seat) })))
    .filter(({ shank, limit }) => shank < limit - SAID_TO_MM / 2)
    .toSorted((a, b) => a.shank / a.limit - b.shank / b.limit)
    .map(({ seats, shank, limit, grain }) => ({
      code: 'embedment-short',
      where: whereOf(seats),
      text: `${subjectOf(seats)} ${formatLength(shank)} deep in ${GRAIN_WORDS[grain]}; ${formatNumber(EYE_DEPTH_IN_WIRES[grain].value, { digits: 0 })} times the wire, ${formatLength(limit)}, is common practice and no promise of strength.`,
      at: seats[0].eyes[0].entry,
      number: shank,
      limit,
      unit: 'mm',
      fix: refloat ? cureOf(parts, refloat, seats, limit) : null,
    }));
}

const GRAIN_WORDS = {
  side: 'side grain',
  end: `end grain, which holds ${formatPercent(END_GRAIN_HOLDS.value, { digits: 0 })} of side grain at most`,
} as const;

/** A shank along the body stands in end grain. */
function wantedOf({ size, eyes }: Seat): { readonly limit: Mm; readonly grain: Grain } {
  const grain = eyes[0].inward[0] === 0 ? 'side' : 'end';
  return { limit: EYE_DEPTH_IN_WIRES[grain].value * size.wire, grain };
}

/** Each at the place of the first that stands like it. */
function alike(all: readonly Alike[]): readonly Alike[] {
  const groups = new Map<string, Alike>();
  for (const one of all) {
    // what came out of expressions is the same up to its last bits
    const key = `${one.grain} ${one.shank.toFixed(6)} ${one.limit.toFixed(6)}`;
    const group = groups.get(key);
    groups.set(key, group ? { ...group, seats: [...group.seats, ...one.seats] } : one);
  }
  return [...groups.values()];
}

/** Hinge eyes come first among the eyes, joint by joint, then hangers. */
function seatsOf({ hardware, drawn }: WarnParts): readonly Seat[] {
  let next = 0;
  const take = (count: number) => {
    next += count;
    return hardware.eyes.slice(next - count, next);
  };
  const joints = drawn.joints.map(
    ({ hinge }, j): Seat => ({
      joint: j + 1,
      name: '',
      path: `joints.${j}.hinge.shank_mm`,
      size: hinge,
      // of linked eyes there are two at each height
      eyes: take(hinge.kind === 'pin' ? hinge.eyes.length : 2 * hinge.z.length),
    }),
  );
  const hangers = drawn.hangers.map(
    (hanger, i): Seat => ({
      joint: null,
      name: hanger.name,
      path: `hangers.${i}.shank_mm`,
      size: hanger,
      eyes: take(1),
    }),
  );
  return [...joints, ...hangers].filter(({ eyes }) => eyes.length > 0);
}

/** `joint 1`, `joints 1, 2 and 3`; null: none of them is one. */
function jointWords(seats: readonly Seat[]): string | null {
  const numbers = seats.flatMap(({ joint }) => (joint === null ? [] : [`${joint}`]));
  if (numbers.length === 0) return null;
  return `joint${numbers.length === 1 ? '' : 's'} ${listed(numbers)}`;
}

function hangerNames(seats: readonly Seat[]): readonly string[] {
  return seats.flatMap(({ joint, name }) => (joint === null ? [name] : []));
}

function whereOf(seats: readonly Seat[]): string {
  return [jointWords(seats) ?? [], hangerNames(seats)].flat().join(', ');
}

/** How a sentence about them begins: `The eyes of joint 1 stand`, `Eye "line tie" stands`. */
function subjectOf(seats: readonly Seat[]): string {
  const [joints, names] = [jointWords(seats), hangerNames(seats)];
  const eyes = `ye${names.length === 1 ? '' : 's'} ${quoted(names)}`;
  if (joints === null) return `E${eyes} stand${names.length === 1 ? 's' : ''}`;
  return `The eyes of ${joints}${names.length === 0 ? '' : ` and e${eyes}`} stand`;
}

/** What is made longer: `the shanks of joint 1`, `the shank of "line tie"`. */
function objectOf(seats: readonly Seat[]): string {
  const [joints, names] = [jointWords(seats), hangerNames(seats)];
  const all = [...(joints === null ? [] : [joints]), ...(names.length === 0 ? [] : [quoted(names)])];
  return `the shank${joints === null && names.length === 1 ? '' : 's'} of ${all.join(' and ')}`;
}

/** All of them made longer, or else the first single one that may be. */
function cureOf(parts: WarnParts, refloat: TrialFloat, seats: readonly Seat[], limit: Mm): ProposedEdit | null {
  for (const some of seats.length > 1 ? [seats, ...seats.map((seat) => [seat])] : [seats]) {
    const edit = longer(parts, refloat, some, limit);
    if (edit) return edit;
  }
  return null;
}

/** Shanks as long as they should be, if the wood has room for that. */
function longer(parts: WarnParts, refloat: TrialFloat, seats: readonly Seat[], limit: Mm): ProposedEdit | null {
  const shank = Math.ceil(limit / STEP_MM) * STEP_MM;
  const sets = seats.map(({ path, size }) => shiftAt(parts.drawn.file, path, shank - size.shank, size.shank));
  if (!sets.every((set) => set !== null)) return null;
  const own = new Set(seats.flatMap((seat) => seat.eyes));
  const eyes = parts.hardware.eyes.map((eye) => (own.has(eye) ? lengthened(eye, shank) : eye));
  return isBetter(parts, refloat, { eyes })
    ? { says: `make ${objectOf(seats)} ${formatLength(shank)} long`, sets }
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
