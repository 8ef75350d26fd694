import type { Equation, SymbolUnit } from './equation.ts';

/** A number on the worked page. One object is one number: wherever it stands, it has the same digits. */
export interface Amount {
  readonly value: number;
  readonly unit: SymbolUnit;
  /** Where it comes from, in words: typed, assumed, measured on the drawing, worked out. */
  readonly origin: string;
  /** Amounts with one column are written with one count of decimals. */
  readonly column: object | null;
}

/** One equation with a bait's numbers put in, and what the tool itself has for the result. */
export interface Case {
  readonly equation: Equation;
  readonly label: string;
  readonly values: Readonly<Record<string, Amount | readonly Amount[]>>;
  readonly result: Amount;
}

/** An equation with its numbers; the compiler asks for one for each symbol. */
export function putIn<Name extends string>(
  equation: Equation<Name>,
  label: string,
  values: Readonly<Record<Name, Amount | readonly Amount[]>>,
  result: Amount,
): Case {
  return { equation, label, values, result };
}
