/** What is bought, what each line is made of, and what the work is done with. */

import type { Block, Chapter, TableBlock, TableRow, Words } from '../sheet';
import type { ListLine, Tool } from '../takeoff';
import { columns, heading, notice, paragraph, table } from './blocks';
import type { BookContext } from './context';
import { sentence } from './print';

const SHOPPING = 'shopping';
/** Sources of a line that are told one by one; more are told as a number. */
const MOST_SOURCES = 6;

export function shoppingChapter({ facts }: BookContext): Chapter {
  const { list: shopping, tools } = facts.takeoff;
  return {
    id: SHOPPING,
    title: 'Shopping list',
    startsPage: true,
    blocks: [
      paragraph(
        'What the drawing takes, what is added for waste, and whole units to buy. Prices that are invented stand for the demo only: ask your own suppliers.',
      ),
      ...notice('notice', shopping.gaps),
      ...shopping.groups.flatMap(({ id, title, lines }): Block[] => [
        heading(`${SHOPPING}-${id}`, title),
        groupTable(`${SHOPPING}-${id}-table`, title, lines),
      ]),
      paragraph(`${sentence(shopping.total.words)} ${shopping.remarks.join(' ')}`.trim()),
      ...toolBlocks(tools, 'protection', 'Protection for people'),
      ...toolBlocks(tools, 'tool', 'Tools'),
      heading(`${SHOPPING}-sources`, 'Where each line comes from'),
      ...sourceTable(shopping.groups.flatMap(({ lines }) => lines)),
    ],
  };
}

function groupTable(id: string, title: string, lines: readonly ListLine[]): TableBlock {
  const priced = lines.flatMap(({ cost }) => cost ?? []);
  const total: TableRow[] =
    priced.length === 0
      ? []
      : [
          {
            cells: [
              'In all, where a price is known',
              '',
              '',
              priced.reduce((sum, cost) => sum + cost, 0).toFixed(2),
              '',
            ],
            isTotal: true,
          },
        ];
  return {
    kind: 'table',
    id,
    caption: title,
    columns: columns(
      ['What', 2.8],
      ['The drawing takes', 1.3],
      ['Buy', 1.9],
      ['Cost', 0.8, 'end'],
      ['Price', 1],
    ),
    rows: [
      ...lines.map(
        ({ name, neededWords, buyWords, cost, priceFrom }): TableRow => ({
          cells: [
            name,
            neededWords,
            buyWords,
            cost === null ? '' : cost.toFixed(2),
            PRICES[priceFrom ?? 'none'],
          ],
        }),
      ),
      ...total,
    ],
  };
}

const PRICES = { own: 'your own', invented: 'invented', none: 'not known' } as const;

function toolBlocks(tools: readonly Tool[], kind: Tool['kind'], title: string): Block[] {
  const own = tools.filter((tool) => tool.kind === kind);
  return [
    heading(`${SHOPPING}-${kind}s`, title),
    ...table(
      `${SHOPPING}-${kind}s-table`,
      title,
      columns(['What', 2], ['How many', 1.3], ['What for', 3.4], ['Source', 1.6]),
      own.map(({ name, countWords, why, source }) => [name, countWords, why, source]),
    ),
    ...notice(
      'caution',
      [...new Set(own.flatMap(({ caution }) => caution ?? []))].map((words): Words => words),
    ),
  ];
}

function sourceTable(lines: readonly ListLine[]): Block[] {
  return table(
    `${SHOPPING}-sources-table`,
    'Every line with its parts of the drawing and what is added',
    columns(['What', 2], ['Taken from', 3.6], ['Added', 2.2]),
    lines.map(({ name, sources, wasteWords }) => [
      name,
      sourceWords(sources.map(({ words }) => words)),
      wasteWords,
    ]),
  );
}

/** Places that come more than once are counted. */
function sourceWords(words: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const each of words) counts.set(each, (counts.get(each) ?? 0) + 1);
  const told = [...counts].map(([each, count]) => (count === 1 ? each : `${each} (${count} times)`));
  const rest = told.length - MOST_SOURCES;
  return rest > 0 ? `${told.slice(0, MOST_SOURCES).join('; ')}; and ${rest} more` : told.join('; ');
}
