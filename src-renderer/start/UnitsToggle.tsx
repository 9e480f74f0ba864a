import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import type { UnitSystem } from '../../src-core/units';
import styles from './UnitsToggle.module.css';

interface Props {
  readonly system: UnitSystem;
  readonly onChange: (system: UnitSystem) => void;
}

const SYSTEMS: readonly { readonly id: UnitSystem; readonly words: string }[] = [
  { id: 'imperial', words: 'Inches' },
  { id: 'metric', words: 'Millimetres' },
];

/** Inches or millimetres. */
export function UnitsToggle({ system, onChange }: Props) {
  return (
    <ToggleButtonGroup
      className={styles.group!}
      aria-label="Units"
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[system]}
      onSelectionChange={(keys) => {
        const chosen = SYSTEMS.find(({ id }) => keys.has(id));
        if (chosen !== undefined) onChange(chosen.id);
      }}
    >
      {SYSTEMS.map(({ id, words }) => (
        <ToggleButton key={id} id={id} className={styles.button!}>
          {words}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}
