import { useMemo, useRef } from 'react';
import type { BackingBoards } from '../../src-core/boards';
import type { UnitSystem } from '../../src-core/units';
import { useWidth } from '../days/use-width';
import { Prose } from '../look/Prose';
import { BoardDrawing } from './BoardDrawing';
import styles from './Boards.module.css';
import { boardFindings, boardPlan, boardRows, boardWords } from './board-rows';
import { FindingList } from './FindingList';

interface Props {
  readonly boards: BackingBoards;
  readonly copies: number;
  readonly system: UnitSystem;
}

/** The boards under a piece: how they lie, and each one as it is cut. */
export function Boards({ boards, copies, system }: Props) {
  const frame = useRef<HTMLElement>(null);
  const widthPx = useWidth(frame);
  const plan = useMemo(() => boardPlan(boards, widthPx), [boards, widthPx]);
  const rows = useMemo(() => boardRows(boards, system), [boards, system]);
  return (
    <div className={styles.boards}>
      <p>
        <Prose text={boardWords(boards, system)} />
        {copies > 1 && ` Each of the ${copies} copies takes as many.`}
      </p>
      <figure ref={frame}>
        {plan !== null && (
          <svg
            className={styles.plan}
            width={plan.widthPx}
            height={plan.heightPx}
            role="img"
            aria-label={`Plan of the boards under the slab, front at the bottom: ${plan.parts.length} parts, ${plan.seams.length} seams.`}
          >
            {plan.parts.map(({ key, outline, isFull }) => (
              <path key={key} className={isFull ? styles.whole : styles.part} d={outline} />
            ))}
            {plan.seams.map(({ key, from, to, isFaulty }) => (
              <line
                key={key}
                className={isFaulty ? styles.faulty : styles.seam}
                x1={from.x}
                y1={from.y}
                x2={to.x}
                y2={to.y}
              />
            ))}
            {plan.parts.map(({ key, number, middle }) => (
              <text key={key} className={styles.number} x={middle.x} y={middle.y}>
                {number}
              </text>
            ))}
          </svg>
        )}
        <figcaption className={styles.soft}>
          As they lie under the slab, front at the bottom. Shaded parts are whole boards; a seam out of place
          is drawn heavy and broken.
        </figcaption>
      </figure>
      <FindingList findings={boardFindings(boards)} />
      <ol className={styles.list}>
        {rows.map((row) => (
          <li key={row.key}>
            <p className={styles.title}>{row.title}</p>
            {row.isWhole ? (
              <p className={styles.soft}>
                Left whole, as part {row.parts.map(({ number }) => number).join(', ')}.
              </p>
            ) : (
              <>
                <BoardDrawing boards={boards} index={row.index} />
                {row.cuts.length > 0 && (
                  <ol className={styles.cuts} aria-label={`Cuts of ${row.title}, in order`}>
                    {row.cuts.map(({ key, words }) => (
                      <li key={key}>
                        <span className={styles.soft}>Cut {key}:</span> <Prose text={words} />
                      </li>
                    ))}
                  </ol>
                )}
                <ul className={styles.cuts} aria-label={`Parts of ${row.title}`}>
                  {row.parts.map(({ key, number, size, cuts }) => (
                    <li key={key}>
                      Part {number}: <Prose text={size} />
                      {cuts.length > 0 && (
                        <>
                          ; then <Prose text={cuts.join('; ')} />
                        </>
                      )}
                    </li>
                  ))}
                </ul>
                {row.left !== '' && (
                  <p className={styles.soft}>
                    Left over: <Prose text={row.left} />
                  </p>
                )}
              </>
            )}
          </li>
        ))}
      </ol>
      <p className={styles.soft}>
        Write on every cut part "This face up" and, on the edge drawn heavy, "This edge to the front". All
        boards are drawn face up: cut from the back, a part is drawn left for right.
      </p>
    </div>
  );
}
