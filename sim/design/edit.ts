import type { DesignFile } from './file.ts';
import { withValueAt } from './place.ts';

/** A change of the design that is proposed, and made or left by the maker: one undo step. */
export interface ProposedEdit {
  /** What it does, as an order: `move "belly, fore" 4 mm aft`. */
  readonly says: string;
  /** Places of the file, in the order they are set, and what goes there. Where nothing stood it is put in. */
  readonly sets: readonly { readonly path: string; readonly value: unknown }[];
}

/** The file with a proposed edit made; the file given stays as it is. What may stand where, the reading of it says. */
export function withEdit(file: DesignFile, { sets }: ProposedEdit): DesignFile {
  return sets.reduce((edited, { path, value }) => withValueAt(edited, path, value), file);
}

/** A number of the file so much larger; an expression stays one: `length_mm * 0.4` becomes `(length_mm * 0.4) + 2`. */
export function shifted(from: number | string, by: number): number | string {
  if (typeof from === 'number') return Number((from + by).toFixed(6));
  return `(${from}) ${by < 0 ? '-' : '+'} ${Math.abs(by)}`;
}
