/** Stripping and the swap: earliest days, the steps in order with their limits, and what protects the slab. */
import { stands } from '../checks';
import type { Piece } from '../job';
import type { SlabWork, SwapFinding, SwapResult } from '../sequence';
import { SIZE_CAUTION } from '../sequence';
import type { Block, Chapter, Words } from '../sheet';
import { columns, heading, list, notice, pageOf, paragraph, strong, table } from './blocks';
import { concretes, EARLIEST_WORKINGS } from './concretes';
import type { BookContext } from './context';
import type { SwapFacts } from './facts';
import { LEVEL_WORDS } from './practice';
import { sentence } from './print';
import { heightTable, stepTable } from './swap-tables';

const STRIP = 'strip-swap';

export function stripSwapChapter(context: BookContext): Chapter {
  const { facts } = context;
  const swapped = facts.swaps.flatMap(({ result, pieces }, k) =>
    'sentence' in result ? [] : [{ result, pieces, id: `${STRIP}-${k + 1}` }],
  );
  return {
    id: STRIP,
    title: 'Strip and swap',
    startsPage: true,
    blocks: [
      ...notice('danger', [
        'Nobody stands, reaches or works under a slab while anything that holds it is moved. Supports come out one at a time, slowly, overhangs last. If it creaks, sinks or cracks: stop, put the last support back, and ask an engineer.',
      ]),
      heading(`${STRIP}-earliest`, 'Earliest days'),
      ...earliestBlocks(context),
      ...stillBlocks(facts.swaps),
      ...swapped.flatMap(({ result, pieces, id }) => swapBlocks(context, result, pieces, id)),
    ],
  };
}

/** A row for every concrete, a column for every kind of work. */
function earliestBlocks(context: BookContext): Block[] {
  const { facts, print } = context;
  const rows = concretes(facts);
  const works = WORKS.filter(({ id }) => rows.some(({ days }) => days.some((day) => day.id === id)));
  const cautions = facts.pieces.flatMap(({ alike, earliest }) =>
    earliest.flatMap(({ title, caution }) =>
      caution === null ? [] : [`${alike.map(({ name }) => name).join(', ')}. ${title}: ${caution}`],
    ),
  );
  return [
    ...notice('caution', cautions),
    ...table(
      `${STRIP}-earliest-table`,
      'First day on which each may be done, by age and strength',
      columns(['Slab', 2], ...works.map(({ head }) => [head, 1.25] as const)),
      rows.map(({ words, days }) => [
        words(context),
        ...works.map(({ id }) => {
          const found = days.find((day) => day.id === id);
          if (found === undefined) return '';
          return found.day === null ? 'not within a year' : print.day(found.day);
        }),
      ]),
    ),
    paragraph(['Strength on each of these days, and the rule behind it: ', pageOf(EARLIEST_WORKINGS), '.']),
  ];
}

const WORKS: readonly { readonly id: SlabWork; readonly head: string }[] = [
  { id: 'edge-forms-off', head: 'Edge forms off' },
  { id: 'light-load', head: 'Light load' },
  { id: 'soffit-supports-out', head: 'First supports out' },
  { id: 'swap', head: 'Start the swap' },
  { id: 'overhang-supports-out', head: 'Overhang supports out' },
  { id: 'full-strength', head: 'Full load' },
  { id: 'seal', head: 'Seal' },
];

function swapBlocks(context: BookContext, result: SwapResult, pieces: readonly Piece[], id: string): Block[] {
  const { check, proposal, offer, findings } = result;
  const worst = check.worst === null ? null : check.moments[check.worst]!;
  const protection = findings.filter(({ id: about }) => about === 'protection');
  const others = findings.filter(
    ({ id: about, level }) => about !== 'protection' && !(about === 'way-in' && stands(level)),
  );
  const cautions = [...new Set(check.moments.flatMap((moment) => moment.cautions))];
  return [
    heading(id, `Swap of ${pieces.map(({ name }) => name).join(', ')}`),
    {
      kind: 'verdicts',
      rows: [
        {
          level: result.level,
          name: 'The swap',
          words: LEVEL_WORDS[result.level],
          why:
            worst === null
              ? orderWords(result)
              : `${orderWords(result)} Worst moment, ${context.print.day(worst.day)}: ${worst.words}`,
        },
      ],
    },
    ...notice(
      'notice',
      (proposal?.props ?? []).map(({ words }) => words),
    ),
    ...(offer === null
      ? []
      : notice('caution', [
          `The steps as drawn crack the slab or fail. An order that holds: ${offer.order.map((supportId) => supportName(pieces[0]!, supportId)).join('; ')}. Take it into the job and print a new book.`,
          ...offer.props.map(({ words }) => words),
        ])),
    ...stepTable(context, result, pieces[0]!, id),
    ...heightTable(context, result, id),
    ...protectionBlocks(protection, id),
    ...foundBlocks(context, result, others),
    ...(cautions.length === 0
      ? []
      : [
          paragraph([strong('For a while beyond what a finished piece may have: '), SIZE_CAUTION]),
          ...list(cautions),
        ]),
  ];
}

function orderWords({ from, proposal }: SwapResult): string {
  if (from === 'job' || proposal === null) return 'The order is that of the job.';
  const how = proposal.isExact
    ? 'the mildest of all orders'
    : 'the mildest of the likeliest orders, not of every one';
  return `The job has no steps, so an order is proposed: ${how}${proposal.isBlocked ? '; none leaves every cabinet a free way in' : ''}.`;
}

function protectionBlocks(protection: readonly SwapFinding[], id: string): Block[] {
  if (protection.length === 0) return [];
  const words = [...new Set(protection.map((finding) => `${sentence(finding.words)} (${finding.source})`))];
  return [{ kind: 'heading', level: 2, id: `${id}-protection`, words: 'Protect the slab' }, ...list(words)];
}

/** What needs attention first. */
function foundBlocks(
  { print }: BookContext,
  { check }: SwapResult,
  findings: readonly SwapFinding[],
): Block[] {
  const ordered = [...findings].sort((a, b) => Number(stands(a.level)) - Number(stands(b.level)));
  return list(
    ordered.map(({ stepId, title, words, level, source }): Words => {
      const day = check.steps.find((step) => step.id === stepId)?.day;
      const mark = stands(level) ? '' : `${LEVEL_WORDS[level]}. `;
      return [
        strong(`${mark}${day === undefined ? '' : `${print.day(day)}: `}${title}. `),
        `${sentence(words)} (${source})`,
      ];
    }),
  );
}

function supportName({ supports }: Piece, id: string): string {
  return supports.find((support) => support.id === id)?.name ?? id;
}

/** Pieces under which nothing changes, in one list; and those whose swap cannot be looked at. */
function stillBlocks(swaps: readonly SwapFacts[]): Block[] {
  const still = swaps.flatMap(({ result, pieces }) =>
    'sentence' in result ? pieces.map(({ name }) => ({ ...result, name })) : [],
  );
  const bySentence = new Map<string, string[]>();
  for (const { name, sentence: words } of still)
    bySentence.set(words, [...(bySentence.get(words) ?? []), name]);
  return bySentence.size === 0
    ? []
    : [
        heading(`${STRIP}-still`, 'Pieces without a swap'),
        ...list([...bySentence].map(([words, names]) => `${names.join(', ')}: ${words}`)),
      ];
}
