/** What the book must hold, as plain data with its texts as they are printed: for a check of the finished pages. */
import type { Level } from '../checks';
import { legNumber, sectionLetter } from '../falsework';
import type { Job } from '../job';
import { allLines, namedSources } from './book-sources';
import type { BookFacts } from './facts';
import { printClock, printOf } from './print';

export interface BookJson {
  readonly job: { readonly name: string; readonly level: Level; readonly words: string };
  /** Every piece, those of one drawing each by its own name. */
  readonly verdicts: readonly {
    readonly piece: string;
    readonly level: Level;
    readonly words: string;
    readonly why: string;
  }[];
  readonly changes: readonly { readonly piece: string; readonly title: string }[];
  readonly legs: readonly {
    readonly piece: string;
    readonly section: string;
    readonly number: string;
    readonly length: string;
    readonly shim: string;
  }[];
  readonly batches: readonly {
    readonly day: string;
    readonly number: number;
    readonly bags: number;
    readonly water: string | null;
    readonly waterIn: string;
    readonly ready: string;
    readonly placed: string;
  }[];
  readonly earliest: readonly {
    readonly piece: string;
    readonly work: string;
    readonly day: string | null;
  }[];
  /** Each once. */
  readonly sources: readonly string[];
}

/** Verdicts, leg lengths, batch times and sources of a job's book. */
export function bookJson(job: Job, facts: BookFacts): BookJson {
  const print = printOf(job);
  return {
    job: { name: job.name, ...facts.verdict },
    verdicts: facts.pieces.flatMap(({ alike, result: { verdict } }) =>
      alike.map(({ name }) => ({
        piece: name,
        level: verdict.level,
        words: verdict.words,
        why: verdict.why,
      })),
    ),
    changes: facts.pieces.flatMap(({ piece, result }) =>
      result.changes.map(({ title }) => ({ piece: piece.name, title })),
    ),
    legs: facts.falsework.designs.flatMap(({ pieceName, sections }) =>
      sections.flatMap(({ section, legs }, i) =>
        legs.map(({ leg }, k) => ({
          piece: pieceName,
          section: section.name,
          number: legNumber(sectionLetter(i), k),
          length: print.length(leg.cutIn),
          shim: print.fine(leg.shimIn),
        })),
      ),
    ),
    batches: facts.pours.pours.flatMap(({ day, batches }) =>
      batches.map((batch) => ({
        day: print.day(day),
        number: batch.number,
        bags: batch.bags,
        water: batch.waterGal === null ? null : print.water(batch.waterGal),
        waterIn: printClock(batch.waterMinutes),
        ready: printClock(batch.readyMinutes),
        placed: printClock(batch.placedMinutes),
      })),
    ),
    earliest: facts.pieces.flatMap(({ alike, earliest }) =>
      alike.flatMap(({ name }) =>
        earliest.map(({ title, day }) => ({
          piece: name,
          work: title,
          day: day === null ? null : print.day(day),
        })),
      ),
    ),
    sources: [...new Set([...allLines(facts).map(({ source }) => source), ...namedSources(facts)])].filter(
      (source) => source !== '',
    ),
  };
}
