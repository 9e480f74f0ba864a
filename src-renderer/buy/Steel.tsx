import { TriangleAlert } from 'lucide-react';
import { useMemo, useRef } from 'react';
import type { SteelPlacing } from '../../src-core/steel-placing';
import type { UnitSystem } from '../../src-core/units';
import { useWidth } from '../days/use-width';
import { Prose } from '../look/Prose';
import { Source } from './Source';
import styles from './Steel.module.css';
import { coverRows, steelDrawing, steelRows } from './steel-rows';

interface Props {
  readonly placing: SteelPlacing;
  readonly system: UnitSystem;
}

/** The steel of a piece as it is laid: a plan, what is cut, the cover that is left, and what to mind. */
export function Steel({ placing, system }: Props) {
  const frame = useRef<HTMLElement>(null);
  const widthPx = useWidth(frame);
  const drawn = useMemo(() => steelDrawing(placing, widthPx), [placing, widthPx]);
  const covers = useMemo(() => coverRows(placing), [placing]);
  const cautions = placing.cautions.filter((words) => covers.every((row) => row.words !== words));
  return (
    <div className={styles.steel}>
      <figure ref={frame}>
        {drawn !== null && (
          <svg
            className={styles.plan}
            width={drawn.widthPx}
            height={drawn.heightPx}
            role="img"
            aria-label={`Plan of the steel, front at the bottom: ${drawn.strips.length} strips of mesh, ${drawn.bars.length} bars, ${drawn.trimmers.length} trimmers, ${drawn.standoffs.length} standoffs.`}
          >
            <path className={styles.slab} d={drawn.outline} />
            {drawn.strips.map(({ key, outline }) => (
              <path key={key} className={styles.strip} d={outline} />
            ))}
            {drawn.laps.map(({ key, outline }) => (
              <path key={key} className={styles.lap} d={outline} />
            ))}
            {drawn.standoffs.map(({ key, at }) => (
              <circle key={key} className={styles.standoff} cx={at.x} cy={at.y} r={2} />
            ))}
            {(['joints', 'bars', 'trimmers'] as const).map((kind) =>
              drawn[kind].map(({ key, from, to }) => (
                <line key={key} className={styles[kind]} x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
              )),
            )}
            {drawn.names.map(({ key, words, at }) => (
              <text key={key} className={styles.name} x={at.x} y={at.y}>
                {words}
              </text>
            ))}
          </svg>
        )}
        <figcaption className={styles.soft}>
          Front at the bottom. Laps shaded, standoffs as dots, trimmers heavy, joints broken.
        </figcaption>
      </figure>
      <ul className={styles.rows}>
        {steelRows(placing, system).map(({ key, mark, words, trace }) => (
          <li key={key} className={styles.row}>
            <Source trace={trace}>{mark}</Source>
            <p>
              <Prose text={words} />
            </p>
          </li>
        ))}
      </ul>
      {covers.length > 0 && (
        <div>
          <h4 className={styles.title}>Cover that is left</h4>
          <ul className={styles.covers}>
            {covers.map(({ key, words, isShort }) => (
              <li key={key} className={isShort ? styles.short : undefined}>
                {isShort && <TriangleAlert size={14} role="img" aria-label="Mind:" />}
                <span>
                  <Prose text={words} />
                </span>
              </li>
            ))}
          </ul>
        </div>
      )}
      {cautions.length > 0 && (
        <ul className={styles.cautions} aria-label="Cautions">
          {cautions.map((words) => (
            <li key={words}>
              <Prose text={words} />
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
