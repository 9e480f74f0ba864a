/** A session apart from the window's own, as `session.fromPartition` gives it. */
import type { SchemeHandler } from './wire';

type Decide = (details: { readonly url: string }, answer: (response: { cancel?: boolean }) => void) => void;
type Permission = (contents: unknown, permission: string, decide: (isGranted: boolean) => void) => void;

export class PartitionDouble {
  readonly name: string;
  readonly options: object | undefined;
  readonly handlers = new Map<string, SchemeHandler>();
  /** What its handlers have answered. */
  readonly answered: Response[] = [];
  decide: Decide | null = null;
  permission: Permission | null = null;
  check: (() => boolean) | null = null;
  device: (() => boolean) | null = null;

  constructor(name: string, options: object | undefined) {
    this.name = name;
    this.options = options;
  }

  readonly protocol = {
    handle: (scheme: string, handler: SchemeHandler) => {
      if (this.handlers.has(scheme)) throw new Error(`${scheme} is handled already`);
      this.handlers.set(scheme, handler);
    },
    unhandle: (scheme: string) => this.handlers.delete(scheme),
  };

  readonly webRequest = {
    onBeforeRequest: (decide: Decide) => {
      this.decide = decide;
    },
  };

  setPermissionRequestHandler(handler: Permission): void {
    this.permission = handler;
  }

  setPermissionCheckHandler(handler: () => boolean): void {
    this.check = handler;
  }

  setDevicePermissionHandler(handler: () => boolean): void {
    this.device = handler;
  }

  /** Whether the shell lets a request of this session go; it goes where nobody decides. */
  lets(url: string): Promise<boolean> {
    const { decide } = this;
    if (decide === null) return Promise.resolve(true);
    return new Promise((resolve) => decide({ url }, ({ cancel }) => resolve(cancel !== true)));
  }
}
