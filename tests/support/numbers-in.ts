import { isNumberKey } from '../../sim/design/number-keys.ts';

/** Places of all numbers and expressions of a design file or a part of one. */
export function numbersIn(part: unknown, key = '', path = ''): readonly string[] {
  if (typeof part === 'number') return [path];
  if (typeof part === 'string') return isNumberKey(key) ? [path] : [];
  if (typeof part !== 'object' || part === null) return [];
  return Object.entries(part).flatMap(([name, child]) =>
    numbersIn(child, Array.isArray(part) ? key : name, path === '' ? name : `${path}.${name}`),
  );
}
