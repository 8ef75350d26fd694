import type { Issue } from '../flow/outcome.ts';
import { backOf, tailOf, tailRun } from './body-defaults.ts';
import { withUnit } from './number-keys.ts';
import { isWithin, LEANEST_TO_A_TIP, outside, rangeAt } from './ranges.ts';
import type { WorkedFile } from './work-out.ts';

type WorkedBody = WorkedFile['body'];

/** The back stands above the datum and the belly below it, each by a good part of the height. */
const BACK_SHARE = { low: 0.1, high: 0.9 };
/** Nearer to an end the quarter outline would be steeper than a bait is, and its mesh coarse. */
const STATION_SHARE = { low: 0.1, high: 0.9 };
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
  return [...peaks, ...(peaks.length === 0 ? stem(body) : []), ...leanness(body)];
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

/** A straight run is for `notBuiltIssues`. */
function stationShare(body: WorkedBody, key: 'deepest_x_mm' | 'widest_x_mm'): readonly Issue[] {
  const station = body[key];
  const low = STATION_SHARE.low * body.length_mm - ROUNDING_MM;
  const high = STATION_SHARE.high * body.length_mm + ROUNDING_MM;
  if (typeof station !== 'number' || isWithin(station, { low, high })) return [];
  const issue = outside(station, { low, high }, key, `body.${key}`);
  return [{ ...issue, code: 'design/out-of-proportion', hint: 'keep it between 10 % and 90 % of the length' }];
}

/** The outline falls from its peak to the stem on every side, so the stem's end lies strictly inside the peak's. */
function stem(body: WorkedBody): readonly Issue[] {
  const { z, depth, width, round } = tailOf(body);
  const [top, bottom] = [z + depth / 2, z - depth / 2];
  const back = backOf(body);
  const belly = back - body.height_mm;
  const issues: Issue[] = [];
  const refuse = (key: string, message: string) =>
    issues.push({
      code: 'design/out-of-proportion',
      path: `body.tail.${key}`,
      message,
      hint: 'make the tail end smaller or move it',
    });
  if (!(top < back && bottom > belly)) {
    const given = `the tail end reaches from ${withUnit(bottom, '_mm')} to ${withUnit(top, '_mm')}`;
    const allowed = `${withUnit(belly, '_mm')} to ${withUnit(back, '_mm')}, belly to back, both excluded`;
    refuse(depth > 0 ? 'depth_mm' : 'z_mm', `${given}; allowed is inside ${allowed}`);
  }
  if (!(width < body.width_mm)) {
    const most = withUnit(body.width_mm, '_mm');
    refuse('width_mm', `${withUnit(width, '_mm')} is too wide; less than the body's width ${most} is allowed`);
  }
  if (round > tailRun(body)) {
    const most = withUnit(tailRun(body), '_mm');
    refuse(
      'round_mm',
      `${withUnit(round, '_mm')} is too long; at most the ${most} from the peak to the tail are allowed`,
    );
  }
  return issues;
}

/** An outline leaner than the range for a plain tip needs an end with a size to run into. */
function leanness(body: WorkedBody): readonly Issue[] {
  const { depth, width } = tailOf(body);
  const outlines = [
    ['back', 'depth_mm', depth],
    ['belly', 'depth_mm', depth],
    ['plan', 'width_mm', width],
  ] as const;
  return outlines.flatMap(([outline, key, size]) => {
    const share = body[outline]?.tail_fullness;
    if (share === undefined || size > 0 || share >= LEANEST_TO_A_TIP) return [];
    const message = `${share} is too lean for a plain tip: ${LEANEST_TO_A_TIP} or more is allowed, less only with a tail of some ${key}`;
    const hint = `raise it or give body.tail.${key}`;
    return [{ code: 'design/out-of-proportion', path: `body.${outline}.tail_fullness`, message, hint }];
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
