/** What a piece stands on, each support with its place: the table to set brackets, ledgers and piers out by. */
import type { Piece, Support } from '../job';
import type { Point } from '../outline';
import type { Block } from '../sheet';
import { columns, heading, paragraph, table } from './blocks';
import type { BookContext } from './context';
import type { PrintedPlace } from './place';
import { fromTo, placesOf } from './place';
import { counted } from './print';
import { supportFixing, supportSize, supportWords } from './support-words';

/** Supports that stay, then those that stand for a while. */
export function supportBlocks(context: BookContext, piece: Piece, id: string): Block[] {
  const staying = piece.supports.filter(({ lastDay }) => lastDay === null);
  const passing = piece.supports.filter(({ lastDay }) => lastDay !== null);
  const rows = (supports: readonly Support[]) => supports.flatMap((one) => supportRows(context, piece, one));
  return [
    heading(`${id}-supports`, 'What it stands on'),
    ...(piece.supports.length === 0
      ? [paragraph('Nothing is drawn under it.')]
      : [
          paragraph(
            'Measured along the plan from the left and from the front of the piece: a cabinet to its front left corner, a wall or ledger along its centre line, a bracket to where its arm leaves the wall, all else to its middle.',
          ),
        ]),
    ...table(`${id}-supports-table`, 'Supports that stay', COLUMNS, rows(staying)),
    ...table(`${id}-props-table`, 'Temporary supports, as drawn in the job', COLUMNS, rows(passing)),
  ];
}

const COLUMNS = columns(
  ['What', 1.7],
  ['From the left', 1.25],
  ['From the front', 1.25],
  ['Size', 1.7],
  ['How it holds, and when', 2.4],
);

function supportRows(context: BookContext, piece: Piece, support: Support): string[][] {
  const { job, print } = context;
  const place = placesOf(job, piece);
  const name = supportWords(support);
  const rest = [supportSize(support, print), holdsWhen(context, support)];
  if (support.kind === 'bracket') {
    return support.roots.map((root, k) => {
      const { fromLeft, fromFront } = place(root);
      const which = support.roots.length === 1 ? name : `${name}, ${k + 1} of ${support.roots.length}`;
      return [which, fromLeft, fromFront, ...(k === 0 ? rest : ['as the first', 'as the first'])];
    });
  }
  const at = printedExtent(support, place);
  return [[name, at?.fromLeft ?? '', at?.fromFront ?? '', ...rest]];
}

function printedExtent(
  support: Exclude<Support, { kind: 'bracket' }>,
  place: (at: Point) => PrintedPlace,
): PrintedPlace | null {
  switch (support.kind) {
    case 'cabinet':
      return place(support.corner);
    case 'wall':
    case 'ledger': {
      const [a, b] = [place(support.from), place(support.to)];
      return { fromLeft: fromTo(a.fromLeft, b.fromLeft), fromFront: fromTo(a.fromFront, b.fromFront) };
    }
    case 'pier':
      return place(support.footprint.centre);
    case 'leg':
      return place(support.centre);
    case 'full-bed':
      return null;
  }
}

/** Fixing, and the days on which it stands where it is not there all along. */
function holdsWhen({ print }: BookContext, support: Support): string {
  const { firstDay, lastDay } = support;
  const fixing = supportFixing(support, print);
  if (lastDay !== null)
    return `${fixing}; stands ${counted(lastDay - firstDay + 1, 'day')}, to the end of ${print.day(lastDay)}`;
  return firstDay === 0 ? fixing : `${fixing}; comes on ${print.day(firstDay)}`;
}
