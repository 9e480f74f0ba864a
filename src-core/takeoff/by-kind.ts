/** Sources put together by what they are. */
import type { ListSource } from './types';

/** A source with the key and name of what it is. */
export interface Sorted {
  readonly key: string;
  readonly name: string;
  readonly source: ListSource;
}

export interface Kind {
  readonly key: string;
  readonly name: string;
  readonly sources: readonly ListSource[];
}

/** Sources by their keys, in the order found. */
export function byKind(found: readonly Sorted[]): Kind[] {
  const keys = [...new Set(found.map(({ key }) => key))];
  return keys.map((key) => {
    const own = found.filter((one) => one.key === key);
    return { key, name: own[0]!.name, sources: own.map(({ source }) => source) };
  });
}
