import { lazy, Suspense } from 'react';
import { Choice } from '../look/Choice';
import { PlanView } from '../plan/PlanView';
import { useStore, useWindow } from '../state/store-context';
import type { Shown } from '../state/window-store';
import styles from './Drawing.module.css';

/** The model brings a graphics library with it; the plan and the verdict need not wait for that. */
const ModelView = lazy(async () => ({ default: (await import('../model/ModelView')).ModelView }));

const VIEWS: readonly { readonly id: Shown; readonly label: string }[] = [
  { id: 'model', label: 'Model' },
  { id: 'plan', label: 'Plan' },
  { id: 'both', label: 'Both' },
];

/** The job as model, as plan, or as both side by side. */
export function Drawing() {
  const shown = useWindow(({ shown: chosen }) => chosen);
  const store = useStore();
  return (
    <div className={styles.drawing}>
      <div className={styles.views}>
        <Choice
          label="How the job is shown"
          choices={VIEWS}
          chosen={shown}
          onChoose={(id) => store.getState().show(id)}
        />
      </div>
      <div className={styles.halves}>
        {shown !== 'plan' && (
          <div className={styles.half}>
            <Suspense fallback={<p className={styles.wait}>The model is being set up...</p>}>
              <ModelView />
            </Suspense>
          </div>
        )}
        {shown !== 'model' && (
          <div className={styles.half}>
            <PlanView />
          </div>
        )}
      </div>
    </div>
  );
}
