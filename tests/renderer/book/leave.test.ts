import { describe, expect, test } from 'vitest';
import type { HostApi, ReplyOf } from '../../../src-core/host-contract';
import { REQUESTS } from '../../../src-core/host-contract';
import type { LeavingFile } from '../../../src-renderer/book/leave';
import { base64Of, bytesOf, saveFile, savePdf } from '../../../src-renderer/book/leave';

/** A host that answers so, and keeps what it was asked; what breaks the contract is refused as a real host refuses it. */
function hostSaying(reply: ReplyOf<'saveExport'> | ReplyOf<'printBook'>) {
  const asked: { readonly name: string; readonly request: unknown }[] = [];
  const host: HostApi = {
    ask: async (name, request) => {
      REQUESTS[name].request.parse(request);
      asked.push({ name, request });
      return REQUESTS[name].reply.parse(reply) as never;
    },
    listen: () => () => undefined,
  };
  return { host, asked };
}

function doors() {
  const downloads: LeavingFile[] = [];
  const prints: string[] = [];
  return {
    downloads,
    prints,
    doors: {
      download: (file: LeavingFile) => downloads.push(file),
      print: (html: string) => prints.push(html),
    },
  };
}

const plan: LeavingFile = { name: 'galley-plan.dxf', content: '0\nEOF\n', type: 'image/vnd.dxf' };
const book = {
  name: 'galley-build-book.pdf',
  whole: async () => '<p>whole',
  linked: async () => '<p>linked',
};

describe('a file that leaves the window', () => {
  test('is saved by a host that asks where, and not downloaded besides', async () => {
    const { host, asked } = hostSaying({ outcome: 'saved', path: '/jobs/plan.dxf', name: 'plan.dxf' });
    const page = doors();
    expect(await saveFile(host, plan, page.doors)).toEqual({
      outcome: 'left',
      words: 'Saved as /jobs/plan.dxf.',
    });
    expect(asked).toEqual([
      {
        name: 'saveExport',
        request: { kind: 'text', suggestedName: 'galley-plan.dxf', data: '0\nEOF\n' },
      },
    ]);
    expect(page.downloads).toEqual([]);
  });

  test('is downloaded by the browser where the host leaves it to that', async () => {
    const { host } = hostSaying({ outcome: 'use-browser' });
    const page = doors();
    expect(await saveFile(host, plan, page.doors)).toMatchObject({ outcome: 'left' });
    expect(page.downloads).toEqual([plan]);
  });

  test.each([
    { outcome: 'cancelled' as const },
    { outcome: 'trouble' as const, sentence: 'The disk is full.' },
  ])('that does not leave is told so: %j', async (reply) => {
    const page = doors();
    expect(await saveFile(hostSaying(reply).host, plan, page.doors)).toEqual(reply);
    expect(await savePdf(hostSaying(reply).host, book, page.doors)).toEqual(reply);
    expect([page.downloads, page.prints]).toEqual([[], []]);
  });

  test('goes as base64 where it is bytes, 200,000 of every value as any other reader has them', async () => {
    const bytes = Uint8Array.from({ length: 200_000 }, (_, k) => (k * 7 + (k >> 8)) % 256);
    expect(base64Of(bytes)).toBe(Buffer.from(bytes).toString('base64'));
    expect(bytesOf(base64Of(bytes))).toEqual(bytes);
    const { host, asked } = hostSaying({ outcome: 'use-browser' });
    await saveFile(host, { name: 'm.glb', content: bytes, type: 'model/gltf-binary' }, doors().doors);
    expect(asked[0]?.request).toMatchObject({ kind: 'base64', suggestedName: 'm.glb' });
  });
});

describe('a book that is printed', () => {
  test('by the host goes with its fonts within, and comes back as the bytes of a PDF', async () => {
    const { host, asked } = hostSaying({ outcome: 'printed', pdf: 'JVBERi0xLjc=' });
    const page = doors();
    expect(await savePdf(host, book, page.doors)).toMatchObject({ outcome: 'left' });
    expect(asked).toEqual([
      { name: 'printBook', request: { suggestedName: 'galley-build-book.pdf', html: '<p>whole' } },
    ]);
    expect(page.downloads[0]).toMatchObject({ name: 'galley-build-book.pdf', type: 'application/pdf' });
    expect(Buffer.from(page.downloads[0]!.content as Uint8Array).toString()).toBe('%PDF-1.7');
  });

  test('is saved where the host asks', async () => {
    const { host } = hostSaying({ outcome: 'saved', path: '/jobs/book.pdf', name: 'book.pdf' });
    expect(await savePdf(host, book, doors().doors)).toEqual({
      outcome: 'left',
      words: 'Saved as /jobs/book.pdf.',
    });
  });

  test('where nothing prints it goes to the browser’s own dialog, with fonts that the window may fetch', async () => {
    const page = doors();
    const left = await savePdf(hostSaying({ outcome: 'use-browser-print' }).host, book, page.doors);
    expect(left).toMatchObject({ outcome: 'printing', words: expect.stringContaining('at 100 %') });
    expect(page.prints).toEqual(['<p>linked']);
    expect(page.downloads).toEqual([]);
  });
});
