import type { Issue, Outcome } from '../flow/outcome.ts';
import { failed, ok } from '../flow/outcome.ts';
import { jsonFault, repeatedName } from './json-fault.ts';

/** A design of ten links with forty holes is about 20 kB; a file over this size is something else. */
const MOST_BYTES = 1_000_000;
/** The deepest field of a design lies 6 levels down; the walks below it recurse and need a bound. */
const MOST_LEVELS = 20;
/** Keys through which JSON text could reach the prototypes of the objects it becomes. */
const FORBIDDEN_KEYS: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

/**
 * Text or bytes of a file to its JSON value: phase 1 of reading a design. A leading byte order mark is taken off.
 * Fails with one issue on: over 1 MB, empty, not UTF-8, not JSON, a name twice in one object, forbidden keys, too deep.
 */
export function parseJson(source: string | Uint8Array): Outcome<unknown> {
  const bytes = typeof source === 'string' ? byteLength(source) : source.byteLength;
  if (bytes > MOST_BYTES) {
    return refuse('design/too-large', `the file has ${bytes} bytes, at most ${MOST_BYTES} are allowed`);
  }
  const text = textOf(source);
  if (text === null) {
    const hint = 'choose a design file, saved as UTF-8 text';
    return refuse('design/not-text', 'the file is not UTF-8 text', hint);
  }
  if (text.trim() === '') return refuse('design/empty', 'the file is empty, a design is wanted');
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return refuse('design/not-json', faultMessage(text), 'quote every name, and put commas only between fields');
  }
  const repeated = repeatedName(text);
  if (repeated !== null) {
    const { line, column, path } = repeated;
    const message = `stands twice in one object, again on line ${line}, column ${column}; once is allowed`;
    return failed([{ code: 'design/repeated-name', path, message, hint: 'take one of them out' }]);
  }
  const unsafe = unsafeKeys(value);
  return unsafe === null ? ok(value) : failed([unsafe]);
}

/**
 * The first key through which a value from outside could reach a prototype, or the first place that lies too deep
 * (a value that holds itself does), as an issue; null where there is neither.
 */
export function unsafeKeys(value: unknown, path = '', level = 0): Issue | null {
  if (typeof value !== 'object' || value === null) return null;
  if (level >= MOST_LEVELS) {
    const message = `lists and objects are nested ${MOST_LEVELS + 1} or more deep, at most ${MOST_LEVELS} are allowed`;
    return { code: 'design/too-deep', path, message };
  }
  for (const [key, child] of Object.entries(value)) {
    const childPath = path === '' ? key : `${path}.${key}`;
    if (FORBIDDEN_KEYS.has(key)) {
      return { code: 'design/forbidden-name', path: childPath, message: `"${key}" cannot be the name of a field` };
    }
    const issue = unsafeKeys(child, childPath, level + 1);
    if (issue !== null) return issue;
  }
  return null;
}

/** Bytes of a text in UTF-8, without encoding what is plainly too long. */
function byteLength(text: string): number {
  return text.length > MOST_BYTES ? text.length : new TextEncoder().encode(text).byteLength;
}

/** The text without its byte order mark; null where bytes are no UTF-8 or hold a NUL, as binary files do. */
function textOf(source: string | Uint8Array): string | null {
  try {
    const text = typeof source === 'string' ? source : new TextDecoder('utf-8', { fatal: true }).decode(source);
    if (text.includes('\0')) return null;
    return text.startsWith('\uFEFF') ? text.slice(1) : text;
  } catch {
    return null;
  }
}

function faultMessage(text: string): string {
  const fault = jsonFault(text);
  if (fault === null) return 'the file cannot be read as JSON';
  const given = fault.given === '' ? 'the text ends' : `got ${JSON.stringify(fault.given)}`;
  return `not JSON: line ${fault.line}, column ${fault.column}: ${fault.wanted} is wanted, ${given}`;
}

function refuse(code: string, message: string, hint?: string): Outcome<never> {
  return failed([hint === undefined ? { code, path: '', message } : { code, path: '', message, hint }]);
}
