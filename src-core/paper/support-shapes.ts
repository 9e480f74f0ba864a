/** What a piece stands on as plan loops, and what it is called on a drawing. */
import type { Support, SupportKind } from '../job';
import { bearingPatches } from '../job';
import type { Point } from '../outline';
import { directionAt, leftOf, moved } from '../outline';

const KINDS: { readonly [K in SupportKind]: string } = {
  cabinet: 'cabinet',
  wall: 'wall',
  ledger: 'ledger',
  pier: 'pier',
  leg: 'leg',
  bracket: 'bracket',
  'full-bed': 'mortar bed',
};

/** Its name, else its kind; of a row of brackets with their count. */
export function supportName(support: Support): string {
  const name = support.name ?? KINDS[support.kind];
  return support.kind === 'bracket' && support.roots.length > 1 ? `${name} (${support.roots.length})` : name;
}

/** Plan of the whole support: of a cabinet its carcass, else what bears. */
export function supportLoops(support: Support, outer: readonly Point[]): (readonly Point[])[] {
  if (support.kind === 'cabinet') return [cabinetLoop(support)];
  return bearingPatches(support, outer).map(({ corners }) => corners);
}

function cabinetLoop({ corner, angleDeg, widthIn, depthIn }: Extract<Support, { kind: 'cabinet' }>): Point[] {
  const along = directionAt((angleDeg * Math.PI) / 180);
  const right = moved(corner, along, widthIn);
  return [corner, right, moved(right, leftOf(along), depthIn), moved(corner, leftOf(along), depthIn)];
}
