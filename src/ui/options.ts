/** One of several things that can be chosen, by key, and what it is called. */
export interface Option<Key extends string = string> {
  readonly key: Key;
  readonly text: string;
}

interface Choosing {
  readonly label: string;
  readonly options: readonly Option[];
  readonly chosen: string | null;
}

/** Whether two choices are the same to see: their lists are often made anew with the same in them. */
export function isSameChoice(one: Choosing, other: Choosing): boolean {
  return (
    one.label === other.label &&
    one.chosen === other.chosen &&
    one.options.length === other.options.length &&
    one.options.every(({ key, text }, i) => key === other.options[i]?.key && text === other.options[i]?.text)
  );
}
