import type { Reading } from '../design/design.ts';
import { type Issue, SimError } from '../flow/outcome.ts';
import { buildPchip, type Pchip, pchipAt } from '../numerics/pchip.ts';
import type { Mm } from '../units/brand.ts';
import { type Outline, outlineAt } from './outline.ts';

/**
 * Outlines bent to pass through what calipers read. Each is drawn times a ratio that runs through measured over drawn
 * at every reading: 1 at the peak unless read there, monotone between, constant beyond the outermost.
 *
 * Back and belly are taken off a line that lies between them all the way: the datum, lifted from the peak on to the
 * tail's own level and ahead of it by as much of that as the outline there has risen. So the body still closes at both
 * tips wherever its tail stands, and with the tail on the datum the line is the datum. null: not read.
 */
export interface Bend {
  readonly back: Pchip | null;
  readonly belly: Pchip | null;
  readonly plan: Pchip | null;
  /** From here on the line stands at `level`, the tail's. */
  readonly peak: Mm;
  readonly level: Mm;
  /** Ahead of the peak: shares of the drawn back and belly. At most one is not 0. */
  readonly ofBack: number;
  readonly ofBelly: number;
}

interface Drawn {
  readonly length: Mm;
  readonly back: Outline;
  /** Depth under the datum. */
  readonly belly: Outline;
  readonly plan: Outline;
}

/** A reading further from what is drawn than this is a slip, or of another bait. Chosen by us. */
const LEAST_RATIO = 0.25;
const MOST_RATIO = 4;

type Size = 'height' | 'back' | 'belly' | 'width';

/**
 * The bend of readings, null where there are none. No two stand at one x, all between the tips. Throws SimError where
 * one is too far from what is drawn.
 */
export function buildBend(drawn: Drawn, readings: readonly Reading[]): Bend | null {
  if (readings.length === 0) return null;
  const level = drawn.back.tail.level;
  const straight: Bend = {
    back: null,
    belly: null,
    plan: null,
    peak: drawn.back.peak,
    level,
    ofBack: level > 0 ? level / peakOf(drawn.back) : 0,
    ofBelly: level < 0 ? -level / peakOf(drawn.belly) : 0,
  };
  const issues: Issue[] = [];
  const station = new Float64Array(6);
  const knots = { back: [] as Knot[], belly: [] as Knot[], plan: [] as Knot[] };
  readings.forEach(({ x, height, back, belly, width }, index) => {
    drawnAt(drawn, x, station);
    const [line] = lineAt(straight, x, station);
    const take = (outline: keyof typeof knots, size: Size, measured: Mm, zero: Mm, drawnSize: Mm) => {
      const ratio = (measured - zero) / (drawnSize - zero);
      if (ratio >= LEAST_RATIO && ratio <= MOST_RATIO) knots[outline].push({ x, ratio });
      else issues.push(tooFar(`body.readings.${index}.${size}_mm`, measured, zero, drawnSize));
    };
    const [drawnBack, drawnBelly, drawnWidth] = [station[0], -station[2], 2 * station[4]];
    if (height !== null && back === null && belly === null) {
      take('back', 'height', height, 0, drawnBack + drawnBelly);
      take('belly', 'height', height, 0, drawnBack + drawnBelly);
    } else {
      const over = back ?? (height !== null && belly !== null ? height - belly : null);
      const under = belly ?? (height !== null && back !== null ? height - back : null);
      if (over !== null) take('back', back === null ? 'height' : 'back', over, line, drawnBack);
      if (under !== null) take('belly', belly === null ? 'height' : 'belly', under, -line, drawnBelly);
    }
    if (width !== null) take('plan', 'width', width, 0, drawnWidth);
  });
  // a height that is too far off is so for the back and for the belly
  const once = issues.filter((issue, i) => issues.findIndex(({ path }) => path === issue.path) === i);
  if (once.length > 0) throw new SimError(once);
  return {
    ...straight,
    back: ratioCurve(drawn.back, knots.back),
    belly: ratioCurve(drawn.belly, knots.belly),
    plan: ratioCurve(drawn.plan, knots.plan),
  };
}

/** Bends a station as drawn ([back, back', belly, belly', half width, half width']) in place. */
export function bendStation(bend: Bend, x: Mm, station: Float64Array): void {
  const [line, lineSlope] = lineAt(bend, x, station);
  multiply(bend.back, x, station, 0, line, lineSlope);
  multiply(bend.belly, x, station, 2, line, lineSlope);
  multiply(bend.plan, x, station, 4, 0, 0);
}

interface Knot {
  readonly x: Mm;
  readonly ratio: number;
}

/** The ratio over x. The constant stretches beyond the outermost knots belong to it, so that it leaves them level. */
function ratioCurve(outline: Outline, read: readonly Knot[]): Pchip | null {
  if (read.length === 0) return null;
  const ends = [outline.peak, outline.length - outline.tail.run] as const;
  // rounding of a station that is meant to be the peak
  const isReadThere = read.some(({ x }) => x >= ends[0] - 1e-6 && x <= ends[1] + 1e-6);
  const peaks = ends[1] - ends[0] > 1e-6 ? ends : [ends[0]];
  const ones = isReadThere ? [] : peaks.map((x) => ({ x, ratio: 1 }));
  const knots = [...read, ...ones].toSorted((a, b) => a.x - b.x);
  const [first, last] = [knots[0], knots[knots.length - 1]];
  const all = [{ x: 0, ratio: first.ratio }, ...knots, { x: outline.length, ratio: last.ratio }];
  return buildPchip(
    all.map(({ x }) => x),
    all.map(({ ratio }) => ratio),
  );
}

const ratio = new Float64Array(2);

function multiply(curve: Pchip | null, x: Mm, station: Float64Array, at: number, line: Mm, lineSlope: number): void {
  if (curve === null) return;
  pchipAt(curve, x, ratio);
  const off = station[at] - line;
  station[at] = line + ratio[0] * off;
  station[at + 1] = lineSlope + ratio[1] * off + ratio[0] * (station[at + 1] - lineSlope);
}

/** Height and slope of the line between back and belly that they are taken off. */
function lineAt(bend: Bend, x: Mm, station: Float64Array): readonly [height: Mm, slope: number] {
  if (x >= bend.peak) return [bend.level, 0];
  return [bend.ofBack * station[0] + bend.ofBelly * station[2], bend.ofBack * station[1] + bend.ofBelly * station[3]];
}

function peakOf(outline: Outline): Mm {
  return outline.nose.level + Math.sqrt(outline.nose.swell + outline.nose.end);
}

/** The station as drawn, before anything is bent. */
function drawnAt(drawn: Drawn, x: Mm, out: Float64Array): void {
  outlineAt(drawn.back, x, out, 0);
  outlineAt(drawn.belly, x, out, 2);
  out[2] = -out[2];
  out[3] = -out[3];
  outlineAt(drawn.plan, x, out, 4);
}

function tooFar(path: string, measured: Mm, zero: Mm, drawnSize: Mm): Issue {
  const of = (share: number) => `${Number((zero + share * (drawnSize - zero)).toFixed(2))} mm`;
  const given = `${Number(measured.toFixed(2))} mm`;
  return {
    code: 'hull/reading-too-far',
    path,
    message: `${given} is too far from the ${of(1)} drawn there; ${of(LEAST_RATIO)} to ${of(MOST_RATIO)} can be bent to`,
    hint: 'check the reading, or draw the body nearer to it',
  };
}
