import {
  type Amounts,
  degreeFromRadian,
  formatAngle,
  formatNumber,
  type JointReach,
  meetingWords,
  type Reach,
  restated,
  type Swing,
  spanWords,
  swingWords,
  type UnitSystem,
  wholeLines,
} from '../../../sim/index.ts';

/** One row of the table of joints, as it is read. */
export interface JointRow {
  readonly joint: string;
  readonly port: string;
  readonly starboard: string;
  readonly touches: string;
  readonly where: string;
  readonly play: string;
  readonly reach: string;
  readonly bare: string;
}

/** The rows of the table, from the nose. */
export function jointRows({ joints }: Reach, amounts: Amounts): readonly JointRow[] {
  return joints.map((joint) => {
    const { port, starboard, play, bare } = joint;
    const about = joint.approximate ? 'about ' : '';
    return {
      joint: `Joint ${joint.joint + 1}${joint.hinge === 'pin' ? '' : ', linked eyes'}`,
      port: `${about}${formatAngle(port.angle)}`,
      starboard: `${about}${formatAngle(starboard.angle)}`,
      touches: touchesWords(port, starboard),
      where: placeWords(port, starboard, amounts),
      play: movesWords(joint, amounts),
      reach: spanWords(play),
      bare: swingWords(bare),
    };
  });
}

function touchesWords(port: Swing, starboard: Swing): string {
  const [a, b] = [port, starboard].map(({ touch }) => (touch ? meetingWords(touch) : 'nothing'));
  return a === b ? (a ?? '') : `${a} to port, ${b} to starboard`;
}

/** From the nose, off the centre line, above or below the datum; nearly always alike to either side. */
function placeWords({ at }: Swing, { at: other }: Swing, amounts: Amounts): string {
  const place = at ?? other;
  if (!place) return '';
  const [x, y, z] = place;
  const height = `${amounts.length(Math.abs(z))} ${z < 0 ? 'down' : 'up'}`;
  return `${amounts.length(x)} from the nose, ${amounts.length(Math.abs(y))} out, ${height}`;
}

function movesWords({ hinge, play: { moves } }: JointReach, amounts: Amounts): string {
  const [fore, aft] = moves;
  const style = { digits: 2 };
  if (hinge === 'linked-eyes') return `${amounts.length(-fore, style)} of slack`;
  if (Math.abs(fore + aft) < 0.005) return `±${amounts.length(aft, style)}`;
  return `${amounts.length(fore, { ...style, signed: true })} to ${amounts.length(aft, { ...style, signed: true })}`;
}

/** What the whole bait folds, in sentences. */
export function foldWords({ whole }: Reach, units: UnitSystem): readonly string[] {
  return wholeLines(whole).map((line) => {
    const text = restated(line.trim(), units);
    return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
  });
}

/** What the drawing shows, for who cannot see it. */
export function drawingWords({ joints }: Reach): string {
  const each = joints.map((joint) => `joint ${joint.joint + 1} ${swingWords(joint)}`);
  return `The bait from above, each link turned as far as it swings: ${each.join('; ')}.`;
}

/** An angle as it is written beside a link that has swung: whole degrees where there is little room. */
export function limitWords({ angle }: Swing, narrow: boolean): string {
  return narrow ? `${formatNumber(degreeFromRadian(angle), { digits: 0 })}°` : formatAngle(angle);
}
