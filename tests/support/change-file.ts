import type { Issue, Outcome } from '../../sim/flow/outcome.ts';

type Json = Record<string, unknown>;

/**
 * A copy of a design file, as JSON, with another value at a place like `joints.1.x_mm`; undefined takes the field out.
 * Unlike an edit of the app it puts anything anywhere.
 */
export function changed(file: unknown, place: string, value: unknown): unknown {
  const copy: unknown = structuredClone(file);
  const steps = place.split('.');
  const last = steps.pop() ?? '';
  const parent = steps.reduce<unknown>((part, step) => (part as Json)[step], copy) as Json;
  if (value === undefined) delete parent[last];
  else Object.defineProperty(parent, last, { value, enumerable: true, configurable: true, writable: true });
  return copy;
}

/** The issues of a failed outcome; none of a good one. */
export function issuesOf(outcome: Outcome<unknown>): readonly Issue[] {
  return outcome.status === 'failed' ? outcome.issues : [];
}

/** The value of a good outcome; throws with the issues of another, so that a test fails by saying why. */
export function goodOf<Value>(outcome: Outcome<Value>): Value {
  if (outcome.status === 'ok') return outcome.value;
  throw new Error(JSON.stringify(outcome, null, 2));
}
