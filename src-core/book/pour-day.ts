/** The pours: for each a sheet of paper for the crew, and a page of what is behind it. */
import type { Figure } from '../figure';
import type { ClockRow } from '../paper';
import { pourClock } from '../paper';
import type { Pour, PourFinding } from '../pour';
import type { Block, Chapter, Words } from '../sheet';
import { layOutBook } from '../sheet';
import { drawing, facts, heading, list, notice, numbered, pageOf, paragraph, strong } from './blocks';
import type { BookContext } from './context';
import { figureRoom } from './figure-room';
import { batchTable, finishTable } from './pour-tables';
import { FIGURE_SHARES } from './practice';
import { counted, sentence } from './print';

/** A sheet a pour, and a chapter of what is behind them. */
export function pourChapters(context: BookContext): Chapter[] {
  const { pours } = context.facts.pours;
  if (pours.length === 0) {
    return [
      {
        id: 'pour',
        title: 'Pour day',
        startsPage: true,
        blocks: [paragraph('No piece can be poured as drawn.')],
      },
    ];
  }
  const sheets = pours.map((pour, k) => ({
    pour,
    id: `pour-${k + 1}`,
    ...sheetOf(context, pour, `pour-${k + 1}`),
  }));
  return [...sheets.map(({ chapter }) => chapter), behindChapter(context, sheets)];
}

function titleOf({ print, facts: { pours } }: BookContext, pour: Pour): string {
  const isAlone = pours.pours.every((other) => other === pour || other.day !== pour.day);
  const what = isAlone ? '' : `, ${pour.mixName}${pour.colour === null ? '' : `, ${pour.colour.pigment}`}`;
  return `Pour day: ${print.day(pour.day)}${what}`;
}

interface PourSheet {
  readonly chapter: Chapter;
  /** The clock, where the sheet has no room for it. */
  readonly leftOver: Figure | null;
}

/** The fullest of the sheets that fit on one page; a pour of too many batches goes on over more. */
function sheetOf(context: BookContext, pour: Pour, id: string): PourSheet {
  const { job, paper } = context;
  const chapter = { id, title: titleOf(context, pour), startsPage: true };
  const fits = (blocks: readonly Block[]) =>
    layOutBook(
      {
        title: '',
        jobName: job.name,
        notice: '',
        chapters: [COVER, { ...chapter, blocks, onOnePage: true }],
      },
      paper,
    ).problems.every(({ code }) => code !== 'chapter-over-one-page');
  const clock = clockFigure(context, pour, id);
  const full = sheetBlocks(context, pour, id, clock);
  if (clock !== null && fits(full))
    return { chapter: { ...chapter, blocks: full, onOnePage: true }, leftOver: null };
  const plain = sheetBlocks(context, pour, id, null);
  return { chapter: { ...chapter, blocks: plain, onOnePage: fits(plain) }, leftOver: clock };
}

/** Stands before a sheet that is tried, as the title of the book heads the first chapter. */
const COVER: Chapter = { id: 'cover', title: '', startsPage: true, blocks: [] };

function sheetBlocks(context: BookContext, pour: Pour, id: string, clock: Figure | null): Block[] {
  const { job, facts: found, print } = context;
  const { batches, weather, findings } = pour;
  const strip = stripWords(context, pour);
  const refused = findings.filter(({ level }) => level !== 'note');
  return [
    ...notice('warning', [
      [
        'Respirator, waterproof gloves, boots and eye protection on before the first bag is opened. Nobody under the slab. Why: ',
        pageOf(POUR_PEOPLE),
        '.',
      ],
    ]),
    ...facts([
      ['Pour', orderWords(context, pour)],
      ['Mix', pour.mixName],
      [
        'In the forms',
        `${print.volume(pour.volumes.drawnFt3)}; mix ${print.volume(pour.volumes.totalFt3)} with overfill, waste and topping up`,
      ],
      ['A bag takes', perBagWords(context, pour)],
      [
        'In all',
        pour.bags === null
          ? null
          : `${counted(pour.bags.bags, 'bag')} in ${counted(batches.length, 'batch', 'batches')}`,
      ],
      ['People', peopleWords(context, pour)],
      [
        'A bucket',
        `${print.volume(found.pours.bucket.volumeFt3)}, ${print.mass(found.pours.bucket.weightLb)}: ${Number((100 * job.crew.bucketFill).toPrecision(3))} % full`,
      ],
      ['Time', timeWords(pour)],
      [
        'Weather',
        `${print.temperature(weather.airC)} in the air, ${print.temperature(weather.concreteC)} in the concrete, ${Math.round(100 * weather.humidityRatio)} % humidity. ${weather.dryingWords}`,
      ],
      ['Edge forms off', strip],
    ]),
    ...list(refused.map(({ words }) => words)),
    ...batchTable(context, pour, id),
    ...drawing(`${id}-clock`, clock, 'Batches and finish, from the first water.'),
    ...finishTable(context, pour, id),
  ];
}

function nameOf({ job }: BookContext, pieceId: string): string {
  return job.pieces.find(({ id }) => id === pieceId)?.name ?? pieceId;
}

/** Pieces that the sheet tells in their order. */
const MOST_IN_ORDER = 12;

/** Pieces in the order in which they are filled. */
function orderWords(context: BookContext, { clock, pieces }: Pour): string {
  const order =
    clock === null ? pieces.map(({ pieceId }) => pieceId) : clock.order.map(({ pieceId }) => pieceId);
  const names = [...new Set(order)].map((pieceId) => {
    const copies = pieces.find((piece) => piece.pieceId === pieceId)?.copies ?? 1;
    return copies > 1 ? `${nameOf(context, pieceId)} (${copies})` : nameOf(context, pieceId);
  });
  const shown = names.slice(0, MOST_IN_ORDER);
  const rest = names.length - shown.length;
  return `${shown.join(', then ')}${rest > 0 ? `, then ${rest} more as the batches say` : ''}`;
}

function perBagWords({ print }: BookContext, { bags, colour }: Pour): string {
  if (bags === null)
    return 'Not known: what the bag says is not in the job, so there are no batches. Order by the volume.';
  const { waterGal, waterLb, pigmentLb, waterCementRatio } = bags.perBag;
  const parts = [
    waterGal === null || waterLb === null
      ? 'no water that the bag allows is stated'
      : `${print.water(waterGal)} of water (${print.mass(waterLb)})`,
    ...(colour === null
      ? []
      : [
          pigmentLb === null
            ? `no amount of ${colour.pigment} can be given`
            : `${print.mass(pigmentLb)} of ${colour.pigment}`,
        ]),
    ...(waterCementRatio === null ? [] : [`water to cement ${waterCementRatio.toFixed(2)}`]),
  ];
  return `${parts.join('; ')}. The same in every batch; never add water later.`;
}

function peopleWords({ job }: BookContext, { clock }: Pour): string {
  const { people, mixers } = job.crew;
  const all = `${counted(people, 'person', 'people')}, ${counted(mixers, 'mixer')}`;
  if (clock === null) return all;
  const { pace, leastCrew } = clock;
  const shares = pace.isAlone
    ? 'one mixes and places in turn'
    : `${pace.mixers} at ${pace.mixers === 1 ? 'the mixer' : 'the mixers'}, ${pace.placers} to carry and place`;
  const least =
    leastCrew === null
      ? ''
      : `. Fewest who have ten minutes to spare: ${counted(leastCrew.people, 'person', 'people')} with ${counted(leastCrew.mixers, 'mixer')}`;
  return `${all}: ${shares}${least}`;
}

function timeWords({ clock }: Pour): string | null {
  if (clock === null) return null;
  const slack = Math.round(clock.leastSlackMinutes);
  const spare =
    slack < 0
      ? `${-slack} min too late at the worst place: see below`
      : `${slack} min to spare at the tightest place`;
  return `${Math.round(clock.workingMinutes)} min of working time from the water on; ${spare}`;
}

/** Earliest day for the edge forms, one where all pieces agree. */
function stripWords({ facts: { pieces }, print }: BookContext, pour: Pour): string {
  const days = pour.pieces.map(({ pieceId }) => {
    const found = pieces.find(({ alike }) => alike.some(({ id }) => id === pieceId));
    return found?.earliest.find(({ id }) => id === 'edge-forms-off')?.day ?? null;
  });
  const known = days.flatMap((day) => day ?? []);
  if (known.length < days.length) return 'not within a year at these temperatures';
  return `not before ${print.day(Math.max(...known))}`;
}

/** Batches as they are mixed and placed, then each form as it is finished. */
function clockFigure(context: BookContext, pour: Pour, id: string): Figure | null {
  const { clock, batches } = pour;
  if (clock === null) return null;
  const ofBatches = batches.flatMap(({ number, waterMinutes, readyMinutes, placedMinutes }): ClockRow[] => [
    { label: `batch ${number}`, fromMin: waterMinutes, toMin: readyMinutes, kind: 'mix' },
    { label: `batch ${number}`, fromMin: readyMinutes, toMin: placedMinutes, kind: 'place' },
  ]);
  const ofForms = clock.finish.map(({ pieceId, copy, kind, fromMinutes, toMinutes }): ClockRow => {
    const piece = context.job.pieces.find((one) => one.id === pieceId);
    const label = `${nameOf(context, pieceId)}${(piece?.copies ?? 1) > 1 ? ` ${copy}` : ''}`;
    return { label, fromMin: fromMinutes, toMin: toMinutes, kind: kind === 'bleed' ? 'wait' : 'work' };
  });
  const room = figureRoom(context.paper, FIGURE_SHARES.clock);
  const figure = pourClock(
    { id: `${id}-clock`, title: 'The pour by the clock', rows: [...ofBatches, ...ofForms] },
    room,
  );
  return figure !== null && figure.heightIn <= room.heightIn ? figure : null;
}

interface LaidSheet extends PourSheet {
  readonly pour: Pour;
  readonly id: string;
}

/** What the work does to people, then of each pour what was found and how it is struck off, and the steps of every finish. */
function behindChapter(context: BookContext, sheets: readonly LaidSheet[]): Chapter {
  const { pours } = context.facts;
  return {
    id: 'pour-behind',
    title: 'Behind the pour sheets',
    startsPage: true,
    blocks: [
      heading(POUR_PEOPLE, 'People'),
      ...notice('warning', pours.cautions),
      ...foundList(pours.findings),
      ...stepBlocks(sheets),
      ...sheets.flatMap((sheet) => behindBlocks(context, sheet)),
    ],
  };
}

const POUR_PEOPLE = 'pour-people';

function behindBlocks(context: BookContext, { pour, id, leftOver }: LaidSheet): Block[] {
  return [
    heading(`${id}-behind`, titleOf(context, pour)),
    ...drawing(`${id}-clock`, leftOver, 'Batches and finish, from the first water.'),
    ...foundList(pour.findings),
    ...pour.screed.flatMap((screed): Block[] => [
      paragraph([strong(`${nameOf(context, screed.pieceId)}: `), screed.datumWords]),
      ...list([...screed.runs, ...screed.rails, ...screed.plugs].map(({ words }) => words)),
    ]),
  ];
}

function foundList(findings: readonly PourFinding[]): Block[] {
  return list(findings.map(({ words, source }): Words => `${sentence(words)} (${source})`));
}

/** The steps of a finish in words, alike for every form, with their sources. */
function stepBlocks(sheets: readonly LaidSheet[]): Block[] {
  const steps = sheets.flatMap(({ pour }) => pour.clock?.finish ?? []);
  if (steps.length === 0) return [];
  const sources = [...new Set(steps.map(({ source }) => source))];
  return [
    heading('pour-steps', 'Steps of every finish'),
    ...numbered([...new Set(steps.map(({ words }) => words))]),
    paragraph(`Source: ${sources.join('; ')}.`),
  ];
}
