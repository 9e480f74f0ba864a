import { useState } from 'react';
import { FieldError, Input, Label, TextField } from 'react-aria-components';
import type { HostApi } from '../../src-core/host-contract';
import { Button } from '../look/Button';
import type { FileActions } from '../state/file-actions';
import { fileNameFor } from '../state/file-actions';
import { useJob, useWindow } from '../state/store-context';
import { FolderBrowser } from './FolderBrowser';
import { entryNamed, folderOf, joinPath, namesJobFile, readFileName } from './folder-view';
import styles from './SaveFileSheet.module.css';
import { SheetBody } from './SheetBody';
import { SheetNotice } from './SheetNotice';
import { useAnswer } from './use-answer';
import { useFolder } from './use-folder';

interface Props {
  readonly host: HostApi;
  readonly files: FileActions;
  readonly onClose: () => void;
}

/** Saves the job under a name in a folder of the host; asks before it writes over another. */
export function SaveFileSheet({ host, files, onClose }: Props) {
  const file = useWindow((state) => state.file);
  const job = useJob();
  const about = useAnswer(host, 'about', {});
  const folder = useFolder(host, file.path === null ? null : folderOf(file.path));
  const [typed, setTyped] = useState(() => (file.path === null ? fileNameFor(job) : file.name));
  const [replaces, setReplaces] = useState<string | null>(null);
  const [isSaving, setSaving] = useState(false);

  // while another folder is on its way, saving would still go to the one before it
  const listing = folder.isWaiting ? null : folder.listing;
  const platform = about.state === 'answered' ? about.reply.platform : 'windows';
  const reading = readFileName(typed);
  const standing =
    reading.ok && listing !== null ? entryNamed(listing.entries, reading.name, platform) : null;
  const sentence = !reading.ok
    ? reading.sentence
    : standing?.kind === 'folder'
      ? `A folder here is called ${standing.name}.`
      : null;
  const mayAsk = reading.ok && standing?.kind === 'job' && standing.path !== file.path;

  const rename = (name: string) => {
    setTyped(name);
    setReplaces(null);
  };
  const save = async () => {
    if (!reading.ok || listing === null || sentence !== null) return;
    if (mayAsk && replaces !== standing.path) return setReplaces(standing.path);
    setSaving(true);
    const isSaved = await files.saveTo(joinPath(listing.path, reading.name));
    setSaving(false);
    if (isSaved) onClose();
  };
  const asks = mayAsk && replaces === standing.path;
  return (
    <SheetBody
      title="Save the job"
      onClose={onClose}
      foot={
        <>
          {asks && (
            <p className={styles.replaces} role="alert">
              {standing.name} is here already. Saving puts this job in its place.
            </p>
          )}
          <Button onPress={onClose}>Cancel</Button>
          <Button weight="main" isDisabled={sentence !== null || listing === null || isSaving} onPress={save}>
            {asks ? 'Replace it' : 'Save'}
          </Button>
        </>
      }
    >
      <SheetNotice />
      <TextField
        className={styles.field!}
        value={typed}
        onChange={rename}
        isInvalid={sentence !== null}
        autoFocus
        onKeyDown={(event) => {
          if (event.key === 'Enter') void save();
          else event.continuePropagation();
        }}
      >
        <Label className={styles.label!}>File name</Label>
        <Input className={styles.input!} spellCheck="false" />
        <FieldError className={styles.error!}>{sentence}</FieldError>
      </TextField>
      <FolderBrowser
        folder={folder}
        pathLabel="Folder"
        onJob={(entry) => rename(entry.name)}
        onPath={(path) => {
          if (!namesJobFile(path)) return folder.look(path);
          folder.look(folderOf(path));
          rename(path.slice((folderOf(path) ?? '').length).replace(/^[\\/]/, ''));
        }}
      />
    </SheetBody>
  );
}
