/** Serves the built window from its folder and nothing outside it, for the desktop's own scheme and for the loopback host. */
import { readFile, realpath } from 'node:fs/promises';
import { extname, join, sep } from 'node:path';
import { PAGE_HEADERS } from './page-headers';
import { codeOf } from './text-file';

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
};

/** Answers a request for a file of the window; the headers are the same for what is found and what is not. */
export async function servePage(folder: string, request: Request): Promise<Response> {
  if (request.method !== 'GET' && request.method !== 'HEAD') return plain(405, 'Only GET is served here.');
  const found = await fileOf(folder, new URL(request.url).pathname);
  if (found === null) return plain(404, 'There is no such file.');
  const headers = {
    ...PAGE_HEADERS,
    'content-type': TYPES[extname(found.path).toLowerCase()] ?? 'application/octet-stream',
    'content-length': `${found.bytes.length}`,
    'cache-control': 'no-cache',
  };
  return new Response(request.method === 'HEAD' ? null : found.bytes, { status: 200, headers });
}

interface Found {
  readonly path: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** The file that a path of an address names, or null. Links are followed first, so that none leads out of the folder. */
async function fileOf(folder: string, pathname: string): Promise<Found | null> {
  const inside = decoded(pathname);
  if (inside === null || inside.includes('\0') || inside.includes('\\')) return null;
  try {
    const root = await realpath(folder);
    const path = await realpath(join(root, inside.endsWith('/') ? `${inside}index.html` : inside));
    if (!path.startsWith(root + sep)) return null;
    return { path, bytes: Uint8Array.from(await readFile(path)) };
  } catch (error) {
    if (['ENOENT', 'ENOTDIR', 'EISDIR', 'ENAMETOOLONG', 'ELOOP'].includes(codeOf(error))) return null;
    throw error;
  }
}

function decoded(pathname: string): string | null {
  try {
    return decodeURIComponent(pathname);
  } catch {
    return null;
  }
}

function plain(status: number, sentence: string): Response {
  const headers = { ...PAGE_HEADERS, 'content-type': 'text/plain; charset=utf-8' };
  return new Response(sentence, { status, headers });
}
