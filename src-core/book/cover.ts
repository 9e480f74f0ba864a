/** The first pages: the job, its view, its verdicts, what is dangerous, and where to find what. */
import type { Level } from '../checks';
import { worse } from '../checks';
import { jobView } from '../paper';
import { NOTICE, printRatio } from '../report';
import type { Block, Chapter, VerdictRow } from '../sheet';
import { DUST_CAUTION } from '../takeoff';
import { drawing, facts, heading, notice, pageOf, paragraph } from './blocks';
import type { BookContext } from './context';
import { figureRoom } from './figure-room';
import { HOLD_UP } from './hold-up';
import { castingCount, drawingName, namesWords, pieceChapterId } from './names';
import { mixOf, pouredOf } from './piece-amounts';
import { FIGURE_SHARES, LEVEL_WORDS } from './practice';
import { counted, sentence } from './print';

export function coverChapter(context: BookContext): Chapter {
  const { job, facts: found, paper } = context;
  return {
    id: 'cover',
    title: 'At a glance',
    startsPage: true,
    blocks: [
      ...drawing(
        'cover-view',
        jobView(job, figureRoom(paper, FIGURE_SHARES.jobView)),
        'The job as it stands when it is finished.',
      ),
      ...jobFacts(context),
      ...(job.note === '' ? [] : [paragraph(job.note)]),
      heading('cover-verdict', 'Does it hold?'),
      ...jobWords(context),
      {
        kind: 'verdicts',
        rows: [jobRow(context), ...found.pieces.map((_, k) => pieceRow(context, k)), ...wayRows(context)],
      },
      ...siteBlocks(context),
      heading('cover-cautions', 'Before you begin'),
      ...notice('warning', CAUTIONS),
      ...notice('notice', [NOTICE]),
      heading('cover-contents', 'Contents'),
      { kind: 'contents', shows: 'chapters' },
    ],
  };
}

/** What hurts people on such a job, the worst of each chapter. OSHA 1926.1153, NIOSH 94-110. */
const CAUTIONS = [
  [
    'Falsework: nobody is under a fresh slab or under one whose supports are moved. Nothing comes out before its day. See ',
    pageOf(HOLD_UP),
    '.',
  ],
  `Silica: open and tip bags low and upwind with a fitted respirator on. ${DUST_CAUTION}`,
  'Caustic: wet concrete burns skin and eyes, and the burns begin without pain. Waterproof gloves, boots and eye protection; rinse at once.',
  'Lifting: what weighs over 51 lb (23 kg) takes two people (NIOSH 94-110); slabs take more. Keep the way clear, level and short.',
];

function jobFacts({ job, facts: { pieces, pours }, print }: BookContext): Block[] {
  const { startsOn, handOverDay } = job.site.calendar;
  const castings = pieces.reduce((sum, { alike }) => sum + castingCount(alike), 0);
  const weightLb = pieces.reduce((sum, { alike, result }) => sum + castingCount(alike) * result.weightLb, 0);
  const mixed = pours.mixes.reduce((sum, { volumeFt3 }) => sum + volumeFt3, 0);
  return facts([
    [
      'Pieces',
      `${counted(castings, 'slab')} by ${counted(pieces.length, 'drawing')}, ${print.mass(weightLb)} in all`,
    ],
    ['Concrete to mix', print.volume(mixed)],
    ['Day 0', startsOn === null ? null : startsOn],
    ['Hand-over', handOverDay === null ? null : print.day(handOverDay)],
  ]);
}

/** Longest words that a row holds; a row is never parted by the end of a page. */
const MOST_LETTERS = 600;

function jobRow({ facts: { verdict } }: BookContext): VerdictRow {
  const isLong = verdict.words.length > MOST_LETTERS;
  return {
    level: verdict.level,
    name: 'The job',
    words: LEVEL_WORDS[verdict.level],
    why: isLong ? 'As told above.' : verdict.words,
  };
}

/** The job's words before its row, where they are too long for that. */
function jobWords({ facts: { verdict } }: BookContext): Block[] {
  return verdict.words.length > MOST_LETTERS ? [paragraph(verdict.words)] : [];
}

/** A drawing with its size, its verdict and its page. */
function pieceRow(context: BookContext, k: number): VerdictRow {
  const {
    facts: { pieces },
    print,
  } = context;
  const found = pieces[k]!;
  const { piece, result } = found;
  const poured = pouredOf(context, piece.id);
  const size = `${print.length(piece.thicknessIn)} thick, ${print.mass(result.weightLb)}${castingCount(found.alike) > 1 ? ' each' : ''}`;
  return {
    level: result.verdict.level,
    name: [`${k + 1}: ${drawingName(found)}, `, pageOf(pieceChapterId(k))],
    words: result.verdict.words,
    why: `${size}${poured === null ? '' : `, ${mixOf(context, piece).name}`}. ${result.verdict.why}`,
  };
}

/** The worst day on the way of each drawing that does not stand then; of the whole job where all do. */
function wayRows({ facts: { pieces, falsework, swaps }, print }: BookContext): VerdictRow[] {
  const ways = pieces.flatMap((found) =>
    found.result.worstOnTheWay === null ? [] : [{ found, way: found.result.worstOnTheWay }],
  );
  const failing = ways.filter(({ way }) => way.level === 'change' || way.level === 'engineer');
  const worst = ways.reduce<(typeof ways)[number] | null>(
    (most, each) => (most === null || each.way.ratio > most.way.ratio ? each : most),
    null,
  );
  const shown = failing.length > 0 || worst === null ? failing : [worst];
  const held = falsework.designs.reduce<Level>((level, design) => worse(level, design.level), 'holds');
  const swapped = swaps.flatMap(({ result }) => ('sentence' in result ? [] : [result]));
  const swap = swapped.reduce<Level>((level, result) => worse(level, result.level), 'holds');
  const sections = falsework.designs.reduce((sum, design) => sum + design.sections.length, 0);
  return [
    ...shown.map(
      ({ found, way }): VerdictRow => ({
        level: way.level,
        name: `${drawingName(found)}, ${print.day(way.day)}`,
        words: LEVEL_WORDS[way.level],
        why: `Worst moment on the way, ${printRatio(way.ratio)} of the limit. ${way.words}`,
      }),
    ),
    ...(sections === 0 && held === 'holds'
      ? []
      : [
          {
            level: held,
            name: ['Falsework, ', pageOf(HOLD_UP)],
            words: LEVEL_WORDS[held],
            why: `${counted(sections, 'section')} in all.`,
          } satisfies VerdictRow,
        ]),
    ...(swapped.length === 0
      ? []
      : [
          {
            level: swap,
            name: ['The swap, ', pageOf('strip-swap')],
            words: LEVEL_WORDS[swap],
            why: `${namesWords(swapped.map(({ name }) => name))}.`,
          } satisfies VerdictRow,
        ]),
  ];
}

function siteBlocks({ facts: { site }, print }: BookContext): Block[] {
  if (site.length === 0) return [];
  return [
    heading('cover-site', 'The site'),
    {
      kind: 'verdicts',
      rows: site.map(({ level, title, words, demand, capacity, source }) => ({
        level,
        name: title,
        words: LEVEL_WORDS[level],
        why: `${sentence(words)}${demand === null || capacity === null ? '' : ` ${print.quantity(demand)} against ${print.quantity(capacity)}.`} (${source})`,
      })),
    },
  ];
}
