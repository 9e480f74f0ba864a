import { CornerLeftUp, FileText, Folder } from 'lucide-react';
import { useEffect, useLayoutEffect, useRef, useState } from 'react';
import { Form, Input, Label, ListBox, ListBoxItem, TextField } from 'react-aria-components';
import { Button } from '../look/Button';
import styles from './FolderBrowser.module.css';
import type { FolderEntry } from './folder-view';
import { Trouble } from './Trouble';
import type { FolderState } from './use-folder';

interface Props {
  readonly folder: FolderState;
  /** A job in the list was chosen. */
  readonly onJob: (entry: FolderEntry) => void;
  /** A path was typed. */
  readonly onPath: (path: string) => void;
  readonly pathLabel: string;
}

/** A folder of the host: its path, the way up, and what is in it. */
export function FolderBrowser({ folder, onJob, onPath, pathLabel }: Props) {
  const { listing, trouble, isWaiting, look } = folder;
  /** What a person has typed since; null shows the folder. A folder that arrives meanwhile leaves it alone. */
  const [typed, setTyped] = useState<string | null>(null);
  const isAsked = useRef(false);
  const shown = listing?.path ?? null;
  useEffect(() => {
    if (shown !== null && isAsked.current) setTyped(null);
    isAsked.current = false;
  }, [shown]);
  const input = useRef<HTMLInputElement>(null);
  const isUntouched = typed === null;
  // a path that arrives under the caret gives way to what is typed then, as it would have a moment before
  useLayoutEffect(() => {
    if (shown !== null && isUntouched && document.activeElement === input.current) input.current?.select();
  }, [shown, isUntouched]);
  const parent = listing?.parent ?? null;
  const choose = (path: string) => {
    const entry = listing?.entries.find((one) => one.path === path);
    if (entry === undefined) return;
    if (entry.kind === 'job') return onJob(entry);
    setTyped(null);
    look(entry.path);
  };
  return (
    <div className={styles.browser}>
      <Form
        className={styles.path!}
        onSubmit={(event) => {
          event.preventDefault();
          if (typed === null || typed.trim() === '') return;
          isAsked.current = true;
          onPath(typed.trim());
        }}
      >
        <Button
          isIcon
          aria-label="Up to the folder above"
          isDisabled={parent === null}
          onPress={() => {
            setTyped(null);
            look(parent);
          }}
        >
          <CornerLeftUp size={16} aria-hidden />
        </Button>
        <TextField className={styles.field!} value={typed ?? shown ?? ''} onChange={setTyped}>
          <Label className={styles.label!}>{pathLabel}</Label>
          <Input ref={input} className={styles.input!} spellCheck="false" />
        </TextField>
        <Button type="submit">Go</Button>
      </Form>
      {trouble !== null && <Trouble sentence={trouble} />}
      <ListBox
        className={styles.list!}
        aria-label="Folders and jobs here"
        aria-busy={isWaiting}
        items={listing?.entries.map((entry) => ({ ...entry, id: entry.path })) ?? []}
        onAction={(key) => choose(String(key))}
        renderEmptyState={() => (
          <p className={styles.empty}>{isWaiting ? 'Looking...' : 'No folder and no job here.'}</p>
        )}
      >
        {(entry) => (
          <ListBoxItem id={entry.path} textValue={entry.name} className={styles.entry!}>
            {entry.kind === 'folder' ? (
              <Folder size={16} aria-label="Folder" />
            ) : (
              <FileText size={16} aria-label="Job" />
            )}
            <span>{entry.name}</span>
          </ListBoxItem>
        )}
      </ListBox>
    </div>
  );
}
