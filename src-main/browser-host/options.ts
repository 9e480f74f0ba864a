/** What the loopback host may be told on its command line. */
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';

export interface HostOptions {
  readonly port: number;
  readonly opensBrowser: boolean;
  /** Null for the folder that the user's system keeps such data in. */
  readonly userFolder: string | null;
  /** Null for the user's documents. */
  readonly jobFolder: string | null;
}

export type OptionReading =
  | { readonly ok: true; readonly options: HostOptions }
  | { readonly ok: false; readonly sentence: string };

export const HELP = `npm run host -- [--port N] [--no-browser] [--user-folder FOLDER] [--job-folder FOLDER]

  --port N              the port to listen on; any free one where it is left out
  --no-browser          print the address and open nothing
  --user-folder FOLDER  where recent jobs and unsaved work are kept; also LEDGEWRIGHT_USER_FOLDER
  --job-folder FOLDER   where a first save is offered
`;

const HIGHEST_PORT = 65_535;

/** Reads the words after the program's name; paths are meant from `folder`. */
export function readHostOptions(argv: readonly string[], folder: string): OptionReading {
  try {
    const { values } = parseArgs({
      args: [...argv],
      options: {
        port: { type: 'string', default: '0' },
        'no-browser': { type: 'boolean', default: false },
        'user-folder': { type: 'string' },
        'job-folder': { type: 'string' },
      },
    });
    const port = /^\d{1,5}$/.test(values.port) ? Number(values.port) : Number.NaN;
    if (!(port <= HIGHEST_PORT)) {
      return {
        ok: false,
        sentence: `--port takes a whole number from 0 to ${HIGHEST_PORT}, not "${values.port}".`,
      };
    }
    const folderOf = (given: string | undefined) => (given === undefined ? null : resolve(folder, given));
    return {
      ok: true,
      options: {
        port,
        opensBrowser: !values['no-browser'],
        userFolder: folderOf(values['user-folder']),
        jobFolder: folderOf(values['job-folder']),
      },
    };
  } catch (error) {
    return { ok: false, sentence: error instanceof Error ? error.message : String(error) };
  }
}
