/** What a person is typing into a field, apart from any view: it never touches the value until it can be taken. */

export type Read<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly sentence: string };

/** How one kind of value is written in a field. */
export interface Writing<Value> {
  readonly print: (value: Value) => string;
  readonly read: (text: string) => Read<Value>;
  /** The value one arrow key up or down; null where there is no such step. */
  readonly step?: (value: Value, direction: 1 | -1) => Value | null;
}

export interface TypedEntry<Value> {
  /** The value that the entry stands over; when it changes elsewhere, the field follows it. */
  readonly over: Value;
  /** What was typed and not yet taken; null where the field shows the value. */
  readonly text: string | null;
  /** Why it was not taken. */
  readonly sentence: string | null;
}

/** An entry that shows the value. */
export function shows<Value>(value: Value): TypedEntry<Value> {
  return { over: value, text: null, sentence: null };
}

/** The entry after more typing; the last complaint is taken back until the text is tried again. */
export function typed<Value>(entry: TypedEntry<Value>, text: string): TypedEntry<Value> {
  return { ...entry, text, sentence: null };
}

/**
 * Tries what was typed. A text that is only the value's own print leaves the value alone, so that a print rounded to
 * the tape never rounds the drawing. `commit` answers null where it took the value, else why not.
 */
export function taken<Value>(
  entry: TypedEntry<Value>,
  writing: Writing<Value>,
  commit: (value: Value) => string | null,
): TypedEntry<Value> {
  const { over, text } = entry;
  if (text === null || text.trim() === writing.print(over)) return shows(over);
  const read = writing.read(text);
  if (!read.ok) return { ...entry, sentence: read.sentence };
  return offered(entry, read.value, text, commit);
}

/** Steps from what stands in the field, typed or not, and tries the result at once. */
export function stepped<Value>(
  entry: TypedEntry<Value>,
  writing: Writing<Value>,
  direction: 1 | -1,
  commit: (value: Value) => string | null,
): TypedEntry<Value> {
  if (writing.step === undefined) return entry;
  const from = entry.text === null ? { ok: true as const, value: entry.over } : writing.read(entry.text);
  if (!from.ok) return { ...entry, sentence: from.sentence };
  const next = writing.step(from.value, direction);
  return next === null ? entry : offered(entry, next, writing.print(next), commit);
}

function offered<Value>(
  entry: TypedEntry<Value>,
  value: Value,
  text: string,
  commit: (value: Value) => string | null,
): TypedEntry<Value> {
  if (value === entry.over) return shows(value);
  const sentence = commit(value);
  return sentence === null ? shows(value) : { ...entry, text, sentence };
}
