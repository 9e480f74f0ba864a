/** The page of a window: Electron's events and calls on one side, a page of Chromium on the other. */
import { EventEmitter } from 'node:events';
import type { BrowserContext, Frame, Page, Route } from '@playwright/test';
import type { PrintToPDFOptions } from 'electron';
import type { PartitionDouble } from './partition';
import { preloadScript } from './preload-shim';
import type { Wire } from './wire';

type OpenHandler = (details: { readonly url: string }) => { readonly action: 'allow' | 'deny' };

/** What the page tried, and what the shell made of it. */
export interface Tried {
  readonly what: 'navigate' | 'open';
  readonly url: string;
  readonly isRefused: boolean;
}

export interface ContentsParts {
  readonly preload: string | null;
  readonly size: { readonly width: number; readonly height: number };
  /** null for the session of all windows. */
  readonly partition: PartitionDouble | null;
}

export class WebContentsDouble extends EventEmitter {
  readonly tried: Tried[] = [];
  /** Resolves when Chromium has a page for it. */
  readonly page: Promise<Page>;
  private isCrashedNow = false;
  /** A load that the shell asked for is not announced to it. */
  private loading: string | null = null;
  private openHandler: OpenHandler | null = null;
  private readonly wire: Wire;

  private readonly partition: PartitionDouble | null;

  constructor(context: Promise<BrowserContext>, wire: Wire, parts: ContentsParts) {
    super();
    this.wire = wire;
    this.partition = parts.partition;
    this.page = this.start(context, parts);
  }

  private async start(context: Promise<BrowserContext>, { preload, size }: ContentsParts): Promise<Page> {
    const page = await (await context).newPage();
    await page.setViewportSize(size);
    if (preload !== null) await page.addInitScript(preloadScript(preload));
    await page.route(
      () => true,
      (route) => this.carryRequest(route),
    );
    page.on('load', () => this.emit('did-finish-load'));
    page.on('popup', (popup) => void this.decideOpening(popup));
    page.on('crash', () => {
      this.isCrashedNow = true;
      this.emit('render-process-gone', {}, { reason: 'crashed' });
    });
    return page;
  }

  private async carryRequest(route: Route): Promise<void> {
    const request = route.request();
    if (this.partition !== null) return this.carryApart(this.partition, route);
    if (!request.isNavigationRequest() || request.url() === this.loading) return route.continue();
    const url = this.wire.fromWire(request.url());
    const isMainFrame = request.frame().parentFrame() === null;
    const isRefused = this.announceNavigation(url, isMainFrame);
    return isRefused ? route.abort('aborted') : route.continue();
  }

  /** A session apart asks the shell about every request, and has handlers of its own for its schemes. */
  private async carryApart(partition: PartitionDouble, route: Route): Promise<void> {
    const url = this.wire.fromWire(route.request().url());
    if (!(await partition.lets(url))) return route.abort('blockedbyclient');
    const handler = partition.handlers.get(new URL(url).protocol.slice(0, -1));
    if (handler === undefined) return route.continue();
    const answer = await handler(new Request(url));
    partition.answered.push(answer);
    const body = Buffer.from(await answer.arrayBuffer());
    return route.fulfill({ status: answer.status, headers: Object.fromEntries(answer.headers), body });
  }

  /** What the shell asked for, in the words of the driver. Chromium prints headless alone, as tests run it. */
  async printToPDF(options: PrintToPDFOptions): Promise<Buffer> {
    const { preferCSSPageSize, printBackground, displayHeaderFooter, generateTaggedPDF } = options;
    const page = await this.page;
    return page.pdf({
      preferCSSPageSize: preferCSSPageSize === true,
      printBackground: printBackground === true,
      displayHeaderFooter: displayHeaderFooter === true,
      tagged: generateTaggedPDF === true,
      outline: options.generateDocumentOutline === true,
    });
  }

  /** Tells the shell as Electron does; whether it prevented the navigation. */
  announceNavigation(url: string, isMainFrame: boolean): boolean {
    let isRefused = false;
    const preventDefault = () => {
      isRefused = true;
    };
    this.emit('will-frame-navigate', { url, isMainFrame, preventDefault });
    if (isMainFrame) this.emit('will-navigate', { url, isMainFrame, preventDefault });
    this.tried.push({ what: 'navigate', url, isRefused });
    return isRefused;
  }

  /** Playwright tells of a new page when it is there; what the shell denies is taken away again. */
  private async decideOpening(popup: Page): Promise<void> {
    const url = this.wire.fromWire(popup.url());
    const isRefused = this.openHandler !== null && this.openHandler({ url }).action === 'deny';
    if (isRefused) await popup.close();
    this.tried.push({ what: 'open', url, isRefused });
  }

  setWindowOpenHandler(handler: OpenHandler): void {
    this.openHandler = handler;
  }

  isCrashed(): boolean {
    return this.isCrashedNow;
  }

  send(channel: string, ...args: readonly unknown[]): void {
    void this.page.then((page) =>
      page.evaluate(
        ([to, given]) => {
          const { electronDoubleDeliver } = window as unknown as {
            electronDoubleDeliver: (channel: string, args: readonly unknown[]) => void;
          };
          electronDoubleDeliver(to, given);
        },
        [channel, args] as const,
      ),
    );
  }

  async load(address: string): Promise<void> {
    const page = await this.page;
    this.loading = this.wire.toWire(address);
    await page.goto(this.loading);
    this.loading = null;
  }

  /** The frame as the shell sees it in an event of IPC. */
  frameSeen(frame: Frame): { readonly url: string; readonly parent: object | null } {
    const parent = frame.parentFrame();
    return { url: this.wire.fromWire(frame.url()), parent: parent === null ? null : this.frameSeen(parent) };
  }
}
