import { memo } from 'react';
import type { Check } from '../../src-core/checks';
import type { Piece } from '../../src-core/job';
import type { UnitSystem } from '../../src-core/units';
import { Fold } from '../look/Fold';
import { Heading } from '../look/Heading';
import { CheckItem } from './CheckItem';
import styles from './CheckList.module.css';
import { checkRows } from './check-rows';

interface Props {
  readonly piece: Piece;
  readonly checks: readonly Check[];
  readonly system: UnitSystem;
}

/** Every check of a piece, worst first; those that only inform are folded away below. */
export const CheckList = memo(function CheckList({ piece, checks, system }: Props) {
  const { rows, atOtherSupports, alsoLookedAt, endRatio } = checkRows(piece, checks);
  const items = (list: typeof rows) =>
    list.map((row) => <CheckItem key={row.key} row={row} endRatio={endRatio} system={system} />);
  return (
    <section aria-labelledby="checks-heading">
      <Heading id="checks-heading">Checks, worst first</Heading>
      <p className={styles.scale}>Each bar ends at demand over capacity; the heavy tick is the limit, 1.0.</p>
      <ul>{items(rows)}</ul>
      {atOtherSupports.length > 0 && (
        <Fold title={`The same at other supports (${atOtherSupports.length})`}>
          <ul>{items(atOtherSupports)}</ul>
        </Fold>
      )}
      {alsoLookedAt.length > 0 && (
        <Fold title={`Also looked at (${alsoLookedAt.length})`}>
          <ul>{items(alsoLookedAt)}</ul>
        </Fold>
      )}
    </section>
  );
});
