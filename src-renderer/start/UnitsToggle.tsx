import type { UnitSystem } from '../../src-core/units';
import { Choice } from '../look/Choice';

interface Props {
  readonly system: UnitSystem;
  readonly onChange: (system: UnitSystem) => void;
}

const SYSTEMS: readonly { readonly id: UnitSystem; readonly label: string }[] = [
  { id: 'imperial', label: 'Inches' },
  { id: 'metric', label: 'Millimetres' },
];

/** Inches or millimetres. */
export function UnitsToggle({ system, onChange }: Props) {
  return <Choice label="Units" choices={SYSTEMS} chosen={system} onChoose={onChange} />;
}
