import styles from './FlyRing.module.css';
import type { Frame } from './frame';
import { toPixel } from './frame';
import type { PlanFrame } from './use-frame';

interface Props {
  readonly ring: PlanFrame['ring'];
  readonly frame: Frame;
}

/** A ring round the point that the window was asked to show. */
export function FlyRing({ ring, frame }: Props) {
  if (ring === null) return null;
  const { xPx, yPx } = toPixel(frame, ring.at);
  return <circle key={ring.request} cx={xPx} cy={yPx} r={18} className={styles.ring} />;
}
