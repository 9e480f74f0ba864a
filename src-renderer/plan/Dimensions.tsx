import { memo, useCallback, useState } from 'react';
import type { UnitSystem } from '../../src-core/units';
import { DimensionField } from './DimensionField';
import styles from './Dimensions.module.css';
import { DimensionText } from './DimensionText';
import type { Pixel } from './frame';
import type { PlacedDimension } from './place-dimensions';

interface Props {
  /** The selected piece, and its dimensions where they stand on the screen. */
  readonly pieceId: string;
  readonly placed: readonly PlacedDimension[];
  readonly system: UnitSystem;
}

/** Dimensions of the selected piece: lines, and figures that can be typed into. */
export const Dimensions = memo(function Dimensions({ pieceId, placed, system }: Props) {
  const [editing, setEditing] = useState<string | null>(null);
  const [returnTo, setReturnTo] = useState<string | null>(null);
  const edit = useCallback((key: string) => {
    setEditing(key);
    setReturnTo(null);
  }, []);
  const close = (key: string) => {
    setEditing(null);
    setReturnTo(key);
  };
  return (
    <>
      <svg className={styles.lines} aria-hidden="true">
        {placed.map((one) => (
          <DimensionLines key={one.dimension.key} placed={one} />
        ))}
      </svg>
      <div className={styles.figures} data-own="">
        {placed.map((one) => {
          const { key } = one.dimension;
          if (editing === key) {
            return (
              <DimensionField
                key={key}
                pieceId={pieceId}
                placed={one}
                system={system}
                onClose={() => close(key)}
              />
            );
          }
          if (!one.hasRoom) return null;
          return (
            <DimensionText
              key={key}
              dimensionKey={key}
              of={one.dimension.of}
              words={one.dimension.words}
              text={one.text}
              xPx={one.at.xPx}
              yPx={one.at.yPx}
              turnDeg={one.turnDeg}
              canEdit={one.dimension.sets !== null}
              takesFocus={returnTo === key}
              onEdit={edit}
            />
          );
        })}
      </div>
    </>
  );
});

function DimensionLines({ placed }: { readonly placed: PlacedDimension }) {
  const { from, to, witness, dimension } = placed;
  return (
    <g className={`${styles.line} ${styles[dimension.of]}`}>
      {witness.map(([a, b]) => (
        <path key={path(a, b)} d={path(a, b)} className={styles.witness} />
      ))}
      <path d={path(from, to)} />
      <path d={tick(from)} />
      <path d={tick(to)} />
    </g>
  );
}

function path(a: Pixel, b: Pixel): string {
  return `M${a.xPx} ${a.yPx}L${b.xPx} ${b.yPx}`;
}

/** The slanted stroke that ends a builder's dimension. */
function tick({ xPx, yPx }: Pixel): string {
  return `M${xPx - 4} ${yPx + 4}L${xPx + 4} ${yPx - 4}`;
}
