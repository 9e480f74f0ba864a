/** Cut lists as lines of text, a line a stick, sheet or board. */
import type { Job } from '../../../src-core/job';
import type { JobTakeoff } from '../../../src-core/takeoff';
import { placeWords, stockWords, stripName } from '../../../src-core/takeoff';
import { printLength } from '../../../src-core/units';
import { section } from './result-lines';
import { wrap } from './wrap';

/** Every cut list of the take-off, each below its heading. */
export function cutSections(job: Job, takeoff: JobTakeoff): string[] {
  return [
    ...section('Cut list: edge forms', formLines(job, takeoff)),
    ...section('Cut list: backing boards', boardLines(job, takeoff)),
    ...section('Cut list: mesh', meshLines(job, takeoff)),
    ...section('Cut list: bars', barLines(job, takeoff)),
    ...section('Cut list: falsework', falseworkLines(job, takeoff)),
  ];
}

/** "48", "33-1/2": a length without its unit, which the heading of the list says. */
function bare(job: Job, lengthIn: number): string {
  return printLength(lengthIn, { system: job.shownIn }).replace(/ (in|mm)$/, '');
}

function unitWords({ shownIn }: Job): string {
  return shownIn === 'imperial' ? 'lengths in inches' : 'lengths in millimetres';
}

interface DrawnCut {
  readonly lengthIn: number;
  readonly words: string;
}

/** "stick 1 (8 ft): 48 (Counter, edge 3) + 33-1/2 (Ledge, edge 1); left 12". */
function stickLine(
  job: Job,
  what: string,
  stock: { readonly stockLengthIn: number; readonly leftIn: number },
  cuts: readonly DrawnCut[],
): string[] {
  const parts = cuts.map(({ lengthIn, words }) => `${bare(job, lengthIn)} (${words})`).join(' + ');
  const length = stockWords(stock.stockLengthIn, job.shownIn);
  return wrap(`${what} (${length}): ${parts}; left ${bare(job, stock.leftIn)}`, '  - ');
}

/** Which copy of its piece, from the second on. */
function copyWords(copy: number): string {
  return copy === 1 ? '' : `, copy ${copy}`;
}

function formLines(job: Job, { formCuts }: JobTakeoff): string[] {
  return formCuts.lists.flatMap(({ of, sticks, proof }) => [
    ...wrap(`${stripName(job, of)}, ${unitWords(job)}; ${proof.words}`),
    ...sticks.flatMap(({ stockLengthIn, offcutIn, cuts }, k) =>
      stickLine(
        job,
        `stick ${k + 1}`,
        { stockLengthIn, leftIn: offcutIn },
        cuts.map(({ strip: { longIn, trace, copy } }) => ({
          lengthIn: longIn,
          words: `${placeWords(job, trace)}${copyWords(copy)}`,
        })),
      ),
    ),
  ]);
}

function boardLines(job: Job, { pieces }: JobTakeoff): string[] {
  return pieces.flatMap(({ pieceId, copies, boards }) => {
    if (boards === null) return [];
    const { board, parts, boardCount } = boards;
    const name = placeWords(job, { pieceId, part: { kind: 'piece' } });
    const each = copies === 1 ? '' : `, for each of ${copies} copies`;
    return [
      ...wrap(`${name}, ${unitWords(job)}, along the front by front to back${each}`),
      ...Array.from({ length: boardCount }, (_, k) => k).flatMap((number) => {
        const own = parts.flatMap(({ placed, widthIn, depthIn }, i) =>
          placed.board === number
            ? [
                `part ${i + 1}, ${bare(job, widthIn)} x ${bare(job, depthIn)}${placed.isTurned ? ', turned' : ''}`,
              ]
            : [],
        );
        const size = `${bare(job, board.lengthIn)} x ${bare(job, board.widthIn)}`;
        return wrap(`board ${number + 1} (${size}): ${own.join(' + ')}`, '  - ');
      }),
    ];
  });
}

function meshLines(job: Job, { meshCuts }: JobTakeoff): string[] {
  return meshCuts.flatMap(({ stock, pieces, list }) => {
    const byId = new Map(pieces.map((piece) => [piece.id, piece]));
    const size = `${bare(job, stock.lengthIn)} x ${bare(job, stock.widthIn)}`;
    return [
      ...wrap(`Sheets of ${size}, ${unitWords(job)}; ${list.proof.words}`),
      ...list.sheets.flatMap((sheet, k) => {
        const own = sheet.pieces.map(({ id, lengthIn, widthIn }) => {
          const { label, trace, copy } = byId.get(id)!;
          const of = `${placeWords(job, { ...trace, part: { kind: 'piece' } })}${copyWords(copy)}`;
          return `${label} ${bare(job, lengthIn)} x ${bare(job, widthIn)} (${of})`;
        });
        return wrap(`sheet ${k + 1}: ${own.join(' + ')}`, '  - ');
      }),
    ];
  });
}

function barLines(job: Job, { barCuts }: JobTakeoff): string[] {
  return barCuts.flatMap(({ barIn, pieces, list }) => {
    const byId = new Map(pieces.map((piece) => [piece.id, piece]));
    return [
      ...wrap(`${printLength(barIn, { system: job.shownIn })} bars, ${unitWords(job)}; ${list.proof.words}`),
      ...list.sticks.flatMap(({ stockLengthIn, offcutIn, cuts }, k) =>
        stickLine(
          job,
          `bar ${k + 1}`,
          { stockLengthIn, leftIn: offcutIn },
          cuts.map(({ id, lengthIn }) => {
            const { label, trace, copy } = byId.get(id)!;
            const of = placeWords(job, { ...trace, part: { kind: 'piece' } });
            return { lengthIn, words: `${label}, ${of}${copyWords(copy)}` };
          }),
        ),
      ),
    ];
  });
}

function falseworkLines(job: Job, { falseworkCuts }: JobTakeoff): string[] {
  if (falseworkCuts === null) return [];
  const { bySize, sheets, sheetsFound } = falseworkCuts;
  return [
    ...bySize.flatMap(({ size, sticks, found }) => [
      ...wrap(`Lumber ${size}, ${unitWords(job)}; ${found}`),
      ...sticks.flatMap(({ stockLengthIn, offcutIn, cuts }, k) =>
        stickLine(
          job,
          `stick ${k + 1}`,
          { stockLengthIn, leftIn: offcutIn },
          cuts.map(({ lengthIn, what }) => ({ lengthIn, words: what })),
        ),
      ),
    ]),
    ...(sheets.length === 0
      ? []
      : wrap(`Deck panels, ${unitWords(job)}, the first measure along the sheet; ${sheetsFound}`)),
    ...sheets.flatMap(({ lengthIn, widthIn, pieces }, k) => {
      const own = pieces.map((piece) => `${bare(job, piece.lengthIn)} x ${bare(job, piece.widthIn)}`);
      return wrap(
        `sheet ${k + 1} (${bare(job, lengthIn)} x ${bare(job, widthIn)}): ${own.join(' + ')}`,
        '  - ',
      );
    }),
  ];
}
