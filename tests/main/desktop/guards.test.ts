import { join } from 'node:path';
import { describe, expect, test, vi } from 'vitest';
import { ASK_CHANNEL } from '../../../src-main/desktop/channels';
import { PAGE_HEADERS } from '../../../src-main/host/page-headers';
import { builtApp } from '../../support/built-app';
import { withDesktop } from '../../support/electron-double/run-desktop';
import { soon } from '../../support/soon';
import { withWitness } from '../../support/witness';
import { askFrom, sendFrom } from './ask-page';
import { chromiumHere, desktopHere } from './chromium-here';

const browser = chromiumHere();
const desktop = desktopHere();

describe('the window', () => {
  test('is sandboxed, apart from the page’s own world, without Node, and at least 960 by 600', async () => {
    const { shown, app, schemes, userFolder } = desktop();
    const { window } = await shown();
    // What Chromium itself keeps lies beside the drafts, where nobody else may look.
    expect(app.getPath('userData')).toBe(join(userFolder, 'window'));
    expect(window.options).toMatchObject({ minWidth: 960, minHeight: 600 });
    // All of them: one more that loosens the page would be among them.
    expect(window.options.webPreferences).toEqual({
      preload: join(builtApp(), 'preload', 'preload.cjs'),
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInSubFrames: false,
      nodeIntegrationInWorker: false,
      webSecurity: true,
      webviewTag: false,
      // The spell checker fetches its dictionaries from a network.
      spellcheck: false,
    });
    expect(app.isSandboxed).toBe(true);
    expect(schemes).toEqual([
      { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true } },
    ]);
  });

  test('shows the built page from its own scheme, with every header, isolated so that its worker may share memory', async () => {
    const { shown, wire } = desktop();
    const { page } = await shown();
    expect(wire.fromWire(page.url())).toBe('app://ledgewright/');
    const headers = await page.evaluate(async () => Object.fromEntries((await fetch('./')).headers));
    expect(headers).toMatchObject(PAGE_HEADERS);
    expect(await page.evaluate(() => [window.isSecureContext, window.crossOriginIsolated])).toEqual([
      true,
      true,
    ]);
    await page.locator('#window > *').first().waitFor();
  });

  test('serves no other host of its scheme, and no file outside the build', async () => {
    const { shown, wire, context } = desktop();
    await shown();
    const other = await context.newPage();
    for (const address of [
      'app://elsewhere/',
      'app://elsewhere/index.html',
      'app://ledgewright/..%2f..%2fpackage.json',
    ]) {
      const answer = await other.goto(wire.toWire(address));
      expect(answer?.status(), address).toBe(404);
      if (address.startsWith('app://ledgewright/')) expect(answer?.headers()).toMatchObject(PAGE_HEADERS);
    }
    await other.close();
  });
});

describe('the page', () => {
  test('asks through the preload on the one channel that the shell answers, and is answered by the host', async () => {
    const { shown, documents, channels } = desktop();
    const { page } = await shown();
    expect(channels()).toEqual([ASK_CHANNEL]);
    expect(await askFrom(page, 'about')).toMatchObject({
      host: 'desktop',
      hasDialogs: true,
      jobFolder: documents,
    });
    expect(
      await page.evaluate(() => Object.keys((window as unknown as { ledgewright: object }).ledgewright)),
    ).toEqual(['ask', 'listen']);
  });

  test('is refused an unknown name and a wrong request, with a sentence', async () => {
    const { shown } = desktop();
    const { page } = await shown();
    await expect(askFrom(page, 'eraseDisk')).rejects.toThrow('knows no such request');
    await expect(askFrom(page, 'openJob', { path: 7 })).rejects.toThrow('openJob: path:');
  });

  test('of another address is refused, although it sends on the right channel', async () => {
    const { shown, wire, context } = desktop();
    const { page } = await shown();
    expect(await sendFrom(page, 'about')).toMatchObject({ ok: true });
    const other = await context.newPage();
    for (const address of [wire.elsewhere, wire.toWire('app://elsewhere/')]) {
      await other.goto(address);
      expect(await sendFrom(other, 'about')).toEqual({
        ok: false,
        message: 'Error: This page may not ask.',
      });
    }
    await other.close();
  });

  test('is refused from a frame within, although the frame has the page’s own address', async () => {
    const { shown, context } = desktop();
    const { page } = await shown();
    const outer = await context.newPage();
    await outer.route('**/framed', (route) =>
      route.fulfill({
        contentType: 'text/html',
        body: `<!doctype html><iframe src="${page.url()}inner"></iframe>`,
      }),
    );
    await outer.route('**/inner', (route) =>
      route.fulfill({ contentType: 'text/html', body: '<!doctype html>' }),
    );
    await outer.goto(`${page.url()}framed`);
    const inner = outer.frames()[1]!;
    expect(inner.url()).toBe(`${page.url()}inner`);
    expect(await sendFrom(outer, 'about')).toMatchObject({ ok: true });
    expect(await sendFrom(inner, 'about')).toEqual({ ok: false, message: 'Error: This page may not ask.' });
    await outer.close();
  });

  test('is refused from a frame that is gone, of which nobody knows any more whose it was', async () => {
    await withDesktop(browser(), async ({ shown, context }) => {
      const { window, page } = await shown();
      const other = await context.newPage();
      await other.goto(page.url());
      expect(await sendFrom(other, 'about')).toMatchObject({ ok: true });
      window.destroy();
      expect(await sendFrom(other, 'about')).toEqual({ ok: false, message: 'Error: This page may not ask.' });
    });
  });

  test('goes to no other address, by a script or by a link', async () => {
    const { shown, wire } = desktop();
    const { page, window: opened } = await shown();
    const own = page.url();
    const { tried } = opened.webContents;
    for (const address of [wire.elsewhere, wire.toWire('app://elsewhere/')]) {
      await page.evaluate((target) => {
        const link = document.createElement('a');
        link.href = target;
        document.body.append(link);
        link.click();
      }, address);
      const url = wire.fromWire(address);
      await soon(() => expect(tried).toContainEqual({ what: 'navigate', url, isRefused: true }));
    }
    await page.evaluate((target) => window.location.assign(target), `${wire.elsewhere}script`);
    const url = `${wire.elsewhere}script`;
    await soon(() => expect(tried).toContainEqual({ what: 'navigate', url, isRefused: true }));
    expect(page.url()).toBe(own);
    expect(await askFrom(page, 'about')).toMatchObject({ host: 'desktop' });
  });

  test('is kept from other addresses in frames within as well, and may load itself again', async () => {
    const { shown } = desktop();
    const { webContents } = (await shown()).window;
    expect(webContents.announceNavigation('https://ledge.example/', false)).toBe(true);
    expect(webContents.announceNavigation('app://ledgewright.example/', false)).toBe(true);
    expect(webContents.announceNavigation('app://me@ledgewright/', true)).toBe(true);
    expect(webContents.announceNavigation('app://:word@ledgewright/', true)).toBe(true);
    expect(webContents.announceNavigation('https://ledgewright/', true)).toBe(true);
    expect(webContents.announceNavigation('nonsense', true)).toBe(true);
    expect(webContents.announceNavigation('app://ledgewright/', true)).toBe(false);
  });

  test('opens no window, by a script or by a link', async () => {
    const { shown, wire, context } = desktop();
    const { page, window: own } = await shown();
    await page.evaluate((target) => window.open(target), wire.elsewhere);
    await page.evaluate((target) => {
      const link = document.createElement('a');
      link.href = target;
      link.target = '_blank';
      document.body.append(link);
      link.click();
    }, wire.elsewhere);
    const opened = () => own.webContents.tried.filter(({ what }) => what === 'open');
    await soon(() => expect(opened()).toHaveLength(2));
    expect(opened().map(({ isRefused }) => isRefused)).toEqual([true, true]);
    expect(context.pages()).toEqual([page]);
  });

  test('embeds no guest page', async () => {
    const { shown } = desktop();
    const { webContents } = (await shown()).window;
    const preventDefault = vi.fn();
    webContents.emit('will-attach-webview', { preventDefault }, {}, {});
    expect(preventDefault).toHaveBeenCalledOnce();
  });
});

describe('permissions', () => {
  test('are refused when the page asks for its place or to send notices', async () => {
    const { shown } = desktop();
    const { page } = await shown();
    const place = await page.evaluate(
      () =>
        new Promise((resolve) => {
          navigator.geolocation.getCurrentPosition(
            () => resolve('given'),
            (error) => resolve(error.code === error.PERMISSION_DENIED ? 'denied' : error.message),
          );
        }),
    );
    expect(place).toBe('denied');
    expect(await page.evaluate(() => Notification.requestPermission())).toBe('denied');
  });

  test('are refused when the page only looks whether it has them', async () => {
    const { shown } = desktop();
    const { page } = await shown();
    const state = await page.evaluate(
      async () => (await navigator.permissions.query({ name: 'geolocation' })).state,
    );
    expect(state).toBe('denied');
  });

  test('for devices are refused', async () => {
    const { shown, session } = desktop();
    await shown();
    expect(session.device?.({ deviceType: 'hid', origin: 'app://ledgewright' })).toBe(false);
  });
});

describe('the content policy in the built page', () => {
  test('is breached by every kind of content from elsewhere, by inline scripts and by text as code, and none of it comes through', async () => {
    const { shown, context } = desktop();
    const own = (await shown()).page.url();
    // A page of the same address that the shell does not watch, so that the policy alone refuses.
    const page = await context.newPage();
    await page.goto(own);
    await withWitness(async (elsewhere, asked) => {
      const outcome = await page.evaluate(async (address) => {
        const breached = new Set<string>();
        document.addEventListener('securitypolicyviolation', ({ effectiveDirective }) =>
          breached.add(effectiveDirective),
        );
        const add = (tag: string, attributes: object): HTMLElement => {
          const element = Object.assign(document.createElement(tag), attributes);
          document.body.append(element);
          return element;
        };
        add('script', { textContent: 'window.ran = "inline"' });
        add('script', { src: 'data:text/javascript,window.ran="data"' });
        add('script', { src: `${address}/script.js` });
        add('link', { rel: 'stylesheet', href: `${address}/sheet.css` });
        add('img', { src: `${address}/picture.png` });
        add('video', { src: `${address}/film.mp4` });
        add('object', { data: `${address}/object` });
        add('iframe', { src: `${address}/frame` });
        add('base', { href: address });
        (add('form', { action: `${address}/form`, method: 'post' }) as HTMLFormElement).submit();
        const worker = URL.createObjectURL(new Blob(['self.postMessage(1)'], { type: 'text/javascript' }));
        const isWorking = new Promise((resolve) => {
          const started = new Worker(worker);
          started.onmessage = () => resolve(true);
          started.onerror = () => resolve(false);
        });
        const font = new FontFace('Elsewhere', `url(${address}/font.woff2)`).load().then(
          () => true,
          () => false,
        );
        const fetched = fetch(`${address}/fetched`).then(
          () => true,
          () => false,
        );
        // As text, which a page may run where its policy says so.
        setTimeout('window.ran = "text"', 0);
        const came = await Promise.all([isWorking, font, fetched]);
        await new Promise((resolve) => setTimeout(resolve, 200));
        return { breached: [...breached].sort(), came, ran: 'ran' in window };
      }, elsewhere);
      expect(outcome).toEqual({
        breached: [
          'base-uri',
          'connect-src',
          'font-src',
          'form-action',
          'frame-src',
          'img-src',
          'media-src',
          'object-src',
          'script-src',
          'script-src-elem',
          'style-src-elem',
          'worker-src',
        ],
        came: [false, false, false],
        ran: false,
      });
      expect(asked).toEqual([]);
    });
    await page.close();
  });

  test('is broken by nothing that the window does on its way to its first view', async () => {
    const { shown } = desktop();
    const { page } = await shown();
    const complaints: string[] = [];
    page.on('console', (message) => {
      if (/content security policy/i.test(message.text())) complaints.push(message.text());
    });
    await page.reload();
    await page.locator('#window > *').first().waitFor();
    expect(complaints).toEqual([]);
  });
});
