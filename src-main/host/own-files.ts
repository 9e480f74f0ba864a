/** Where Ledgewright's own files lie, for the hosts that run from its folder. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

export interface OwnFiles {
  readonly version: string;
  /** The built window. */
  readonly pageFolder: string;
  readonly exampleFolder: string;
  readonly manualFolder: string;
}

/** The files below the project's folder. */
export function ownFiles(root: string): OwnFiles {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
  return {
    version,
    pageFolder: join(root, 'dist', 'renderer'),
    exampleFolder: join(root, 'assets', 'jobs'),
    manualFolder: join(root, 'assets', 'manual'),
  };
}
