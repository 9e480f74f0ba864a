/** Reads one of Ledgewright's own files. */
import type { z } from 'zod';
import { readText } from './text-file';

/** What the file holds, or null where it is missing, damaged or of another shape. */
export async function readOwnJson<Schema extends z.ZodType>(
  path: string,
  schema: Schema,
): Promise<z.infer<Schema> | null> {
  const reading = await readText(path);
  if (!reading.ok) return null;
  const read = schema.safeParse(jsonOf(reading.text));
  return read.success ? read.data : null;
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
