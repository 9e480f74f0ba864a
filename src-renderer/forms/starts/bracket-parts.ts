/** Arms and fixings of another kind that keep what both share. */
import { STOCK_ARMS } from '../../../src-core/bracket';
import type { ArmSection, BracketFixing } from '../../../src-core/job';

/** The lightest usual arm of a kind; a section with the same fields keeps its yield. */
export function changeArm(old: ArmSection, kind: ArmSection['kind']): ArmSection {
  if (old.kind === kind) return old;
  const usual = STOCK_ARMS.find(({ arm }) => arm.kind === kind)!.arm;
  return 'yieldPsi' in old && 'yieldPsi' in usual ? { ...usual, yieldPsi: old.yieldPsi } : usual;
}

/** Usual fixing of each kind on timber studs. Common practice, no source. */
const USUAL: { readonly [K in BracketFixing['kind']]: BracketFixing } = {
  screws: threaded('screws', 0.25),
  lags: threaded('lags', 0.375),
  'through-bolts': {
    kind: 'through-bolts',
    diameterIn: 0.375,
    topCount: 1,
    totalCount: 2,
    leverIn: 5,
    washerIn: 1,
  },
  // nothing is rated until its maker has said so; the check refuses it as it stands
  rated: { kind: 'rated', ratedLoadLbf: 0, ratedAtIn: 8, ratedBy: 'maker' },
};

/** A fixing of another kind, with the fasteners as many and as far apart as before. */
export function changeFixing(old: BracketFixing, kind: BracketFixing['kind']): BracketFixing {
  if (old.kind === kind) return old;
  const usual = USUAL[kind];
  if (old.kind === 'rated' || usual.kind === 'rated') return usual;
  const { topCount, totalCount, leverIn } = old;
  const rows = { topCount, totalCount, leverIn };
  if (usual.kind === 'through-bolts' || old.kind === 'through-bolts') return { ...usual, ...rows };
  return { ...usual, ...rows, threadIn: old.threadIn, lateralLbf: null };
}

function threaded<K extends 'screws' | 'lags'>(kind: K, diameterIn: number) {
  return {
    kind,
    diameterIn,
    threadIn: 2.5,
    topCount: 1,
    totalCount: 2,
    leverIn: 5,
    specificGravity: 0.42,
    lateralLbf: null,
  };
}
