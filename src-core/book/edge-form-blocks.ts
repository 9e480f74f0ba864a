/** The edge forms of one piece: strips with their ends, what seals and holds them, heights of the rim. */
import type { EdgeForm, EdgeForms, FormEnd, FormPart } from '../edge-forms';
import type { Piece } from '../job';
import type { Block } from '../sheet';
import type { Trace } from '../trace';
import { columns, facts, list, notice, table } from './blocks';
import type { BookContext } from './context';
import type { PieceFacts } from './facts';
import { markedParts } from './form-marks';
import { placesOf } from './place';
import { capital } from './print';

export function edgeFormBlocks(context: BookContext, { piece, takeoff }: PieceFacts, id: string): Block[] {
  const { print } = context;
  const { forms } = takeoff;
  if (forms === null) return list(takeoff.problems.map(({ sentence }) => sentence));
  return [
    ...table(
      `${id}-strips`,
      `Strips round ${piece.name}`,
      columns(
        ['Mark', 0.75],
        ['At', 1],
        ['Form', 2.3],
        ['Length', 1.1, 'end'],
        ['First end', 1.9],
        ['Second end', 1.9],
        ['Screws', 0.85, 'end'],
      ),
      markedParts(context.facts, forms).map(({ mark, form, part }) => [
        mark,
        partWords(piece, form.trace),
        formWords(context, form),
        print.length(part.longIn),
        endWords(part.start, form),
        endWords(part.end, form),
        part.screwsAtIn.length === 0 ? 'none' : String(part.screwsAtIn.length),
      ]),
    ),
    ...screwSpacing(context, forms),
    ...rimTable(context, piece, forms, id),
    ...notice('caution', forms.cautions),
  ];
}

/** "Edge 3", "Sink". */
function partWords({ cutouts }: Piece, { part }: Trace): string {
  switch (part.kind) {
    case 'edge':
    case 'corner':
      return `${capital(part.kind)} ${part.index + 1}`;
    case 'cutout': {
      const cutout = cutouts.find((one) => one.id === part.id);
      return cutout?.name ?? capital(cutout?.purpose ?? part.id);
    }
    case 'piece':
      return 'All round';
    case 'support':
    case 'steel':
    case 'joint':
    case 'section':
      return part.id;
  }
}

function formWords({ print }: BookContext, form: EdgeForm): string {
  const kind =
    form.material === 'isolation-strip'
      ? `isolation strip, ${print.length(form.faceIn)} thick`
      : `${KINDS[form.kind]}, ${print.length(form.heightIn)} high`;
  const bend =
    form.shape === 'straight' ? '' : `, ${MADE[form.made]} to ${print.length(form.radiusIn)} radius`;
  const groove = form.groove === null ? '' : ', strip for the drip groove on the deck';
  return `${kind}${bend}${groove}`;
}

const MADE: { readonly [M in Extract<EdgeForm, { shape: 'curved' }>['made']]: string } = {
  bent: 'bent',
  kerfed: 'kerfed and bent',
  'shaped-block': 'a block shaped',
};

const KINDS: { readonly [K in EdgeForm['kind']]: string } = {
  profiled: 'profiled',
  flat: 'flat',
  sink: 'opening',
};

const ENDS: { readonly [K in FormEnd['kind']]: string } = {
  mitre: 'mitre',
  'to-wall': 'to the wall',
  'to-form': 'against the next strip',
  tangent: 'to the curve',
  'in-line': 'in line with the next',
  joint: 'joint',
};

/** Cuts nearer to square than this are square, degrees. */
const SQUARE_DEG = 0.05;

function endWords({ kind, cutRad }: FormEnd, { material }: EdgeForm): string {
  const deg = Math.abs((cutRad * 180) / Math.PI);
  const what = ENDS[kind];
  if (deg < SQUARE_DEG) return `square, ${what}`;
  const longer = cutRad > 0 ? 'outer face longer' : 'slab face longer';
  return `${Number(deg.toFixed(1))}° ${what}${material === 'isolation-strip' ? '' : `, ${longer}`}`;
}

/** Spacing of the screws, tape, sealant, and what the wet concrete does to the strips. */
function screwSpacing({ print }: BookContext, { forms, screws, sealing, pressure }: EdgeForms): Block[] {
  const parts = forms.flatMap((form) => form.parts);
  const spacings = parts.flatMap(({ screwsAtIn }: FormPart) =>
    screwsAtIn.slice(1).map((at, k) => at - screwsAtIn[k]!),
  );
  const count = screws.reduce((sum, group) => sum + group.count, 0);
  return facts([
    [
      'Screws in all',
      count === 0
        ? null
        : `${count}${spacings.length === 0 ? '' : `, ${print.length(Math.max(...spacings))} apart at the most`}`,
    ],
    ['Tape', tapeWords(sealing.cornerTapeIn, sealing.jointTapeIn, print.length)],
    ['Bead of sealant', `${print.length(sealing.beadIn)}, along the foot of every strip and up every corner`],
    [
      'Braces',
      `every ${print.length(pressure.braceSpacingIn)}, against a push of ${print.forceUp(pressure.braceLbf)} each`,
    ],
  ]);
}

function tapeWords(cornerIn: number, jointIn: number, length: (valueIn: number) => string): string | null {
  if (cornerIn + jointIn === 0) return null;
  const parts = [
    ...(cornerIn > 0 ? [`${length(cornerIn)} at corners`] : []),
    ...(jointIn > 0 ? [`${length(jointIn)} at joints`] : []),
  ];
  return parts.join(', ');
}

/** One sentence for a level form, a table for one that is tilted. */
function rimTable({ job, print }: BookContext, piece: Piece, { rim }: EdgeForms, id: string): Block[] {
  const place = placesOf(job, piece);
  if (rim.fallIn === 0)
    return list([
      `${rim.words} Its rim stands ${print.length(piece.topElevationIn)} above the highest floor all round.`,
    ]);
  return [
    ...list([rim.words]),
    ...table(
      `${id}-rim`,
      'Heights of the rim',
      columns(
        ['Corner', 1],
        ['From the left', 1.4, 'end'],
        ['From the front', 1.4, 'end'],
        ['Below the highest mark', 1.6, 'end'],
        ['Above the highest floor', 1.6, 'end'],
      ),
      rim.marks.map(({ trace, at, belowHighestIn }) => {
        const { fromLeft, fromFront } = place(at);
        return [
          partWords(piece, trace),
          fromLeft,
          fromFront,
          print.fine(belowHighestIn),
          print.fine(piece.topElevationIn - belowHighestIn),
        ];
      }),
    ),
  ];
}
