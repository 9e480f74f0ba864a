/** Steel of a piece as it is laid: its plan, and lists of strips, bars, trimmers, standoffs and cover. */
import type { Region } from '../../src-core/outline';
import type { SteelPlacing } from '../../src-core/steel-placing';
import type { Trace } from '../../src-core/trace';
import { printLength, type UnitSystem } from '../../src-core/units';
import type { DrawnLine } from './board-rows';
import type { PlacePx } from './fit-to-width';
import { fitToWidth, regionPath } from './fit-to-width';

const ROOM = { mostHeightPx: 240, marginPx: 8 } as const;

export interface SteelDrawing {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly outline: string;
  readonly strips: readonly { readonly key: string; readonly outline: string }[];
  readonly laps: readonly { readonly key: string; readonly outline: string }[];
  readonly names: readonly { readonly key: string; readonly words: string; readonly at: PlacePx }[];
  readonly bars: readonly DrawnLine[];
  readonly trimmers: readonly DrawnLine[];
  readonly joints: readonly DrawnLine[];
  readonly standoffs: readonly { readonly key: string; readonly at: PlacePx }[];
}

/** The placing in a width; null while there is none. */
export function steelDrawing({ drawing, meshes }: SteelPlacing, widthPx: number): SteelDrawing | null {
  const fitted = fitToWidth(drawing.bounds, { ...ROOM, widthPx });
  if (fitted === null) return null;
  const { toPx } = fitted;
  const shape = ({ id, shape: region }: { readonly id: string; readonly shape: Region }) => ({
    key: id,
    outline: regionPath(region, fitted),
  });
  const line = ({ id, from, to }: (typeof drawing.bars)[number] | (typeof drawing.trimmers)[number]) => ({
    key: id,
    from: toPx(from),
    to: toPx(to),
  });
  const labels = new Map(meshes.flatMap(({ strips }) => strips.map(({ id, label }) => [id, label])));
  return {
    widthPx,
    heightPx: fitted.heightPx,
    outline: regionPath(drawing.outline, fitted),
    strips: drawing.strips.map(shape),
    laps: drawing.laps.map(shape),
    names: drawing.strips.map(({ id, labelAt }) => ({
      key: id,
      words: labels.get(id) ?? '',
      at: toPx(labelAt),
    })),
    bars: drawing.bars.map(line),
    trimmers: drawing.trimmers.map(line),
    joints: drawing.joints.map(line),
    standoffs: drawing.standoffs.map(({ id, at }) => ({ key: id, at: toPx(at) })),
  };
}

export interface SteelRow {
  readonly key: string;
  /** "M1", "A1", "T1", "51 standoffs". */
  readonly mark: string;
  readonly words: string;
  readonly trace: Trace;
}

/** What is cut and laid, in the order of the work: strips, bars, trimmers, standoffs, fabric or fibre, joints. */
export function steelRows(placing: SteelPlacing, system: UnitSystem): SteelRow[] {
  const length = (valueIn: number) => printLength(valueIn, { system });
  return [
    ...placing.meshes.flatMap(({ strips }) =>
      strips.map(({ id, trace, label, lengthIn, widthIn, isTurned }) => ({
        key: id,
        mark: label,
        words: `mesh ${length(lengthIn)} by ${length(widthIn)}${isTurned ? ', laid across' : ''}`,
        trace,
      })),
    ),
    ...placing.bars.flatMap(({ marks }) =>
      marks.map(({ id, trace, mark, count, cutLengthIn, shape }) => ({
        key: id,
        mark,
        words: `${count} of ${length(cutLengthIn)}${HOOKS[shape]}`,
        trace,
      })),
    ),
    ...placing.trimmers.map(({ id, trace, label, words }) => ({ key: id, mark: label, words, trace })),
    ...placing.standoffSets.map(({ id, layerId, count, heightIn, spacingIn }) => ({
      key: id,
      mark: count === 1 ? '1 standoff' : `${count} standoffs`,
      words: `${length(heightIn)} high, ${length(spacingIn)} apart at the most`,
      trace: { pieceId: placing.pieceId, part: { kind: 'steel' as const, id: layerId } },
    })),
    ...placing.others.map(({ id, kind, trace, words }) => ({
      key: id,
      mark: OTHER_MARKS[kind],
      words,
      trace,
    })),
    ...placing.joints.map(({ id, kind, trace, words }) => ({
      key: id,
      mark: JOINT_MARKS[kind],
      words,
      trace,
    })),
  ];
}

const OTHER_MARKS = { fabric: 'Fabric', fibre: 'Fibre' } as const;
const JOINT_MARKS = {
  control: 'Control joint',
  isolation: 'Isolation strip',
  construction: 'Construction joint',
} as const;
const HOOKS = { straight: '', 'one-hook': ', one end hooked', 'two-hooks': ', both ends hooked' } as const;

export interface CoverRow {
  readonly key: string;
  readonly words: string;
  readonly isShort: boolean;
}

/** Cover that is left and how far mesh sags, what is short first. */
export function coverRows({ covers, sags }: SteelPlacing): CoverRow[] {
  const rows = [
    ...covers.map(({ id, words, level }) => ({ key: id, words, isShort: level !== 'enough' })),
    ...sags.map(({ id, words, level }) => ({ key: id, words, isShort: level === 'caution' })),
  ];
  return rows.sort((a, b) => Number(b.isShort) - Number(a.isShort));
}
