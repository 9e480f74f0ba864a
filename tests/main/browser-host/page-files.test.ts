import { symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
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

  test('have a policy under which nothing is loaded from elsewhere and the page may not be framed', () => {
    const policy = PAGE_HEADERS['content-security-policy']!.split('; ');
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval'");
    expect(policy.join(' ')).not.toMatch(/https?:|\*|unsafe-eval'(?<!wasm-unsafe-eval')/);
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
      ]) {
        const { status, text } = await get(served, path);
        expect(text, path).not.toContain('not to be served');
        expect([400, 404], path).toContain(status);
      }
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
