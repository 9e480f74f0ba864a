/**
 * How addresses of the app's scheme travel. Chromium outside Electron knows no app:// and cannot be taught it, so `app://NAME/path` is
 * `http://NAME.app.localhost:PORT/path` on the wire: names below localhost are a secure context too. The shell sees only app://.
 */

const BELOW = '.app.localhost';

export interface Addresses {
  readonly toWire: (address: string) => string;
  readonly fromWire: (address: string) => string;
  /** A page of somebody else. */
  readonly elsewhere: string;
}

export function addressesAt(port: number): Addresses {
  return {
    toWire: (address) => address.replace(/^app:\/\/([^/:?#]+)/, `http://$1${BELOW}:${port}`),
    fromWire: (address) => {
      if (!URL.canParse(address)) return address;
      const { hostname, port: named, pathname, search, hash } = new URL(address);
      if (!hostname.endsWith(BELOW) || named !== `${port}`) return address;
      return `app://${hostname.slice(0, -BELOW.length)}${pathname}${search}${hash}`;
    },
    elsewhere: `http://127.0.0.1:${port}/`,
  };
}
