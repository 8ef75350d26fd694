import type { Issue, Outcome } from '../flow/outcome.ts';
import { failed, ok, SimError } from '../flow/outcome.ts';
import { evaluateExpression, parseExpression } from './expression.ts';
import type { DesignFile, Num } from './file.ts';
import { quoted } from './given.ts';
import { isNumberKey } from './number-keys.ts';

/** A part of the file form in which every number or expression has become a number. */
export type Worked<Part> = [Num] extends [Part]
  ? number | Worked<Exclude<Part, Num>>
  : Part extends object
    ? { readonly [Key in keyof Part]: Worked<Part[Key]> }
    : Part;

/** The file with every expression worked out; units still those of the keys, nothing filled in. */
export type WorkedFile = Worked<DesignFile>;

/** A name that expressions may use: what it says, and the field that says it. */
interface Named {
  readonly source: Num;
  readonly path: string;
}

/** Names of the body that every expression may use, beside the design's own dimensions and `pi`. */
const BODY_NAMES = ['length_mm', 'height_mm', 'width_mm'] as const;
/** A message that lists names stops after this many. */
const MOST_NAMES = 12;

/**
 * Works out every expression of a design: phase 4. Fails with every problem: unreadable expressions, unknown names,
 * circles, results that are no number. A name's own fault is told once, at the name; what uses it says "needs ...".
 */
export function workOut(file: DesignFile): Outcome<WorkedFile> {
  const names = namesOf(file);
  const taken = BODY_NAMES.filter((name) => Object.hasOwn(file.dimensions ?? {}, name));
  const issues: Issue[] = taken.map((name) => ({
    code: 'design/name-taken',
    path: `dimensions.${name}`,
    message: `"${name}" is a name of the body's own`,
    hint: 'choose another name',
  }));
  const read = reader(names, issues);
  const values = new Map([...names].map(([name, { path }]) => [path, read.name(name)]));

  const worked = (part: unknown, key: string, path: string): unknown => {
    // adding 0 makes a plain 0 of -0
    if (typeof part === 'number') return part + 0;
    if (typeof part === 'string') return isNumberKey(key) ? (values.get(path) ?? read.field(part, path)) : part;
    if (Array.isArray(part)) return part.map((child, index) => worked(child, key, `${path}.${index}`));
    if (typeof part !== 'object' || part === null) return part;
    return Object.fromEntries(
      Object.entries(part).map(([name, child]) => [name, worked(child, name, path === '' ? name : `${path}.${name}`)]),
    );
  };
  // every key whose values are numbers ends in its unit, so no other text can be taken for an expression
  const result = worked(file, '', '') as WorkedFile;
  return issues.length === 0 ? ok(result) : failed(issues);
}

function namesOf(file: DesignFile): ReadonlyMap<string, Named> {
  const own = Object.entries(file.dimensions ?? {}).map(([name, source]): [string, Named] => [
    name,
    { source, path: `dimensions.${name}` },
  ]);
  const body = BODY_NAMES.map((name): [string, Named] => [name, { source: file.body[name], path: `body.${name}` }]);
  return new Map([...own, ...body]);
}

/** Reads names and fields, each name once, and writes down what is wrong with them; a faulty one gives NaN. */
function reader(names: ReadonlyMap<string, Named>, issues: Issue[]) {
  const known = new Map<string, number>();

  const nameValue = (name: string, trail: readonly string[]): number => {
    const before = known.get(name);
    if (before !== undefined) return before;
    const { source, path } = names.get(name) ?? { source: Number.NaN, path: '' };
    const value = attempt(() => numberFrom(source, path, [...trail, name]));
    known.set(name, value);
    return value;
  };

  const numberFrom = (source: Num, path: string, trail: readonly string[]): number => {
    if (typeof source === 'number') return source + 0;
    const value = evaluateExpression(parseExpression(source, path), (name) => {
      if (name === 'pi') return Math.PI;
      if (!names.has(name)) throw unknownName(name, [...names.keys()], path);
      if (trail.includes(name)) throw circle([...trail.slice(trail.indexOf(name)), name], path);
      const found = nameValue(name, trail);
      if (Number.isNaN(found)) throw needs(source, name, path);
      return found;
    });
    if (!Number.isFinite(value)) throw noNumber(source, value, path);
    return value + 0;
  };

  const attempt = (work: () => number): number => {
    try {
      return work();
    } catch (error) {
      if (!(error instanceof SimError)) throw error;
      issues.push(...error.issues);
      return Number.NaN;
    }
  };

  return {
    name: (name: string) => nameValue(name, []),
    field: (source: string, path: string) => attempt(() => numberFrom(source, path, [])),
  };
}

function unknownName(name: string, known: readonly string[], path: string): SimError {
  const more = known.length > MOST_NAMES ? ` and ${known.length - MOST_NAMES} more` : '';
  const message = `unknown name "${name}"; known: pi, ${known.slice(0, MOST_NAMES).join(', ')}${more}`;
  return new SimError([
    { code: 'design/unknown-name', path, message, hint: 'correct the name or add it under dimensions' },
  ]);
}

function circle(trail: readonly string[], path: string): SimError {
  const message = `${trail.join(' needs ')}: a circle`;
  return new SimError([{ code: 'design/circle', path, message, hint: 'give one of them a number' }]);
}

function needs(text: string, name: string, path: string): SimError {
  const message = `${quoted(text)} needs ${name}, which has no value`;
  return new SimError([{ code: 'design/needs', path, message, hint: `correct ${name} first` }]);
}

function noNumber(text: string, value: number, path: string): SimError {
  const what = Number.isNaN(value) ? 'no number' : 'a number without end';
  return new SimError([{ code: 'design/no-number', path, message: `${quoted(text)} gives ${what}` }]);
}
