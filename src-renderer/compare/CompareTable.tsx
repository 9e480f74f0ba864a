import type { UnitSystem } from '../../src-core/units';
import { VerdictMark } from '../look/VerdictMark';
import styles from './CompareTable.module.css';
import type { Version } from './compare-rows';
import { compareRows } from './compare-rows';
import { sectionDrawings } from './section-drawing';

interface Props {
  readonly drawn: Version;
  readonly instead: Version;
  readonly system: UnitSystem;
}

const SECTION = { widthPx: 112, heightPx: 56 };

/** Two versions of a piece in two columns: section through the edge, measures, verdict. */
export function CompareTable({ drawn, instead, system }: Props) {
  const versions = [drawn, instead];
  const sections = sectionDrawings(
    versions.map(({ piece }) => piece),
    SECTION,
  );
  return (
    <table className={styles.table}>
      <thead>
        <tr>
          <td />
          <th scope="col">As drawn</th>
          <th scope="col">Instead</th>
        </tr>
      </thead>
      <tbody>
        <tr>
          <th scope="row">Edge, to one scale</th>
          {sections.map((section, index) => (
            <td key={index === 0 ? 'drawn' : 'instead'}>
              {section === null ? (
                'no free edge'
              ) : (
                <svg
                  className={styles.section}
                  viewBox={`-1 -1 ${SECTION.widthPx + 2} ${SECTION.heightPx + 2}`}
                  role="img"
                  aria-label={`Section through the edge ${index === 0 ? 'as drawn' : 'instead'}`}
                >
                  <path className={styles.concrete} d={section.fill} />
                  <path className={styles.skin} d={section.ink} />
                </svg>
              )}
            </td>
          ))}
        </tr>
        <tr>
          <th scope="row">Verdict</th>
          {versions.map(({ result }, index) => (
            <td key={index === 0 ? 'drawn' : 'instead'} className={styles.verdict}>
              {result === null ? (
                <span className={styles.waiting}>not worked out yet</span>
              ) : (
                <span className={styles.rung} style={{ color: `var(--${result.verdict.level})` }}>
                  <span aria-hidden="true">
                    <VerdictMark level={result.verdict.level} />
                  </span>
                  {result.verdict.words}
                </span>
              )}
            </td>
          ))}
        </tr>
        {compareRows(drawn, instead, system).map(({ label, drawn: before, instead: after, differs }) => (
          <tr key={label}>
            <th scope="row">{label}</th>
            <td>{before}</td>
            <td className={differs ? styles.differs : styles.same}>{after}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
