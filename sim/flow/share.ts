/**
 * Gives `next` back with every part that equals the same part of `old` replaced by the old object, so that "changed?"
 * is `===` from then on. If all is equal, `old` itself comes back. For plain data: numbers, strings, arrays, records.
 */
export function share<Value>(old: unknown, next: Value): Value {
  if (Object.is(old, next)) return next;
  if (Array.isArray(next)) {
    const was: readonly unknown[] = Array.isArray(old) ? old : [];
    const shared = next.map((item, i) => share(was[i], item));
    const same = Array.isArray(old) && was.length === next.length && shared.every((item, i) => Object.is(item, was[i]));
    if (same) return old as Value;
    return next.every((item, i) => Object.is(item, shared[i])) ? next : (shared as Value);
  }
  if (isRecord(next)) {
    const was = isRecord(old) ? old : {};
    const keys = Object.keys(next);
    const shared = Object.fromEntries(keys.map((key) => [key, share(was[key], next[key])]));
    // a field that is undefined is not a field that is missing
    const unlike = (other: Record<string, unknown>) =>
      keys.some((key) => !Object.hasOwn(other, key) || !Object.is(shared[key], other[key]));
    if (isRecord(old) && Object.keys(was).length === keys.length && !unlike(was)) return old as Value;
    return unlike(next) ? (shared as Value) : next;
  }
  return next;
}

/** Whether two pieces of plain data say the same. */
export function isSame(one: unknown, other: unknown): boolean {
  return share(one, other) === one;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype;
}
