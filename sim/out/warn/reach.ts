import type { Joint } from '../../design/design.ts';
import { shiftAt } from '../../design/edit.ts';
import { cutLinks, ownerAt } from '../../links/cut.ts';
import { placeHole } from '../../mass/hole.ts';
import { soundIssues } from '../../mass/sound.ts';
import type { Swing, Swings } from '../../reach/joint.ts';
import { type JointReach, type Reach, swingsOfJoint } from '../../reach/reach.ts';
import type { Radian } from '../../units/brand.ts';
import { degreeFromRadian, radianFromDegree } from '../../units/convert.ts';
import { formatAngle, formatLength, formatNumber } from '../../units/format.ts';
import type { ProposedEdit, Warning } from '../../warnings.ts';
import { meetingWords } from '../reach-words.ts';
import type { WarnParts } from './parts.ts';

/** A judgement: square faces 2 mm apart swing about 10°, any bevel at all over 20°. */
const SWING_DEG = 15;
const SWING_RAD: Radian = radianFromDegree(SWING_DEG);
/** Under this nothing is left of the gap. */
const FREE_DEG = 1;
const FREE_RAD: Radian = radianFromDegree(FREE_DEG);
/** Swings are said to this: one that reads as enough is no warning. */
const SAID_TO_RAD: Radian = radianFromDegree(0.1);
/** What is tried: bevels are set to whole fives, slots to half millimetres. */
const BEVEL_STEPS_DEG = [5, 10, 15, 20, 25, 30] as const;
const WIDTH_STEPS_MM = [0.5, 1, 1.5, 2, 2.5, 3, 4, 5] as const;

/** Joints that do not turn at all, then those that swing little, the stiffest first, each with the edit that frees it. */
export function reachWarnings(parts: WarnParts, { joints }: Reach): readonly Warning[] {
  return joints
    .filter((joint) => leastOf(joint).angle < SWING_RAD - SAID_TO_RAD / 2)
    .toSorted((a, b) => leastOf(a).angle - leastOf(b).angle)
    .map((joint) => warningOf(parts, joint));
}

function leastOf({ port, starboard }: Swings): Swing {
  return port.angle <= starboard.angle ? port : starboard;
}

function warningOf(parts: WarnParts, reach: JointReach): Warning {
  const least = leastOf(reach);
  const name = `joint ${reach.joint + 1}`;
  const stuck = least.angle < FREE_RAD;
  const meeting = least.touch ? meetingWords(least.touch) : '';
  const same = Math.abs(reach.port.angle - reach.starboard.angle) < SAID_TO_RAD / 2;
  const side = same ? 'a side' : least === reach.port ? 'to port' : 'to starboard';
  const text = stuck
    ? `J${name.slice(1)} does not turn: ${meeting} touch before it has swung ${FREE_DEG}°.`
    : `J${name.slice(1)} swings ${formatAngle(least.angle)} ${side}; ${meeting} touch first. Under ${SWING_DEG}° a bait hardly bends there.`;
  return {
    code: stuck ? 'joint-stuck' : 'joint-stiff',
    where: name,
    text,
    at: least.at,
    number: degreeFromRadian(least.angle),
    limit: stuck ? FREE_DEG : SWING_DEG,
    unit: 'deg',
    fix: cureOf(parts, reach.joint, least),
  };
}

/** A change of a joint as it is worked out, and how it is written. */
interface Change {
  readonly joint: Joint;
  readonly edit: ProposedEdit;
}

/**
 * The least change after which the joint swings enough and the bait can still be made, in every setup. Wood that is taken
 * off moves the float line a little: lead is planned after the wood is drawn, so that is not held against it.
 */
function cureOf(parts: WarnParts, j: number, { touch }: Swing): ProposedEdit | null {
  if (!touch) return null;
  const changes = touch.includes('eye')
    ? WIDTH_STEPS_MM.map((by) => widened(parts, j, by))
    : touch.some((surface) => surface === 'face' || surface === 'slot')
      ? BEVEL_STEPS_DEG.map((by) => bevelled(parts, j, by))
      : [];
  for (const change of changes) if (change && frees(parts, j, change.joint)) return change.edit;
  return null;
}

/** All slots of a joint so much wider. */
function widened({ drawn }: WarnParts, j: number, by: number): Change | null {
  const joint = drawn.joints[j];
  const sets = joint.slots.map(({ width }, i) => shiftAt(drawn.file, `joints.${j}.slots.${i}.width_mm`, by, width));
  if (sets.length === 0 || !sets.every((set) => set !== null)) return null;
  const slots = joint.slots.map((slot) => ({ ...slot, width: slot.width + by }));
  const widths = [...new Set(slots.map(({ width }) => formatLength(width)))].join(' and ');
  return {
    joint: { ...joint, slots },
    edit: { says: `saw the slots of joint ${j + 1} ${widths} wide, then plan the ballast again`, sets },
  };
}

/** Both bevels of a joint so much steeper; flat faces become bevels. */
function bevelled({ drawn }: WarnParts, j: number, by: number): Change | null {
  const joint = drawn.joints[j];
  if (joint.faces.kind !== 'bevel') return null;
  const [fore, aft] = [joint.faces.fore, joint.faces.aft].map(degreeFromRadian);
  const written = drawn.file.joints[j].faces;
  const sets =
    written.kind === 'bevel'
      ? [
          shiftAt(drawn.file, `joints.${j}.faces.fore_deg`, by, fore),
          shiftAt(drawn.file, `joints.${j}.faces.aft_deg`, by, aft),
        ]
      : [{ path: `joints.${j}.faces`, value: { kind: 'bevel', fore_deg: by, aft_deg: by } }];
  if (!sets.every((set) => set !== null)) return null;
  const [newFore, newAft] = [fore + by, aft + by];
  const angles =
    newFore === newAft ? `${formatNumber(newFore)}°` : `${formatNumber(newFore)}° and ${formatNumber(newAft)}°`;
  return {
    joint: {
      ...joint,
      faces: { kind: 'bevel', fore: radianFromDegree(newFore), aft: radianFromDegree(newAft) },
    },
    edit: { says: `bevel the faces of joint ${j + 1} at ${angles}, then plan the ballast again`, sets },
  };
}

/** Whether the joint then swings as it should and the bait can be made in every setup that can be made now. */
function frees({ hull, links, hardware, drawn }: WarnParts, j: number, joint: Joint): boolean {
  const joints = drawn.joints.with(j, joint);
  const named = links.map(({ name }) => ({ name, density: null }));
  const cut = cutLinks(hull.length, named, joints);
  const isSound = (specs: typeof links, all: readonly Joint[], setup: number) => {
    const { coats, holes } = drawn.setups[setup];
    const placed = holes.map((hole) => placeHole(hull, hole, ownerAt(all, hole.x)));
    return soundIssues(hull, specs, all, { ...hardware, holes: placed }, coats, setup).length === 0;
  };
  const parts = { hull, links: cut, joints, hardware, coats: drawn.setups[drawn.setup].coats };
  if (leastOf(swingsOfJoint(parts, j)).angle < SWING_RAD) return false;
  return drawn.setups.every((_, i) => isSound(cut, joints, i) || !isSound(links, drawn.joints, i));
}
