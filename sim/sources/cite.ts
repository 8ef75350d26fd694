import { SOURCES, type Source, type SourceKey } from './sources.ts';

/** Where in a source something stands. */
export interface Place {
  readonly source: SourceKey;
  /** Page, table, row; enough to put a finger on it. */
  readonly where: string;
}

/** A value from outside, in house units, with the place it stands in and the text that stands there. */
export interface Cited<Value> extends Place {
  readonly value: Value;
  readonly asPrinted: string;
}

/** A range that stays a range. usual: what to work with until something is weighed. */
export interface Spread<Value extends number> {
  readonly low: Value;
  readonly usual: Value;
  readonly high: Value;
}

/** A place as words: author, year, where. */
export function placeText(place: Place): string {
  const source: Source = SOURCES[place.source];
  const author = source.year === null ? source.author : `${source.author} (${source.year})`;
  return `${author}, ${place.where}`;
}

/** A cited value as words: its place and what is printed there. */
export function citationText(cited: Cited<unknown>): string {
  return `${placeText(cited)}: ${cited.asPrinted}`;
}
