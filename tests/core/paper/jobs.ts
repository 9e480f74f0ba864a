/** The example jobs in both unit systems, and every drawing that can be made of one. */
import { readdirSync, readFileSync } from 'node:fs';
import { designFalsework } from '../../../src-core/falsework';
import type { Figure } from '../../../src-core/figure';
import type { Job } from '../../../src-core/job';
import { readJobText } from '../../../src-core/job';
import {
  edgeSections,
  falseworkPlan,
  jobView,
  overhangSection,
  piecePlan,
  steelPlan,
} from '../../../src-core/paper';
import { placeSteel } from '../../../src-core/steel-placing';

/** Width and height left for a drawing on a letter page with its margins. */
export const ROOM = { widthIn: 7.2, heightIn: 8.6 };

const FOLDER = 'assets/jobs';

export const JOB_NAMES = readdirSync(FOLDER).map((file) => file.replace('.json', ''));

export function exampleJob(name: string, shownIn: Job['shownIn']): Job {
  const read = readJobText(readFileSync(`${FOLDER}/${name}.json`, 'utf8'));
  if (!read.ok) throw new Error(read.problems[0]?.sentence ?? name);
  return { ...read.job, shownIn };
}

export function pieceOfJob(job: Job, id: string) {
  const piece = job.pieces.find((each) => each.id === id);
  if (piece === undefined) throw new Error(`no piece ${id}`);
  return piece;
}

export function figuresOf(job: Job): Figure[] {
  const each = job.pieces.flatMap((piece) => {
    const steel = placeSteel(job, piece);
    return [
      piecePlan(job, piece, ROOM),
      edgeSections(job, piece, ROOM),
      overhangSection(job, piece, ROOM),
      steel.ok ? steelPlan(job, piece, steel.placing, ROOM) : null,
      falseworkPlan(job, piece, designFalsework(job, piece.id), ROOM),
    ];
  });
  return [jobView(job, ROOM), ...each].filter((figure) => figure !== null);
}

/** Words of a drawing in the order in which they are drawn. */
export function wordsOf({ marks }: Figure): string[] {
  return marks.flatMap((mark) => (mark.kind === 'text' ? [mark.words] : []));
}
