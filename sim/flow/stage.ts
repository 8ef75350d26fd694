import { failed, type Outcome, ok, SimError } from './outcome.ts';
import { share } from './share.ts';

type Outcomes<Values extends readonly unknown[]> = { readonly [I in keyof Values]: Outcome<Values[I]> };

/** A step that remembers its last call. */
export type Stage<Inputs extends readonly unknown[], Value> = (...inputs: Outcomes<Inputs>) => Outcome<Value>;

/**
 * Makes a stage of a pure function. Called again with the very same inputs it gives back the very same outcome; called
 * with others, it keeps whatever parts of the old answer came out equal. It is blocked while an input is not there,
 * fails on a SimError, and lets every other error through, since that is a bug.
 *
 * inputNames: what to call each input when it blocks the stage. sharing: leave off for large typed arrays.
 */
export function createStage<Inputs extends readonly unknown[], Value>(
  inputNames: { readonly [I in keyof Inputs]: string },
  run: (...inputs: Inputs) => Value,
  sharing: 'shared' | 'whole' = 'shared',
): Stage<Inputs, Value> {
  let inputs: readonly unknown[] | null = null;
  let outcome: Outcome<Value> | null = null;
  let lastValue: Value | undefined;
  const settle = (next: Outcome<Value>): Outcome<Value> => {
    outcome = next.status === 'ok' && sharing === 'whole' ? next : share(outcome, next);
    return outcome;
  };
  return (...given) => {
    // several inputs may be parts of one answer, which is then named once
    const missing = new Set(inputNames.filter((_, i) => given[i].status !== 'ok'));
    if (missing.size > 0) {
      inputs = null;
      return settle({ status: 'blocked', by: [...missing] });
    }
    const values = given.map((input) => (input as { readonly value: unknown }).value) as unknown as Inputs;
    if (outcome && inputs && values.every((value, i) => value === inputs?.[i])) return outcome;
    // nothing is remembered of a call that ends in a bug: asked again, it must not give an older answer
    inputs = null;
    let next: Outcome<Value>;
    try {
      const value = run(...values);
      lastValue = sharing === 'shared' ? share(lastValue, value) : value;
      next = ok(lastValue);
    } catch (error) {
      if (!(error instanceof SimError)) throw error;
      next = failed(error.issues);
    }
    inputs = values;
    return settle(next);
  };
}

/** One part of an answer, to hand to a stage that reads no more than that. Not there while the whole is not there. */
export function part<Whole, Value>(whole: Outcome<Whole>, name: string, pick: (whole: Whole) => Value): Outcome<Value> {
  return whole.status === 'ok' ? ok(pick(whole.value)) : { status: 'blocked', by: [name] };
}

/** Gathers outcomes into one list, blocked while any is missing; the very same list again while its items are the same. */
export function createList<Value>(name: string): (items: readonly Outcome<Value>[]) => Outcome<readonly Value[]> {
  let last: Outcome<readonly Value[]> = { status: 'blocked', by: [name] };
  return (items) => {
    const values = items.flatMap((item) => (item.status === 'ok' ? [item.value] : []));
    const next: Outcome<readonly Value[]> =
      values.length === items.length && items.length > 0 ? ok(values) : { status: 'blocked', by: [name] };
    const known = last;
    const same =
      known.status === 'ok' &&
      next.status === 'ok' &&
      known.value.length === values.length &&
      values.every((value, i) => value === known.value[i]);
    if (!same) last = next;
    return last;
  };
}
