import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { describe, expect, test } from 'vitest';
import { PAGE_HEADERS } from '../../../src-main/host/page-headers';
import type { Served } from './served';
import { send, withLoopback } from './served';

const get = ({ loopback }: Served, path: string, method = 'GET') =>
  send(loopback.port, { method, path, headers: { host: `127.0.0.1:${loopback.port}` } });

describe('files of the window', () => {
  test('are served with their types and every header of the page', async () => {
    await withLoopback(async (served) => {
      const page = await get(served, '/');
      expect(page).toMatchObject({ status: 200, text: '<!doctype html><title>Small page</title>' });
      expect(page.headers).toMatchObject({ ...PAGE_HEADERS, 'content-type': 'text/html; charset=utf-8' });
      const script = await get(served, '/assets/main.js');
      expect(script.headers['content-type']).toBe('text/javascript; charset=utf-8');
      for (const [name, type] of [
        ['a.woff2', 'font/woff2'],
        ['a.css', 'text/css; charset=utf-8'],
        ['a.wasm', 'application/wasm'],
        ['a.svg', 'image/svg+xml'],
        ['a.strange', 'application/octet-stream'],
      ]) {
        writeFileSync(join(served.pageFolder, name!), 'x');
        expect((await get(served, `/${name}`)).headers['content-type']).toBe(type);
      }
    });
  });

  test('may load from their own address alone, and no other page may frame, open or read them', () => {
    // Content Security Policy Level 3, HTML Living Standard (cross-origin isolation), Fetch Standard (nosniff, resource policy).
    expect(PAGE_HEADERS).toEqual({
      'content-security-policy': [
        "default-src 'none'",
        "script-src 'self' 'wasm-unsafe-eval'",
        "style-src 'self' 'unsafe-inline'",
        "font-src 'self'",
        "img-src 'self' blob: data:",
        "connect-src 'self'",
        "worker-src 'self'",
        "frame-ancestors 'none'",
        "base-uri 'none'",
        "form-action 'none'",
      ].join('; '),
      'cross-origin-opener-policy': 'same-origin',
      'cross-origin-embedder-policy': 'require-corp',
      'cross-origin-resource-policy': 'same-origin',
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
    });
  });

  test('keep their headers where there is nothing to serve', async () => {
    await withLoopback(async (served) => {
      for (const path of ['/none.js', '/assets', '/assets/', '/%']) {
        const missing = await get(served, path);
        expect(missing.status, path).toBe(404);
        expect(missing.headers).toMatchObject(PAGE_HEADERS);
      }
    });
  });

  test('end at their folder: no path leads out of it, however it is written', async () => {
    await withLoopback(async (served) => {
      symlinkSync(join(served.pageFolder, '..', 'secret.txt'), join(served.pageFolder, 'link.txt'));
      mkdirSync(`${served.pageFolder}-beside`);
      writeFileSync(join(`${served.pageFolder}-beside`, 'secret.txt'), 'not to be served');
      for (const path of [
        '/../secret.txt',
        '/assets/../../secret.txt',
        '/..%2fsecret.txt',
        '/%2e%2e/secret.txt',
        '/%2e%2e%2fsecret.txt',
        '/assets/..%2f..%2fsecret.txt',
        '/..%5csecret.txt',
        '/..\\secret.txt',
        '/%252e%252e%252fsecret.txt',
        '//secret.txt',
        `/${encodeURIComponent(join(served.pageFolder, '..', 'secret.txt'))}`,
        '/index.html%00.js',
        '/link.txt',
        // a folder beside it whose name begins alike
        '/..%2fpage-beside/secret.txt',
      ]) {
        const { status, text } = await get(served, path);
        expect(text, path).not.toContain('not to be served');
        expect([400, 404], path).toContain(status);
      }
    });
  });

  test('are not found, without a fault, by a name too long for the disk or a link that leads to itself', async () => {
    await withLoopback(async (served) => {
      symlinkSync('round.txt', join(served.pageFolder, 'round.txt'));
      for (const path of [`/${'a'.repeat(300)}.js`, '/round.txt']) {
        expect((await get(served, path)).status, path).toBe(404);
      }
      expect(served.faults).toEqual([]);
    });
  });

  test('have no backslash in their names, which leads out of a folder on Windows', async () => {
    await withLoopback(async (served) => {
      if (sep === '/') writeFileSync(join(served.pageFolder, 'a\\b.txt'), 'not to be served');
      expect((await get(served, '/a%5Cb.txt')).status).toBe(404);
    });
  });

  test('are read, never written: other methods get 405, HEAD gets the headers alone', async () => {
    await withLoopback(async (served) => {
      for (const method of ['POST', 'PUT', 'DELETE', 'PATCH']) {
        expect((await get(served, '/index.html', method)).status).toBe(405);
      }
      const head = await get(served, '/', 'HEAD');
      expect(head).toMatchObject({ status: 200, text: '' });
      expect(head.headers['content-length']).toBe('40');
    });
  });
});
