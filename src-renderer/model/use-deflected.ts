import { useEffect } from 'react';
import { usePiece, useWindow } from '../state/store-context';
import { requestDeflected } from '../state/verdict-loop';
import { useVerdict } from '../state/verdict-store';

/** Asks for the bent shape of the chosen piece whenever it is shown and the last answer no longer fits. */
export function useDeflectedShape(): void {
  const piece = usePiece();
  const isWanted = useWindow(({ model }) => model.map === 'deflected' || model.showsReactions);
  const verdict = useVerdict(piece.id);
  const map = verdict?.map ?? null;
  const isReady = verdict !== undefined && verdict.quality === 'fine' && !verdict.isStale;
  // a new map comes of a new mesh, for which the shape is asked again
  useEffect(() => {
    if (isWanted && isReady && map !== null) requestDeflected(piece.id);
  }, [isWanted, isReady, map, piece.id]);
}
