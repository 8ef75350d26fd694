import type { Place } from '../sources/cite.ts';

/** What a symbol stands for. unit: as mathjs reads it, '1' for a plain number. list: one value for each part. */
export interface SymbolMeaning {
  readonly unit: SymbolUnit;
  readonly means: string;
  readonly list?: true;
}

/** Angles are given and got in degrees, as pocket calculators have them; all else in house units. */
export type SymbolUnit = 'mm' | 'mm^2' | 'mm^3' | 'mm^4' | 'g' | 'g/mm^2' | 'g/mm^3' | 'g mm' | 'deg' | '1';

/** One formula of the ledger or the float, as data: printed with a bait's numbers, and held to the code by tests. */
export interface Equation<Name extends string = string> {
  readonly id: string;
  readonly name: string;
  /** The formula as a sentence, without symbols. */
  readonly words: string;
  readonly gives: SymbolMeaning & { readonly symbol: string };
  /** The right side, in mathjs's syntax. Its symbols are those of `uses`, and pi. */
  readonly formula: string;
  readonly uses: Readonly<Record<Name, SymbolMeaning>>;
  readonly source: Place;
  /** Where the tool works it out: file, function. */
  readonly code: string;
}

/** An equation whose symbols the compiler knows by name. */
export function equation<const Name extends string>(given: Equation<Name>): Equation<Name> {
  return given;
}

/** Statics and hydrostatics as any textbook has them, worked out anew for this tool. */
export function mechanics(where: string): Place {
  return { source: 'mechanics', where };
}
