/** Prints a document to a PDF with a browser that is installed, without showing it. */
import { spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import type { Server } from 'node:http';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Machine } from './installed-browser';
import { findBrowser, thisMachine } from './installed-browser';
import type { Printed, Printer } from './printed';
import { SEALED_HEADERS } from './sealed-headers';

/** A book of some hundred pages takes a few seconds; a browser that needs longer than this hangs. */
const PATIENCE_MS = 120_000;
const LOOPBACK = '127.0.0.1';
/** Head of a PDF file. Source: ISO 32000-1, 7.5.2. */
const PDF_HEAD = '%PDF-';
/** What a browser said last, as far as it helps. */
const LAST_WORDS = 300;

/** The browser of this machine as a printer: each print in a profile of its own that is gone afterwards. */
export function browserPrinter(machine: Machine = thisMachine()): Printer {
  return {
    trouble: async () => {
      const found = await findBrowser(machine);
      return found.ok ? null : found.sentence;
    },
    print: async (html) => {
      const found = await findBrowser(machine);
      if (!found.ok) return { ok: false, why: 'no-printer', sentence: found.sentence };
      const folder = await mkdtemp(join(tmpdir(), 'ledgewright-print-'));
      try {
        return await printIn(folder, found.program, html);
      } finally {
        // A browser's last process may still hold a file of its profile for a moment.
        await rm(folder, { recursive: true, force: true, maxRetries: 10, retryDelay: 100 });
      }
    },
  };
}

async function printIn(folder: string, program: string, html: string): Promise<Printed> {
  const served = await serveOnce(html);
  const file = join(folder, 'printed.pdf');
  try {
    const trouble = await run(program, [
      ...FLAGS,
      `--user-data-dir=${join(folder, 'profile')}`,
      `--print-to-pdf=${file}`,
      served.address,
    ]);
    if (trouble !== null) return failed(program, trouble);
    const pdf = await readFile(file);
    return pdf.subarray(0, PDF_HEAD.length).toString('latin1') === PDF_HEAD
      ? { ok: true, pdf }
      : failed(program, 'what it wrote is no PDF');
  } catch (error) {
    return failed(program, error instanceof Error ? error.message : String(error));
  } finally {
    await served.stop();
  }
}

/** The older name of a flag stands beside its newer one; a browser passes over what it does not know. */
const FLAGS: readonly string[] = [
  '--headless',
  '--no-pdf-header-footer',
  '--print-to-pdf-no-header',
  '--generate-pdf-document-outline',
  '--disable-gpu',
  '--disable-extensions',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  '--no-default-browser-check',
  // It refuses to start as root with its own sandbox, and root is who runs in a container.
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
];

function failed(program: string, reason: string): Printed {
  return { ok: false, why: 'failed', sentence: `${program} could not print this: ${reason}.` };
}

interface Served {
  readonly address: string;
  readonly stop: () => Promise<void>;
}

/** Serves the document on an address that nobody can guess. From a file it could reach the files beside it. */
async function serveOnce(html: string): Promise<Served> {
  const path = `/${randomBytes(32).toString('base64url')}`;
  const server: Server = createServer((asked, answer) => {
    if (asked.url === path && asked.method === 'GET') answer.writeHead(200, SEALED_HEADERS).end(html);
    else answer.writeHead(404).end();
  });
  const port = await new Promise<number>((resolve, reject) => {
    server.once('error', reject);
    server.listen(0, LOOPBACK, () => {
      const address = server.address();
      if (address === null || typeof address === 'string') reject(new Error('no port to print from'));
      else resolve(address.port);
    });
  });
  return {
    address: `http://${LOOPBACK}:${port}${path}`,
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

/** Runs the program to its end; null where it ended well, else why not. */
function run(program: string, args: readonly string[]): Promise<string | null> {
  return new Promise((resolve) => {
    const child = spawn(program, args, { stdio: ['ignore', 'ignore', 'pipe'], windowsHide: true });
    let said = '';
    let isLate = false;
    child.stderr.setEncoding('utf8').on('data', (words: string) => {
      said = (said + words).slice(-LAST_WORDS);
    });
    const patience = setTimeout(() => {
      isLate = true;
      child.kill('SIGKILL');
    }, PATIENCE_MS);
    const end = (trouble: string | null) => {
      clearTimeout(patience);
      child.stderr.destroy();
      resolve(trouble);
    };
    child.once('error', (error) => end(error.message));
    // Not its streams' end: a helper process of the browser may hold them open.
    child.once('exit', (code) => {
      const words = said.trim().replace(/\s+/g, ' ');
      if (isLate) end(`it had not ended after ${PATIENCE_MS / 1000} seconds`);
      else end(code === 0 ? null : `it ended with code ${code}${words === '' ? '' : `, saying: ${words}`}`);
    });
  });
}
