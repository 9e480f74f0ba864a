import { useMemo } from 'react';
import { cutoutSizeDimensions, pieceDimensions } from '../../src-core/drawing';
import type { Job, Piece } from '../../src-core/job';
import type { Part } from '../state/selection';
import { useWindow } from '../state/store-context';
import { useVerdict } from '../state/verdict-store';
import type { Frame } from './frame';
import type { PlanLabels } from './plan-labels';
import { placeLabels } from './plan-labels';

const WHOLE: Part = { kind: 'piece' };

/** What is written on the plan, laid out anew only when it or the frame has changed. */
export function usePlanLabels(job: Job, piece: Piece, frame: Frame): PlanLabels {
  const part = useWindow(({ selection }) => (selection?.pieceId === piece.id ? selection.part : WHOLE));
  const governing = useVerdict(piece.id)?.result.governing ?? null;
  const cutoutId = part.kind === 'cutout' ? part.id : null;
  const dimensions = useMemo(() => {
    const cutout = piece.cutouts.find(({ id }) => id === cutoutId);
    return [...(cutout === undefined ? [] : cutoutSizeDimensions(cutout)), ...pieceDimensions(piece)];
  }, [piece, cutoutId]);
  const { pieces, shownIn: system } = job;
  return useMemo(
    () => placeLabels({ frame, system, pieces, piece, part, dimensions, governing }),
    [frame, system, pieces, piece, part, dimensions, governing],
  );
}
