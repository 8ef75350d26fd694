import type { DesignFile } from './file.ts';

/** A value of the design file as it lies in JSON. */
type Json = string | number | boolean | null | undefined | readonly Json[] | { readonly [key: string]: Json };

/**
 * What stands at a place in the design file, such as `joints.1.x_mm`, or undefined where nothing does. Places are
 * written as the paths of issues are, so that an issue finds the field that caused it.
 */
export function valueAt(file: object, path: string): unknown {
  let value: unknown = file;
  for (const key of path.split('.')) {
    if (value === null || typeof value !== 'object' || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<string, unknown>)[key];
  }
  return value;
}

/**
 * The file with another value at a place; everything beside the way to it stays the same object. A field that was left
 * out is put in, lists do not grow. What may stand where is for the reading of the file to say.
 */
export function withValueAt(file: DesignFile, path: string, value: unknown): DesignFile {
  return placed(file as unknown as Json, path.split('.'), value as Json) as unknown as DesignFile;
}

function placed(parent: Json, [key = '', ...rest]: readonly string[], value: Json): Json {
  if (Array.isArray(parent)) {
    return parent.map((part: Json, index) => (String(index) === key ? next(part, rest, value) : part));
  }
  const fields = (parent ?? {}) as { readonly [key: string]: Json };
  return { ...fields, [key]: next(fields[key], rest, value) };
}

function next(part: Json, rest: readonly string[], value: Json): Json {
  return rest.length === 0 ? value : placed(part, rest, value);
}
