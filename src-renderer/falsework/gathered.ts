/** Things that are alike, taken together in the order in which each kind first comes; no group is empty. */
export function gathered<Item>(
  items: readonly Item[],
  keyOf: (item: Item) => string,
): { readonly key: string; readonly first: Item; readonly all: readonly Item[] }[] {
  const groups = new Map<string, { key: string; first: Item; all: Item[] }>();
  for (const item of items) {
    const key = keyOf(item);
    const known = groups.get(key);
    if (known === undefined) groups.set(key, { key, first: item, all: [item] });
    else known.all.push(item);
  }
  return [...groups.values()];
}
