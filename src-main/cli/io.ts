/** What a command is handed by its host, so that the same code runs in a terminal and in a test. */
import type { Printer } from '../print/printed';

export interface TextOutput {
  readonly write: (text: string) => void;
  /** Whether a person's terminal is at the other end. */
  readonly isTerminal: boolean;
}

export interface CliIo {
  readonly version: string;
  /** Folder from which relative paths are read. */
  readonly currentFolder: string;
  readonly out: TextOutput;
  readonly err: TextOutput;
  /** Whether `out` may be coloured. */
  readonly colour: boolean;
  /** A clock that only runs forward, in milliseconds. */
  readonly nowMs: () => number;
  /** Folder for what can be computed again; left out where nothing is kept. */
  readonly cacheFolder?: string;
  /** Makes PDFs; left out where nothing can. */
  readonly printer?: Printer;
}

/** What a command's exit code says. */
export const EXIT = { allHolds: 0, needsAttention: 1, unusableInput: 2 } as const;

/** One command of the command line. */
export interface Command {
  readonly name: string;
  /** One line for the list of commands. */
  readonly summary: string;
  readonly help: string;
  readonly run: (args: readonly string[], io: CliIo) => Promise<number>;
}

/** Writes one line for each fault and gives the code that says so. */
export function refuse(io: CliIo, faults: readonly string[]): number {
  for (const fault of faults) io.err.write(`${withoutControls(fault)}\n`);
  return EXIT.unusableInput;
}

/** Takes out what a terminal would obey rather than show; a job file is written by others. */
export function withoutControls(text: string): string {
  return text.replace(/\p{Cc}+/gu, ' ');
}
