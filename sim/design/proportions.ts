import type { Issue } from '../flow/outcome.ts';
import { backOf, noseOf, noseRun, tailOf, tailRun } from './body-defaults.ts';
import { withUnit } from './number-keys.ts';
import { isWithin, LEANEST_TO_A_TIP, outside, rangeAt } from './ranges.ts';
import { readingIssues } from './readings.ts';
import type { WorkedFile } from './work-out.ts';

type WorkedBody = WorkedFile['body'];

/** The back stands above the datum and the belly below it, each by a good part of the height. */
const BACK_SHARE = { low: 0.1, high: 0.9 };
/** Nearer to an end the quarter outline would be steeper than a bait is, and its mesh coarse. */
const STATION_SHARE = { low: 0.1, high: 0.9 };
/** A tenth of 140 is not quite 14 in binary; a station on the very limit is meant to be allowed. */
const ROUNDING_MM = 1e-9;

/** Every number that is wrong for the size of another one: of the body, its ends, and stretches from one z to another. */
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
  return [...peaks, ...ends, ...leanness(body, 'nose'), ...leanness(body, 'tail'), ...readingIssues(body)];
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

/** A station, or both ends of a straight run. */
function stationShare(body: WorkedBody, key: 'deepest_x_mm' | 'widest_x_mm'): readonly Issue[] {
  const station = body[key];
  if (station === undefined) return [];
  const low = STATION_SHARE.low * body.length_mm - ROUNDING_MM;
  const high = STATION_SHARE.high * body.length_mm + ROUNDING_MM;
  const places =
    typeof station === 'number'
      ? [[station, `body.${key}`] as const]
      : station.map((x, index) => [x, `body.${key}.${index}`] as const);
  const issues = places.flatMap(([x, path]): Issue[] => {
    if (isWithin(x, { low, high })) return [];
    const issue = outside(x, { low, high }, key, path);
    return [{ ...issue, code: 'design/out-of-proportion', hint: 'keep it between 10 % and 90 % of the length' }];
  });
  if (typeof station === 'number' || !(station[0] > station[1])) return issues;
  const [from, to] = station.map((x) => withUnit(x, key));
  const message = `[from, to] is wanted, from nose to tail, got ${from} to ${to}`;
  const hint = 'write the station nearer the nose first';
  return [...issues, { code: 'design/back-to-front', path: `body.${key}`, message, hint }];
}

/** The outline falls from its peak to either end on every side, so the end lies strictly inside the peak's section. */
function bluntEnd(body: WorkedBody, end: 'nose' | 'tail'): readonly Issue[] {
  const { z, depth, width, round } = end === 'nose' ? { z: 0, ...noseOf(body) } : tailOf(body);
  const run = end === 'nose' ? noseRun(body) : tailRun(body);
  const [top, bottom] = [z + depth / 2, z - depth / 2];
  const back = backOf(body);
  const belly = back - body.height_mm;
  const issues: Issue[] = [];
  const refuse = (key: string, message: string) =>
    issues.push({
      code: 'design/out-of-proportion',
      path: `body.${end}.${key}`,
      message,
      hint: end === 'nose' ? 'make the nose smaller' : 'make the tail end smaller or move it',
    });
  const name = end === 'nose' ? 'the nose' : 'the tail end';
  if (!(top < back && bottom > belly)) {
    const given = `${name} reaches from ${withUnit(bottom, '_mm')} to ${withUnit(top, '_mm')}`;
    const allowed = `${withUnit(belly, '_mm')} to ${withUnit(back, '_mm')}, belly to back, both excluded`;
    refuse(depth > 0 ? 'depth_mm' : 'z_mm', `${given}; allowed is inside ${allowed}`);
  }
  if (!(width < body.width_mm)) {
    const most = withUnit(body.width_mm, '_mm');
    refuse('width_mm', `${withUnit(width, '_mm')} is too wide; less than the body's width ${most} is allowed`);
  }
  if (round > run) {
    const most = withUnit(run, '_mm');
    const allowed = `at most the ${most} from the peak to the ${end} are allowed`;
    refuse('round_mm', `${withUnit(round, '_mm')} is too long; ${allowed}`);
  }
  return issues;
}

/** An outline leaner than the range for a plain tip needs an end with a size to run into. */
function leanness(body: WorkedBody, end: 'nose' | 'tail'): readonly Issue[] {
  const { depth, width } = end === 'nose' ? noseOf(body) : tailOf(body);
  const fullness = `${end}_fullness` as const;
  const outlines = [
    ['back', 'depth_mm', depth],
    ['belly', 'depth_mm', depth],
    ['plan', 'width_mm', width],
  ] as const;
  return outlines.flatMap(([outline, key, size]) => {
    const share = body[outline]?.[fullness];
    if (share === undefined || size > 0 || share >= LEANEST_TO_A_TIP) return [];
    const message = `${share} is too lean for a plain tip: ${LEANEST_TO_A_TIP} or more is allowed, less only with a ${end} of some ${key}`;
    const hint = `raise it or give body.${end}.${key}`;
    return [{ code: 'design/out-of-proportion', path: `body.${outline}.${fullness}`, message, hint }];
  });
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
