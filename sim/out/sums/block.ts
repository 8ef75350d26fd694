import type { Equation, SymbolUnit } from '../../equations/equation.ts';
import type { Amount, Case } from '../../equations/worked.ts';
import { citationText } from '../../sources/cite.ts';
import { EPOXY } from '../../tables/finishes.ts';
import { STEEL } from '../../tables/metals.ts';
import type { GramPerMm3 } from '../../units/brand.ts';

/** A piece of the worked page. */
export type Block =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'topic'; readonly text: string }
  | { readonly kind: 'words'; readonly text: string }
  | { readonly kind: 'worked'; readonly equation: Equation; readonly cases: readonly Case[] }
  | SumTable;

/** Parts one below the other, with what is worked out of each and the sums. A head with a sign in it is a formula. */
export interface SumTable {
  readonly kind: 'table';
  /** The formulas that its columns and sums follow. */
  readonly equations: readonly Equation[];
  /** Numbers that hold for all rows, by symbol. */
  readonly constants: readonly (readonly [symbol: string, amount: Amount])[];
  readonly heads: readonly string[];
  readonly rows: readonly { readonly name: string; readonly cells: readonly (Amount | null)[] }[];
  readonly sums: readonly (Amount | null)[];
  readonly cases: readonly Case[];
}

/** Where a number comes from, in the maker's words. */
const ORIGINS = {
  design: 'as given in the design',
  drawn: 'measured on the drawn body',
  worked: 'worked out',
} as const;

/** A number of the design. */
export function given(unit: SymbolUnit, value: number, origin: string = ORIGINS.design): Amount {
  return { value, unit, origin, column: null };
}

/** Densities that stand in where the design gives none; it may also have given the same. */
const STAND_INS = [
  { value: STEEL.value, origin: `assumed unless given: plain steel, ${citationText(STEEL)}` },
  { value: EPOXY.value.usual, origin: `assumed unless given: ${citationText(EPOXY)}` },
] as const;

/** The density of a part: of the design, or what is assumed where it says nothing. */
export function densityOf(value: GramPerMm3): Amount {
  const standIn = STAND_INS.find((each) => Math.abs(each.value - value) < 1e-9 * value);
  return given('g/mm^3', value, standIn?.origin ?? ORIGINS.design);
}

/** A number that the drawn body was measured for: a volume, an area, a moment. */
export function drawn(unit: SymbolUnit, value: number): Amount {
  return { value, unit, origin: ORIGINS.drawn, column: null };
}

/** A number that follows from others. */
export function worked(unit: SymbolUnit, value: number): Amount {
  return { value, unit, origin: ORIGINS.worked, column: null };
}

/** The same number as it stands in a column of a table. */
export function inColumn(column: object, unit: SymbolUnit, value: number): Amount {
  return { value, unit, origin: ORIGINS.worked, column };
}

/** All cases of one equation; nothing when there are none. */
export function workedBlock(cases: readonly Case[]): readonly Block[] {
  const [first] = cases;
  return first === undefined ? [] : [{ kind: 'worked', equation: first.equation, cases }];
}

export function addUp(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
