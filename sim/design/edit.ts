import { SimError } from '../flow/outcome.ts';
import type { DesignFile, Num } from './file.ts';
import { given } from './given.ts';
import { isNumberKey } from './number-keys.ts';
import { checkDesignFile } from './read.ts';

/** Place of a number in the file: ['joints', 1, 'x_mm']. */
export type FieldPath = readonly (string | number)[];

/** The number or expression at a place of the file; undefined where there is none. */
export function valueAt(file: DesignFile, path: FieldPath): Num | undefined {
  if (!isPlaceOfNumber(path)) return undefined;
  const found = path.reduce<unknown>(childAt, file);
  return typeof found === 'number' || typeof found === 'string' ? found : undefined;
}

/**
 * The file with another number or expression at one place. Every part that is not on the way there is the very same
 * object as before. A field that may be left out is added, with the object it lives in; lists do not grow, and a
 * dimension must be there already. Throws `SimError` naming the place if no number can stand there, or not this one.
 * An expression is kept as written: `evaluateDesign` works it out.
 */
export function setValue(file: DesignFile, path: FieldPath, value: Num): DesignFile {
  const isNewDimension = path[0] === 'dimensions' && valueAt(file, path) === undefined;
  if (!isPlaceOfNumber(path) || isNewDimension) throw noSuchPlace(path);
  const edited = withValue(file, path, 0, value);
  const checked = checkDesignFile(edited);
  if (checked.status === 'failed') throw new SimError(checked.issues);
  // checking makes a copy; what goes back keeps every untouched part
  return edited as DesignFile;
}

/** Whether the last name on the way is one whose values are numbers; a list within it has places of its own. */
function isPlaceOfNumber(path: FieldPath): boolean {
  const key = path.findLast((step) => typeof step === 'string');
  return key !== undefined && isNumberKey(String(key));
}

function withValue(part: unknown, path: FieldPath, depth: number, value: Num): unknown {
  const step = path[depth];
  if (step === undefined) return value;
  const child = withValue(childAt(part, step), path, depth + 1, value);
  if (typeof step === 'number') {
    if (!Array.isArray(part) || childAt(part, step) === undefined) throw noSuchPlace(path);
    return part.with(step, child);
  }
  if (part === undefined) return { [step]: child };
  if (typeof part !== 'object' || part === null || Array.isArray(part)) throw noSuchPlace(path);
  return { ...part, [step]: child };
}

function childAt(part: unknown, step: string | number): unknown {
  if (typeof step === 'number') return Array.isArray(part) ? part[step] : undefined;
  if (typeof part !== 'object' || part === null || Array.isArray(part) || !Object.hasOwn(part, step)) return undefined;
  return (part as Readonly<Record<string, unknown>>)[step];
}

function noSuchPlace(path: FieldPath): SimError {
  const where = path.join('.');
  const message = `there is no number at ${given(where)} in this design`;
  return new SimError([{ code: 'design/no-such-field', path: where, message, hint: 'choose a number of the design' }]);
}
