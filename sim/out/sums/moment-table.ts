import type { Equation, SymbolUnit } from '../../equations/equation.ts';
import { type Amount, type Case, putIn } from '../../equations/worked.ts';
import type { Vec3 } from '../../numerics/vec3.ts';
import { addUp, inColumn, type SumTable } from './block.ts';

/** Something with a weight or a volume, and where its middle is. */
export interface Placed {
  readonly name: string;
  readonly weight: number;
  readonly at: Vec3;
}

const AXES = [
  { axis: 0, name: 'x' },
  { axis: 1, name: 'y' },
  { axis: 2, name: 'z' },
] as const;
/** Nearer the middle plane than this is on it: a millionth of a millimetre. */
const ON_PLANE = 1e-6;

/** The axes that matter: y only where something stands off the middle plane. */
export function axesOf(parts: readonly Placed[]) {
  return AXES.filter(({ axis }) => axis !== 1 || parts.some(({ at }) => Math.abs(at[1]) > ON_PLANE));
}

interface MomentParts {
  readonly parts: readonly Placed[];
  readonly total: Amount;
  /** Symbol of the weight, unit of it and of its moments. */
  readonly symbols: readonly [string, SymbolUnit, SymbolUnit];
  readonly equations: { readonly part: Equation; readonly total: Equation; readonly moments: Equation };
  /** What the equations call the weight of one part, the list of them, and the list of moments. */
  readonly names: { readonly weight: string; readonly weights: string; readonly moments: string };
}

/** Weights, places and moments, with their sums. moments: by axis, none for one left out. */
export function momentTable({ parts, total, symbols, equations, names }: MomentParts): {
  readonly table: SumTable;
  readonly moments: readonly (Amount | undefined)[];
} {
  const [symbol, unit, momentUnit] = symbols;
  const axes = axesOf(parts);
  const weightColumn = {};
  const placeColumns = axes.map(() => ({}));
  const momentColumns = axes.map(() => ({}));
  const cases: Case[] = [];
  const weights = parts.map(({ weight }) => inColumn(weightColumn, unit, weight));
  const cells = parts.map(({ name, weight, at }, row) =>
    axes.map(({ axis }, i) => {
      const x = inColumn(placeColumns[i], 'mm', at[axis]);
      const moment = inColumn(momentColumns[i], momentUnit, weight * at[axis]);
      cases.push(putIn(equations.part, name, { [names.weight]: weights[row], x }, moment));
      return { x, moment };
    }),
  );
  cases.push(putIn(equations.total, 'all parts', { [names.weights]: weights }, total));
  const sums = axes.map(({ axis }, i) => {
    const sum: Amount = {
      value: addUp(parts.map(({ weight, at }) => weight * at[axis])),
      unit: momentUnit,
      origin: 'worked out',
      column: {},
    };
    const list = { [names.moments]: cells.map((row) => row[i].moment) };
    cases.push(putIn(equations.moments, 'all parts', list, sum));
    return sum;
  });
  const moments: (Amount | undefined)[] = [undefined, undefined, undefined];
  axes.forEach(({ axis }, i) => {
    moments[axis] = sums[i];
  });
  const table: SumTable = {
    kind: 'table',
    equations: [equations.part, equations.total, equations.moments],
    constants: [],
    heads: [symbol, ...axes.map(({ name }) => name), ...axes.map(({ name }) => `${symbol} × ${name}`)],
    rows: parts.map(({ name }, row) => ({
      name,
      cells: [weights[row], ...cells[row].map(({ x }) => x), ...cells[row].map(({ moment }) => moment)],
    })),
    sums: [total, ...axes.map(() => null), ...sums],
    cases,
  };
  return { table, moments };
}
