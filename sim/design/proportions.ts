import type { Issue } from '../flow/outcome.ts';
import { backOf, noseOf, noseRun, tailOf, tailRun } from './body-defaults.ts';
import { withUnit } from './number-keys.ts';
import { isWithin, LEANEST_TO_A_TIP, outside, rangeAt } from './ranges.ts';
import type { WorkedFile } from './work-out.ts';

type WorkedBody = WorkedFile['body'];

/** The back stands above the datum and the belly below it, each by a good part of the height. */
const BACK_SHARE = { low: 0.1, high: 0.9 };
/** Nearer to an end the quarter outline would be steeper than a bait is, and its mesh coarse. */
const STATION_SHARE = { low: 0.1, high: 0.9 };
/** Readings nearer to each other, as a share of the length, would bend an outline into a step. */
const READING_SHARE = 0.01;
/** A tenth of 140 is not quite 14 in binary; a station on the very limit is meant to be allowed. */
const ROUNDING_MM = 1e-9;

/** Every number that is wrong for the size of another one: of the body, its stem, and stretches from one z to another. */
export function proportionIssues(file: WorkedFile): readonly Issue[] {
  return [...bodyIssues(file.body), ...file.joints.flatMap((joint, index) => upwards(joint, `joints.${index}`))];
}

function bodyIssues(body: WorkedBody): readonly Issue[] {
  const sizes = ['length_mm', 'height_mm', 'width_mm'] as const;
  // against a size or a peak that is itself wrong, every other number would be wrong too
  const areSane = sizes.every((key) => isWithin(body[key], rangeAt(['body', key]) ?? { low: 0, high: 0 }));
  if (!areSane) return [];
  const peaks = [...backShare(body), ...stationShare(body, 'deepest_x_mm'), ...stationShare(body, 'widest_x_mm')];
  const ends = peaks.length === 0 ? [...bluntEnd(body, 'nose'), ...bluntEnd(body, 'tail')] : [];
  return [...peaks, ...ends, ...leanness(body), ...readingIssues(body)];
}

function backShare(body: WorkedBody): readonly Issue[] {
  const least = BACK_SHARE.low * body.height_mm;
  const most = BACK_SHARE.high * body.height_mm;
  const back = backOf(body);
  if (back > least && back < most) return [];
  const allowed = `between ${withUnit(least, '_mm')} and ${withUnit(most, '_mm')}`;
  const message = `${withUnit(back, '_mm')} is outside what is allowed for this height: ${allowed}, both excluded`;
  return [{ code: 'design/out-of-proportion', path: 'body.back_mm', message }];
}

/** A peak, and each end of a straight run, stands well inside the body; a run is written from fore to aft. */
function stationShare(body: WorkedBody, key: 'deepest_x_mm' | 'widest_x_mm'): readonly Issue[] {
  const station = body[key];
  if (station === undefined) return [];
  const low = STATION_SHARE.low * body.length_mm - ROUNDING_MM;
  const high = STATION_SHARE.high * body.length_mm + ROUNDING_MM;
  const stations = typeof station === 'number' ? [station] : station;
  const strays = stations.flatMap((x, i) => {
    if (isWithin(x, { low, high })) return [];
    const path = typeof station === 'number' ? `body.${key}` : `body.${key}.${i}`;
    const hint = 'keep it between 10 % and 90 % of the length';
    return [{ ...outside(x, { low, high }, key, path), code: 'design/out-of-proportion', hint }];
  });
  const [from, to] = stations;
  if (strays.length > 0 || to === undefined || from < to) return strays;
  const message = `[from, to] is wanted, from fore to aft, got ${withUnit(from, '_mm')} to ${withUnit(to, '_mm')}`;
  const hint = 'write the station nearer the nose first, or a single one';
  return [{ code: 'design/out-of-proportion', path: `body.${key}`, message, hint }];
}

/** The outline falls from its peak to a blunt end on every side, so the end lies strictly inside the peak's section. */
function bluntEnd(body: WorkedBody, end: 'nose' | 'tail'): readonly Issue[] {
  const { z, depth, width, round } = end === 'tail' ? tailOf(body) : { z: 0, ...noseOf(body) };
  const run = end === 'tail' ? tailRun(body) : noseRun(body);
  const [top, bottom] = [z + depth / 2, z - depth / 2];
  const back = backOf(body);
  const belly = back - body.height_mm;
  const issues: Issue[] = [];
  const refuse = (key: string, message: string) =>
    issues.push({
      code: 'design/out-of-proportion',
      path: `body.${end}.${key}`,
      message,
      hint: end === 'tail' ? 'make the tail end smaller or move it' : 'make the nose smaller',
    });
  if (!(top < back && bottom > belly)) {
    const given = `the ${end} end reaches from ${withUnit(bottom, '_mm')} to ${withUnit(top, '_mm')}`;
    const allowed = `${withUnit(belly, '_mm')} to ${withUnit(back, '_mm')}, belly to back, both excluded`;
    refuse(depth > 0 ? 'depth_mm' : 'z_mm', `${given}; allowed is inside ${allowed}`);
  }
  if (!(width < body.width_mm)) {
    const most = withUnit(body.width_mm, '_mm');
    refuse('width_mm', `${withUnit(width, '_mm')} is too wide; less than the body's width ${most} is allowed`);
  }
  if (round > run) {
    const most = withUnit(run, '_mm');
    const way = end === 'tail' ? 'from the peak to the tail' : 'from the nose to the peak';
    refuse('round_mm', `${withUnit(round, '_mm')} is too long; at most the ${most} ${way} are allowed`);
  }
  return issues;
}

/** A reading tells one thing of one station between the tips, and says something. */
function readingIssues(body: WorkedBody): readonly Issue[] {
  const readings = body.readings ?? [];
  return readings.flatMap((reading, i): readonly Issue[] => {
    const path = `body.readings.${i}`;
    const refuse = (key: string, message: string, hint: string): Issue[] => [
      { code: 'design/out-of-proportion', path: key === '' ? path : `${path}.${key}`, message, hint },
    ];
    const x = withUnit(reading.x_mm, '_mm');
    if (!(reading.x_mm > 0 && reading.x_mm < body.length_mm)) {
      const allowed = `between 0 mm and ${withUnit(body.length_mm, '_mm')}, both excluded`;
      return refuse('x_mm', `${x} is no place on the body; allowed is ${allowed}`, 'measure from the nose tip');
    }
    const apart = READING_SHARE * body.length_mm - ROUNDING_MM;
    const earlier = readings.findIndex((other) => Math.abs(other.x_mm - reading.x_mm) < apart);
    if (earlier < i) {
      const other = withUnit(readings[earlier].x_mm, '_mm');
      const message = `${x} is too near body.readings.${earlier} at ${other}; a hundredth of the length apart is allowed`;
      return refuse('x_mm', message, 'write both into one reading, or leave one out');
    }
    const { height_mm: height, back_mm: back, belly_mm: belly, width_mm: width } = reading;
    if (height !== undefined && (back !== undefined || belly !== undefined)) {
      const message = `height_mm ${withUnit(height, '_mm')} is for back and belly together; here one of them is given too`;
      return refuse('height_mm', message, 'give the height, or back and belly');
    }
    return [height, back, belly, width].some((size) => size !== undefined)
      ? []
      : refuse(
          '',
          `the reading at ${x} says nothing; height_mm, back_mm, belly_mm or width_mm is wanted`,
          'add a size',
        );
  });
}

/** An outline leaner than the range for a plain tip needs an end with a size to run into. */
function leanness(body: WorkedBody): readonly Issue[] {
  const ends = { nose: noseOf(body), tail: tailOf(body) };
  return (['nose', 'tail'] as const).flatMap((end) =>
    (['back', 'belly', 'plan'] as const).flatMap((outline) => {
      const share = body[outline]?.[`${end}_fullness`];
      const [key, size] = outline === 'plan' ? ['width_mm', ends[end].width] : ['depth_mm', ends[end].depth];
      if (share === undefined || size > 0 || share >= LEANEST_TO_A_TIP) return [];
      const path = `body.${outline}.${end}_fullness`;
      const message = `${share} is too lean for a plain tip: ${LEANEST_TO_A_TIP} or more is allowed, less only with a ${end} of some ${key}`;
      return [{ code: 'design/out-of-proportion', path, message, hint: `raise it or give body.${end}.${key}` }];
    }),
  );
}

/** Stretches are written from the lower z to the upper one. */
function upwards(joint: WorkedFile['joints'][number], path: string): readonly Issue[] {
  const pin = joint.hinge.kind === 'pin' ? [[joint.hinge.pin.z_mm, `${path}.hinge.pin.z_mm`] as const] : [];
  const slots = (joint.slots ?? []).map(({ z_mm: z }, index) => [z, `${path}.slots.${index}.z_mm`] as const);
  return [...pin, ...slots].flatMap(([[from, to], where]) => {
    if (from < to) return [];
    const message = `[from, to] is wanted, from below to above, got ${withUnit(from, '_mm')} to ${withUnit(to, '_mm')}`;
    return [{ code: 'design/upside-down', path: where, message, hint: 'write the lower height first' }];
  });
}
