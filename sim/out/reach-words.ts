import type { Swing, Swings } from '../reach/joint.ts';
import type { JointReach, Reach } from '../reach/reach.ts';
import type { Surface } from '../reach/slice.ts';
import type { Curl, WholeReach } from '../reach/whole.ts';
import type { Mm, Radian } from '../units/brand.ts';
import { degreeFromRadian, radianFromDegree } from '../units/convert.ts';
import { formatAngle, formatLength, formatNumber } from '../units/format.ts';

/** Angles that differ by less than this are said as one: half of the digit that is shown. */
const SAME_RAD: Radian = radianFromDegree(0.05);

/** Every joint's swing and the fold of the whole bait, a line or two each. */
export function reachLines({ joints, whole }: Reach): readonly string[] {
  return [...joints.flatMap(jointLines), ...wholeLines(whole)];
}

function jointLines(reach: JointReach): readonly string[] {
  const { joint, play, bare, approximate } = reach;
  const firsts = touchWords(reach);
  const about = approximate ? ', near enough: linked eyes turn about their middle only roughly' : '';
  return [
    `joint ${joint + 1}: ${swingWords(reach)}${about}; ${firsts}.`,
    `  ${spanWords(play)} over ${playWords(reach)}; ${swingWords(bare)} without its coats.`,
  ];
}

/** `38.2° to either side`, or one for each. */
export function swingWords({ port, starboard }: Swings): string {
  if (Math.abs(port.angle - starboard.angle) < SAME_RAD) return `${formatAngle(port.angle)} to either side`;
  return `${formatAngle(port.angle)} to port, ${formatAngle(starboard.angle)} to starboard`;
}

/** From the least to the most that play makes of the swing. */
export function spanWords({ least, most }: JointReach['play']): string {
  const span = (side: keyof typeof least) =>
    most[side] - least[side] < SAME_RAD
      ? formatAngle(least[side])
      : `${formatNumber(degreeFromRadian(least[side]))} to ${formatAngle(most[side])}`;
  const [port, starboard] = [span('port'), span('starboard')];
  return port === starboard ? port : `${port} to port, ${starboard} to starboard`;
}

/** What lets the links move fore and aft, and how far. */
export function playWords({ hinge, play: { moves } }: JointReach): string {
  const [fore, aft] = [-moves[0], moves[1]];
  if (hinge === 'linked-eyes') return `${formatLength(fore)} of slack in its eyes`;
  const same = Math.abs(fore - aft) < 0.005;
  const span = same ? `±${formatLength(aft, 'mm', { digits: 2 })}` : `${hundredths(-fore)} to ${hundredths(aft)} mm`;
  return `${span} of play on the pin`;
}

function hundredths(length: Mm): string {
  return formatNumber(length, { digits: 2, signed: true });
}

/** What stops the joint, and where. */
export function touchWords({ port, starboard }: Swings): string {
  const [a, b] = [port, starboard].map((swing) => swing.touch && meetingWords(swing.touch));
  if (a === null && b === null) return 'nothing touches: it turns right round';
  if (a === b) return `${a} touch first${placeWords(port)}`;
  const of = (words: string | null | undefined, swing: Swing) =>
    words ? `${words} touch first${placeWords(swing)}` : 'nothing touches';
  return `to port ${of(a, port)}; to starboard ${of(b, starboard)}`;
}

function placeWords({ at }: Swing): string {
  if (!at) return '';
  const [x, y, z] = at;
  return `, at x ${formatNumber(x)}, y ${formatNumber(y)}, z ${formatNumber(z)}`;
}

/** Two surfaces that meet, in a maker's words: `the faces`, `slot cheek and shank`. */
export function meetingWords(touch: readonly [Surface, Surface]): string {
  const has = (surface: Surface) => touch.includes(surface);
  const other = (surface: Surface) => (touch[0] === surface ? touch[1] : touch[0]);
  if (has('hanger')) return `hanger and ${PART_WORDS[other('hanger')]}`;
  if (has('eye'))
    return CHEEK.includes(other('eye')) ? 'slot cheek and shank' : `${PART_WORDS[other('eye')]} and shank`;
  if (has('fin')) return touch[0] === touch[1] ? 'the fins' : `fin and ${PART_WORDS[other('fin')]}`;
  if (has('knuckle'))
    return touch[0] === touch[1] ? 'knuckle and hollow' : `knuckle and ${PART_WORDS[other('knuckle')]}`;
  if (touch[0] === 'skin' && touch[1] === 'skin') return 'the flanks';
  return has('skin') ? 'face and flank' : 'the faces';
}

/** A shank meets the mouth of its slot, which is a corner of slot and face. */
const CHEEK: readonly Surface[] = ['slot', 'face', 'knuckle'];

const PART_WORDS: Readonly<Record<Surface, string>> = {
  skin: 'flank',
  face: 'face',
  slot: 'slot',
  knuckle: 'knuckle',
  fin: 'fin',
  eye: 'eye',
  hanger: 'hanger',
};

/** How far it folds to each side, what stops it beside the joints, and whether it turns right round. */
export function wholeLines({ port, starboard, turnsRound }: WholeReach): readonly string[] {
  const fold =
    Math.abs(port.fold - starboard.fold) < SAME_RAD
      ? `${formatAngle(port.fold)} to either side`
      : `${formatAngle(port.fold)} to port, ${formatAngle(starboard.fold)} to starboard`;
  const round = turnsRound ? 'it can turn right round' : 'it does not turn right round, which takes 180°';
  return [`whole bait: folds ${fold}; ${round}.`, ...farLines(port, starboard)];
}

function farLines(port: Curl, starboard: Curl): readonly string[] {
  return ([port, starboard] as const).flatMap(({ far, joints }, i) => {
    if (!far) return [];
    // mirrored: said once
    if (i === 1 && port.far && Math.abs(port.fold - starboard.fold) < SAME_RAD) return [];
    const [a, b] = far.links.map((link) => link + 1);
    const [x, y, z] = far.at.map((part) => formatNumber(part));
    return [
      `  Links ${a} and ${b} meet there, at x ${x}, y ${y}, z ${z} of link ${a}; its joints alone would fold ${formatAngle(joints)}.`,
    ];
  });
}
