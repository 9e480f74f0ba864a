import { useEffect, useRef, useState } from 'react';
import type { Paper } from '../../src-core/figure';
import type { HostApi } from '../../src-core/host-contract';
import type { Job } from '../../src-core/job';
import type { BookMaker } from '../book/book-maker';
import { openBookMaker } from '../book/book-maker';
import type { ExportRow } from '../book/ExportGroup';
import { ExportGroup } from '../book/ExportGroup';
import type { FileChoice, TemplateChoice, TemplateWish } from '../book/export-choices';
import {
  drawingChoices,
  jobChoice,
  LIST_CHOICES,
  templateChoices,
  templatePages,
} from '../book/export-choices';
import { leavingName } from '../book/file-names';
import { embeddedFontCss, linkedFontCss } from '../book/font-faces';
import type { Left } from '../book/leave';
import { saveFile, savePdf } from '../book/leave';
import type { ListId } from '../book/list-files';
import { pageDoors } from '../book/page-doors';
import { PAPER_CHOICES } from '../book/paper-choices';
import { useLeaving } from '../book/use-leaving';
import { modelPicture, planPicture, showsModel } from '../book/view-picture';
import { Button } from '../look/Button';
import { Choice } from '../look/Choice';
import { useJob } from '../state/store-context';
import styles from './ExportSheet.module.css';
import { SheetBody } from './SheetBody';
import { Trouble } from './Trouble';

interface Props {
  readonly host: HostApi;
  readonly onClose: () => void;
}

const SIDES: readonly { readonly id: TemplateWish['seenFrom']; readonly label: string }[] = [
  { id: 'above', label: 'From above' },
  { id: 'below', label: 'From below' },
];

/** Everything of the job that can leave the window. */
export function ExportSheet({ host, onClose }: Props) {
  const job = useJob();
  const leaving = useLeaving();
  const [paper, setPaper] = useState<Paper>(job.shownIn === 'imperial' ? 'letter' : 'a4');
  const [seenFrom, setSeenFrom] = useState<TemplateWish['seenFrom']>('above');
  const [hasModel] = useState(showsModel);
  const lists = useLists(job);
  const templates = templateChoices(job);

  const fileRow = ({ id, title, words, file }: FileChoice): ExportRow => ({
    id,
    title,
    words,
    onSave: () => leaving.start(id, async () => saveFile(host, await file(), pageDoors)),
  });
  const picture = (id: string, title: string, words: string, take: () => Promise<Uint8Array<ArrayBuffer>>) =>
    fileRow({
      id,
      title,
      words,
      file: async () => ({ name: leavingName(job, id, 'png'), content: await take(), type: 'image/png' }),
    });
  const listRow = ({ id, title, words }: (typeof LIST_CHOICES)[number]) =>
    fileRow({
      id,
      title,
      words,
      file: async () => ({ name: leavingName(job, id, 'csv'), content: await lists(id), type: 'text/csv' }),
    });
  const templateRow = (choice: TemplateChoice): ExportRow => {
    const id = `${choice.pieceId} ${choice.cutoutId}`;
    const save = async (): Promise<Left> => {
      const made = await templatePages(job, choice, { paper, seenFrom });
      if (!made.ok) return { outcome: 'trouble', sentence: made.sentence };
      const { name, html } = made;
      const whole = async () => html(await embeddedFontCss());
      return savePdf(host, { name, whole, linked: async () => html(linkedFontCss()) }, pageDoors);
    };
    return { id, title: choice.title, onSave: () => leaving.start(id, save) };
  };

  const { busy } = leaving;
  return (
    <SheetBody
      title="Export"
      onClose={onClose}
      foot={
        <>
          <div className={styles.said}>
            <p role="status">{busy === null ? leaving.words : 'Making the file...'}</p>
            {leaving.trouble !== null && <Trouble sentence={leaving.trouble} />}
          </div>
          <Button onPress={onClose}>Close</Button>
        </>
      }
    >
      <ExportGroup title="Plan and model" rows={drawingChoices(job).map(fileRow)} busy={busy} />
      <ExportGroup title="Lists, CSV for a spreadsheet" rows={LIST_CHOICES.map(listRow)} busy={busy} />
      {templates.length > 0 && (
        <ExportGroup title="Full-size templates, PDF" rows={templates.map(templateRow)} busy={busy}>
          <p className={styles.lead}>
            Print them at 100 % and measure the square on every page. From below is mirrored, for marking the
            underside.
          </p>
          <div className={styles.choices}>
            <Choice label="Paper" choices={PAPER_CHOICES} chosen={paper} onChoose={setPaper} />
            <Choice label="Seen from" choices={SIDES} chosen={seenFrom} onChoose={setSeenFrom} />
          </div>
        </ExportGroup>
      )}
      <ExportGroup
        title="Pictures, PNG"
        busy={busy}
        rows={[
          ...(hasModel
            ? [picture('model-picture', 'Model', 'As it is seen now, without its labels.', modelPicture)]
            : []),
          picture('plan-picture', 'Plan', 'Black on white, with its dimensions.', () => planPicture(job)),
        ]}
      />
      <ExportGroup title="The job" rows={[fileRow(jobChoice(job))]} busy={busy} />
    </SheetBody>
  );
}

/** Gives a list of the job. All are made at the first asking, in a worker that goes with the sheet. */
function useLists(job: Job): (id: ListId) => Promise<string> {
  const maker = useRef<BookMaker | null>(null);
  useEffect(() => {
    const opened = openBookMaker(job, () => undefined);
    maker.current = opened;
    return () => {
      maker.current = null;
      opened.close();
    };
  }, [job]);
  return async (id) => {
    const found = (await maker.current?.lists())?.find((file) => file.id === id);
    if (found === undefined) throw new Error(`there is no list ${id}`);
    return found.csv;
  };
}
