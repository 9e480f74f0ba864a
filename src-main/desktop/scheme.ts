/** The window's own scheme: the page has an origin of its own, and nothing that it loads comes from a network or a bare file. */
import { protocol } from 'electron';
import { servePage } from '../host/page-files';

/** Of everything that the app itself serves. */
export const SCHEME = 'app';
const HOST = 'ledgewright';

/** Address of the window. */
export const PAGE_ADDRESS = `${SCHEME}://${HOST}/`;

/** Must run before the app is ready: the scheme counts as secure, resolves relative addresses and may be fetched from. */
export function registerScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
}

/** Serves the built window; another host of the same scheme is nobody. */
export function serveScheme(pageFolder: string): void {
  protocol.handle(SCHEME, (request) => {
    if (!isOwnAddress(request.url)) return new Response('There is no such page.', { status: 404 });
    return servePage(pageFolder, request);
  });
}

/** Whether an address is the window's own, whatever the file. */
export function isOwnAddress(address: string): boolean {
  if (!URL.canParse(address)) return false;
  const { protocol: scheme, host, username, password } = new URL(address);
  return scheme === `${SCHEME}:` && host === HOST && username === '' && password === '';
}
