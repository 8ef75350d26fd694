import type { ConstantNode, FunctionNode, MathNode, OperatorNode, ParenthesisNode, SymbolNode } from 'mathjs/number';
import { create, parseDependencies } from 'mathjs/number';
import { SimError } from '../flow/outcome.ts';
import { EXPRESSION_LIMITS } from './expression-limits.ts';
import { quoted } from './given.ts';

/*
 * Expressions of a design file. mathjs parses the text; its tree is copied into a closed one of our own, in which
 * nothing but the arithmetic below can be said, and only that tree is ever worked out. Nothing of mathjs's own table
 * of functions can be reached from a file.
 */

const { parse } = create(parseDependencies);

/** What an operator sign means, by mathjs's name for it. */
const OPERATORS = {
  add: (a: number, b: number) => a + b,
  subtract: (a: number, b: number) => a - b,
  multiply: (a: number, b: number) => a * b,
  divide: (a: number, b: number) => a / b,
  pow: (a: number, b: number) => a ** b,
  unaryMinus: (a: number) => -a,
  unaryPlus: (a: number) => a,
} as const;

/** Functions that a maker may call. arguments: how many; null: one or more. */
const FUNCTIONS = {
  min: { of: Math.min, arguments: null },
  max: { of: Math.max, arguments: null },
  sqrt: { of: Math.sqrt, arguments: 1 },
  abs: { of: Math.abs, arguments: 1 },
  round: { of: Math.round, arguments: 1 },
} as const;

const ALLOWED = `numbers, names, + - * / ^ ( ), ${Object.keys(FUNCTIONS).join(', ')}`;
/** mathjs knows more signs (% ! ' ; # = …); a maker is told of the sign itself rather than of what it would mean. */
const OTHER_SIGN = /[^A-Za-z0-9_.+\-*/^(), \t]/u;
/** 0x1f, 0b11: mathjs reads them, with word lengths; lengths in millimetres are decimal. */
const NOT_DECIMAL = /(?<![\w.])0[xob]\w*/i;
/** Two slips with a single number: a decimal comma, and a unit behind it. */
const WITH_COMMA = /^\s*([-+]?\d+),(\d+)\s*$/;
const WITH_UNIT = /^\s*[-+]?[\d.]+\s*(?:mm|cm|in|g|kg|oz|deg|g\/cm3|percent|c)\s*$/i;

/** An expression as plain data: all that one can say. */
export type Expression =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'operation'; readonly operator: keyof typeof OPERATORS; readonly parts: readonly Expression[] }
  | { readonly kind: 'call'; readonly call: keyof typeof FUNCTIONS; readonly parts: readonly Expression[] };

/**
 * Reads an expression; `path` is the field it stands in, for the message. Throws `SimError` where it is too long, too
 * deep, not an expression, or says something outside the closed set.
 */
export function parseExpression(text: string, path: string): Expression {
  const { characters } = EXPRESSION_LIMITS;
  if (text.length > characters) throw tooLong(path, `${text.length} characters, at most ${characters}`);
  const sign = OTHER_SIGN.exec(text)?.[0] ?? NOT_DECIMAL.exec(text)?.[0];
  if (sign !== undefined) throw notAllowed(path, sign);
  if (text.trim() === '') throw unreadable(path, text, 'nothing in it', 'write a number or an expression');
  return closedTree(nodeOf(text, path), path);
}

/**
 * The value of an expression, in the unit of the field it stands in: units are not checked. May be infinite or not a
 * number (1/0, 9^9^9, the root of -1); the caller refuses those. lookUp gives the value of a name.
 */
export function evaluateExpression(expression: Expression, lookUp: (name: string) => number): number {
  switch (expression.kind) {
    case 'number':
      return expression.value;
    case 'name':
      return lookUp(expression.name);
    case 'operation': {
      const [first = Number.NaN, second = Number.NaN] = expression.parts.map((part) =>
        evaluateExpression(part, lookUp),
      );
      return OPERATORS[expression.operator](first, second);
    }
    case 'call': {
      const values = expression.parts.map((part) => evaluateExpression(part, lookUp));
      const apply: (...values: number[]) => number = FUNCTIONS[expression.call].of;
      return apply(...values);
    }
  }
}

function nodeOf(text: string, path: string): MathNode {
  const number = WITH_COMMA.exec(text);
  if (number) throw unreadable(path, text, 'decimals stand after a point', `write ${number[1]}.${number[2]}`);
  if (WITH_UNIT.test(text)) throw withUnit(path, text);
  try {
    return parse(text);
  } catch (error) {
    // the parser's own words name parts of its grammar; where it stopped is what a maker can use
    throw unreadable(path, text, `it makes no sense ${placeOf(error, text)}`, 'write it as in (length_mm - 4) * 0.5');
  }
}

function placeOf(error: unknown, text: string): string {
  const at = error instanceof Error && 'char' in error ? Number(error.char) : text.length + 1;
  return at > text.length ? 'where it ends' : `at character ${at}, ${quoted(text[at - 1])}`;
}

/** mathjs's tree to ours, counting parts and depth on the way down. */
function closedTree(root: MathNode, path: string): Expression {
  let parts = 0;
  const closed = (node: MathNode, depth: number): Expression => {
    parts++;
    if (parts > EXPRESSION_LIMITS.parts) throw tooLong(path, `over ${EXPRESSION_LIMITS.parts} parts`);
    if (depth > EXPRESSION_LIMITS.depth) throw tooLong(path, `over ${EXPRESSION_LIMITS.depth} deep`);
    const inside = (nodes: readonly MathNode[]) => nodes.map((child) => closed(child, depth + 1));
    if (isParenthesis(node)) return closed(node.content, depth + 1);
    if (isConstant(node)) return { kind: 'number', value: node.value };
    if (isSymbol(node)) return { kind: 'name', name: node.name };
    if (isOperation(node)) return { kind: 'operation', operator: node.fn, parts: inside(node.args) };
    if (isCall(node)) return { kind: 'call', call: node.fn.name, parts: inside(node.args) };
    throw notAllowed(path, node.toString());
  };
  return closed(root, 0);
}

function isParenthesis(node: MathNode): node is ParenthesisNode {
  return node.type === 'ParenthesisNode';
}

function isConstant(node: MathNode): node is ConstantNode<number> {
  return node.type === 'ConstantNode' && typeof (node as ConstantNode).value === 'number';
}

function isSymbol(node: MathNode): node is SymbolNode {
  return node.type === 'SymbolNode';
}

/** "2 length_mm" is an implicit product and "5%" a division: both look like something else than they are. */
function isOperation(node: MathNode): node is MathNode & { fn: keyof typeof OPERATORS; args: readonly MathNode[] } {
  if (node.type !== 'OperatorNode') return false;
  const { fn, implicit, isPercentage } = node as OperatorNode & { readonly isPercentage?: boolean };
  return !implicit && isPercentage !== true && Object.hasOwn(OPERATORS, fn);
}

type Call = MathNode & { readonly fn: { readonly name: keyof typeof FUNCTIONS }; readonly args: readonly MathNode[] };

function isCall(node: MathNode): node is Call {
  if (node.type !== 'FunctionNode') return false;
  const { fn, args } = node as FunctionNode;
  if (!isSymbol(fn) || !isFunctionName(fn.name)) return false;
  const wanted = FUNCTIONS[fn.name].arguments;
  return wanted === null ? args.length > 0 : args.length === wanted;
}

function isFunctionName(name: string): name is keyof typeof FUNCTIONS {
  return Object.hasOwn(FUNCTIONS, name);
}

function tooLong(path: string, what: string): SimError {
  return new SimError([
    {
      code: 'design/long-expression',
      path,
      message: `the expression is too long: ${what}`,
      hint: 'give a part of it a name of its own under dimensions',
    },
  ]);
}

function notAllowed(path: string, what: string): SimError {
  const message = `${quoted(what)} is not allowed in an expression; allowed: ${ALLOWED}`;
  return new SimError([{ code: 'design/expression', path, message, hint: 'write every product with *' }]);
}

function withUnit(path: string, text: string): SimError {
  const message = `${quoted(text)}: a unit is not allowed in an expression, the name of the field ends in its own`;
  return new SimError([{ code: 'design/expression', path, message, hint: 'write the number alone, in that unit' }]);
}

function unreadable(path: string, text: string, why: string, hint: string): SimError {
  return new SimError([{ code: 'design/expression', path, message: `${quoted(text)} cannot be read: ${why}`, hint }]);
}
