import { evaluate } from 'mathjs';

/** One piece of arithmetic as it is printed. missed: by how many of the last printed digit it comes out otherwise. */
export interface PrintedSum {
  readonly text: string;
  readonly missed: number;
}

/** A sum that rounds to the printed digit misses it by half of it; a hair more where it falls on the half itself. */
export const ROUNDED = 0.5 + 1e-6;

/**
 * Works out every sum on a printed page from nothing but the printed text, as a maker with a pocket calculator does:
 * lines `symbol = numbers = result`, and tables with their columns and sums.
 */
export function printedSums(page: string): readonly PrintedSum[] {
  const lines = page.split('\n');
  return [...lineSums(lines), ...tableSums(lines)];
}

function lineSums(lines: readonly string[]): readonly PrintedSum[] {
  const sums: PrintedSum[] = [];
  for (const [i, line] of lines.entries()) {
    if (!/^ {4,6}\S.* = /.test(line) && !/^ {4,6}\w+ = /.test(line)) continue;
    let whole = line.trim();
    // a long sum goes on below, set further in
    for (let next = i + 1; /^ {10}\S/.test(lines[next] ?? ''); next++) whole += ` ${lines[next]?.trim()}`;
    const parts = /(?:^|: )(\w+) = ([^=]+) = (-?[\d.]+)( [a-z].*|°)?$/.exec(whole);
    if (parts === null) continue;
    const [, , sum = '', result = '', unit = ''] = parts;
    sums.push({ text: whole, missed: missedBy(worked(sum, unit), result) });
  }
  return sums;
}

function worked(sum: string, unit: string): number {
  const got = Number(evaluate(sum.replaceAll('×', '*').replaceAll('°', ' deg')));
  return unit === '°' ? (got * 180) / Math.PI : got;
}

/** Rows under a line of heads: numbers stand at the right edge of their head. */
function tableSums(lines: readonly string[]): readonly PrintedSum[] {
  const sums: PrintedSum[] = [];
  for (const [i, line] of lines.entries()) {
    const heads = headsOf(line);
    if (heads === null) continue;
    const constants = constantsOver(lines, i);
    const rows: Map<string, string>[] = [];
    let at = i + 1;
    for (; !/^ {4}sum(?: |$)/.test(lines[at] ?? ''); at++) rows.push(cellsOf(lines[at] ?? '', heads));
    for (const row of rows) {
      for (const [head, printed] of row) {
        const formula = head === 'w' ? 'm - rho * v_out - rho_w * v_in' : head.replaceAll('×', '*');
        if (!/[*/-]/.test(formula) || printed === '') continue;
        const scope = Object.fromEntries([...constants, ...row].map(([name, text]) => [name, Number(text)]));
        const got = Number(evaluate(formula, scope));
        sums.push({ text: `${head} of ${JSON.stringify([...row])}`, missed: missedBy(got, printed) });
      }
    }
    for (const [head, printed] of cellsOf(lines[at] ?? '', heads)) {
      if (printed === '') continue;
      const got = rows.reduce((sum, row) => sum + Number(row.get(head)), 0);
      sums.push({ text: `sum of ${head}: ${printed}`, missed: missedBy(got, printed) });
    }
  }
  return sums;
}

interface Head {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

function headsOf(line: string): readonly Head[] | null {
  if (!/^ {8,}(m|v) +(x|v_out) /.test(line)) return null;
  const heads: Head[] = [];
  let from = 0;
  for (const match of line.matchAll(/\S+(?: [×/] \S+)?/g)) {
    const to = match.index + match[0].length;
    heads.push({ name: match[0], from, to });
    from = to;
  }
  return heads;
}

function cellsOf(line: string, heads: readonly Head[]): Map<string, string> {
  // in the first column the name of the part comes before the number
  return new Map(
    heads.map(({ name, from, to }) => [name, /-?[\d.]*$/.exec(line.slice(from, to).trimEnd())?.[0] ?? '']),
  );
}

function constantsOver(lines: readonly string[], head: number): readonly (readonly [string, string])[] {
  const line = lines.slice(head - 2, head).join(' ');
  return [...line.matchAll(/(\w+) = ([\d.]+) g/g)].map(([, name = '', value = '']) => [name, value] as const);
}

function missedBy(got: number, printed: string): number {
  const [, fraction = ''] = printed.split('.');
  return Math.abs(got - Number(printed)) * 10 ** fraction.length;
}
