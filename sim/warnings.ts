import type { Vec3 } from './numerics/vec3.ts';

/** Something the maker should know of; worst first where they are listed. */
export interface Warning {
  readonly code: string;
  /** The part it is about, in words: a link, a hole, an eye. */
  readonly where: string;
  readonly text: string;
  /** Its place in the body frame; null: the bait as a whole, or several places. */
  readonly at: Vec3 | null;
  /** What was found and what it is held against, both in `unit`. null: there is no such number. */
  readonly number: number | null;
  readonly limit: number | null;
  readonly unit: 'mm' | 'g' | 'mm/s' | 'deg' | null;
  /** One edit after which the bait is better off; null: no single one is known. */
  readonly fix: ProposedEdit | null;
}

/** What a warning is without place, number and cure. */
export const WORDS_ALONE = { at: null, number: null, limit: null, unit: null, fix: null } as const;

/** A change of the design that is proposed, and made or left by the maker: one undo step. */
export interface ProposedEdit {
  /** What it does, as an order: `move "belly, fore" 4 mm aft`. */
  readonly says: string;
  /** Places of the file, in the order they are set, and what goes there. Where nothing stood it is put in. */
  readonly sets: readonly { readonly path: string; readonly value: unknown }[];
}
