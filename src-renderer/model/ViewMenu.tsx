import { Eye } from 'lucide-react';
import { Keyboard, Menu, MenuItem, MenuTrigger, Popover, Text } from 'react-aria-components';
import { Button } from '../look/Button';
import type { CameraStep } from './camera-step';
import { NAMED_STEPS } from './camera-step';
import styles from './ViewMenu.module.css';

interface Props {
  readonly onStep: (step: CameraStep) => void;
}

/** Views of the model by name, each with its key. */
export function ViewMenu({ onStep }: Props) {
  return (
    <MenuTrigger>
      <Button aria-label="Look from">
        <Eye size={16} aria-hidden>
          <title>Look from</title>
        </Eye>
        <span className={styles.word}>Look from</span>
      </Button>
      <Popover className={styles.popover ?? ''} placement="bottom end">
        <Menu
          className={styles.menu ?? ''}
          aria-label="Look from"
          onAction={(key) => {
            const named = NAMED_STEPS.find((one) => one.key === key);
            if (named !== undefined) onStep(named.step);
          }}
        >
          {NAMED_STEPS.map(({ key, words }) => (
            <MenuItem key={key} id={key} textValue={words} className={styles.item ?? ''}>
              <Text slot="label">{words}</Text>
              <Keyboard className={styles.key ?? ''}>{key}</Keyboard>
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
