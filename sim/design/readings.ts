import type { Issue } from '../flow/outcome.ts';
import { withUnit } from './number-keys.ts';
import type { WorkedFile } from './work-out.ts';

const SIZES = ['height_mm', 'back_mm', 'belly_mm', 'width_mm'] as const;

/**
 * What is wrong with caliper readings among themselves: off the body, nothing read, one size too many, two at one
 * station. Whether a reading is near what is drawn needs the outlines and is checked with the hull.
 */
export function readingIssues({ length_mm: length, readings = [] }: WorkedFile['body']): readonly Issue[] {
  return readings.flatMap((reading, index) => {
    const path = `body.readings.${index}`;
    const issues: Issue[] = [];
    const { x_mm: x } = reading;
    if (!(x > 0 && x < length)) {
      const allowed = `between 0 mm and ${withUnit(length, '_mm')}, the length, both excluded`;
      const message = `${withUnit(x, '_mm')} is off the body; allowed is ${allowed}`;
      issues.push({ code: 'design/off-the-body', path: `${path}.x_mm`, message });
    }
    const earlier = readings.findIndex((other) => other.x_mm === x);
    if (earlier < index) {
      const message = `${withUnit(x, '_mm')} is read twice: reading ${earlier + 1} stands there too; one reading at a station is allowed`;
      const hint = 'put both into one reading, or move one';
      issues.push({ code: 'design/read-twice', path: `${path}.x_mm`, message, hint });
    }
    if (SIZES.every((key) => reading[key] === undefined)) {
      const message = `nothing is read at ${withUnit(x, '_mm')}; at least one of ${SIZES.join(', ')} is wanted`;
      issues.push({ code: 'design/missing', path, message, hint: 'add what was read or take the reading out' });
    }
    if (reading.height_mm !== undefined && reading.back_mm !== undefined && reading.belly_mm !== undefined) {
      const message = 'height_mm, back_mm and belly_mm are one too many; any two of them say it all';
      issues.push({ code: 'design/out-of-place', path: `${path}.height_mm`, message, hint: 'take height_mm out' });
    }
    return issues;
  });
}
