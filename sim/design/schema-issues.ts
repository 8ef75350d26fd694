import type * as z from 'zod';
import type { Issue } from '../flow/outcome.ts';
import { given, quoted } from './given.ts';

type ZodIssue = z.core.$ZodIssue;

/** A file can be wrong in ten thousand places; nobody reads more than this many at once. */
const MOST_ISSUES = 100;

/** What a value must be, by the word zod uses for it. */
const WANTED: Readonly<Record<string, string>> = {
  array: 'a list in square brackets',
  object: 'an object in braces',
  record: 'an object in braces',
  string: 'text in quotes',
  boolean: 'true or false',
  number: 'a number',
};

/** Text for what the schema has no text of its own for. Give it to zod's `error`, with `reportInput`. */
export const complaint: z.core.$ZodErrorMap = (issue) => {
  switch (issue.code) {
    case 'invalid_type':
      return `${WANTED[issue.expected] ?? issue.expected} is wanted, got ${given(issue.input)}`;
    case 'invalid_value':
      return `${choices(issue.values)} is wanted, got ${given(issue.input)}`;
    case 'too_small':
      return `at least ${issue.minimum} ${entries(issue.origin, issue.minimum)} wanted, got ${size(issue.input)}`;
    case 'too_big':
      return `at most ${issue.maximum} ${entries(issue.origin, issue.maximum)} allowed, got ${size(issue.input)}`;
    case 'invalid_union':
      return `${choices(Array.isArray(issue.options) ? issue.options : [])} is wanted, got ${given(fieldOf(issue.input, issue.discriminator))}`;
    case 'invalid_key':
      return issue.issues[0]?.message;
    default:
      return undefined;
  }
};

/**
 * zod's findings as ours, each at the field it is about. Where several forms are possible (a coat, a water, a
 * target) and all failed, the one the maker seems to have meant speaks.
 */
export function issuesFromSchema(issues: readonly ZodIssue[]): readonly Issue[] {
  const found = issues.flatMap((issue) => issuesFrom(issue, []));
  if (found.length <= MOST_ISSUES) return found;
  const left = found.length - MOST_ISSUES;
  return [
    ...found.slice(0, MOST_ISSUES),
    { code: 'design/more', path: '', message: `${left} more problems not listed` },
  ];
}

function issuesFrom(issue: ZodIssue, above: readonly PropertyKey[]): readonly Issue[] {
  const path = [...above, ...issue.path];
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      code: 'design/unknown-field',
      // a field without a name still needs a place that can be seen
      path: [...path, key === '' ? '""' : key].join('.'),
      message: issue.message,
      hint: 'correct the name or take the field out',
    }));
  }
  const meant = issue.code === 'invalid_union' ? meantForm(issue.errors) : null;
  if (meant !== null) return meant.flatMap((inner) => issuesFrom(inner, path));
  return [{ code: codeOf(issue), path: path.join('.'), message: issue.message }];
}

/** The issues of the form that fits best by its field names; null where none stands out. */
function meantForm(forms: readonly (readonly ZodIssue[])[]): readonly ZodIssue[] | null {
  const misfits = forms.map(misfit);
  const least = Math.min(...misfits);
  const best = forms.filter((_, index) => misfits[index] === least);
  return Number.isFinite(least) && best.length === 1 ? (best[0] ?? null) : null;
}

/** Fields too many and fields missing; infinite where the value is no object at all. */
function misfit(issues: readonly ZodIssue[]): number {
  const counts = issues.map((issue) => {
    if (issue.code === 'unrecognized_keys') return issue.keys.length;
    if (issue.path.length === 0) return Number.POSITIVE_INFINITY;
    return issue.path.length === 1 && issue.input === undefined ? 1 : 0;
  });
  return counts.reduce<number>((sum, count) => sum + count, 0);
}

function codeOf(issue: ZodIssue): string {
  if (issue.input === undefined) return 'design/missing';
  if (issue.code === 'invalid_value') return 'design/wrong-choice';
  if (issue.code === 'too_big' || issue.code === 'too_small') return 'design/wrong-size';
  if (issue.code === 'invalid_key' || issue.code === 'invalid_format') return 'design/bad-name';
  return 'design/wrong-type';
}

function choices(values: readonly unknown[]): string {
  const words = values.map((value) => (typeof value === 'string' ? quoted(value) : String(value)));
  const last = words.pop() ?? 'nothing';
  return words.length === 0 ? last : `${words.join(', ')} or ${last}`;
}

function entries(origin: string, count: number | bigint): string {
  if (origin === 'string') return count === 1 ? 'character is' : 'characters are';
  return count === 1 ? 'entry is' : 'entries are';
}

function size(value: unknown): string {
  return typeof value === 'string' || Array.isArray(value) ? String(value.length) : given(value);
}

function fieldOf(value: unknown, field: string | undefined): unknown {
  return typeof value === 'object' && value !== null && field !== undefined
    ? Object.entries(value).find(([key]) => key === field)?.[1]
    : undefined;
}
