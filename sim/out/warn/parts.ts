import type { OtherParts, Refloated } from '../../ballast/refloat.ts';
import type { TargetAnswer } from '../../ballast/target.ts';
import type { Hanger, Joint, Setup } from '../../design/design.ts';
import type { DesignFile } from '../../design/file.ts';
import type { Hull } from '../../hull/hull.ts';
import type { Digits } from '../../hydro/accuracy.ts';
import type { Float } from '../../hydro/float.ts';
import type { LinkSpec } from '../../links/cut.ts';
import type { Hardware } from '../../mass/placed.ts';
import type { Wall } from '../../mass/wall.ts';
import type { Wetted } from '../../mesh/wetted.ts';
import type { WaterAnswer } from '../../tables/waters.ts';
import type { Mm } from '../../units/brand.ts';

export interface WarnParts {
  readonly water: WaterAnswer;
  readonly hull: Hull;
  readonly links: readonly LinkSpec[];
  readonly hardware: Hardware;
  /** Of each hole, in the order of the hardware. */
  readonly walls: readonly Wall[];
  readonly wetted: readonly Wetted[];
  readonly floats: readonly Float[];
  readonly assembled: Float;
  readonly target: TargetAnswer;
  readonly drawn: Drawn;
}

/** What warnings read of the design itself, and what their cures are written into. */
export interface Drawn {
  readonly joints: readonly Joint[];
  readonly hangers: readonly Hanger[];
  /** Least wood that the maker wants round ballast. */
  readonly wall: Mm;
  /** All of them: they share joints and eyes, and what cures one must not spoil another. */
  readonly setups: readonly Setup[];
  /** The number of the one that is looked at. */
  readonly setup: number;
  /** As the maker wrote it, expressions and all. */
  readonly file: Pick<DesignFile, 'joints' | 'hangers' | 'setups'>;
}

/** How many decimals are meant, of each link alone and of the whole. */
export interface MeantDigits {
  readonly links: readonly Digits[];
  readonly whole: Digits;
}

/** What cures are tried on: the bait floated once more with other parts in it. */
export type Refloat = (other: OtherParts) => Refloated;

/** What is known only when all else is: until then no cure is looked for, since that takes longer than a picture may wait. */
export interface Late {
  readonly meant: MeantDigits;
  /** null: with those parts the film of the water would decide whether it floats, which it did not. */
  readonly refloat: TrialFloat;
}

export type TrialFloat = (other: OtherParts) => Refloated | null;

export const WHOLE_BAIT = 'the whole bait';
