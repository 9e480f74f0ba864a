import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { useStore, useWindow } from '../state/store-context';
import type { ModelMap } from '../state/window-store';
import styles from './ModelControls.module.css';

const MAPS: readonly { readonly id: ModelMap; readonly words: string }[] = [
  { id: 'none', words: 'None' },
  { id: 'bending', words: 'Bending' },
  { id: 'deflected', words: 'Sag' },
];

/** What colours the slab. */
export function MapChoice() {
  const store = useStore();
  const map = useWindow(({ model }) => model.map);
  return (
    <ToggleButtonGroup
      className={styles.choice ?? ''}
      aria-label="Map on the slab"
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[map]}
      onSelectionChange={(keys) => {
        const chosen = MAPS.find(({ id }) => keys.has(id));
        if (chosen !== undefined) store.getState().setModel({ map: chosen.id });
      }}
    >
      {MAPS.map(({ id, words }) => (
        <ToggleButton key={id} id={id} className={styles.option ?? ''}>
          {words}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}
