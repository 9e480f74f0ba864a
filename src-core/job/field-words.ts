/** Names fields and things of a job file in a builder's words. */
import { splitUnit } from './figures';
import type { FieldPath } from './problem';
import { shorten } from './problem';

/** One thing of a list, by the list's name. */
const ONE_OF: Readonly<Record<string, string>> = {
  pieces: 'piece',
  mixes: 'mix',
  corners: 'corner',
  edges: 'edge',
  joints: 'joint',
  cutouts: 'cutout',
  reinforcement: 'steel entry',
  supports: 'support',
  fixed: 'fixed load',
  points: 'point',
  roots: 'root',
  readings: 'level reading',
  dailyC: 'daily temperature',
  restDays: 'rest day',
  cylinders: 'cylinder result',
  sections: 'falsework section',
  steps: 'swap step',
  sectionsOut: 'section out',
  supportsOut: 'support out',
  supportsIn: 'support in',
  removableParts: 'removable part',
  stock: 'stock item',
  ticks: 'tick',
};

/** `radiusIn` as "radius", `cornerRadiusIn` as "corner radius". */
export function fieldName(field: string): string {
  const { words } = splitUnit(field);
  return words.map((word, i) => (i === 0 ? word : word.toLowerCase())).join(' ');
}

/**
 * The place in words, innermost first: "x of corner 2 of piece "Bar ledge"". Pieces, supports and mixes are called
 * by their name or id where the file gives one.
 */
export function describePath(root: unknown, path: FieldPath): string {
  const parts: string[] = [];
  let value: unknown = root;
  for (let i = 0; i < path.length; i++) {
    const step = path[i]!;
    value = memberOf(value, step);
    if (typeof step === 'number') {
      const list = String(path[i - 1] ?? '');
      parts.pop();
      parts.push(`${ONE_OF[list] ?? `${fieldName(list)} entry`} ${calledBy(value) ?? step + 1}`);
    } else parts.push(fieldName(shorten(String(step))));
  }
  return parts.length === 0 ? 'the job' : parts.reverse().join(' of ');
}

/** Id of the piece that a path leads into, where the file gives a usable one. */
export function pieceIdAt(root: unknown, path: FieldPath): string | undefined {
  if (path[0] !== 'pieces' || typeof path[1] !== 'number') return undefined;
  const id = memberOf(memberOf(memberOf(root, 'pieces'), path[1]), 'id');
  return typeof id === 'string' && id.length <= 60 ? id : undefined;
}

/** The own member of an object or array, never an inherited one. */
export function memberOf(value: unknown, key: PropertyKey): unknown {
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
  return (value as Readonly<Record<PropertyKey, unknown>>)[key];
}

function calledBy(value: unknown): string | null {
  for (const key of ['name', 'id']) {
    const text = memberOf(value, key);
    if (typeof text === 'string' && text !== '') return `"${shorten(text)}"`;
  }
  return null;
}
