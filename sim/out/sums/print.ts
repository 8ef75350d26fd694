import type { Equation } from '../../equations/equation.ts';
import type { Decimals, Render } from '../../equations/render.ts';
import type { Amount, Case } from '../../equations/worked.ts';
import { placeText } from '../../sources/cite.ts';
import { textTable } from '../table.ts';
import type { Block, SumTable } from './block.ts';

const WIDTH = 100;

/** Blocks as lines of at most 100 characters. An equation is explained where it first stands. */
export function printBlocks(blocks: readonly Block[], render: Render): readonly string[] {
  const decimals = render.settleDecimals(blocks.flatMap(casesOf));
  const explained = new Set<Equation>();

  const explain = (equation: Equation): readonly string[] => {
    const title = wrap(`${equation.name}  [${equation.id}]`, 2, 4);
    const formula = `    ${render.formulaText(equation)}`;
    if (explained.has(equation)) return [...title, formula];
    explained.add(equation);
    const meanings = [[equation.gives.symbol, equation.gives] as const, ...Object.entries(equation.uses)];
    const width = Math.max(...meanings.map(([symbol]) => symbol.length));
    return [
      ...title,
      ...wrap(equation.words, 4, 4),
      formula,
      ...meanings.flatMap(([symbol, { means, unit }]) => {
        const inUnit = unit === '1' ? '' : `, ${unit === 'deg' ? 'degrees' : render.unitText(unit).trim()}`;
        return wrap(`${symbol.padEnd(width)}  ${means}${inUnit}`, 6, 8 + width);
      }),
      ...wrap(`source: ${placeText(equation.source)}; in the code: ${equation.code}`, 6, 8),
    ];
  };

  const blockLines = (block: Block): readonly string[] => {
    switch (block.kind) {
      case 'heading':
        return [...wrap(block.text, 0, 2), '='.repeat(Math.min([...block.text].length, WIDTH))];
      case 'topic':
        return [block.text, '-'.repeat([...block.text].length)];
      case 'words':
        return wrap(block.text, 2, 2);
      case 'worked':
        return [
          ...explain(block.equation),
          ...together(block.cases, (each) => render.workedText(each, decimals)).flatMap(([labels, sum]) =>
            caseLines(labels, sum),
          ),
          ...originLines(block.cases),
        ];
      case 'table':
        return [...block.equations.flatMap(explain), ...tableLines(block, render, decimals)];
    }
  };
  return blocks.flatMap((block) => ['', ...blockLines(block)]).slice(1);
}

function casesOf(block: Block): readonly Case[] {
  return block.kind === 'worked' || block.kind === 'table' ? block.cases : [];
}

/** Parts of one size have one sum: it is printed once, with all their names. */
function together(cases: readonly Case[], text: (each: Case) => string): readonly (readonly [string, string])[] {
  const names = new Map<string, Set<string>>();
  for (const each of cases) {
    const sum = text(each);
    const known = names.get(sum) ?? new Set();
    names.set(sum, each.label === '' ? known : known.add(each.label));
  }
  return [...names].map(([sum, labels]) => [[...labels].join('; '), sum] as const);
}

/** The label in front where there is room, else on lines of its own. */
function caseLines(label: string, sum: string): readonly string[] {
  const oneLine = label === '' ? sum : `${label}: ${sum}`;
  if (oneLine.length + 4 <= WIDTH) return [`    ${oneLine}`];
  return [...(label === '' ? [] : wrap(`${label}:`, 4, 6)), ...wrap(sum, 6, 10)];
}

/** Which numbers are given, assumed, measured on the drawing or worked out; of which part, where that differs. */
function originLines(cases: readonly Case[]): readonly string[] {
  const origins = new Map<string, Map<string, Set<string>>>();
  for (const { label, values } of cases) {
    for (const [symbol, amounts] of Object.entries(values)) {
      for (const { origin } of [amounts].flat() as readonly Amount[]) {
        const symbols = origins.get(origin) ?? new Map<string, Set<string>>();
        origins.set(origin, symbols.set(symbol, (symbols.get(symbol) ?? new Set()).add(label)));
      }
    }
  }
  const differs = (symbol: string) => [...origins.values()].filter((symbols) => symbols.has(symbol)).length > 1;
  const named = ([symbol, labels]: readonly [string, ReadonlySet<string>]) =>
    differs(symbol) && !labels.has('') ? `${symbol} (${[...labels].join('; ')})` : symbol;
  const text = [...origins].map(([origin, symbols]) => `${[...symbols].map(named).join(', ')} ${origin}`).join('; ');
  return wrap(`where ${text}`, 6, 8);
}

function tableLines(table: SumTable, render: Render, decimals: Decimals) {
  const text = (amount: Amount | null) => (amount === null ? '' : render.amountText(amount, decimals));
  const columns = [{ head: '', right: false }, ...table.heads.map((head) => ({ head, right: true }))];
  const rows = table.rows.map(({ name, cells }) => [shortened(name), ...cells.map(text)]);
  const sums = ['sum', ...table.sums.map(text)];
  const constants = table.constants.map(
    ([symbol, amount]) => `${symbol} = ${text(amount)}${render.unitText(amount.unit)}`,
  );
  return [
    ...(constants.length === 0 ? [] : wrap(`with ${constants.join(' and ')}`, 4, 6)),
    ...textTable(columns, [...rows, sums]).map((line) => `    ${line}`),
  ];
}

/** Enough of a name to know the part by; columns of numbers want the rest of the line. */
function shortened(name: string): string {
  const most = 26;
  const letters = [...name];
  return letters.length <= most ? name : `${letters.slice(0, most - 1).join('')}…`;
}

/** Text in lines of at most 100 characters, the first and the further ones indented. A longer word stays whole. */
function wrap(text: string, first: number, further: number): readonly string[] {
  const lines: string[] = [];
  let line = ' '.repeat(first);
  let empty = true;
  for (const word of text.split(' ')) {
    if (!empty && [...line].length + 1 + [...word].length > WIDTH) {
      lines.push(line.trimEnd());
      line = ' '.repeat(further);
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line.trimEnd()];
}
