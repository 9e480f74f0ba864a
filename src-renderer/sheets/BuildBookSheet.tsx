import { useRef, useState } from 'react';
import { ProgressBar } from 'react-aria-components';
import type { Paper } from '../../src-core/figure';
import type { HostApi } from '../../src-core/host-contract';
import { BookContents } from '../book/BookContents';
import type { PagesHandle } from '../book/BookPages';
import { BookPages } from '../book/BookPages';
import { bookTitle, leavingName } from '../book/file-names';
import { embeddedFontCss, linkedFontCss } from '../book/font-faces';
import { HTML_TYPE, saveFile, savePdf } from '../book/leave';
import { pageDoors } from '../book/page-doors';
import { PAPER_CHOICES } from '../book/paper-choices';
import { useBook } from '../book/use-book';
import { useLeaving } from '../book/use-leaving';
import { Button } from '../look/Button';
import { Choice } from '../look/Choice';
import { useJob } from '../state/store-context';
import styles from './BuildBookSheet.module.css';
import { SheetBody } from './SheetBody';
import { Trouble } from './Trouble';

interface Props {
  readonly host: HostApi;
  readonly onClose: () => void;
}

/** The build book as it is printed, with what can be done with it. */
export function BuildBookSheet({ host, onClose }: Props) {
  const job = useJob();
  const [paper, setPaper] = useState<Paper>(job.shownIn === 'imperial' ? 'letter' : 'a4');
  const { pages, progress, fault, document } = useBook(job, paper);
  const shown = useRef<PagesHandle>(null);
  const leaving = useLeaving();
  const whole = async () => document(bookTitle(job), await embeddedFontCss());
  const linked = () => document(bookTitle(job), linkedFontCss());
  const name = (ending: string) => leavingName(job, 'build-book', ending);
  const { busy } = leaving;
  /** The button that was pressed keeps the focus while its file is made; the others wait. */
  const buttonState = (id: string) => ({
    isDisabled: pages?.paper !== paper || (busy !== null && busy !== id),
    isPending: busy === id,
  });

  const asPdf = () =>
    leaving.start('pdf', () => savePdf(host, { name: name('pdf'), whole, linked }, pageDoors));
  const asHtml = () =>
    leaving.start('html', async () =>
      saveFile(host, { name: name('html'), content: await whole(), type: HTML_TYPE }, pageDoors),
    );
  const onPaper = () =>
    leaving.start('print', async () => {
      pageDoors.print(await linked());
      return { outcome: 'printing', words: 'Print at 100 %, without headers and footers.' };
    });
  return (
    <SheetBody
      title="Build book"
      onClose={onClose}
      foot={
        <>
          <p className={styles.said} role="status">
            {busy === null ? leaving.words : 'Making the file...'}
          </p>
          <Button {...buttonState('print')} onPress={onPaper}>
            Print
          </Button>
          <Button {...buttonState('html')} onPress={asHtml}>
            Save as HTML
          </Button>
          <Button weight="main" {...buttonState('pdf')} onPress={asPdf}>
            Save as PDF
          </Button>
        </>
      }
    >
      <div className={styles.head}>
        <Choice label="Paper" choices={PAPER_CHOICES} chosen={paper} onChoose={setPaper} />
        {pages !== null && <p className={styles.count}>{pages.count} pages</p>}
      </div>
      {leaving.trouble !== null && <Trouble sentence={leaving.trouble} />}
      {fault !== null && (
        <Trouble sentence="The book could not be made. The job is as it was." details={[fault]} />
      )}
      {pages !== null && pages.problems.length > 0 && (
        <Trouble sentence="Something in the book is not right:" details={pages.problems} />
      )}
      {pages === null && fault === null && (
        <ProgressBar
          className={styles.wait!}
          aria-label="Making the book"
          {...(progress === null
            ? { isIndeterminate: true }
            : { value: progress.done, maxValue: progress.total })}
        >
          {({ percentage }) => (
            <>
              <span>{progress === null ? 'Making the book...' : `Working out ${progress.words}...`}</span>
              <span className={styles.track}>
                <span className={styles.fill} style={{ width: `${percentage ?? 0}%` }} />
              </span>
            </>
          )}
        </ProgressBar>
      )}
      {pages !== null && (
        <div className={styles.book}>
          <BookContents entries={pages.contents} onGo={(id) => shown.current?.goTo(id)} />
          <BookPages ref={shown} body={pages.body} label="Pages of the book" />
        </div>
      )}
    </SheetBody>
  );
}
