/** What the load check says of a piece: its verdict, the checks that are nearest their limits, and what to change where it fails. */
import type { Check } from '../checks';
import { stands } from '../checks';
import type { Piece } from '../job';
import type { Change } from '../remedies';
import { printRatio } from '../report';
import type { Block, VerdictRow } from '../sheet';
import { columns, facts, heading, list, pageOf, paragraph, strong, subheading, table } from './blocks';
import type { BookContext } from './context';
import type { PieceFacts } from './facts';
import { LEVEL_WORDS, WORST_CHECKS } from './practice';
import { counted, sentence } from './print';
import { supportWords } from './support-words';

/** The verdict of a piece as it stands finished, and of its worst moment before. */
export function pieceVerdicts({ print }: BookContext, { result }: PieceFacts): VerdictRow[] {
  const { verdict, worstOnTheWay: way } = result;
  const finished = { level: verdict.level, name: 'Finished', words: verdict.words, why: verdict.why };
  if (way === null) return [finished];
  return [
    finished,
    {
      level: way.level,
      name: `Worst on the way: ${print.day(way.day)}`,
      words: LEVEL_WORDS[way.level],
      why: `${printRatio(way.ratio)} of the limit. ${way.words}`,
    },
  ];
}

export function verdictBlocks(context: BookContext, found: PieceFacts, id: string): Block[] {
  const { result } = found;
  const { remarks, verdict } = result;
  return [
    heading(`${id}-verdict`, 'Checks'),
    ...flagBlocks(found),
    ...(stands(verdict.level) ? [] : changeBlocks(context, found, id)),
    ...checkTable(context, found, id),
    paragraph(['Every check with its numbers is worked out from ', pageOf(workingsId(id)), ' on.']),
    ...reactionTable(context, found, id),
    ...list(remarks),
  ];
}

/** Where the workings of a piece's chapter stand. */
export function workingsId(chapterId: string): string {
  return `workings-${chapterId}`;
}

function flagBlocks({ result: { verdict } }: PieceFacts): Block[] {
  const words = [
    ...(verdict.flags.includes('near-limit')
      ? ['A check comes within 3 % of its limit: what was assumed decides it.']
      : []),
    ...(verdict.flags.includes('amber') && !verdict.flags.includes('near-limit')
      ? ['A check comes to 0.80 of its limit and more.']
      : []),
    ...(verdict.flags.includes('tips') ? ['As drawn it may tip: never lean on it before it is held.'] : []),
  ];
  return list(words);
}

function checkTable({ print }: BookContext, { piece, result: { checks } }: PieceFacts, id: string): Block[] {
  const told = checks.filter(({ ratio, level }) => ratio > 0 || !stands(level));
  const shown = told.slice(0, WORST_CHECKS);
  return table(
    `${id}-checks`,
    shown.length < checks.length
      ? `The ${shown.length} checks nearest their limits, of ${checks.length}`
      : 'Checks, nearest their limits first',
    columns(
      ['Check', 1.8],
      ['Of the limit', 0.75, 'end'],
      ['There is', 1.5, 'end'],
      ['Limit', 1.5, 'end'],
      ['Verdict', 1.2],
      ['Source', 2.4],
    ),
    shown.map((check) => [
      checkName(check, piece),
      check.ratio > 0 ? printRatio(check.ratio) : '',
      print.quantity(check.demand),
      print.quantity(check.capacity),
      LEVEL_WORDS[check.level],
      limitSource(check),
    ]),
  );
}

/** A check of one support among several says which. */
function checkName({ title, where }: Check, { supports }: Piece): string {
  const support = where.kind === 'support' ? supports.find(({ id }) => id === where.supportId) : undefined;
  return support === undefined ? title : `${title}: ${supportWords(support)}`;
}

/** Where the limit comes from: the source of the last line that is no bare reading or arithmetic. */
function limitSource({ workings }: Pick<Check, 'workings'>): string {
  const sourced = workings.filter(({ source, formula }) => formula !== '' && !PLAIN.test(source));
  return (sourced.at(-1) ?? workings.at(-1))?.source ?? '';
}

const PLAIN = /^(arithmetic|statics)/;

/** Changes that were tried and pass; where none does, what was tried. */
function changeBlocks(context: BookContext, { result }: PieceFacts, id: string): Block[] {
  const { changes, triedInVain, verdict } = result;
  return [
    subheading(`${id}-changes`, 'What to change'),
    ...(changes.length === 0
      ? [
          paragraph(
            `Nothing that was tried makes the whole piece pass. ${verdict.level === 'engineer' ? 'Ask an engineer, or draw it otherwise and check again.' : 'Draw it otherwise and check again.'}`,
          ),
        ]
      : changes.flatMap((change) => changeFacts(context, change))),
    ...(triedInVain.length === 0
      ? []
      : [paragraph([strong('Tried, and not enough: '), triedInVain.map(sentence).join(' ')])]),
    paragraph(
      'Nothing of this is drawn yet. Apply the change to the job, check it again and print a new book before anything is bought.',
    ),
  ];
}

function changeFacts({ print }: BookContext, { title, cost, worstRatio }: Change): Block[] {
  const weight = print.mass(Math.abs(cost.weightLb));
  return facts([
    ['Change', [strong(title)]],
    ['Then', `${printRatio(worstRatio)} of the limit at the most`],
    ['Weight', cost.weightLb === 0 ? 'unchanged' : cost.weightLb < 0 ? `${weight} less` : `${weight} more`],
    ['Parts', cost.partsWords.length === 0 ? counted(cost.parts, 'part') : cost.partsWords.join('; ')],
  ]);
}

/** Both bounds of stiffness in one row: the wider of the two. */
function reactionTable({ print }: BookContext, { result: { reactions } }: PieceFacts, id: string): Block[] {
  const supports = [...new Set(reactions.map(({ supportId }) => supportId))];
  return table(
    `${id}-reactions`,
    'What each support carries, the wider of both bounds of its stiffness',
    columns(
      ['Support', 2.4],
      ['Self weight', 1, 'end'],
      ['Most', 1, 'end'],
      ['Least', 1, 'end'],
      ['Ties pull', 1, 'end'],
    ),
    supports.map((supportId) => {
      const own = reactions.filter((one) => one.supportId === supportId);
      const most = (of: (one: (typeof own)[number]) => number) => print.force(Math.max(...own.map(of)));
      return [
        own[0]!.words,
        most(({ deadLbf }) => deadLbf),
        most(({ mostLbf }) => mostLbf),
        print.force(Math.min(...own.map(({ leastLbf }) => leastLbf))),
        most(({ tieLbf }) => tieLbf),
      ];
    }),
  );
}
