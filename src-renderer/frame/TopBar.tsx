import { Redo2, Undo2 } from 'lucide-react';
import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { setUnits } from '../../src-core/edit';
import { Button } from '../look/Button';
import type { FileActions } from '../state/file-actions';
import { useStore, useWindow } from '../state/store-context';
import type { Question } from '../state/window-store';
import { isUnsaved } from '../state/window-store';
import { MainMenu } from './MainMenu';
import { Mark } from './Mark';
import { Progress } from './Progress';
import styles from './TopBar.module.css';

interface Props {
  readonly files: FileActions;
  readonly isMac: boolean;
}

const QUESTIONS: readonly { readonly id: Question; readonly label: string }[] = [
  { id: 'draw', label: 'Draw it' },
  { id: 'stand', label: 'Does it stand?' },
  { id: 'hold', label: 'Hold it up' },
  { id: 'buy', label: 'Cut and buy' },
  { id: 'pour', label: 'Pour it' },
  { id: 'compare', label: 'Which way?' },
];

/** What is open, what is asked, and the ways back. */
export function TopBar({ files, isMac }: Props) {
  const name = useWindow(({ history }) => history.job.name);
  const isMetric = useWindow(({ history }) => history.job.shownIn === 'metric');
  const question = useWindow(({ question: asked }) => asked);
  const unsaved = useWindow(isUnsaved);
  const path = useWindow(({ file }) => file.path);
  const undoTitle = useWindow(({ history }) => history.past.at(-1)?.title);
  const redoTitle = useWindow(({ history }) => history.future[0]?.title);
  const store = useStore();
  return (
    <header className={styles.bar}>
      <div className={styles.who}>
        <Mark />
        <h1 className={styles.product}>Ledgewright</h1>
        <MainMenu files={files} isMac={isMac} />
        <p className={styles.job} title={path === null ? name : `${name}, ${path}`}>
          <span className={styles.name}>{name}</span>{' '}
          <span className={styles.state}>
            {unsaved ? 'not saved' : path === null ? 'not in a file yet' : 'saved'}
          </span>
        </p>
      </div>
      <ToggleButtonGroup
        className={styles.questions ?? ''}
        aria-label="What do you want to know?"
        selectionMode="single"
        disallowEmptySelection
        selectedKeys={[question]}
        onSelectionChange={(keys) => {
          const [key] = keys;
          const asked = QUESTIONS.find(({ id }) => id === key);
          if (asked !== undefined) store.getState().ask(asked.id);
        }}
      >
        {QUESTIONS.map(({ id, label }) => (
          <ToggleButton key={id} id={id} className={styles.question ?? ''}>
            {label}
          </ToggleButton>
        ))}
      </ToggleButtonGroup>
      <div className={styles.ways}>
        <Progress />
        <Button
          isIcon
          weight="quiet"
          aria-label={undoTitle === undefined ? 'Nothing to undo' : `Undo: ${undoTitle}`}
          isDisabled={undoTitle === undefined}
          onPress={() => store.getState().undo()}
        >
          <Undo2 size={18} aria-hidden />
        </Button>
        <Button
          isIcon
          weight="quiet"
          aria-label={redoTitle === undefined ? 'Nothing to redo' : `Redo: ${redoTitle}`}
          isDisabled={redoTitle === undefined}
          onPress={() => store.getState().redo()}
        >
          <Redo2 size={18} aria-hidden />
        </Button>
        <Button
          weight="quiet"
          aria-label={isMetric ? 'Shown in millimetres; show inches' : 'Shown in inches; show millimetres'}
          onPress={() => store.getState().run(setUnits, { system: isMetric ? 'imperial' : 'metric' })}
        >
          {isMetric ? 'mm · kg' : 'in · lb'}
        </Button>
      </div>
    </header>
  );
}
