/** Electron's `app`: an emitter that remembers what was asked of it. */
import { EventEmitter } from 'node:events';

export class AppDouble extends EventEmitter {
  readonly recentDocuments: string[] = [];
  readonly paths = new Map<string, string>();
  isReady = false;
  isSandboxed = false;
  hasQuit = false;
  name = '';
  private readonly isFirst: boolean;
  private readonly closeAll: () => boolean;

  /** `closeAll` closes every window and says whether all of them went. */
  constructor(isFirst: boolean, documents: string, closeAll: () => boolean) {
    super();
    this.isFirst = isFirst;
    this.closeAll = closeAll;
    this.paths.set('documents', documents);
  }

  setName(name: string): void {
    this.name = name;
  }

  setPath(name: string, path: string): void {
    this.paths.set(name, path);
  }

  getPath(name: string): string {
    const path = this.paths.get(name);
    if (path === undefined) throw new Error(`no path ${name}`);
    return path;
  }

  requestSingleInstanceLock(): boolean {
    return this.isFirst;
  }

  enableSandbox(): void {
    this.isSandboxed = true;
  }

  async whenReady(): Promise<void> {
    await new Promise<void>((resolve) => {
      setImmediate(resolve);
    });
    this.isReady = true;
  }

  addRecentDocument(path: string): void {
    this.recentDocuments.push(path);
  }

  quit(): void {
    if (!this.closeAll()) return;
    this.hasQuit = true;
    this.emit('quit');
  }
}
