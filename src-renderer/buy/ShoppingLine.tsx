import { Check, ChevronRight } from 'lucide-react';
import { Button, Checkbox, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import { setTick } from '../../src-core/edit';
import { Prose } from '../look/Prose';
import { useStore } from '../state/store-context';
import styles from './ShoppingLine.module.css';
import { Source } from './Source';
import type { BuyRow } from './shopping-rows';

interface Props {
  readonly row: BuyRow;
}

/** One thing to buy: a tick that the job keeps, and below it, once opened, the places in the drawing that it is for. */
export function ShoppingLine({ row }: Props) {
  const { tickId, isTicked, name, buy, need, waste, cost, price, isEarlier, sources } = row;
  const store = useStore();
  const tick = (done: boolean) => store.getState().run(setTick, { id: tickId, done, words: name });
  return (
    <li className={styles.item} data-ticked={isTicked || undefined}>
      <Checkbox
        className={styles.tick!}
        isSelected={isTicked}
        onChange={tick}
        aria-label={`Bought: ${name}, ${buy}`}
      >
        <span className={styles.box}>
          {isTicked && <Check size={14} strokeWidth={3} aria-hidden="true" />}
        </span>
      </Checkbox>
      <Disclosure className={styles.line!}>
        {({ isExpanded }) => (
          <>
            <Heading level={4} className={styles.heading!}>
              <Button slot="trigger" className={styles.head!}>
                <ChevronRight size={14} className={styles.arrow} aria-hidden="true" />
                <span className={styles.name}>
                  <Prose text={name} />
                </span>
                <span className={styles.buy}>{buy}</span>
                <span className={styles.need}>
                  {isEarlier ? 'As before the change; it is being designed anew' : <Prose text={need} />}
                </span>
                <span className={styles.cost}>{cost === '' ? 'no price' : cost}</span>
              </Button>
            </Heading>
            <DisclosurePanel className={styles.body!}>
              {isExpanded && (
                <>
                  <p className={styles.soft}>
                    <Prose text={`${waste}; ${price}.`} />
                  </p>
                  <ul className={styles.sources} aria-label="Where it is for">
                    {sources.map((source) => (
                      <li key={source.key} className={styles.source}>
                        <Source trace={source.trace}>{source.words}</Source>
                        <span className={styles.amount}>{source.amount}</span>
                      </li>
                    ))}
                  </ul>
                </>
              )}
            </DisclosurePanel>
          </>
        )}
      </Disclosure>
    </li>
  );
}
