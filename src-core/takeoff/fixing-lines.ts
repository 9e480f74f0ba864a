/** Tape, sealant and screws of all forms. */
import type { BackingBoards } from '../boards';
import { TAPE_PAST_IN } from '../boards';
import type { EdgeForms } from '../edge-forms';
import { BEAD_RADIUS_IN, sealantFor } from '../edge-forms';
import type { Job } from '../job';
import type { OpeningForm } from '../openings';
import { traceWord } from '../trace';
import { printLength } from '../units';
import { AS_COUNTED, bulkWaste, listLine, wholeUnits } from './list-line';
import type { PieceTakeoff } from './piece-takeoff';
import { SCREW_BOX, TAPE_ROLL_IN } from './practice';
import { sourceOf, sumOf } from './sources';
import { priceOfKind } from './stock-prices';
import type { ListLine, ListSource } from './types';
import { counted } from './words';

/** Tape over seams, joints and corners; sealant along the foot of every form; screws that hold forms from below, and their washers. */
export function fixingLines(job: Job, pieces: readonly PieceTakeoff[]): ListLine[] {
  return [...tapeLine(job, pieces), ...sealantLine(job, pieces), ...screwLines(job, pieces)];
}

function tapeLine(job: Job, pieces: readonly PieceTakeoff[]): ListLine[] {
  const waste = bulkWaste(job.forms.wasteRatio);
  const sources = pieces.flatMap((piece) => [
    ...seamsOf(piece.boards).flatMap((seam) =>
      sourceOf(job, piece, seam, seam.lengthIn + 2 * TAPE_PAST_IN, 'seam of the backing boards'),
    ),
    ...(piece.forms?.junctions ?? []).flatMap((junction) =>
      sourceOf(job, piece, junction, junction.tapeIn, junction.kind.replaceAll('-', ' ')),
    ),
  ]);
  const buy = wholeUnits(sumOf(sources), waste, TAPE_ROLL_IN);
  const roll = job.shownIn === 'imperial' ? '60 yd' : '55 m';
  return listLine(
    {
      id: 'tape',
      group: 'hardware',
      name: 'Tape over seams, joints and corners of the form',
      unit: 'in',
      sources,
      waste,
      buy,
      buyWords: `${counted(buy, 'roll', 'rolls')} of ${roll}`,
      price: priceOfKind(job, 'tape'),
    },
    job.shownIn,
  );
}

function seamsOf(boards: BackingBoards | null): BackingBoards['seams'] {
  return boards?.seams ?? [];
}

/** The bead by which `sealingOf` of the edge forms counts: along every form and plug, and up every corner. */
function sealantLine(job: Job, pieces: readonly PieceTakeoff[]): ListLine[] {
  const waste = bulkWaste(job.forms.wasteRatio);
  const sources = pieces.flatMap((piece) =>
    beadsOf(piece.forms).flatMap(({ item, beadIn, what }) => sourceOf(job, piece, item, beadIn, what)),
  );
  const buy = sealantFor(sumOf(sources) * (1 + waste.ratio)).tubes;
  return listLine(
    {
      id: 'sealant',
      group: 'hardware',
      name: `Sealant, a ${printLength(BEAD_RADIUS_IN, { system: job.shownIn })} bead along the foot and corners of the form`,
      unit: 'in',
      sources,
      waste,
      buy,
      buyWords: `${counted(buy, 'tube', 'tubes')} of ${job.shownIn === 'imperial' ? '10.1 fl oz' : '300 mL'}`,
      price: priceOfKind(job, 'sealant'),
    },
    job.shownIn,
  );
}

function beadsOf(forms: EdgeForms | null) {
  if (forms === null) return [];
  return [
    ...forms.forms.map((item) => ({ item, beadIn: item.slabFaceIn, what: 'foot of the form' })),
    ...forms.plugs.map((item) => ({ item, beadIn: item.perimeterIn, what: 'round the plug' })),
    ...forms.junctions.map((item) => ({ item, beadIn: item.sealantIn, what: 'corner' })),
  ];
}

function screwLines(job: Job, pieces: readonly PieceTakeoff[]): ListLine[] {
  const ofEdges = pieces.flatMap((piece) =>
    (piece.forms?.screws ?? [])
      .filter(({ trace }) => trace.part.kind !== 'cutout')
      .flatMap((group) => sourceOf(job, piece, group, group.count)),
  );
  const ofOpenings = pieces.flatMap((piece) =>
    piece.openings.flatMap((opening) => holdingScrews(job, piece, opening)),
  );
  const sources = [...ofEdges, ...ofOpenings];
  const boxes = wholeUnits(sumOf(sources), AS_COUNTED, SCREW_BOX);
  const washers = ofOpenings.map((source) => ({ ...source, id: `${source.id}/washers` }));
  return [
    ...listLine(
      {
        id: 'screws/forms',
        group: 'hardware',
        name: '#8 wood screws for forms, from below, as long as deck and form allow',
        unit: 'each',
        sources,
        waste: AS_COUNTED,
        buy: boxes,
        buyWords: `${counted(boxes, 'box', 'boxes')} of ${SCREW_BOX}`,
        price: priceOfKind(job, 'screws'),
      },
      job.shownIn,
    ),
    ...listLine(
      {
        id: 'washers',
        group: 'hardware',
        name: 'Washers under the screws that hold forms of openings down',
        unit: 'each',
        sources: washers,
        waste: AS_COUNTED,
        buy: sumOf(washers),
        buyWords: counted(sumOf(washers), 'washer', 'washers'),
        price: null,
      },
      job.shownIn,
    ),
  ];
}

/**
 * The screws of an opening's form hold it to the deck and down against its uplift, so they are one set: those along its strips or in its
 * plug, and as many more as the uplift asks beyond them. None where no screw from below finds enough wood.
 */
function holdingScrews(job: Job, piece: PieceTakeoff, { trace, holdDown }: OpeningForm): ListSource[] {
  if (holdDown.kind !== 'screws') return [];
  const word = traceWord(trace);
  const along = (piece.forms?.screws ?? []).filter((group) => traceWord(group.trace) === word);
  const drawn = along.reduce((sum, { count }) => sum + count, 0);
  return [
    ...along.flatMap((group) => sourceOf(job, piece, group, group.count)),
    ...sourceOf(job, piece, { id: `${word}/hold-down`, trace }, holdDown.count - drawn, 'against uplift'),
  ];
}
