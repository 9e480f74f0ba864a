import { useMemo } from 'react';
import type { Piece } from '../../src-core/job';
import type { UnitSystem } from '../../src-core/units';
import { printLength } from '../../src-core/units';
import { DrawnPart } from './DrawnPart';
import styles from './QuickDrawing.module.css';
import { quickDrawing } from './quick-drawing';

interface Props {
  readonly piece: Piece;
  readonly system: UnitSystem;
}

/** The piece as it will be checked: a cut across it and its plan, overhang and sizes written on. */
export function QuickDrawing({ piece, system }: Props) {
  const { section, plan } = useMemo(() => quickDrawing(piece), [piece]);
  const print = (valueIn: number) => printLength(valueIn, { system });
  return (
    <div className={styles.drawings}>
      <DrawnPart name="Cut across, the front at the left" view={section} print={print} />
      <DrawnPart name="Plan, the front below" view={plan} print={print} />
    </div>
  );
}
