import { type Design, type DesignFile, valueAt, withValueAt } from '../../../sim/index.ts';
import type { Edit } from '../../document/commands.ts';
import type { MeasureKind } from '../../view/measures.ts';

/** One number of the design as the margin shows it. Values are in the file's units. */
export interface Field {
  readonly label: string;
  readonly kind: MeasureKind;
  /** null: not known, because the expression or the default has not been worked out yet. */
  readonly value: number | null;
  /** Where a value comes from that is not written as a number. */
  readonly note: string | null;
  /** The places in the file whose issues belong beside this field; the first is where a typed number goes. */
  readonly paths: readonly string[];
  /** What an edit of it is called in the history. */
  readonly edited: string;
  edit(value: number): Edit;
}

/** Whether two fields are the same to see and to use: an edit is made of the places and the value alone. */
export function isSame(one: Field, other: Field): boolean {
  return (
    one.label === other.label &&
    one.kind === other.kind &&
    one.value === other.value &&
    one.note === other.note &&
    one.edited === other.edited &&
    one.paths.join() === other.paths.join()
  );
}

/** A place of the file that a field is for. */
export interface Place {
  readonly label: string;
  readonly kind: MeasureKind;
  readonly path: string;
  readonly edited: string;
  /** What stands for a value that is left out, in the file's unit. */
  readonly usual?: number | undefined;
  /** Another place whose issues belong here too. */
  readonly within?: string;
  readonly edit?: (value: number) => Edit;
}

/** A place of the design file as a field. An expression shows what it came to; a typed number takes its place. */
export function field(file: DesignFile, design: Design | undefined, place: Place): Field {
  const written = valueAt(file, place.path);
  const path = targetOf(file, place.path);
  return {
    label: place.label,
    kind: place.kind,
    value: typeof written === 'number' ? written : workedAt(design, place, written),
    note: noteFor(file, written, path),
    paths: [path, ...(path === place.path ? [] : [place.path]), ...(place.within === undefined ? [] : [place.within])],
    edited: place.edited,
    edit: place.edit ?? ((value) => (design) => withValueAt(design, path, value)),
  };
}

/** What an expression came to, while it is still the one that was worked out; for what is left out, what is usual. */
function workedAt(design: Design | undefined, place: Place, written: unknown): number | null {
  if (written === undefined) return place.usual ?? null;
  const worked = design === undefined ? undefined : valueAt(design.worked, place.path);
  return typeof worked === 'number' ? worked : null;
}

/**
 * Where a number typed at this place goes. A place that only names one of the design's own dimensions hands it on to
 * the dimension, so that all that was drawn from it moves along.
 */
function targetOf(file: DesignFile, path: string): string {
  const written = valueAt(file, path);
  return typeof written === 'string' && file.dimensions !== undefined && Object.hasOwn(file.dimensions, written.trim())
    ? `dimensions.${written.trim()}`
    : path;
}

function noteFor(file: DesignFile, written: unknown, path: string): string | null {
  if (written === undefined) return 'not given: as is usual';
  if (typeof written !== 'string') return null;
  if (!path.startsWith('dimensions.')) return `from ${written}`;
  const dimension = valueAt(file, path);
  return typeof dimension === 'string' ? `${written}, from ${dimension}` : written;
}
