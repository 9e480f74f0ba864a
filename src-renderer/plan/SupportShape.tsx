import { memo } from 'react';
import { stands } from '../../src-core/analysis';
import type { Support } from '../../src-core/job';
import { bearingPatches } from '../../src-core/job';
import type { Point } from '../../src-core/outline';
import { directionAt, distanceIn, leftOf, moved, TOUCH_IN } from '../../src-core/outline';
import { useWindow } from '../state/store-context';
import { linePath, loopsPath } from './paths';
import styles from './SupportShape.module.css';

interface Props {
  readonly support: Support;
  /** Outline of the piece, which a full bed fills. */
  readonly outline: readonly Point[];
}

/**
 * What a slab stands on, in inches: where it bears, and the thing itself where that is larger. Nothing on a day on which it does not
 * stand.
 */
export const SupportShape = memo(function SupportShape({ support, outline }: Props) {
  const isGone = useWindow(({ day }) => day !== null && !stands(support, day));
  const isPassing = useWindow(({ day }) => day === null && support.lastDay !== null);
  if (isGone) return null;
  const bearings = bearingPatches(support, outline);
  const stay = isPassing ? styles.passing : '';
  return (
    <g className={`${styles.support} ${styles[support.kind]} ${stay}`}>
      {support.kind === 'cabinet' && <path d={cabinetPath(support)} className={styles.body} />}
      {bearings.map(({ part, index, corners }) => (
        <path key={`${part}-${index}`} d={loopsPath([corners])} className={styles.bearing} />
      ))}
      {(support.kind === 'leg' || support.kind === 'pier') &&
        bearings.map(({ part, corners }) => (
          <path key={part} d={crossPath(corners)} className={styles.line} />
        ))}
      {(support.kind === 'wall' || support.kind === 'ledger') &&
        distanceIn(support.from, support.to) > TOUCH_IN && (
          <path d={linePath([support.from, support.to])} className={styles.centreLine} />
        )}
      {support.kind === 'bracket' &&
        support.roots.map((root) => (
          <path
            key={`${root.xIn} ${root.yIn}`}
            d={heelPath(root, support.directionDeg, support.seatWidthIn)}
            className={styles.heel}
          />
        ))}
    </g>
  );
});

function cabinetPath({ corner, angleDeg, widthIn, depthIn }: Extract<Support, { kind: 'cabinet' }>): string {
  const along = directionAt((angleDeg * Math.PI) / 180);
  const right = moved(corner, along, widthIn);
  const back = (at: Point) => moved(at, leftOf(along), depthIn);
  return loopsPath([[corner, right, back(right), back(corner)]]);
}

/** The cross of sawn timber and of masonry that is cut through. */
function crossPath(corners: readonly Point[]): string {
  const n = corners.length;
  const at = (share: number) => corners[Math.round(share * n) % n]!;
  // a circle is crossed at its eighths, a rectangle from corner to corner
  const start = n > 4 ? 1 / 8 : 0;
  return [linePath([at(start), at(start + 1 / 2)]), linePath([at(start + 1 / 4), at(start + 3 / 4)])].join(
    '',
  );
}

/** The leg of a bracket against its wall, seen from above. */
function heelPath(root: Point, directionDeg: number, seatWidthIn: number): string {
  const across = leftOf(directionAt((directionDeg * Math.PI) / 180));
  return linePath([moved(root, across, -seatWidthIn), moved(root, across, seatWidthIn)]);
}
