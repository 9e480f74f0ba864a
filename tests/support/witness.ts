/** A server on this machine that must not be asked for anything. */
import type { Server } from 'node:http';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';

/** A server that counts what it is asked for. */
export async function withWitness(
  use: (address: string, asked: readonly string[]) => Promise<void>,
): Promise<void> {
  const asked: string[] = [];
  const server: Server = createServer((request, answer) => {
    asked.push(String(request.url));
    answer.writeHead(200, { 'content-type': 'text/html', 'access-control-allow-origin': '*' }).end('WITNESS');
  });
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', () => resolve());
  });
  try {
    await use(`http://127.0.0.1:${(server.address() as AddressInfo).port}`, asked);
  } finally {
    server.closeAllConnections();
    await new Promise((resolve) => {
      server.close(resolve);
    });
  }
}
