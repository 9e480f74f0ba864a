import { ChevronDown, Layers } from 'lucide-react';
import { Button, Disclosure, DisclosurePanel, ToggleButton } from 'react-aria-components';
import { useStore, useWindow } from '../state/store-context';
import type { CameraStep } from './camera-step';
import { MapChoice } from './MapChoice';
import styles from './ModelControls.module.css';
import { ShareSlider } from './ShareSlider';
import { ViewMenu } from './ViewMenu';

interface Props {
  readonly onStep: (step: CameraStep) => void;
}

/** Where the cut stands when it is first made: the middle of the job. */
const FIRST_CUT_SHARE = 0.5;

/** What the model shows and from where, over its top right corner. */
export function ModelControls({ onStep }: Props) {
  const store = useStore();
  const { isSeeThrough, cutShare, explodeShare, showsReactions, showsPerson } = useWindow(
    ({ model }) => model,
  );
  const { setModel } = store.getState();
  return (
    <div className={styles.controls}>
      <ViewMenu onStep={onStep} />
      <Disclosure className={styles.panel ?? ''}>
        <Button slot="trigger" className={styles.trigger ?? ''} aria-label="Show">
          <Layers size={16} aria-hidden>
            <title>Show</title>
          </Layers>
          <span className={styles.word}>Show</span>
          <ChevronDown className={styles.chevron} size={16} aria-hidden />
        </Button>
        <DisclosurePanel className={styles.body ?? ''} role="group" aria-label="What the model shows">
          <span className={styles.label}>Map on the slab</span>
          <MapChoice />
          <div className={styles.toggles}>
            <ToggleButton
              className={styles.toggle ?? ''}
              isSelected={isSeeThrough}
              onChange={(isOn) => setModel({ isSeeThrough: isOn })}
            >
              See through
            </ToggleButton>
            <ToggleButton
              className={styles.toggle ?? ''}
              isSelected={showsReactions}
              onChange={(isOn) => setModel({ showsReactions: isOn })}
            >
              Reactions
            </ToggleButton>
            <ToggleButton
              className={styles.toggle ?? ''}
              isSelected={showsPerson}
              onChange={(isOn) => setModel({ showsPerson: isOn })}
            >
              Person
            </ToggleButton>
            <ToggleButton
              className={styles.toggle ?? ''}
              isSelected={cutShare !== null}
              onChange={(isOn) => setModel({ cutShare: isOn ? FIRST_CUT_SHARE : null })}
            >
              Cut
            </ToggleButton>
          </div>
          {cutShare !== null && (
            <ShareSlider
              label="Cut, from the left"
              share={cutShare}
              onChange={(share) => setModel({ cutShare: share })}
            />
          )}
          <ShareSlider
            label="Pull apart"
            share={explodeShare}
            onChange={(share) => setModel({ explodeShare: share })}
          />
        </DisclosurePanel>
      </Disclosure>
    </div>
  );
}
