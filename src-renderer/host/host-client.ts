/** The window's way to its host: the preload's door in the desktop window, the loopback host in a browser. */
import type { HostApi } from '../../src-core/host-contract';
import { hostEvent, REQUESTS } from '../../src-core/host-contract';

/** What the preload puts into the page, and no more. */
export interface DesktopDoor {
  readonly ask: (name: string, request: unknown) => Promise<unknown>;
  readonly listen: (onEvent: (event: unknown) => void) => () => void;
}

declare global {
  interface Window {
    readonly ledgewright?: DesktopDoor;
  }
}

const TOKEN_KEY = 'ledgewright-token';
/** Header that carries the token of the run; the loopback host refuses what comes without. */
const TOKEN_HEADER = 'x-ledgewright-token';

/** The host behind this page. */
export function connectHost(): HostApi {
  return window.ledgewright === undefined ? loopbackHost(takeToken()) : desktopHost(window.ledgewright);
}

function desktopHost(door: DesktopDoor): HostApi {
  return {
    ask: async (name, request) => REQUESTS[name].reply.parse(await door.ask(name, request)) as never,
    listen: (onEvent) =>
      door.listen((told) => {
        const event = hostEvent.safeParse(told);
        if (event.success) onEvent(event.data);
      }),
  };
}

function loopbackHost(token: string): HostApi {
  return {
    ask: async (name, request) => {
      const answer = await fetch(`./host/${name}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', [TOKEN_HEADER]: token },
        body: JSON.stringify(request),
      });
      if (!answer.ok) throw new Error(`the host refused ${name}: ${answer.status} ${await answer.text()}`);
      return REQUESTS[name].reply.parse(await answer.json()) as never;
    },
    listen: () => () => undefined,
  };
}

/** The token comes in the address once; it is kept for this tab and taken out of the address. */
function takeToken(): string {
  const given = new URLSearchParams(window.location.hash.slice(1)).get('token');
  if (given !== null) {
    sessionStorage.setItem(TOKEN_KEY, given);
    window.history.replaceState(null, '', window.location.pathname);
  }
  return given ?? sessionStorage.getItem(TOKEN_KEY) ?? '';
}
