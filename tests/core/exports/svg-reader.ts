/** Reads the SVG that the tool writes: tags and attributes, and whether every tag is closed in its turn. */

export interface Tag {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  /** Words directly inside, with entities resolved. */
  readonly text: string;
  /** Ids of the groups that it stands in, outermost first. */
  readonly within: readonly string[];
}

const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"' };

/** All elements in order. Throws where the text is not well formed. Source: Extensible Markup Language 1.0, 2.1 and 3.1. */
export function readSvg(source: string): Tag[] {
  const body = source.replace(/^<\?xml version="1\.0" encoding="UTF-8"\?>\n/, '').trimEnd();
  const tags: { name: string; attributes: Map<string, string>; text: string; within: string[] }[] = [];
  const open: typeof tags = [];
  let end = 0;
  for (const match of body.matchAll(/<(\/?)([a-z]+)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>/g)) {
    const before = body.slice(end, match.index);
    if (before.includes('<') || before.includes('>')) throw new Error(`Stray mark in ${before}`);
    if (before !== '') open.at(-1)!.text += resolved(before);
    end = match.index + match[0].length;
    const [, closing, name, list, selfClosing] = match;
    if (closing === '/') {
      if (open.pop()?.name !== name) throw new Error(`</${name}> closes nothing`);
      continue;
    }
    const attributes = new Map<string, string>();
    for (const [, key, value] of list!.matchAll(/([\w:-]+)="([^"]*)"/g)) {
      if (attributes.has(key!)) throw new Error(`${key} twice in ${match[0]}`);
      attributes.set(key!, resolved(value!));
    }
    const within = open.flatMap((tag) => tag.attributes.get('id') ?? []);
    const tag = { name: name!, attributes, text: '', within };
    tags.push(tag);
    if (selfClosing !== '/') open.push(tag);
  }
  if (open.length > 0 || end !== body.length) throw new Error(`Left open or over: ${body.slice(end)}`);
  return tags;
}

function resolved(text: string): string {
  return text.replace(/&(\w*);?/g, (all, name: string) => {
    const letter = ENTITIES[name];
    if (letter === undefined) throw new Error(`Unknown entity ${all}`);
    return letter;
  });
}

/** A closed path of M, L, A and Z as corners with bulges, y turned up again. */
export function loopOf(d: string): { x: number; y: number; bulge: number }[] {
  const vertices: { x: number; y: number; bulge: number }[] = [];
  for (const [, command, list] of d.matchAll(/([MLAZ])([^MLAZ]*)/g)) {
    const numbers = list!.trim().split(/\s+/).map(Number);
    if (command === 'Z') break;
    const [x, y] = numbers.slice(-2) as [number, number];
    if (command === 'A') {
      const [radius, , , large, sweep] = numbers as [number, number, number, number, number];
      const from = vertices.at(-1)!;
      const half = Math.hypot(x - from.x, -y - from.y) / 2;
      if (large !== 0) throw new Error('A larger arc');
      const sweepRad = 2 * Math.asin(Math.min(1, half / radius));
      from.bulge = (sweep === 0 ? 1 : -1) * Math.tan(sweepRad / 4);
    }
    vertices.push({ x, y: -y, bulge: 0 });
  }
  return vertices;
}
