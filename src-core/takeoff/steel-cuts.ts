/** Mesh of all pieces cut from sheets, and bars from lengths. */
import type { SheetList, SheetPiece, StickList, StickPiece } from '../cutting';
import { cutSheets, cutSticks } from '../cutting';
import type { Job, Reinforcement } from '../job';
import type { BarLength, MeshPlacing, MeshStrip, StockUsed } from '../steel-placing';
import { barLengths, SHIPPED_BAR_IN } from '../steel-placing';
import type { Trace } from '../trace';
import type { PieceTakeoff } from './piece-takeoff';
import { CUTTER_KERF_IN } from './practice';

/** A strip of mesh of one copy of a piece. */
export interface MeshPiece extends SheetPiece {
  readonly trace: Trace;
  /** "M1". */
  readonly label: string;
  readonly pieceId: string;
  readonly copy: number;
}

/** Strips of one mesh and the sheets that they come from. */
export interface MeshCuts {
  readonly id: string;
  readonly mesh: MeshLayer;
  readonly stock: StockUsed;
  readonly pieces: readonly MeshPiece[];
  readonly list: SheetList<MeshPiece>;
}

type MeshLayer = Extract<Reinforcement, { kind: 'mesh' }>;

/** A bar of one copy of a piece; a trimmer is recommended beside what is drawn. */
export interface BarPiece extends StickPiece {
  readonly trace: Trace;
  /** "A1", or "T1" of a trimmer. */
  readonly label: string;
  readonly isTrimmer: boolean;
  readonly pieceId: string;
  readonly copy: number;
}

/** Bars of one diameter and the lengths that they come from. */
export interface BarCuts {
  readonly id: string;
  readonly barIn: number;
  readonly pieces: readonly BarPiece[];
  readonly list: StickList<BarPiece>;
}

/** Mesh by its wires and the sheet it comes in. Mesh alike both ways may be cut from a sheet either way round. */
export function cutMesh(job: Job, pieces: readonly PieceTakeoff[]): MeshCuts[] {
  const kinds = new Map<string, Omit<MeshCuts, 'list'>>();
  for (const { pieceId, copies, steel } of pieces) {
    for (const placing of steel?.meshes ?? []) {
      const mesh = layerOf(job, pieceId, placing);
      const id = meshId(mesh, placing.stock);
      const own = copiesOf(copies).flatMap((copy) =>
        placing.strips.map((strip) => meshPiece(strip, mesh, { pieceId, copy })),
      );
      const known = kinds.get(id);
      kinds.set(id, { id, mesh, stock: placing.stock, pieces: [...(known?.pieces ?? []), ...own] });
    }
  }
  return [...kinds.values()].map((kind) => ({
    ...kind,
    list: cutSheets({ pieces: kind.pieces, sheet: kind.stock, kerfIn: CUTTER_KERF_IN }),
  }));
}

function layerOf({ pieces }: Job, pieceId: string, { id }: MeshPlacing): MeshLayer {
  const layer = pieces.find((piece) => piece.id === pieceId)?.reinforcement.find((one) => one.id === id);
  if (layer?.kind !== 'mesh') throw new Error(`${id} of ${pieceId} is placed as mesh and is none`);
  return layer;
}

function meshId(
  { wireIn, spacingIn, crossWireIn, crossSpacingIn }: MeshLayer,
  { lengthIn, widthIn }: StockUsed,
): string {
  return `mesh/${[wireIn, spacingIn, crossWireIn, crossSpacingIn, lengthIn, widthIn].join('/')}`;
}

function meshPiece(
  { id, trace, label, lengthIn, widthIn }: MeshStrip,
  { wireIn, crossWireIn, spacingIn, crossSpacingIn }: MeshLayer,
  of: { readonly pieceId: string; readonly copy: number },
): MeshPiece {
  const mayTurn = wireIn === crossWireIn && spacingIn === crossSpacingIn;
  return { id: copyId(of, id), trace, label, lengthIn, widthIn, mayTurn, ...of };
}

/** Bars by their diameter: those drawn, and the trimmers that are recommended. */
export function cutBars(job: Job, pieces: readonly PieceTakeoff[]): BarCuts[] {
  const kinds = new Map<string, Omit<BarCuts, 'list'>>();
  const add = (barIn: number, own: readonly BarPiece[]) => {
    if (own.length === 0) return;
    const id = `bars/${barIn}`;
    kinds.set(id, { id, barIn, pieces: [...(kinds.get(id)?.pieces ?? []), ...own] });
  };
  for (const { pieceId, copies, steel } of pieces) {
    for (const copy of copiesOf(copies)) {
      const of = { pieceId, copy };
      for (const { barIn, bars } of steel?.bars ?? []) {
        add(
          barIn,
          bars.map(({ id, trace, mark, cutLengthIn }) => ({
            id: copyId(of, id),
            trace,
            label: mark,
            isTrimmer: false,
            lengthIn: cutLengthIn,
            ...of,
          })),
        );
      }
      for (const { id, trace, label, status, barIn, lengthIn } of steel?.trimmers ?? []) {
        if (status === 'recommended') {
          add(barIn, [{ id: copyId(of, id), trace, label, isTrimmer: true, lengthIn, ...of }]);
        }
      }
    }
  }
  return [...kinds.values()].map((kind) => ({
    ...kind,
    list: cutSticks({ pieces: kind.pieces, stocks: barStocks(job, kind.barIn), kerfIn: CUTTER_KERF_IN }),
  }));
}

/** Lengths of the stock, else the shipped one. */
function barStocks(job: Job, barIn: number): readonly BarLength[] {
  const lengths = barLengths(job, barIn);
  return lengths.length > 0 ? lengths : [{ id: 'bar', lengthIn: SHIPPED_BAR_IN, price: null }];
}

function copiesOf(copies: number): number[] {
  return Array.from({ length: copies }, (_, k) => k + 1);
}

function copyId({ pieceId, copy }: { readonly pieceId: string; readonly copy: number }, id: string): string {
  return copy === 1 ? `${pieceId}/${id}` : `${pieceId}/${id}/copy/${copy}`;
}
