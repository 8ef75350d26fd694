import { textTable } from '../../sim/out/table.ts';
import type { Timing } from './timing.ts';

/** One line of the bench: what was measured, what came out, what was aimed for. */
export interface Row {
  readonly what: string;
  readonly reached: number;
  /** null where there is only one value to have. */
  readonly median: number | null;
  readonly unit: string;
  readonly target: Target | null;
}

export interface Target {
  readonly bound: 'at most' | 'at least';
  readonly value: number;
}

export function atMost(value: number): Target {
  return { bound: 'at most', value };
}

export function atLeast(value: number): Target {
  return { bound: 'at least', value };
}

/** A row of time: its least is what is judged. */
export function timeRow(what: string, { least, median }: Timing, unit: 'ms' | 'µs', target: Target | null): Row {
  const factor = unit === 'ms' ? 1 : 1000;
  return { what, reached: least * factor, median: median * factor, unit, target };
}

/** A row of one number. */
export function valueRow(what: string, reached: number, unit: string, target: Target | null): Row {
  return { what, reached, median: null, unit, target };
}

/** Says whether a row meets its target; empty where none is set. */
export function verdictOf({ reached, target }: Row): 'pass' | 'miss' | '' {
  if (!target) return '';
  return (target.bound === 'at most' ? reached <= target.value : reached >= target.value) ? 'pass' : 'miss';
}

/** Three figures: a timing on a shared machine has no more. */
export function figure(value: number): string {
  return String(Number(value.toPrecision(3)));
}

/** A section as text. lastOf: what the last saved run reached, by what was measured. */
export function sectionText(title: string, rows: readonly Row[], lastOf: (what: string) => number | undefined): string {
  const columns = ['', 'reached', 'median', '', 'target', '', 'last saved'];
  const cells = rows.map((row) => {
    const last = lastOf(row.what);
    return [
      row.what,
      figure(row.reached),
      row.median === null ? '' : figure(row.median),
      row.unit,
      row.target ? `${row.target.bound} ${figure(row.target.value)}` : '',
      verdictOf(row),
      last === undefined ? '' : figure(last),
    ];
  });
  const table = textTable(
    columns.map((head, i) => ({ head, right: [1, 2, 6].includes(i) })),
    cells,
  );
  return `${title}\n${table.map((line) => `  ${line}`).join('\n')}\n`;
}
