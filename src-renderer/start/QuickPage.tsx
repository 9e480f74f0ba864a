import { X } from 'lucide-react';
import { useMemo, useState } from 'react';
import { Dialog, Heading } from 'react-aria-components';
import { NOTICE } from '../../src-core/report';
import { DEFAULT_QUICK_FIELDS, quickCheckJob } from '../../src-core/starters';
import type { UnitSystem } from '../../src-core/units';
import { Button } from '../look/Button';
import type { FileActions } from '../state/file-actions';
import { useStore } from '../state/store-context';
import { QuickDrawing } from './QuickDrawing';
import { QuickForm } from './QuickForm';
import styles from './QuickPage.module.css';
import { QuickVerdict } from './QuickVerdict';
import { ShortVerdict } from './ShortVerdict';
import { UnitsToggle } from './UnitsToggle';
import { useQuickVerdict } from './use-quick-verdict';

interface Props {
  readonly files: FileActions;
  readonly system: UnitSystem;
  readonly onSystem: (system: UnitSystem) => void;
  readonly onStarters: () => void;
  readonly onClose: () => void;
}

/** Eight fields, the piece that they make, and whether it will stand. */
export function QuickPage({ files, system, onSystem, onStarters, onClose }: Props) {
  const store = useStore();
  const [fields, setFields] = useState(DEFAULT_QUICK_FIELDS);
  const made = useMemo(() => quickCheckJob(fields, system), [fields, system]);
  const job = made.ok ? made.job : null;
  const verdict = useQuickVerdict(job);
  const problems = made.ok ? [] : made.problems.map(({ sentence }) => sentence);
  return (
    <Dialog className={styles.page!}>
      <div className={styles.middle}>
        <div className={styles.left}>
          <header className={styles.head}>
            <Heading slot="title" level={1} className={styles.title!}>
              Will it stand?
            </Heading>
            <p className={styles.lead}>Eight answers, and you know before the first bucket is mixed.</p>
          </header>
          <QuickForm fields={fields} system={system} onChange={setFields} />
          <p className={styles.notice}>{NOTICE}</p>
        </div>
        <div className={styles.right}>
          <div className={styles.ways}>
            <ShortVerdict answer={problems.length === 0 ? verdict.answer : null} />
            <UnitsToggle system={system} onChange={onSystem} />
            <Button weight="quiet" isIcon aria-label="Close" onPress={onClose}>
              <X size={18} aria-hidden />
            </Button>
          </div>
          <QuickVerdict verdict={verdict} problems={problems} />
          {job !== null && <QuickDrawing piece={job.pieces[0]!} system={system} />}
        </div>
      </div>
      <footer className={styles.foot}>
        <div className={styles.others}>
          <Button weight="quiet" onPress={() => store.getState().openSheet({ kind: 'open-example' })}>
            Start from an example
          </Button>
          <Button weight="quiet" onPress={onStarters}>
            Start from a blank starter
          </Button>
        </div>
        <Button weight="main" isDisabled={job === null} onPress={() => job !== null && files.openFresh(job)}>
          Open this in the drawing
        </Button>
      </footer>
    </Dialog>
  );
}
