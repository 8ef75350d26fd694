/** Longer texts are cut here: enough to find them again in the file. */
const MOST_CHARACTERS = 40;

/** Of an object, this many field names tell the maker which one it is. */
const MOST_FIELDS = 6;

/** What stood at a field, for the end of a message: `null`, `"left"`, `12.5`, `a list of 3`, `nothing`. */
export function given(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (value === null) return 'null';
  if (typeof value === 'string') return quoted(value);
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`;
  return typeof value === 'object' ? givenObject(Object.keys(value)) : `a ${typeof value}`;
}

function givenObject(fields: readonly string[]): string {
  if (fields.length === 0) return 'an empty object';
  const more = fields.length > MOST_FIELDS ? ` and ${fields.length - MOST_FIELDS} more fields` : '';
  return `an object with ${fields.slice(0, MOST_FIELDS).map(quoted).join(', ')}${more}`;
}

/** A text in double quotes on one line, cut where it is long. */
export function quoted(text: string): string {
  return JSON.stringify(text.length > MOST_CHARACTERS ? `${text.slice(0, MOST_CHARACTERS)}…` : text);
}
