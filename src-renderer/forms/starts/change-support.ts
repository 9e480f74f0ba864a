/** A support of another kind in the same place. */
import type { Piece, Support, SupportKind } from '../../../src-core/job';
import { newSupport, supportPlace } from './new-support';

type Hold = Support['hold'];

/**
 * The support as another kind: it keeps its id, name, days, gap, raise and hold. Its own stiffness goes, since each kind
 * states it in another unit; a wall and a ledger keep their line.
 */
export function changeSupport(old: Support, kind: SupportKind, piece: Piece): Support {
  if (old.kind === kind) return old;
  const made = newSupport(kind, piece, old.id, supportPlace(old));
  const { firstDay, lastDay, gapIn, raisedIn, hold } = old;
  const shared = {
    firstDay,
    lastDay,
    gapIn,
    raisedIn,
    hold,
    ...(old.name !== undefined && { name: old.name }),
  };
  const isLine = (support: Support) => support.kind === 'wall' || support.kind === 'ledger';
  const line = isLine(old) && isLine(made) && 'from' in old ? { from: old.from, to: old.to } : {};
  return { ...made, ...shared, ...line } as Support;
}

/** Resting, or tied with usual straps that nobody has rated yet. */
export function changeHold(old: Hold, kind: Hold['kind']): Hold {
  if (old.kind === kind) return old;
  if (kind === 'resting') return { kind };
  return { kind, spacingIn: 16, ratingLbf: null, stiffness: { low: 2_000, high: 20_000 } };
}

type Footprint = Extract<Support, { kind: 'pier' }>['footprint'];

/** A pier's footprint round or square, as wide as before. */
export function changeFootprint(old: Footprint, kind: Footprint['kind']): Footprint {
  if (old.kind === kind) return old;
  if (old.kind === 'rectangle') {
    return { kind: 'circle', centre: old.centre, diameterIn: Math.min(old.widthIn, old.depthIn) };
  }
  const { centre, diameterIn } = old;
  return { kind: 'rectangle', centre, widthIn: diameterIn, depthIn: diameterIn, angleDeg: 0 };
}
