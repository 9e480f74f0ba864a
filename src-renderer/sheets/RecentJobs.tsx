import { X } from 'lucide-react';
import { useState } from 'react';
import type { HostApi } from '../../src-core/host-contract';
import { Button } from '../look/Button';
import { Heading } from '../look/Heading';
import styles from './RecentJobs.module.css';
import { useAnswer } from './use-answer';
import { whenWords } from './when-words';

interface Props {
  readonly host: HostApi;
  readonly onOpen: (path: string) => void;
}

/** Jobs that were open last, newest first; nothing where there are none. */
export function RecentJobs({ host, onOpen }: Props) {
  const answer = useAnswer(host, 'recentJobs', {});
  const [forgotten, setForgotten] = useState<readonly string[]>([]);
  if (answer.state !== 'answered') return null;
  const jobs = answer.reply.jobs.filter(({ path }) => !forgotten.includes(path));
  if (jobs.length === 0) return null;
  const forget = (path: string) => {
    setForgotten([...forgotten, path]);
    void host.ask('forgetRecent', { path });
  };
  return (
    <section aria-labelledby="recent-jobs" className={styles.recent}>
      <Heading id="recent-jobs">Open lately</Heading>
      <ul>
        {jobs.map(({ path, name, openedAt }) => (
          <li key={path} className={styles.job}>
            <Button weight="quiet" onPress={() => onOpen(path)}>
              {name}
            </Button>
            <span className={styles.where}>
              {path} · {whenWords(openedAt, new Date())}
            </span>
            <Button
              weight="quiet"
              isIcon
              aria-label={`Take ${name} off this list`}
              onPress={() => forget(path)}
            >
              <X size={16} aria-hidden />
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
