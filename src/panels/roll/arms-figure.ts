import {
  type Amounts,
  type Arms,
  type ArmsOver,
  degreeFromRadian,
  formatNumber,
  inchFromMm,
  type Mm,
  type Roll,
  type UnitSystem,
} from '../../../sim/index.ts';

/** The drawing's own units: about a pixel each on a phone. */
export const SIZE = { width: 372, height: 236 } as const;
const LEFT = 36;
const RIGHT = 364;
const TOP = 22;
const FOOT = 196;
/** So much higher than its longest arm is the drawing: words stand over a peak. */
const ROOM = 1.25;
/** What is lower than this share of the drawing lies among the words along the line, and has no mark. */
const LEAST_MARKED = 0.15;
/** Ticks of arm above and below nothing. */
const MOST_TICKS = 3;
/** A letter of the labels is about so wide. */
const LETTER = 5.8;

/** Words at a place of the drawing. */
export interface Label {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** A place that is marked, with its shape and its name. */
export interface Mark {
  readonly kind: 'rest' | 'most' | 'limit' | 'end';
  readonly x: number;
  readonly y: number;
  readonly label: Label | null;
}

/** Everything that is drawn of a righting-arm curve. */
export interface ArmsFigure {
  readonly curve: string;
  /** Under the arms that bring it back, to either side. */
  readonly kept: readonly string[];
  readonly level: number;
  readonly heels: readonly Label[];
  readonly arms: readonly Label[];
  readonly marks: readonly Mark[];
}

/** Lays out the curve: degrees of heel along, arm up, port at the left as for who looks forward. */
export function layOutArms(roll: Roll, arms: Arms, units: UnitSystem, amounts: Amounts): ArmsFigure {
  const longest = Math.max(...arms.points.map(({ arm }) => Math.abs(arm)), 1e-6);
  const step = niceStep(units === 'mm-g' ? longest : inchFromMm(longest), MOST_TICKS);
  const top = longest * ROOM;
  const across = (heel: number) => LEFT + ((RIGHT - LEFT) * (degreeFromRadian(heel) + 180)) / 360;
  const up = (arm: Mm) => (TOP + FOOT) / 2 - ((FOOT - TOP) / 2) * (arm / top);
  const at = (heel: number, arm: Mm) => `${across(heel).toFixed(1)} ${up(arm).toFixed(1)}`;
  const level = up(0);
  const mmPerUnit = units === 'mm-g' ? 1 : 1 / inchFromMm(1);
  const count = Math.floor(top / (step * mmPerUnit));
  const ticks = Array.from({ length: 2 * count + 1 }, (_, i) => (i - count) * step);
  const rest = restHeel(roll, arms);
  return {
    curve: `M${arms.points.map(({ heel, arm }) => at(heel, arm)).join('L')}`,
    kept: [arms.starboard, arms.port].map((over, i) => {
      const way = i === 0 ? 1 : -1;
      const end = over.limit ?? over.onEnd ?? way * Math.PI;
      const inside = arms.points.filter(({ heel }) => way * (heel - rest) > 0 && way * (end - heel) >= 0);
      const run = way === 1 ? inside : inside.toReversed();
      if (run.length === 0) return '';
      const last = over.limit === null ? (run.at(-1)?.heel ?? end) : end;
      return `M${at(rest, 0)}L${run.map(({ heel, arm }) => at(heel, arm)).join('L')}L${at(last, 0)}Z`;
    }),
    level,
    heels: [-180, -90, 0, 90, 180].map((degrees) => ({
      x: LEFT + ((RIGHT - LEFT) * (degrees + 180)) / 360,
      y: FOOT + 16,
      text: `${Math.abs(degrees)}°`,
      anchor: degrees === 180 ? 'end' : 'middle',
    })),
    arms: ticks.map((value) => ({
      x: LEFT - 5,
      y: up(value * mmPerUnit) + 4,
      text: formatNumber(value, { digits: decimalsOf(step) }),
      anchor: 'end',
    })),
    marks: [
      { kind: 'rest', x: across(rest), y: level, label: restLabel(roll, across(rest), level) },
      ...sideMarks(arms.starboard, 1, { across, up, amounts, top }),
      ...sideMarks(arms.port, -1, { across, up, amounts, top }),
    ],
  };
}

/** Where the arms go through nothing and bring it back: the rest. */
function restHeel({ loll, isAfloat }: Roll, { points, starboard }: Arms): number {
  if (loll !== null) return loll;
  if (!isAfloat) return starboard.most.heel - Math.PI / 2;
  const least = points.reduce((a, b) => (b.energy < a.energy ? b : a));
  return Math.abs(least.heel) < 1e-9 ? 0 : least.heel;
}

function restLabel({ loll }: Roll, x: number, level: number): Label | null {
  if (loll === null) return null;
  const text = `loll ${formatNumber(Math.abs(degreeFromRadian(loll)), { digits: 0 })}°`;
  // on the side where the curve, past its rest, runs on the other side of the line
  return loll > 0
    ? { x: clamped(x + 6, text, 'start'), y: level + 14, text, anchor: 'start' }
    : { x: clamped(x - 6, text, 'end'), y: level - 7, text, anchor: 'end' };
}

/** Where heels and arms stand in the drawing, and how arms are written. */
interface Scales {
  readonly amounts: Amounts;
  /** Of the drawing. */
  readonly top: Mm;
  across(heel: number): number;
  up(arm: Mm): number;
}

function sideMarks(
  { limit, most, onEnd }: ArmsOver,
  way: 1 | -1,
  { amounts, across, up, top }: Scales,
): readonly Mark[] {
  const [x, y] = [across(most.heel), up(way * most.arm)];
  const text = `most ${amounts.length(most.arm)} at ${degrees(most.heel)}`;
  const marks: Mark[] = [];
  if (most.arm > top * LEAST_MARKED) {
    const label: Label = {
      x: clamped(x, text, 'middle'),
      y: y - way * 8 + (way === 1 ? 0 : 8),
      text,
      anchor: 'middle',
    };
    marks.push({ kind: 'most', x, y, label });
  }
  const [end, word] = limit !== null ? [limit, 'limit'] : [onEnd, 'on end'];
  if (end !== null) {
    const name = `${word} ${degrees(end)}`;
    const anchor = way === 1 ? 'start' : 'end';
    marks.push({
      kind: limit !== null ? 'limit' : 'end',
      x: across(end),
      y: up(0),
      label: { x: clamped(across(end) + way * 6, name, anchor), y: up(0) - (way === 1 ? 7 : -14), text: name, anchor },
    });
  }
  return marks;
}

function degrees(heel: number): string {
  return `${formatNumber(Math.abs(degreeFromRadian(heel)), { digits: 0 })}°`;
}

/** Moved inwards as far as the words need to stay on the drawing. */
function clamped(x: number, text: string, anchor: Label['anchor']): number {
  const width = text.length * LETTER;
  const [before, after] = { start: [0, width], middle: [width / 2, width / 2], end: [width, 0] }[anchor];
  return Math.min(SIZE.width - after, Math.max(before, x));
}

/** A step of 1, 2 or 5 in its last figure, of which at most so many reach up to a number. */
function niceStep(most: number, count: number): number {
  const rough = most / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  return ([1, 2, 5].find((factor) => factor * power >= rough * (1 - 1e-9)) ?? 10) * power;
}

function decimalsOf(step: number): number {
  return Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
}

/** The arms at whole steps of heel, to both sides, as rows of a table; the side that brings it back positive. */
export interface ArmRow {
  readonly heel: string;
  readonly starboard: string;
  readonly port: string;
}

const ROW_DEGREES = 15;

/** An arm that the curve does not have, since it ends before that, is a dash. */
export function armRows({ points }: Arms, amounts: Amounts): readonly ArmRow[] {
  const armAt = (heel: number, way: 1 | -1) => {
    const point = points.find((one) => Math.abs(degreeFromRadian(one.heel) - way * heel) < 1e-6);
    return point === undefined ? '–' : amounts.length(way * point.arm, { digits: 2, signed: true });
  };
  return Array.from({ length: 180 / ROW_DEGREES + 1 }, (_, i) => {
    const heel = i * ROW_DEGREES;
    return { heel: `${heel}°`, starboard: armAt(heel, 1), port: armAt(heel, -1) };
  });
}
