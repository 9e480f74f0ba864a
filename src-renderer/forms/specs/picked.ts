/** Which entry of a table of the trade the values of a thing are. */
import type { Pick, Thing } from './field';

/** The first entry all of whose values the thing has; null where its values are its own. */
export function pickedFrom(picks: readonly Pick[], thing: Thing): Pick | null {
  return (
    picks.find(({ values }) => Object.entries(values).every(([key, value]) => isSame(value, thing[key]))) ??
    null
  );
}

/** Plain data compared by its contents, whatever the order of its fields. */
function isSame(a: unknown, b: unknown): boolean {
  if (typeof a !== 'object' || a === null || typeof b !== 'object' || b === null) return Object.is(a, b);
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => isSame(Reflect.get(a, key), Reflect.get(b, key)))
  );
}
