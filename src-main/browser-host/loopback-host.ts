/** Starts the loopback host on 127.0.0.1 and gives its address. */
import { randomBytes } from 'node:crypto';
import type { Server } from 'node:http';
import { createAdaptorServer } from '@hono/node-server';
import type { Host } from '../host/host';
import { loopbackApp } from './loopback-app';

const LOOPBACK = '127.0.0.1';
const TOKEN_BYTES = 32;

export interface LoopbackOptions {
  readonly host: Host;
  readonly pageFolder: string;
  /** 0 lets the system choose a free one. */
  readonly port: number;
  readonly onFault: (error: unknown) => void;
}

export interface LoopbackHost {
  /** Address of the window, with the token of this run where only the page itself sees it: after the #. */
  readonly address: string;
  readonly port: number;
  readonly token: string;
  /** Ends every connection, then the run. */
  readonly stop: () => Promise<void>;
}

/** Listens, with a new token each time. Rejects where the port is taken. */
export async function startLoopbackHost(options: LoopbackOptions): Promise<LoopbackHost> {
  const { host, pageFolder, onFault } = options;
  const token = randomBytes(TOKEN_BYTES).toString('base64url');
  let port = options.port;
  const app = loopbackApp({ host, pageFolder, token, onFault, ownHost: () => `${LOOPBACK}:${port}` });
  const server = createAdaptorServer({ fetch: app.fetch, overrideGlobalObjects: false }) as Server;
  port = await listening(server, options.port);
  return {
    address: `http://${LOOPBACK}:${port}/#token=${token}`,
    port,
    token,
    stop: async () => {
      await new Promise<void>((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      });
      await host.endRun();
    },
  };
}

function listening(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, LOOPBACK, () => {
      server.off('error', reject);
      const address = server.address();
      if (address === null || typeof address === 'string') reject(new Error('the host listens on no port'));
      else resolve(address.port);
    });
  });
}
