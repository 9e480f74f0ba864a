import { Plus } from 'lucide-react';
import { use, useState } from 'react';
import { Header, Menu, MenuItem, MenuSection, MenuTrigger, Popover } from 'react-aria-components';
import type { Piece } from '../../../src-core/job';
import { Button } from '../../look/Button';
import list from '../../look/PopoverList.module.css';
import { useStore } from '../../state/store-context';
import { ADD_WORDS, addGroups, addPart } from '../add-choices';
import type { PartsField } from '../specs/field';
import { firstSentence } from '../target';
import { WalkContext } from '../walk';
import styles from './AddPart.module.css';
import { Flush } from './Flush';
import { Refusal } from './Refusal';

interface Props {
  readonly piece: Piece;
  readonly part: Exclude<PartsField['part'], 'edge'>;
}

/** Adds a part to the piece, of a kind chosen from a menu where there are several, and opens its form. */
export function AddPart({ piece, part }: Props) {
  const store = useStore();
  const { open } = use(WalkContext);
  const [refused, setRefused] = useState<{ piece: Piece; sentence: string } | null>(null);
  const groups = addGroups(part);
  const only = groups.length === 1 && groups[0]!.choices.length === 1 ? groups[0]!.choices[0]! : null;

  const add = (choice: string) => {
    const { run, history } = store.getState();
    const added = addPart(run, history.job, piece, part, choice);
    if (added.ok) open({ pieceId: piece.id, part: added.part });
    else setRefused({ piece, sentence: firstSentence(added.problems)! });
  };
  const button = (
    <Button weight="quiet" {...(only !== null && { onPress: () => add(only.id) })}>
      <Plus size={14} aria-hidden="true" />
      {ADD_WORDS[part]}
    </Button>
  );

  return (
    <div>
      <Flush>
        {only !== null ? (
          button
        ) : (
          <MenuTrigger>
            {button}
            <Popover className={list.popover!} placement="bottom start">
              <Menu className={`${list.list} ${styles.menu}`} onAction={(key) => add(String(key))}>
                {groups.map(({ title, choices }) => (
                  <MenuSection key={title ?? ''} {...(title === null && { 'aria-label': ADD_WORDS[part] })}>
                    {title !== null && <Header className={list.heading}>{title}</Header>}
                    {choices.map(({ id, words }) => (
                      <MenuItem key={id} id={id} className={list.item!}>
                        {words}
                      </MenuItem>
                    ))}
                  </MenuSection>
                ))}
              </Menu>
            </Popover>
          </MenuTrigger>
        )}
      </Flush>
      <Refusal sentence={refused?.piece === piece ? refused.sentence : null} />
    </div>
  );
}
