import { useMemo, useRef } from 'react';
import type { BackingBoards } from '../../src-core/boards';
import { useWidth } from '../days/use-width';
import styles from './BoardDrawing.module.css';
import { cutBoardDrawing } from './board-rows';

interface Props {
  readonly boards: BackingBoards;
  readonly index: number;
}

/** One board face up with its parts, its cuts by their numbers, and the edges that lie to the front. */
export function BoardDrawing({ boards, index }: Props) {
  const frame = useRef<HTMLDivElement>(null);
  const widthPx = useWidth(frame);
  const drawn = useMemo(() => cutBoardDrawing(boards, index, widthPx), [boards, index, widthPx]);
  return (
    <div ref={frame} className={styles.frame}>
      {drawn !== null && (
        <svg className={styles.drawing} width={drawn.widthPx} height={drawn.heightPx} aria-hidden="true">
          <path className={styles.board} d={drawn.board} />
          {drawn.parts.map(({ key, outline }) => (
            <path key={key} className={styles.part} d={outline} />
          ))}
          {drawn.cuts.map(({ key, from, to }) => (
            <line key={key} className={styles.cut} x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
          ))}
          {drawn.parts.map(({ key, frontEdge }) =>
            frontEdge === null ? null : (
              <line
                key={key}
                className={styles.front}
                x1={frontEdge.from.x}
                y1={frontEdge.from.y}
                x2={frontEdge.to.x}
                y2={frontEdge.to.y}
              />
            ),
          )}
          {drawn.parts.map(({ key, number, middle }) => (
            <text key={key} className={styles.number} x={middle.x} y={middle.y}>
              {number}
            </text>
          ))}
          {drawn.cuts.map(({ key, number, from, to }) => (
            <text
              key={key}
              className={styles.cutNumber}
              x={from.x + (to.x - from.x) * NUMBER_AT}
              y={from.y + (to.y - from.y) * NUMBER_AT}
            >
              {number}
            </text>
          ))}
        </svg>
      )}
    </div>
  );
}

/** Where along a cut its number stands: off the middle, where those of crossing cuts would meet. */
const NUMBER_AT = 0.82;
