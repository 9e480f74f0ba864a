import { mkdirSync, writeFileSync } from 'node:fs';
import type { IncomingHttpHeaders, OutgoingHttpHeaders } from 'node:http';
import { request } from 'node:http';
import { join } from 'node:path';
import type { LoopbackHost } from '../../../src-main/browser-host/loopback-host';
import { startLoopbackHost } from '../../../src-main/browser-host/loopback-host';
import type { Place } from '../../../src-main/host/place';
import type { Here } from '../host/place-here';
import { withHost } from '../host/place-here';

export interface Served extends Here {
  readonly loopback: LoopbackHost;
  readonly pageFolder: string;
  readonly faults: unknown[];
}

/** Calls `use` with a loopback host that listens and serves a small page, and stops it afterwards. */
export async function withLoopback(
  use: (served: Served) => Promise<void>,
  own: Partial<Place> = {},
): Promise<void> {
  await withHost(async (here) => {
    const pageFolder = join(here.place.jobFolder, '..', 'page');
    mkdirSync(join(pageFolder, 'assets'), { recursive: true });
    writeFileSync(join(pageFolder, 'index.html'), '<!doctype html><title>Small page</title>');
    writeFileSync(join(pageFolder, 'assets', 'main.js'), 'export {};');
    writeFileSync(join(here.place.jobFolder, '..', 'secret.txt'), 'not to be served');
    const faults: unknown[] = [];
    const loopback = await startLoopbackHost({
      host: here.host,
      pageFolder,
      port: 0,
      onFault: (error) => faults.push(error),
    });
    try {
      await use({ ...here, loopback, pageFolder, faults });
    } finally {
      await loopback.stop();
    }
  }, own);
}

export interface Sent {
  readonly method?: string;
  readonly path: string;
  readonly headers?: OutgoingHttpHeaders;
  readonly body?: string | Uint8Array;
}

export interface Got {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly text: string;
}

/** Sends exactly this, path and headers as they are, which `fetch` would tidy. */
export function send(port: number, { method = 'GET', path, headers = {}, body }: Sent): Promise<Got> {
  return new Promise((resolve, reject) => {
    const sent = request({ host: '127.0.0.1', port, method, path, headers }, (answer) => {
      let text = '';
      answer.setEncoding('utf8').on('data', (part: string) => {
        text += part;
      });
      answer.on('end', () => resolve({ status: answer.statusCode ?? 0, headers: answer.headers, text }));
    });
    sent.on('error', reject);
    sent.end(body);
  });
}
