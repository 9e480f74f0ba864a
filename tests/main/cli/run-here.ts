import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { CliIo } from '../../../src-main/cli/io';
import { runCli } from '../../../src-main/cli/run-cli';
import type { Printer } from '../../../src-main/print/printed';

export const PROJECT = fileURLToPath(new URL('../../..', import.meta.url));

export interface CliOutcome {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs the command line in this process, with relative paths read from `folder`. */
export async function runHere(
  argv: readonly string[],
  options: { readonly folder?: string; readonly colour?: boolean; readonly printer?: Printer } = {},
): Promise<CliOutcome> {
  const out: string[] = [];
  const err: string[] = [];
  let clockMs = 0;
  const io: CliIo = {
    version: '1.2.3',
    currentFolder: options.folder ?? PROJECT,
    out: { write: (text) => out.push(text), isTerminal: options.colour ?? false },
    err: { write: (text) => err.push(text), isTerminal: false },
    colour: options.colour ?? false,
    nowMs: () => {
      clockMs += 10;
      return clockMs;
    },
    ...(options.printer === undefined ? {} : { printer: options.printer }),
  };
  const code = await runCli(argv, io);
  return { code, out: out.join(''), err: err.join('') };
}

/** Calls `use` with a folder of its own that is gone afterwards. */
export async function withFolder<Given>(use: (folder: string) => Promise<Given>): Promise<Given> {
  const folder = mkdtempSync(join(tmpdir(), 'ledgewright-cli-'));
  try {
    return await use(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Writes `content` as `job.json` in a folder of its own and runs `check` on it. */
export async function checkContent(
  content: string | Uint8Array,
  ...options: readonly string[]
): Promise<CliOutcome> {
  return withFolder(async (folder) => {
    writeFileSync(join(folder, 'job.json'), content);
    return runHere(['check', 'job.json', ...options], { folder });
  });
}
