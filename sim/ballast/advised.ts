import type { ProposedEdit } from '../design/edit.ts';
import type { Float } from '../hydro/float.ts';
import type { Band } from '../sinking/drag-law.ts';
import type { Gram, Mm, Radian, Second } from '../units/brand.ts';
import type { PinLoad } from './carry.ts';
import type { CureKind } from './cures.ts';
import type { Curl } from './curl.ts';

/** A change that lets a link be ballasted to its aim, with all that follows from it. */
export interface Cure {
  readonly kind: CureKind;
  /** The change, and the holes as they are planned after it: one edit. */
  readonly edit: ProposedEdit;
  readonly after: {
    /** The link alone, with its new ballast. */
    readonly link: Float;
    /** The whole bait, with what is planned for every link. */
    readonly assembled: Float;
    /** How fast the two fall then; null: they float or hang. */
    readonly speeds: { readonly link: Band | null; readonly assembled: Band | null };
    /** Lead in the link. */
    readonly lead: Gram;
    readonly met: boolean;
    /** What the pin carries where a neighbour bears the rest, and how the bait curls by that; null: nothing of the kind. */
    readonly pin: LoadedPin | null;
  };
}

/** curl: what the bait does let go; null: it stays straight. */
export interface LoadedPin extends PinLoad {
  readonly curl: Curl | null;
}

/** How a setup fares when one thing about it is different. */
export interface WhatIfRow {
  readonly name: string;
  readonly state: Float['state'];
  readonly netWet: Gram;
  readonly trim: Radian;
  /** null where nothing stands out of the water. */
  readonly proud: Mm | null;
  /** Time to its first foot, the middle of what it may be; null where it does not sink. */
  readonly firstFoot: Second | null;
  /** Against the setup as it is. */
  readonly change: {
    readonly netWet: Gram;
    readonly trim: Radian;
    readonly proud: Mm | null;
    readonly firstFoot: Second | null;
  };
  /** At the same target: lead that it then wants, and how much more that is; null where its ballast stays as it is. */
  readonly lead: { readonly mass: Gram; readonly change: Gram } | null;
}
