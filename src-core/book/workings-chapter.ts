/** The workings: every check that matters with its formula, its numbers and its source. */
import { printRatio } from '../report';
import type { Block, Chapter } from '../sheet';
import type { Line } from '../workings';
import { columns, heading, list, paragraph, subheading, table } from './blocks';
import { pourLines } from './book-sources';
import { concretes, EARLIEST_WORKINGS } from './concretes';
import type { BookContext } from './context';
import { drawingName, pieceChapterId } from './names';
import { workingsId } from './piece-verdict';
import { LEVEL_WORDS, TRIVIAL_RATIO } from './practice';
import { counted } from './print';
import type { WorkedCheck } from './worked-checks';
import { freshLines, workedChecks, worstFloorLoad, worstFormChecks } from './worked-checks';

const WORKINGS = 'workings';

export function workingsChapter(context: BookContext): Chapter {
  const { facts } = context;
  return {
    id: WORKINGS,
    title: 'Workings',
    startsPage: true,
    blocks: [
      paragraph(
        `Every check that fails, or uses ${TRIVIAL_RATIO.toFixed(2)} of its limit and more. Workings stay in inch, pound-force and psi, as their formulas are written. A line that stands under an earlier check of the same part is not repeated.`,
      ),
      ...facts.pieces.flatMap((found, k) => {
        const id = workingsId(pieceChapterId(k));
        return [
          heading(id, `Piece ${k + 1}: ${drawingName(found)}`),
          ...workedBlocks(context, workedChecks(found.result.checks), id),
        ];
      }),
      ...earliestBlocks(context),
      ...falseworkBlocks(context),
      ...siteBlocks(context),
      ...pourBlocks(context),
    ],
  };
}

function workedBlocks({ print }: BookContext, worked: readonly WorkedCheck[], id: string): Block[] {
  if (worked.length === 0) return [paragraph('No check comes near its limit.')];
  return worked.flatMap(({ check, lines, isShortened }, k): Block[] => {
    const { title, ratio, level, words, demand, capacity, cautions } = check;
    const numbers = `${print.quantity(demand)} against ${print.quantity(capacity)}`;
    const share = ratio > 0 ? `, ${printRatio(ratio)}` : '';
    return [
      subheading(`${id}-${k + 1}`, `${title}${share}: ${LEVEL_WORDS[level]}`),
      paragraph(`${words} ${numbers}.${isShortened && lines.length === 0 ? ' Its lines stand above.' : ''}`),
      ...lineBlocks(lines),
      ...list(cautions),
    ];
  });
}

function lineBlocks(lines: readonly Line[]): Block[] {
  return lines.length === 0 ? [] : [{ kind: 'workings', lines }];
}

/** Why nothing is done to a slab sooner, for each concrete. */
function earliestBlocks(context: BookContext): Block[] {
  return [
    heading(EARLIEST_WORKINGS, 'Earliest days'),
    ...concretes(context.facts).flatMap(({ words, days }, k) =>
      table(
        `${EARLIEST_WORKINGS}-${k + 1}`,
        words(context),
        columns(['Work', 1.8], ['Why not before', 4.6], ['Source', 2.4]),
        days.map(({ title, words: why, source }) => [title, why, source]),
      ),
    ),
  ];
}

function falseworkBlocks({ facts, print }: BookContext): Block[] {
  const worst = worstFormChecks(facts.falsework);
  if (worst.length === 0) return [];
  const floor = worstFloorLoad(facts.falsework);
  return [
    heading(`${WORKINGS}-falsework`, 'Falsework'),
    paragraph(
      'Of each kind of check the section that comes nearest its limit; the others of its kind are worked alike.',
    ),
    ...worst.flatMap(({ check, lines, sectionName, sections }, k): Block[] => [
      subheading(
        `${WORKINGS}-falsework-${k + 1}`,
        `${check.title}, ${printRatio(check.ratio)}: ${sectionName}`,
      ),
      paragraph(
        `${check.words} ${print.quantity(check.demand)} against ${print.quantity(check.capacity)}; the worst of ${counted(sections, 'section')}.`,
      ),
      ...lineBlocks(lines),
    ]),
    ...(floor === null
      ? []
      : [
          subheading(`${WORKINGS}-floor`, 'Load on the floor below the falsework'),
          paragraph(floor.words),
          ...lineBlocks(floor.lines),
        ]),
  ];
}

function siteBlocks({ facts }: BookContext): Block[] {
  const worked = facts.site.filter(({ workings }) => workings.length > 0);
  if (worked.length === 0) return [];
  return [
    heading(`${WORKINGS}-site`, 'The site'),
    ...worked.flatMap(({ title, words, workings }, k): Block[] => [
      subheading(`${WORKINGS}-site-${k + 1}`, title),
      paragraph(words),
      ...lineBlocks(workings),
    ]),
  ];
}

/** Lines of the pours, those that are alike told once. */
function pourBlocks({ facts, print }: BookContext): Block[] {
  const { pours, bucket } = facts.pours;
  const fresh = freshLines();
  if (pours.length === 0) return [];
  return [
    heading(`${WORKINGS}-pour`, 'The pours'),
    ...pours.flatMap((pour, k): Block[] => [
      subheading(`${WORKINGS}-pour-${k + 1}`, `Poured on ${print.day(pour.day)}: ${pour.mixName}`),
      ...lineBlocks(fresh(pourLines(pour))),
    ]),
    ...lineBlocks(fresh(bucket.lines)),
  ];
}
