import { useJob, usePiece, useWindow } from '../state/store-context';
import { useVerdict, useVerdicts } from '../state/verdict-store';
import { MapLegend } from './MapLegend';
import styles from './ModelLegend.module.css';
import { SagLegend } from './SagLegend';
import { exaggerationOf, isSameMesh } from './sag';

/** The legend of whatever colours the slab; nothing where the concrete is in its own colour. */
export function ModelLegend() {
  const { shownIn } = useJob();
  const piece = usePiece();
  const choice = useWindow(({ model }) => model.map);
  const map = useVerdict(piece.id)?.map ?? null;
  const deflected = useVerdicts(({ deflected: shape }) => shape);
  if (choice === 'none') return null;
  if (map === null) return <p className={styles.wait}>No map of {piece.name} yet.</p>;
  if (choice === 'bending') return <MapLegend map={map} system={shownIn} />;
  if (deflected === null || !isSameMesh(map, deflected)) {
    return <p className={styles.wait}>The sag of {piece.name} is being worked out.</p>;
  }
  return <SagLegend shape={deflected} exaggeration={exaggerationOf(map, deflected)} system={shownIn} />;
}
