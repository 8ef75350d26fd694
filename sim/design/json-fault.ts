/** Where a text stops being JSON. line and column count from 1. */
export interface JsonFault {
  readonly line: number;
  readonly column: number;
  /** What could have stood there: `"," or "}"`. */
  readonly wanted: string;
  /** What stands there; empty at the end of the text. */
  readonly given: string;
}

/** What may come next; the words are those shown to the maker. */
const WANTED = {
  value: 'a value',
  firstValue: 'a value or "]"',
  key: 'a name in double quotes',
  firstKey: 'a name in double quotes or "}"',
  colon: '":"',
  nextInObject: '"," or "}"',
  nextInArray: '"," or "]"',
  nothing: 'the end of the text',
} as const;

type Next = keyof typeof WANTED;

const TAKES_STRING: ReadonlySet<Next> = new Set<Next>(['value', 'firstValue', 'key', 'firstKey']);
const WHOLE_STRING = 'a text that ends with a double quote on its own line';

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORD = /true|false|null/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

/**
 * Finds the first place where a text breaks the grammar of JSON (RFC 8259), or null where it is whole. Engines word
 * their own errors differently and some leave the place out; this one says the same everywhere. No recursion, so
 * depth cannot hurt it.
 */
export function jsonFault(text: string): JsonFault | null {
  const open: ('{' | '[')[] = [];
  let next: Next = 'value';
  let at = afterSpace(text, 0);
  while (at < text.length) {
    const sign = text[at] ?? '';
    const wanted = next;
    let end = at + 1;
    if ((sign === '}' || sign === ']') && mayClose(next, sign)) {
      open.pop();
      next = afterValue(open);
    } else if (sign === ',' && (next === 'nextInObject' || next === 'nextInArray')) {
      next = next === 'nextInObject' ? 'key' : 'value';
    } else if (sign === ':' && next === 'colon') {
      next = 'value';
    } else if (sign === '"' && (next === 'key' || next === 'firstKey')) {
      end = stringEnd(text, at);
      next = 'colon';
    } else if (next === 'value' || next === 'firstValue') {
      if (sign === '{' || sign === '[') {
        open.push(sign);
        next = sign === '{' ? 'firstKey' : 'firstValue';
      } else {
        end = scalarEnd(text, at);
        next = afterValue(open);
      }
    } else {
      end = -1;
    }
    if (end < 0) return faultAt(text, at, sign === '"' && TAKES_STRING.has(wanted) ? WHOLE_STRING : WANTED[wanted]);
    at = afterSpace(text, end);
  }
  return next === 'nothing' ? null : faultAt(text, text.length, WANTED[next]);
}

function mayClose(next: Next, sign: '}' | ']'): boolean {
  return sign === '}'
    ? next === 'firstKey' || next === 'nextInObject'
    : next === 'firstValue' || next === 'nextInArray';
}

function afterValue(open: readonly ('{' | '[')[]): Next {
  const inside = open.at(-1);
  if (inside === undefined) return 'nothing';
  return inside === '{' ? 'nextInObject' : 'nextInArray';
}

function afterSpace(text: string, from: number): number {
  let at = from;
  while (text[at] === ' ' || text[at] === '\n' || text[at] === '\r' || text[at] === '\t') at++;
  return at;
}

/** Index after the string, number or word that begins here, -1 where none does. */
function scalarEnd(text: string, from: number): number {
  if (text[from] === '"') return stringEnd(text, from);
  return matchEnd(NUMBER, text, from) ?? matchEnd(WORD, text, from) ?? -1;
}

function stringEnd(text: string, from: number): number {
  for (let at = from + 1; at < text.length; at++) {
    const sign = text[at] ?? '';
    if (sign === '"') return at + 1;
    if (sign < ' ') return -1;
    if (sign === '\\') {
      const end = matchEnd(ESCAPE, text, at);
      if (end === undefined) return -1;
      at = end - 1;
    }
  }
  return -1;
}

function matchEnd(pattern: RegExp, text: string, from: number): number | undefined {
  pattern.lastIndex = from;
  return pattern.test(text) ? pattern.lastIndex : undefined;
}

/** A name that stands twice in one object. line and column, of the second, count from 1; path is that of the field. */
interface RepeatedName {
  readonly line: number;
  readonly column: number;
  readonly path: string;
}

/** Brackets, commas, and whole strings with the colon that makes a name of them. */
const TOKEN = /[{}[\],]|("(?:[^"\\]|\\.)*")(\s*:)?/g;

/**
 * The first name that an object of a JSON text has twice, or null. The grammar allows it and engines keep the last
 * value, so that one of two numbers would be lost without a word.
 */
export function repeatedName(text: string): RepeatedName | null {
  // at: the name or the place in the list that is being read
  const open: { readonly names: Set<string>; at: string | number }[] = [];
  for (const { 0: sign, 1: string, 2: colon, index } of text.matchAll(TOKEN)) {
    if (sign === '{' || sign === '[') open.push({ names: new Set(), at: 0 });
    if (sign === '}' || sign === ']') open.pop();
    const inside = open.at(-1);
    if (inside === undefined) continue;
    if (sign === ',' && typeof inside.at === 'number') inside.at++;
    if (colon === undefined) continue;
    inside.at = String(JSON.parse(string));
    if (inside.names.has(inside.at)) return { ...placeAt(text, index), path: open.map(({ at }) => at).join('.') };
    inside.names.add(inside.at);
  }
  return null;
}

function faultAt(text: string, at: number, wanted: string): JsonFault {
  return { ...placeAt(text, at), wanted, given: text.slice(at, at + 12).split(/[\r\n]/)[0] ?? '' };
}

function placeAt(text: string, at: number): { readonly line: number; readonly column: number } {
  const before = text.slice(0, at);
  return { line: before.split('\n').length, column: at - before.lastIndexOf('\n') };
}
