/** Tables of one pour: its batches, and the clock of its finish. */
import type { Batch, FinishKind, FinishStep, Pour } from '../pour';
import type { Block, Words } from '../sheet';
import { columns, table } from './blocks';
import type { BookContext } from './context';
import { printClock } from './print';

/** Every batch with what goes into it, when, and a box for the real time. */
export function batchTable(
  { job, print }: BookContext,
  { batches, colour, clock }: Pour,
  id: string,
): Block[] {
  const hasPigment = colour !== null;
  return table(
    `${id}-batches`,
    'Batches: hours and minutes from the first water',
    columns(
      ['No.', 0.6],
      ['Bags', 0.6, 'end'],
      ['Water', 1.3, 'end'],
      ...(hasPigment ? ([['Pigment', 1, 'end']] as const) : []),
      ['Water in', 0.9, 'end'],
      ['Ready', 0.8, 'end'],
      ['Placed', 0.9, 'end'],
      ['Into', 2.6],
      ['Real time', 1.1],
    ),
    batches.map((batch): Words[] => [
      String(batch.number),
      String(batch.bags),
      batch.waterGal === null ? 'see below' : print.water(batch.waterGal),
      ...(hasPigment ? [batch.pigmentLb === null ? 'see below' : print.mass(batch.pigmentLb)] : []),
      printClock(batch.waterMinutes),
      printClock(batch.readyMinutes),
      printClock(batch.placedMinutes),
      intoWords(
        batch,
        clock?.buckets ?? [],
        (pieceId) => job.pieces.find((piece) => piece.id === pieceId)?.name ?? pieceId,
      ),
      '',
    ]),
  );
}

interface IntoForm {
  readonly batch: number;
  readonly pieceId: string;
  readonly copy: number;
}

/** The forms that a batch goes into, in order; a batch that is all kept back says so. */
function intoWords(batch: Batch, buckets: readonly IntoForm[], nameOf: (pieceId: string) => string): string {
  const forms = buckets
    .filter((bucket) => bucket.batch === batch.number)
    .map(({ pieceId, copy }) => (copy > 1 ? `${nameOf(pieceId)}, copy ${copy}` : nameOf(pieceId)));
  const names = [...new Set(forms)];
  return names.length === 0 ? 'kept back for topping up' : names.join(', then ');
}

const FINISHES: readonly { readonly kind: FinishKind; readonly head: string }[] = [
  { kind: 'screed', head: 'Strike off' },
  { kind: 'screed-again', head: 'Again' },
  { kind: 'vibrate', head: 'Vibrate' },
  { kind: 'float', head: 'Float' },
  { kind: 'trowel', head: 'Trowel' },
];

/** A row for each form: when it is struck off, floated and trowelled. */
export function finishTable({ job }: BookContext, { clock }: Pour, id: string): Block[] {
  if (clock === null) return [];
  const stepOf = (pieceId: string, copy: number, kind: FinishKind): FinishStep | undefined =>
    clock.finish.find((step) => step.pieceId === pieceId && step.copy === copy && step.kind === kind);
  return table(
    `${id}-finish`,
    'Strike off and finish, in the order of the pour',
    columns(['Form', 2.4], ...FINISHES.map(({ head }) => [head, 1.2, 'end'] as const)),
    clock.order.map(({ pieceId, copy }) => {
      const piece = job.pieces.find(({ id: own }) => own === pieceId);
      const name = piece?.name ?? pieceId;
      return [
        (piece?.copies ?? 1) > 1 ? `${name}, copy ${copy}` : name,
        ...FINISHES.map(({ kind }) => {
          const step = stepOf(pieceId, copy, kind);
          return step === undefined ? '' : `${printClock(step.fromMinutes)} to ${printClock(step.toMinutes)}`;
        }),
      ];
    }),
  );
}
