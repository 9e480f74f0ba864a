import type { UnitSystem } from '../../src-core/units';
import { useStore, useWindow } from '../state/store-context';
import { CheckWorkings } from './CheckWorkings';
import type { CheckRow } from './check-rows';
import { TapeRow } from './TapeRow';

interface Props {
  readonly row: CheckRow;
  readonly endRatio: number;
  readonly system: UnitSystem;
}

/** One check of a piece. Opening it sends both views to its point and shows its workings below. */
export function CheckItem({ row, endRatio, system }: Props) {
  const store = useStore();
  const isOpen = useWindow(({ openCheck }) => openCheck === row.key);
  const { check, about, ratio, level, at, key } = row;
  const toggle = (opens: boolean) =>
    store.getState().lookAtCheck(opens ? { key, pieceId: check.pieceId, at } : null);
  return (
    <TapeRow
      title={check.title}
      about={about}
      ratioWords={ratio}
      ratio={check.ratio}
      level={check.level}
      levelWords={level}
      endRatio={endRatio}
      headingLevel={3}
      isOpen={isOpen}
      onToggle={toggle}
    >
      {isOpen && <CheckWorkings check={check} system={system} />}
    </TapeRow>
  );
}
