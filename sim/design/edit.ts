import type { ProposedEdit } from '../warnings.ts';
import { EXPRESSION_LIMITS } from './expression-limits.ts';
import type { DesignFile } from './file.ts';
import { valueAt, withValueAt } from './place.ts';
import { isWithin, rangeAt } from './ranges.ts';

export type { ProposedEdit } from '../warnings.ts';

/** The file with a proposed edit made; the file given stays as it is. What may stand where, the reading of it says. */
export function withEdit(file: DesignFile, { sets }: ProposedEdit): DesignFile {
  return sets.reduce((edited, { path, value }) => withValueAt(edited, path, value), file);
}

/**
 * A number of the file so much larger, as one step of a proposed edit; null where it would leave its range. now: what it
 * comes to as it stands.
 */
export function shiftAt(
  file: Pick<DesignFile, 'joints' | 'hangers' | 'setups'>,
  path: string,
  by: number,
  now: number,
): ProposedEdit['sets'][number] | null {
  const range = rangeAt(path.split('.').map((key) => (/^\d+$/.test(key) ? Number(key) : key)));
  if (range === null || !isWithin(now + by, range)) return null;
  const written = valueAt(file, path);
  const value = shifted(typeof written === 'string' ? written : now, by);
  // an expression that has been shifted too often to stay one becomes what it comes to
  const tooLong = typeof value === 'string' && value.length > EXPRESSION_LIMITS.characters;
  return { path, value: tooLong ? shifted(now, by) : value };
}

/** A number of the file so much larger; an expression stays one: `length_mm * 0.4` becomes `(length_mm * 0.4) + 2`. */
export function shifted(from: number | string, by: number): number | string {
  if (typeof from === 'number') return Number((from + by).toFixed(6));
  return `(${from}) ${by < 0 ? '-' : '+'} ${Number(Math.abs(by).toFixed(6))}`;
}
