import { appendFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { figure, type Row, verdictOf } from './rows.ts';

const FOLDER = 'tests/bench/results';
const HEAD = 'day,node,what,reached,median,unit,target,verdict\n';

/** One file for each kind of processor: numbers of two kinds do not compare. */
function resultsFile(): string {
  const model = cpus()[0]?.model ?? 'unknown';
  const slug = model
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '');
  return `${FOLDER}/${slug}.csv`;
}

/** What the last saved run on this kind of machine reached, by what was measured. */
export function lastResults(): (what: string) => number | undefined {
  const file = resultsFile();
  const lines = existsSync(file) ? readFileSync(file, 'utf8').trim().split('\n').slice(1) : [];
  const last = new Map(
    lines.map((line) => {
      const [, , what, reached] = line.split(',');
      return [what, Number(reached)];
    }),
  );
  return (what) => last.get(cellOf(what));
}

/** What was measured, as a cell of the file, which has commas between. */
function cellOf(what: string): string {
  return what.replaceAll(',', ';');
}

/** Appends a run to the file of this kind of machine; gives the file's name. */
export function saveResults(rows: readonly Row[]): string {
  const file = resultsFile();
  const day = new Date().toISOString().slice(0, 10);
  const lines = rows.map((row) =>
    [
      day,
      process.version,
      cellOf(row.what),
      figure(row.reached),
      row.median === null ? '' : figure(row.median),
      row.unit,
      row.target ? `${row.target.bound} ${figure(row.target.value)}` : '',
      verdictOf(row),
    ].join(','),
  );
  mkdirSync(FOLDER, { recursive: true });
  if (!existsSync(file)) writeFileSync(file, HEAD);
  appendFileSync(file, `${lines.join('\n')}\n`);
  return file;
}
