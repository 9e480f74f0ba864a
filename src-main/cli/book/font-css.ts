/** The bundled fonts as a style sheet that carries them within itself. */
import { readFile } from 'node:fs/promises';

/** The faces that the book is set in. */
const SHEETS = [
  '@fontsource/barlow/400.css',
  '@fontsource/barlow/600.css',
  '@fontsource/barlow-condensed/600.css',
];
/** In the packages each face names its file, then an older form of it for browsers of long ago. */
const SOURCE = /src:\s*url\(([^)]+\.woff2)\)\s*format\('woff2'\)[^;]*;/g;

/** `@font-face` rules of every face the book is set in, each with its file as base64. */
export async function fontCss(): Promise<string> {
  return (await Promise.all(SHEETS.map(withFiles))).join('\n');
}

async function withFiles(name: string): Promise<string> {
  const sheet = new URL(import.meta.resolve(name));
  const css = await readFile(sheet, 'utf8');
  const parts: string[] = [];
  let from = 0;
  for (const { index, 0: whole, 1: file } of css.matchAll(SOURCE)) {
    const bytes = await readFile(new URL(file!, sheet));
    const data = `data:font/woff2;base64,${bytes.toString('base64')}`;
    parts.push(css.slice(from, index), `src: url(${data}) format('woff2');`);
    from = index + whole.length;
  }
  return [...parts, css.slice(from)].join('');
}
