/** For JSON.stringify: JSON would write NaN as null and hide it, so it is refused. */
export function finite(key: string, value: unknown): unknown {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${key} is ${value}`);
  return value;
}
