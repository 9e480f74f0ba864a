/** The shopping list of a job as a person reads it, with its cut lists and tools. */
import Table from 'cli-table3';
import type { Job } from '../../../src-core/job';
import type { JobTakeoff, ListGroup, ListLine, Tool } from '../../../src-core/takeoff';
import { cutSections } from './list-cuts';
import { noticeLines, section, showable, textOf } from './result-lines';
import { BORDERS } from './table-borders';
import { wrap } from './wrap';

const COLUMNS: readonly (readonly [heading: string, width: number, align: 'left' | 'right'])[] = [
  ['What', 44, 'left'],
  ['Needed', 14, 'right'],
  ['Buy', 22, 'left'],
  ['Each', 9, 'right'],
  ['Cost', 11, 'right'],
];

/** The report as text, at most 100 columns wide. */
export function listReport(found: Job, takenOff: JobTakeoff): string {
  const { job, takeoff } = showable({ job: found, takeoff: takenOff });
  const { list, tools } = takeoff;
  return textOf([
    ...wrap(`${job.name}: what to cut and what to buy`),
    ...list.groups.flatMap(groupLines),
    '',
    ...wrap(`${list.total.words}.`),
    ...section(
      'Left out, or not known',
      list.gaps.flatMap((words) => wrap(words, '- ')),
    ),
    ...section(
      'Used again',
      list.remarks.flatMap((words) => wrap(words, '- ')),
    ),
    ...section('What is added', wasteLines(list.groups)),
    ...cutSections(job, takeoff),
    ...section(
      'Protection',
      tools.filter(({ kind }) => kind === 'protection').flatMap((tool) => toolLines(tool)),
    ),
    ...section(
      'Tools',
      tools.filter(({ kind }) => kind === 'tool').flatMap((tool) => toolLines(tool)),
    ),
    ...noticeLines(),
    '',
    ...wrap('The list alone, for a spreadsheet: --csv. What each number is made of, as JSON: --json.'),
  ]);
}

function groupLines({ title, lines }: ListGroup): string[] {
  const table = new Table({
    head: COLUMNS.map(([heading]) => heading),
    colWidths: COLUMNS.map(([, width]) => width),
    colAligns: COLUMNS.map(([, , align]) => align),
    wordWrap: true,
    chars: { ...Object.fromEntries(BORDERS.map((name) => [name, ''])), mid: '' },
    style: { head: [], border: [], 'padding-left': 0, 'padding-right': 2, compact: true },
  });
  table.push(...lines.map(rowOf));
  const rows = table
    .toString()
    .split('\n')
    .map((line) => line.trimEnd());
  return section(title, rows);
}

function rowOf({ name, neededWords, buyWords, priceEach, priceFrom, cost }: ListLine): string[] {
  return [
    name,
    neededWords,
    buyWords,
    priceEach === null ? '' : `${priceEach.toFixed(2)}${priceFrom === 'invented' ? '*' : ''}`,
    cost === null ? '' : cost.toFixed(2),
  ];
}

/** What is added to which lines; of all others one sentence. */
function wasteLines(groups: readonly ListGroup[]): string[] {
  const lines = groups.flatMap((group) => group.lines);
  const added = lines.filter(({ wasteRatio }) => wasteRatio > 0);
  const words = [...new Set(added.map(({ wasteWords }) => wasteWords))];
  return [
    ...words.flatMap((each) => {
      const names = added.filter(({ wasteWords }) => wasteWords === each).map(({ name }) => name);
      return wrap(`${names.join('; ')}: ${each}.`, '- ');
    }),
    ...wrap('All else is bought as its cut list takes it, or as counted: nothing is added.', '- '),
    ...(lines.some(({ priceFrom }) => priceFrom === 'invented')
      ? wrap('* An invented price, which says nothing of any shop.', '- ')
      : []),
  ];
}

function toolLines({ name, countWords, why, caution, source }: Tool): string[] {
  return wrap(`${name}, ${countWords}. ${why}${caution === null ? '' : ` ${caution}`} (${source})`, '- ');
}
