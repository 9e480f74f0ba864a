import { readdirSync } from 'node:fs';
import { request } from 'node:http';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { PAGE_HEADERS } from '../../../src-main/host/page-headers';
import { ask } from '../host/place-here';
import type { Sent, Served } from './served';
import { send, withLoopback } from './served';

/** A request as the window's own page sends it. */
function legitimate({ loopback }: Served, own: Partial<Sent> = {}): Required<Sent> {
  return {
    method: 'POST',
    path: '/host/about',
    body: '{}',
    ...own,
    headers: {
      host: `127.0.0.1:${loopback.port}`,
      origin: `http://127.0.0.1:${loopback.port}`,
      'x-ledgewright-token': loopback.token,
      'content-type': 'application/json',
      ...own.headers,
    },
  };
}

function without(sent: Required<Sent>, header: string): Sent {
  return {
    ...sent,
    headers: Object.fromEntries(Object.entries(sent.headers).filter(([name]) => name !== header)),
  };
}

describe('the loopback host', () => {
  test('answers its own page, and lets nothing of the answer be kept', async () => {
    await withLoopback(async (served) => {
      const { status, headers, text } = await send(served.loopback.port, legitimate(served));
      expect(status).toBe(200);
      expect(JSON.parse(text)).toMatchObject({ host: 'browser', version: '1.2.3' });
      expect(headers['cache-control']).toBe('no-store');
      expect(headers).toMatchObject(PAGE_HEADERS);
    });
  });

  test('refuses a request that was sent to another name, for requests and for files of the page', async () => {
    await withLoopback(async (served) => {
      const { port } = served.loopback;
      for (const host of [
        'ledge.example',
        `ledge.example:${port}`,
        `localhost:${port}`,
        '127.0.0.1',
        `127.0.0.1:${port + 1}`,
      ]) {
        expect((await send(port, legitimate(served, { headers: { host } }))).status).toBe(403);
        expect((await send(port, { path: '/', headers: { host } })).status).toBe(403);
      }
    });
  });

  test('refuses a request from another page, or from none', async () => {
    await withLoopback(async (served) => {
      const { port } = served.loopback;
      for (const origin of [
        'http://ledge.example',
        'null',
        `http://localhost:${port}`,
        `https://127.0.0.1:${port}`,
        `http://127.0.0.1:${port}.ledge.example`,
      ]) {
        expect((await send(port, legitimate(served, { headers: { origin } }))).status).toBe(403);
      }
      expect((await send(port, without(legitimate(served), 'origin'))).status).toBe(403);
    });
  });

  test('refuses a request whose token is missing, wrong, short by one or of another run', async () => {
    await withLoopback(async (served) => {
      const { port, token } = served.loopback;
      for (const guess of ['', 'guess', token.slice(0, -1), `${token}a`, token.toUpperCase()]) {
        const headers = { 'x-ledgewright-token': guess };
        expect((await send(port, legitimate(served, { headers }))).status).toBe(401);
      }
      expect((await send(port, without(legitimate(served), 'x-ledgewright-token'))).status).toBe(401);
      await withLoopback(async (other) => {
        expect(other.loopback.token).not.toBe(token);
        const headers = { 'x-ledgewright-token': other.loopback.token };
        expect((await send(port, legitimate(served, { headers }))).status).toBe(401);
      });
    });
  });

  test('makes tokens of 256 bits and tells them in the part of the address that is never sent', async () => {
    await withLoopback(async ({ loopback }) => {
      expect(Buffer.from(loopback.token, 'base64url')).toHaveLength(32);
      expect(loopback.address).toBe(`http://127.0.0.1:${loopback.port}/#token=${loopback.token}`);
    });
  });

  test('refuses every method but POST, so that no link and no picture can ask', async () => {
    await withLoopback(async (served) => {
      for (const method of ['GET', 'HEAD', 'PUT', 'DELETE', 'OPTIONS']) {
        const { status } = await send(served.loopback.port, { ...legitimate(served), method, body: '' });
        expect(status, method).toBe(405);
      }
    });
  });

  test('refuses a body that is no JSON, by its type with 415 and by its text with 400', async () => {
    await withLoopback(async (served) => {
      const { port } = served.loopback;
      for (const type of [
        'text/plain',
        'text/plain; application/json',
        'application/x-www-form-urlencoded',
        'application/json-patch',
      ]) {
        expect((await send(port, legitimate(served, { headers: { 'content-type': type } }))).status).toBe(
          415,
        );
      }
      expect((await send(port, without(legitimate(served), 'content-type'))).status).toBe(415);
      expect((await send(port, legitimate(served, { body: '{"half":' }))).status).toBe(400);
    });
  });

  test('refuses a body above 50 MB', async () => {
    await withLoopback(async (served) => {
      const body = new Uint8Array(50_000_001).fill(0x20);
      expect((await send(served.loopback.port, legitimate(served, { body }))).status).toBe(413);
      // A body that comes in parts does not say beforehand how long it is.
      const headers = { 'transfer-encoding': 'chunked' };
      expect((await send(served.loopback.port, legitimate(served, { body, headers }))).status).toBe(413);
    });
  });

  test('takes the longest that the contract lets leave or be printed, every letter escaped', async () => {
    await withLoopback(async (served) => {
      const { port } = served.loopback;
      const longest = '\u0001'.repeat(8_000_000);
      const requests = {
        saveExport: { kind: 'text', suggestedName: 'a.svg', data: longest },
        printBook: { suggestedName: 'a.pdf', html: longest },
      };
      for (const [name, request] of Object.entries(requests)) {
        const body = JSON.stringify(request);
        const { status, text } = await send(port, legitimate(served, { path: `/host/${name}`, body }));
        expect(status, text).toBe(200);
      }
      const data = 'AAAA'.repeat(10_000_000);
      const body = JSON.stringify({ kind: 'base64', suggestedName: 'a.stl', data });
      expect((await send(port, legitimate(served, { path: '/host/saveExport', body }))).status).toBe(200);
    });
  });

  test('refuses an unknown name with 404 and a wrong request with 400 and a sentence', async () => {
    await withLoopback(async (served) => {
      const { port } = served.loopback;
      for (const path of ['/host/eraseDisk', '/host/constructor', '/host/__proto__']) {
        expect((await send(port, legitimate(served, { path }))).status).toBe(404);
      }
      const wrong = await send(port, legitimate(served, { path: '/host/openJob', body: '{"path": 7}' }));
      expect(wrong).toMatchObject({ status: 400, text: expect.stringMatching(/^openJob: path: .+\.$/) });
    });
  });

  test('says of a fault of its own only that there is one', async () => {
    await withLoopback(
      async (served) => {
        const { status, text } = await send(served.loopback.port, legitimate(served));
        expect({ status, text }).toEqual({
          status: 500,
          text: 'Ledgewright has a fault of its own. Your job is as it was.',
        });
        expect(served.faults).toHaveLength(1);
      },
      { version: 7 as unknown as string },
    );
  });

  test('listens on 127.0.0.1 alone', async () => {
    await withLoopback(async ({ loopback }) => {
      for (const address of ['127.0.0.2', '[::1]']) {
        await expect(fetch(`http://${address}:${loopback.port}/`)).rejects.toThrow();
      }
    });
  });

  test('answers nobody after it has stopped', async () => {
    let port = 0;
    await withLoopback(async (served) => {
      port = served.loopback.port;
    });
    await expect(send(port, { path: '/' })).rejects.toThrow('ECONNREFUSED');
  });

  test('stops although a request was never sent to its end', async () => {
    await withLoopback(async (served) => {
      const { host, ...headers } = legitimate(served).headers;
      const half = request({
        host: '127.0.0.1',
        port: served.loopback.port,
        method: 'POST',
        path: '/host/about',
        headers: { ...headers, 'content-length': 10 },
      });
      const isCut = new Promise((resolve) => half.once('error', () => resolve(true)));
      await new Promise((resolve) => half.write('{', resolve));
      await served.loopback.stop();
      expect(await isCut).toBe(true);
    });
  }, 5000);

  test('ends the run as it stops: the draft of work that was saved or given up goes with it', async () => {
    await withLoopback(async ({ loopback, host, place }) => {
      await ask(host, 'keepDraft', { path: null, name: 'galley.json', text: 'half done' });
      await loopback.stop();
      expect(readdirSync(join(place.userFolder, 'drafts'))).toEqual([]);
    });
  });
});
