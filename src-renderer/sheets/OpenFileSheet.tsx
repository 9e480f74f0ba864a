import { FileTrigger } from 'react-aria-components';
import type { HostApi } from '../../src-core/host-contract';
import { Button } from '../look/Button';
import { Heading } from '../look/Heading';
import type { FileActions } from '../state/file-actions';
import { FolderBrowser } from './FolderBrowser';
import { namesJobFile } from './folder-view';
import { RecentJobs } from './RecentJobs';
import { SheetBody } from './SheetBody';
import { SheetNotice } from './SheetNotice';
import { useFolder } from './use-folder';

interface Props {
  readonly host: HostApi;
  readonly files: FileActions;
  readonly onClose: () => void;
}

/** Opens a job: one of the last, one in a folder of the host, or a file of this computer. */
export function OpenFileSheet({ host, files, onClose }: Props) {
  const folder = useFolder(host, null);
  const open = (path: string) => void files.openPath(path);
  const readChosen = async (chosen: FileList | null) => {
    const file = chosen?.[0];
    if (file !== undefined) files.openText(await file.text(), file.name);
  };
  return (
    <SheetBody
      title="Open a job"
      onClose={onClose}
      foot={
        <>
          <FileTrigger acceptedFileTypes={['.json', 'application/json']} onSelect={readChosen}>
            <Button>Choose a file from this computer...</Button>
          </FileTrigger>
          <Button onPress={onClose}>Cancel</Button>
        </>
      }
    >
      <SheetNotice />
      <RecentJobs host={host} onOpen={open} />
      <Heading>In a folder</Heading>
      <FolderBrowser
        folder={folder}
        pathLabel="Folder or job file"
        onJob={(entry) => open(entry.path)}
        onPath={(path) => (namesJobFile(path) ? open(path) : folder.look(path))}
      />
    </SheetBody>
  );
}
