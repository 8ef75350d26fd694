import type { EvalFunction, FunctionNode, MathNode, SymbolNode } from 'mathjs/number';
import {
  addDependencies,
  atanDependencies,
  cosDependencies,
  create,
  divideDependencies,
  multiplyDependencies,
  parseDependencies,
  piDependencies,
  powDependencies,
  sqrtDependencies,
  subtractDependencies,
  tanDependencies,
  unaryMinusDependencies,
} from 'mathjs/number';
import { degreeFromRadian, radianFromDegree } from '../units/convert.ts';
import { formatNumber } from '../units/format.ts';
import type { Equation, SymbolUnit } from './equation.ts';
import type { Amount, Case } from './worked.ts';

/*
 * Equations as text. Every number on a page is written with as many digits as it takes for the arithmetic on paper to
 * give what is printed: whoever puts the printed numbers into a pocket calculator gets the printed result.
 */

const { parse } = create({
  addDependencies,
  atanDependencies,
  cosDependencies,
  divideDependencies,
  multiplyDependencies,
  parseDependencies,
  piDependencies,
  powDependencies,
  sqrtDependencies,
  subtractDependencies,
  tanDependencies,
  unaryMinusDependencies,
});

/** Decimals that a number starts with; more are added where the arithmetic asks for them. */
const START: Readonly<Record<SymbolUnit, number>> = {
  mm: 2,
  'mm^2': 1,
  'mm^3': 1,
  'mm^4': 0,
  g: 2,
  'g/mm^2': 8,
  'g/mm^3': 9,
  'g mm': 1,
  deg: 1,
  '1': 3,
};
const UNIT_TEXT: Readonly<Record<SymbolUnit, string>> = {
  mm: ' mm',
  'mm^2': ' mm²',
  'mm^3': ' mm³',
  'mm^4': ' mm⁴',
  g: ' g',
  'g/mm^2': ' g/mm²',
  'g/mm^3': ' g/mm³',
  'g mm': ' g mm',
  deg: '°',
  '1': '',
};

/** What the printed numbers may miss the printed result by, in its last digit: rounded, they then give that very digit. */
const HALF = 0.5 + 1e-7;
/** In its last digit, how far a formula may be from what the tool has, which settles some numbers by steps. */
const MOST_ODDS = 0.1;
/** More decimals than a double holds of these numbers would be noise. */
const MOST_DECIMALS = 14;
/** A number that ends within so many digits is written whole: it was typed like that. */
const TYPED_DIGITS = 7;

/** Decimals of each number on a page. */
export type Decimals = ReadonlyMap<object, number>;

/**
 * Finds how many decimals each number needs. Starting from few, whichever number spoils a result most gets one more,
 * until all add up. Throws Error when a formula does not give what the tool has: the two are then at odds.
 */
function settleDecimals(cases: readonly Case[]): Decimals {
  const decimals = new Map<object, number>();
  for (const each of cases) {
    for (const amount of [...inputsOf(each), each.result]) decimals.set(keyOf(amount), START[amount.unit]);
  }
  let waiting = new Set(cases);
  while (waiting.size > 0) {
    const raised = new Set<object>();
    for (const each of waiting) {
      const spoiler = spoilerOf(each, decimals);
      if (spoiler === null) continue;
      const key = keyOf(spoiler);
      decimals.set(key, (decimals.get(key) ?? 0) + 1);
      raised.add(key);
    }
    // a number with more decimals is looked at again wherever it stands, as a result too
    waiting = new Set(
      cases.filter((each) => [...inputsOf(each), each.result].some((amount) => raised.has(keyOf(amount)))),
    );
  }
  return decimals;
}

/** The number that a result suffers from most; null when what is printed adds up. */
function spoilerOf(each: Case, decimals: Decimals): Amount | null {
  const printed = (amount: Amount) => Number(amountText(amount, decimals));
  const places = placesIn(amountText(each.result, decimals));
  const target = printed(each.result);
  const missed = Math.abs(resultOf(each, printed) - target) * 10 ** places;
  if (missed <= HALF) return null;
  const exact = resultOf(each, (amount) => amount.value);
  // where formula and tool fall to either side of a half, no digits help
  if (missed <= HALF + Math.min(Math.abs(exact - each.result.value) * 10 ** places, MOST_ODDS)) return null;
  let worst: Amount | null = null;
  let most = 0;
  for (const amount of inputsOf(each)) {
    if ((decimals.get(keyOf(amount)) ?? 0) >= MOST_DECIMALS) continue;
    const alone = resultOf(each, (other) => (keyOf(other) === keyOf(amount) ? printed(other) : other.value));
    // what is not a number any more, as a divisor rounded to nothing, is the worst
    const harm = Number.isFinite(alone) ? Math.abs(alone - exact) : Number.POSITIVE_INFINITY;
    if (harm > most) [worst, most] = [amount, harm];
  }
  if (worst !== null) return worst;
  throw new Error(`${each.equation.id} (${each.label}) gives ${exact}, the tool has ${each.result.value}`);
}

/** A number with its decimals, no unit. */
function amountText(amount: Amount, decimals: Decimals): string {
  if (amount.column === null) {
    const typed = typedText(amount.value);
    if (typed !== null) return typed;
  }
  return formatNumber(amount.value, { digits: decimals.get(keyOf(amount)) ?? START[amount.unit] });
}

/** A number that ends soon, written whole; null for one that does not. */
function typedText(value: number): string | null {
  const plain = value.toFixed(12);
  const short = plain.includes('.') ? plain.replace(/\.?0+$/u, '') : plain;
  const near = Math.abs(Number(short) - value) <= 1e-13 * Math.abs(value);
  return near && short.replace(/^-?0*\.?0*/u, '').replace('.', '').length <= TYPED_DIGITS && short !== '-0'
    ? short
    : null;
}

/** A unit as it stands behind a number: with its space, nothing for a plain number. */
function unitText(unit: SymbolUnit): string {
  return UNIT_TEXT[unit];
}

/** `V = m / rho`. */
function formulaText(equation: Equation): string {
  return `${equation.gives.symbol} = ${written(treeOf(equation), () => undefined)}`;
}

/** `V = 18.2 / 0.000998207 = 18232.7 mm³`: the numbers put in, and the result. */
function workedText(each: Case, decimals: Decimals): string {
  const { equation, values, result } = each;
  const put = (amount: Amount) => {
    const text = `${amountText(amount, decimals)}${amount.unit === 'deg' ? '°' : ''}`;
    return amount.value < 0 && text.startsWith('-') ? `(${text})` : text;
  };
  const line = written(treeOf(equation), (node) => {
    const list = listOf(node);
    if (list !== null) return amountsOf(values[list]).map(put).join(' + ');
    if (node.type !== 'SymbolNode') return undefined;
    const [amount] = amountsOf(values[(node as SymbolNode).name]);
    return amount === undefined ? undefined : put(amount);
  });
  return `${equation.gives.symbol} = ${line} = ${amountText(result, decimals)}${unitText(result.unit)}`;
}

function written(tree: MathNode, instead: (node: MathNode) => string | undefined): string {
  return tree.toString({ handler: instead, parenthesis: 'keep' }).replaceAll(' * ', ' × ').replaceAll(' ^ ', '^');
}

/** The name of the list that a node adds up; null when it is no sum. */
function listOf(node: MathNode): string | null {
  if (node.type !== 'FunctionNode') return null;
  const { fn, args } = node as FunctionNode;
  return (fn as unknown as SymbolNode).name === 'sum' ? (args[0] as SymbolNode).name : null;
}

const trees = new Map<string, MathNode>();
const compiled = new Map<string, EvalFunction>();

function treeOf(equation: Equation): MathNode {
  const known = trees.get(equation.formula) ?? parse(equation.formula);
  trees.set(equation.formula, known);
  return known;
}

/** What the formula gives for these numbers. Angles go in and come out in degrees. */
function resultOf(each: Case, valueFor: (amount: Amount) => number): number {
  const { equation, values, result } = each;
  const inside = (amount: Amount) => (amount.unit === 'deg' ? radianFromDegree(valueFor(amount)) : valueFor(amount));
  const scope: Record<string, unknown> = { sum: (list: readonly number[]) => list.reduce((a, b) => a + b, 0) };
  for (const [name, given] of Object.entries(values)) {
    scope[name] = 'value' in given ? inside(given) : given.map(inside);
  }
  const code = compiled.get(equation.formula) ?? treeOf(equation).compile();
  compiled.set(equation.formula, code);
  const got = Number(code.evaluate(scope));
  return result.unit === 'deg' ? degreeFromRadian(got) : got;
}

function amountsOf(given: Amount | readonly Amount[] | undefined): readonly Amount[] {
  if (given === undefined) return [];
  return 'value' in given ? [given] : given;
}

function inputsOf(each: Case): readonly Amount[] {
  return Object.values(each.values).flatMap(amountsOf);
}

function keyOf(amount: Amount): object {
  return amount.column ?? amount;
}

function placesIn(text: string): number {
  const [, fraction = ''] = text.split('.');
  return fraction.length;
}

/** What turns equations into text. One object, so that whoever wants a page fetches this file and its parser then. */
export const render = { settleDecimals, amountText, unitText, formulaText, workedText } as const;

export type Render = typeof render;
