/** Where a host stands: everything that its answers depend on and that a test may set. */
import type { ReplyOf } from '../../src-core/host-contract';
import type { PrintPdf } from '../print/printed';

/** The system's own dialogs for files. Each gives an absolute path, or null where the person cancelled. */
export interface Dialogs {
  readonly askOpen: (folder: string) => Promise<string | null>;
  readonly askSave: (suggestedPath: string) => Promise<string | null>;
}

type About = ReplyOf<'about'>;

export interface Place {
  readonly host: About['host'];
  readonly version: string;
  readonly platform: About['platform'];
  /** Ledgewright's own folder of this user: recent jobs and drafts. */
  readonly userFolder: string;
  /** Folder in which a first save is offered. */
  readonly jobFolder: string;
  readonly exampleFolder: string;
  readonly manualFolder: string;
  /** Null where the window must ask for paths itself. */
  readonly dialogs: Dialogs | null;
  readonly printPdf: PrintPdf;
  readonly clock: () => Date;
}

/** The contract's word for the system that Node names so. */
export function platformOf(nodePlatform: string): About['platform'] {
  if (nodePlatform === 'darwin') return 'mac';
  return nodePlatform === 'win32' ? 'windows' : 'linux';
}
