import { shiftAt } from '../../design/edit.ts';
import { stationOf } from '../../hull/hull.ts';
import { add, length, scale, subtract, type Vec3 } from '../../numerics/vec3.ts';
import type { Mm } from '../../units/brand.ts';
import { formatLength } from '../../units/format.ts';
import type { ProposedEdit, Warning } from '../../warnings.ts';
import { hangerEyes, isBetter, movedEye, moveWords, stepsTo, withEye } from './cure.ts';
import type { TrialFloat, WarnParts } from './parts.ts';

/** Hangers are marked out to this. */
const STEP_MM = 0.5;
/** How much further than the overlap a hanger is moved at most: the belly rises and falls. */
const SPARE_MM = 3;
/** A hook's points stand this far within the circle of its lowest point, and slip in when that is as little short. */
const POINTS_MM = 3;
const SHORT_MM = 1;
/** How far a hanger is moved away from a joint at most. */
const AWAY_MM = stepsTo(6, STEP_MM);

/** Lengths are said to this: a distance that reads as enough is no warning. */
const SAID_TO_MM = 0.1;
/** Rounding of a distance that is meant to be the same. */
const ROUNDING_MM = 1e-9;

/** What hangs from one eye: the longest of it. */
interface Hanging {
  readonly name: string;
  /** Its hanger's number in the design. */
  readonly hanger: number;
  readonly onBack: boolean;
  readonly eye: Vec3;
  readonly hang: Mm;
}

/** One that reaches the eye of its neighbour when it swings to the side. */
interface Meeting {
  /** From nose to tail. */
  readonly pair: readonly [Hanging, Hanging];
  /** From eye to eye. */
  readonly away: Mm;
  /** By how much the longer one hangs further than that. */
  readonly overlap: Mm;
}

/** One that can prop a joint. mouth: of its gap, on the belly. */
interface Propping {
  readonly item: Hanging;
  readonly joint: number;
  readonly mouth: Vec3;
  readonly away: Mm;
}

/** What can catch what when it swings about its eye, to the side as far as its neighbour, fore and aft up to a joint; the bait held straight. Common practice. */
export function hookWarnings(parts: WarnParts, refloat?: TrialFloat): readonly Warning[] {
  const all = hangingOf(parts);
  return [
    ...meetingsOf(all).map((meeting): Warning => {
      const { pair, away } = meeting;
      const [longer, other] = byHang(pair);
      return {
        code: 'hooks-meet',
        where: `${longer.name}, ${other.name}`,
        text: `"${longer.name}" can swing into "${other.name}": it hangs ${formatLength(longer.hang)} and the eyes stand ${formatLength(away)} apart. By common practice eyes stand further apart than the longer of two hangs.`,
        at: scale(add(longer.eye, other.eye), 1 / 2),
        number: away,
        limit: longer.hang,
        unit: 'mm',
        fix: refloat ? apart(parts, refloat, all, meeting) : null,
      };
    }),
    ...proppingsOf(parts, all).map((propping): Warning => {
      const { item, joint, mouth, away } = propping;
      return {
        code: 'hook-at-joint',
        where: item.name,
        text: `"${item.name}" can swing up into the gap of joint ${joint + 1} and prop it: the gap is ${formatLength(away)} from its eye, and it hangs ${formatLength(item.hang)}. Common practice, by eye and not by law.`,
        at: mouth,
        number: away,
        limit: item.hang + SHORT_MM,
        unit: 'mm',
        fix: refloat ? clearOfJoints(parts, refloat, all, propping) : null,
      };
    }),
  ];
}

function hangingOf(parts: WarnParts): readonly Hanging[] {
  const { hangers, setups, setup } = parts.drawn;
  return hangerEyes(parts).flatMap((eye, hanger): readonly Hanging[] => {
    const own = setups[setup].hung.filter(({ from }) => from === hangers[hanger].name);
    const [longest] = own.toSorted((a, b) => b.hang - a.hang);
    if (!longest) return [];
    const { name, hang } = longest;
    return [{ name, hanger, onBack: hangers[hanger].on === 'back', eye: eye.loop, hang }];
  });
}

/** Next to each other along belly and ends, or along the back. */
function meetingsOf(all: readonly Hanging[]): readonly Meeting[] {
  return [false, true].flatMap((onBack) => {
    const row = all.filter((item) => item.onBack === onBack).toSorted((a, b) => a.eye[0] - b.eye[0]);
    return row.slice(1).flatMap((item, i): readonly Meeting[] => {
      const pair = [row[i], item] as const;
      const away = length(subtract(row[i].eye, item.eye));
      const overlap = byHang(pair)[0].hang - away;
      return overlap > SAID_TO_MM / 2 ? [{ pair, away, overlap }] : [];
    });
  });
}

/** The longer first; of two that hang alike the fore one. */
function byHang([fore, aft]: Meeting['pair']): Meeting['pair'] {
  return aft.hang > fore.hang ? [aft, fore] : [fore, aft];
}

/** Only where its points come to lie right at the gap: shorter ones do not reach it, longer ones lie along the belly. */
function proppingsOf({ hull, drawn }: WarnParts, all: readonly Hanging[]): readonly Propping[] {
  const mouths = drawn.joints.map(({ x }): Vec3 => [x, 0, stationOf(hull, x).belly]);
  return all.flatMap((item) =>
    item.onBack
      ? []
      : mouths.flatMap((mouth, joint): readonly Propping[] => {
          const away = length(subtract(mouth, item.eye));
          const isThere = away > item.hang - POINTS_MM && away < item.hang + SHORT_MM;
          return isThere ? [{ item, joint, mouth, away }] : [];
        }),
  );
}

/** One of the two moved away from the other, whichever has more room on its link. */
function apart(
  parts: WarnParts,
  refloat: TrialFloat,
  all: readonly Hanging[],
  { pair, overlap }: Meeting,
): ProposedEdit | null {
  const [fore, aft] = pair;
  const eyes = hangerEyes(parts);
  const span = ({ hanger }: Hanging) => parts.links[eyes[hanger].link].span;
  const both = [
    { item: fore, way: -1, room: fore.eye[0] - span(fore)[0] },
    { item: aft, way: 1, room: span(aft)[1] - aft.eye[0] },
  ].toSorted((a, b) => b.room - a.room);
  const least = Math.ceil(overlap / STEP_MM) * STEP_MM;
  for (let by = least; by <= least + SPARE_MM; by += STEP_MM) {
    for (const { item, way } of both) {
      const edit = moved(parts, refloat, all, item, way * by, (next) => overlapIn(next, pair) === 0);
      if (edit) return edit;
    }
  }
  return null;
}

function clearOfJoints(
  parts: WarnParts,
  refloat: TrialFloat,
  all: readonly Hanging[],
  { item }: Propping,
): ProposedEdit | null {
  for (const by of AWAY_MM) {
    const edit = moved(parts, refloat, all, item, by, (next) =>
      proppingsOf(parts, next).every((one) => one.item.hanger !== item.hanger),
    );
    if (edit) return edit;
  }
  return null;
}

/** A hanger moved along, if that cures, lets nothing else catch that did not, and leaves the bait better off. */
function moved(
  parts: WarnParts,
  refloat: TrialFloat,
  all: readonly Hanging[],
  { hanger }: Hanging,
  by: Mm,
  cures: (next: readonly Hanging[]) => boolean,
): ProposedEdit | null {
  const { drawn } = parts;
  const { at, name } = drawn.hangers[hanger];
  const eye = movedEye(parts, hanger, by);
  const set = shiftAt(drawn.file, `hangers.${hanger}.x_mm`, by, at);
  if (!eye || !set) return null;
  const next = all.map((item) => (item.hanger === hanger ? { ...item, eye: eye.loop } : item));
  if (!cures(next) || isWorse(parts, all, next)) return null;
  return isBetter(parts, refloat, withEye(parts, hanger, eye)) ? { says: moveWords([name], by), sets: [set] } : null;
}

/** Whether something catches that did not, or more than it did. */
function isWorse(parts: WarnParts, before: readonly Hanging[], next: readonly Hanging[]): boolean {
  return (
    proppingsOf(parts, next).length > proppingsOf(parts, before).length ||
    meetingsOf(next).some(({ pair, overlap }) => overlap > overlapIn(before, pair) + ROUNDING_MM)
  );
}

/** By how much a pair meets among others; 0: not at all. */
function overlapIn(all: readonly Hanging[], pair: Meeting['pair']): Mm {
  const same = meetingsOf(all).find((one) => one.pair.every(({ hanger }, i) => hanger === pair[i].hanger));
  return same?.overlap ?? 0;
}
