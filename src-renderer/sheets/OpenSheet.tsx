import { lazy, Suspense } from 'react';
import type { HostApi } from '../../src-core/host-contract';
import { QuickCheck } from '../start/QuickCheck';
import type { FileActions } from '../state/file-actions';
import type { Sheet } from '../state/window-store';
import { AboutSheet } from './AboutSheet';
import { AddPieceSheet } from './AddPieceSheet';
import { KeysSheet } from './KeysSheet';
import { ManualSheet } from './ManualSheet';
import { OpenExampleSheet } from './OpenExampleSheet';
import { OpenFileSheet } from './OpenFileSheet';
import { RecoverSheet } from './RecoverSheet';
import { SaveFileSheet } from './SaveFileSheet';
import { SheetBody } from './SheetBody';
import { UnsavedSheet } from './UnsavedSheet';

/** These bring the writers of pages and drawings with them, which no other view needs. */
const BuildBookSheet = lazy(async () => ({ default: (await import('./BuildBookSheet')).BuildBookSheet }));
const ExportSheet = lazy(async () => ({ default: (await import('./ExportSheet')).ExportSheet }));

interface Props {
  readonly sheet: Sheet;
  readonly host: HostApi;
  readonly files: FileActions;
  readonly onClose: () => void;
}

/** The sheet of a kind. */
export function OpenSheet({ sheet, host, files, onClose }: Props) {
  switch (sheet.kind) {
    case 'quick-check':
      return <QuickCheck files={files} onClose={onClose} />;
    case 'add-piece':
      return <AddPieceSheet onClose={onClose} />;
    case 'open-file':
      return <OpenFileSheet host={host} files={files} onClose={onClose} />;
    case 'save-file':
      return <SaveFileSheet host={host} files={files} onClose={onClose} />;
    case 'open-example':
      return <OpenExampleSheet host={host} files={files} onClose={onClose} />;
    case 'recover':
      return <RecoverSheet host={host} files={files} onClose={onClose} />;
    case 'unsaved':
      return <UnsavedSheet goOn={sheet.goOn} files={files} onClose={onClose} />;
    case 'build-book':
      return (
        <Suspense fallback={<Opening title="Build book" onClose={onClose} />}>
          <BuildBookSheet host={host} onClose={onClose} />
        </Suspense>
      );
    case 'export':
      return (
        <Suspense fallback={<Opening title="Export" onClose={onClose} />}>
          <ExportSheet host={host} onClose={onClose} />
        </Suspense>
      );
    case 'keys':
      return <KeysSheet host={host} onClose={onClose} />;
    case 'about':
      return <AboutSheet host={host} onClose={onClose} />;
    case 'manual':
      return <ManualSheet host={host} id={sheet.id} onClose={onClose} />;
  }
}

/** Stands in for a sheet while it is fetched. */
function Opening({ title, onClose }: { readonly title: string; readonly onClose: () => void }) {
  return (
    <SheetBody title={title} onClose={onClose}>
      <p>Opening...</p>
    </SheetBody>
  );
}
