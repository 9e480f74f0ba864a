import type { DragEvent } from 'react';
import { useEffect, useRef } from 'react';
import type { HostApi, ReplyOf } from '../../src-core/host-contract';
import { BuyPanel } from '../buy/BuyPanel';
import { ComparePanel } from '../compare/ComparePanel';
import { DayLine } from '../days/DayLine';
import { DrawPanel } from '../forms/DrawPanel';
import { HoldPanel } from '../hold/HoldPanel';
import { PieceList } from '../pieces/PieceList';
import { PourPanel } from '../pour/PourPanel';
import { Sheets } from '../sheets/Sheets';
import type { FileActions } from '../state/file-actions';
import { useWindow } from '../state/store-context';
import type { Question } from '../state/window-store';
import { VerdictPanel } from '../verdict/VerdictPanel';
import { Drawing } from './Drawing';
import { NoticeBar } from './NoticeBar';
import styles from './Shell.module.css';
import { TopBar } from './TopBar';

interface Props {
  readonly host: HostApi;
  readonly about: ReplyOf<'about'>;
  readonly files: FileActions;
}

/** The frame of the window: what is asked at the top, pieces at the left, the drawing, and the answer at the right. */
export function Shell({ host, about, files }: Props) {
  const question = useWindow(({ question: asked }) => asked);
  const panel = useFromTheTop(question);
  const drop = async (event: DragEvent) => {
    const [file] = event.dataTransfer.files;
    if (file === undefined) return;
    event.preventDefault();
    files.openText(await file.text(), file.name);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a file may be dropped anywhere on the window; the menu opens one too
    <div
      className={styles.shell}
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => void drop(event)}
    >
      <TopBar files={files} isMac={about.platform === 'mac'} />
      <nav className={styles.left} aria-label="Pieces of the job">
        <PieceList />
      </nav>
      <main className={styles.middle} aria-label="The drawing">
        <NoticeBar />
        <Drawing />
      </main>
      <section ref={panel} className={styles.right} aria-label={PANEL_NAMES[question]}>
        {question === 'draw' && <DrawPanel />}
        {question === 'stand' && <VerdictPanel />}
        {question === 'compare' && <ComparePanel />}
        {question === 'hold' && <HoldPanel />}
        {question === 'buy' && <BuyPanel />}
        {question === 'pour' && <PourPanel />}
      </section>
      <footer className={styles.days}>
        <DayLine />
      </footer>
      <Sheets host={host} files={files} />
    </div>
  );
}

/** Panels of the selected piece alone; the others are of the whole job and point at one piece after another. */
const OF_ONE_PIECE: readonly Question[] = ['draw', 'stand', 'hold', 'compare'];

/** A panel begins at its top for another question, and one that is about a piece for another piece. */
function useFromTheTop(question: Question) {
  const panel = useRef<HTMLElement>(null);
  const pieceId = useWindow(({ selection }) => selection?.pieceId);
  const subject = OF_ONE_PIECE.includes(question) ? `${question} ${pieceId}` : question;
  // biome-ignore lint/correctness/useExhaustiveDependencies: what the panel is about is not read, only that it changes
  useEffect(() => {
    panel.current?.scrollTo(0, 0);
  }, [subject]);
  return panel;
}

const PANEL_NAMES = {
  draw: 'What is drawn, as numbers',
  stand: 'The verdict',
  compare: 'Two versions side by side',
  hold: 'How it is held up and swapped',
  buy: 'What is cut and bought',
  pour: 'The day of the pour',
} as const;
