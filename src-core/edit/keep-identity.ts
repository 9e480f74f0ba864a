/** Structural sharing: what did not change stays the same object, so that views and the check redo only what did. */

/**
 * `after` with every part of it that equals a part of `before` replaced by that part. Things with an id are compared with the
 * thing of the same id, so that one that was taken out does not make its neighbours new. Plain data only.
 */
export function keepIdentity<Data>(before: unknown, after: Data): Data {
  return shared(before, after) as Data;
}

function shared(before: unknown, after: unknown): unknown {
  if (Object.is(before, after)) return before;
  if (Array.isArray(after)) return Array.isArray(before) ? sharedArray(before, after) : after;
  if (!isRecord(after) || !isRecord(before) || Array.isArray(before)) return after;
  return sharedRecord(before, after);
}

function sharedArray(before: readonly unknown[], after: readonly unknown[]): readonly unknown[] {
  const byId = new Map(before.map((item) => [idOf(item), item]));
  const items = after.map((item, i) => {
    const id = idOf(item);
    return shared(id === null ? before[i] : byId.get(id), item);
  });
  const isSame = items.length === before.length && items.every((item, i) => Object.is(item, before[i]));
  return isSame ? before : items;
}

function sharedRecord(before: Record<string, unknown>, after: Record<string, unknown>): unknown {
  const keys = Object.keys(after);
  const entries = keys.map((key): [string, unknown] => [
    key,
    Object.hasOwn(before, key) ? shared(before[key], after[key]) : after[key],
  ]);
  const isSame =
    Object.keys(before).length === keys.length &&
    entries.every(([key, value]) => Object.hasOwn(before, key) && Object.is(value, before[key]));
  return isSame ? before : Object.fromEntries(entries);
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

function idOf(value: unknown): string | null {
  return isRecord(value) && typeof value.id === 'string' ? value.id : null;
}
