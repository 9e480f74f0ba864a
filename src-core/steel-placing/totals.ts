/** Counts and lengths of one copy of a piece, by what is bought or done. */
import type { Piece } from '../job';
import { pieceTrace, steelTrace } from './traces';
import type {
  BarPlacing,
  MeshPlacing,
  OtherSteel,
  PlacedJoint,
  StandoffSet,
  SteelTotal,
  Trimmer,
} from './types';

export interface ToTotal {
  readonly meshes: readonly MeshPlacing[];
  readonly bars: readonly BarPlacing[];
  readonly trimmers: readonly Trimmer[];
  readonly standoffSets: readonly StandoffSet[];
  readonly others: readonly OtherSteel[];
  readonly joints: readonly PlacedJoint[];
}

/** One row for each layer and each kind of trimmer, standoff and joint; none for what there is none of. */
export function steelTotals(piece: Piece, placed: ToTotal): SteelTotal[] {
  const nothing = { lengthIn: null, areaIn2: null, massLb: null };
  const recommended = placed.trimmers.filter(({ status }) => status === 'recommended');
  const rows: SteelTotal[] = [
    ...placed.meshes.map(({ id, trace, words, strips, areaIn2, massLb }): SteelTotal => {
      return {
        id: `total-${id}`,
        trace,
        kind: 'mesh',
        words,
        count: strips.length,
        lengthIn: null,
        areaIn2,
        massLb,
      };
    }),
    ...placed.bars.map(({ id, trace, words, bars, lengthIn, massLb }): SteelTotal => {
      return {
        id: `total-${id}`,
        trace,
        kind: 'bars',
        words,
        count: bars.length,
        lengthIn,
        areaIn2: null,
        massLb,
      };
    }),
    {
      id: 'total-trimmers',
      trace: pieceTrace(piece),
      kind: 'trimmers',
      words: 'Trimmers across corners, recommended',
      count: recommended.length,
      lengthIn: sumOf(recommended, ({ lengthIn }) => lengthIn),
      areaIn2: null,
      massLb: sumOf(recommended, ({ massLb }) => massLb),
    },
    ...placed.standoffSets.map(({ id, layerId, count }): SteelTotal => {
      const trace = steelTrace(piece, layerId);
      return { id: `total-${id}`, trace, kind: 'standoffs', words: 'Standoffs', count, ...nothing };
    }),
    ...placed.others.map(({ id, trace, kind, words, areaIn2, massLb }): SteelTotal => {
      return {
        id: `total-${id}`,
        trace,
        kind,
        words,
        count: 1,
        lengthIn: null,
        areaIn2: kind === 'fabric' ? areaIn2 : null,
        massLb,
      };
    }),
    ...JOINT_ROWS.map(({ joint, kind, words }): SteelTotal => {
      const joints = placed.joints.filter(
        (each) => each.kind === joint && !(joint === 'isolation' && each.widthIn === 0),
      );
      const lengthIn = sumOf(joints, (each) => each.lengthIn);
      return {
        id: `total-${kind}`,
        trace: pieceTrace(piece),
        kind,
        words,
        count: joints.length,
        lengthIn,
        areaIn2: null,
        massLb: null,
      };
    }),
  ];
  return rows.filter(({ count }) => count > 0);
}

const JOINT_ROWS = [
  { joint: 'isolation', kind: 'isolation-strip', words: 'Isolation strip' },
  { joint: 'control', kind: 'control-joint', words: 'Control joints' },
  { joint: 'construction', kind: 'construction-joint', words: 'Construction joints' },
] as const;

function sumOf<Item>(items: readonly Item[], measure: (item: Item) => number): number {
  return items.reduce((sum, item) => sum + measure(item), 0);
}
