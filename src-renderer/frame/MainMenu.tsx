import { ChevronDown } from 'lucide-react';
import { useMemo } from 'react';
import { Header, Keyboard, Menu, MenuItem, MenuSection, MenuTrigger, Popover } from 'react-aria-components';
import { MENUS } from '../../src-core/host-contract';
import { Button } from '../look/Button';
import type { FileActions } from '../state/file-actions';
import { useStore } from '../state/store-context';
import { windowCommands } from '../state/window-commands';
import { keyWords } from './key-words';
import styles from './MainMenu.module.css';

interface Props {
  readonly files: FileActions;
  readonly isMac: boolean;
}

/** Everything the window can do, in one menu; the desktop shell shows the same in the system's own. */
export function MainMenu({ files, isMac }: Props) {
  const store = useStore();
  const commands = useMemo(() => windowCommands(store, files), [store, files]);
  return (
    <MenuTrigger>
      <Button weight="plain" aria-label="Menu">
        Menu <ChevronDown size={14} aria-hidden />
      </Button>
      <Popover className={styles.popover ?? ''} placement="bottom start">
        <Menu className={styles.menu ?? ''} onAction={(key) => commands[String(key)]?.()}>
          {MENUS.map(({ label, items }) => (
            <MenuSection key={label} className={styles.section ?? ''}>
              <Header className={styles.heading}>{label}</Header>
              {items.map((item) => (
                <MenuItem
                  key={item.command}
                  id={item.command}
                  textValue={item.label}
                  className={styles.item ?? ''}
                >
                  <span>{item.label}</span>
                  {item.keys !== undefined && (
                    <Keyboard className={styles.keys}>{keyWords(item.keys, isMac)}</Keyboard>
                  )}
                </MenuItem>
              ))}
            </MenuSection>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
