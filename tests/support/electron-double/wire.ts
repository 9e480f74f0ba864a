/** Carries requests of the app's scheme from Chromium to the handler that the shell gave to `protocol.handle`. */
import type { IncomingMessage, ServerResponse } from 'node:http';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Addresses } from './addresses';
import { addressesAt } from './addresses';

export type SchemeHandler = (request: Request) => Response | Promise<Response>;

export interface Wire extends Addresses {
  readonly stop: () => Promise<void>;
}

/** Listens; `handlerOf` gives the shell's handler of a scheme, once there is one. */
export async function openWire(handlerOf: (scheme: string) => SchemeHandler | undefined): Promise<Wire> {
  const server = createServer((incoming, outgoing) => {
    carry(incoming, outgoing).catch((error: unknown) => {
      outgoing.writeHead(502).end(String(error));
    });
  });
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', () => resolve());
  });
  const addresses = addressesAt((server.address() as AddressInfo).port);

  async function carry(incoming: IncomingMessage, outgoing: ServerResponse): Promise<void> {
    const asked = addresses.fromWire(`http://${incoming.headers.host}${incoming.url}`);
    if (!asked.startsWith('app:')) {
      outgoing.writeHead(200, { 'content-type': 'text/html' }).end('<!doctype html><title>Elsewhere</title>');
      return;
    }
    const handler = handlerOf('app');
    if (handler === undefined) throw new Error('nobody handles app://');
    const answer = await handler(new Request(asked, { method: incoming.method ?? 'GET' }));
    outgoing.writeHead(answer.status, Object.fromEntries(answer.headers));
    outgoing.end(new Uint8Array(await answer.arrayBuffer()));
  }

  return {
    ...addresses,
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
