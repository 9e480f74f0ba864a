import { usePiece } from '../state/store-context';
import { CompareVersions } from './CompareVersions';

/** The right panel for "Compare": the selected piece as drawn beside another version of it. Each piece begins as drawn. */
export function ComparePanel() {
  const piece = usePiece();
  return <CompareVersions key={piece.id} piece={piece} />;
}
