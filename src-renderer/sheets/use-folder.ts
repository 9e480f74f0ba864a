/** The folder that a file sheet looks into. */
import { useEffect, useState } from 'react';
import type { HostApi } from '../../src-core/host-contract';
import { type Listing, sortEntries } from './folder-view';
import { faultSentence } from './use-answer';

export interface FolderState {
  /** The folder shown; a folder that cannot be listed leaves the last one standing. null until the first is there. */
  readonly listing: Listing | null;
  readonly trouble: string | null;
  readonly isWaiting: boolean;
  readonly look: (path: string | null) => void;
}

/** Lists a folder, the job folder where `startIn` is null, and any other that is asked for after it. */
export function useFolder(host: HostApi, startIn: string | null): FolderState {
  const [asked, setAsked] = useState<{ readonly path: string | null }>({ path: startIn });
  const [listing, setListing] = useState<Listing | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [isWaiting, setWaiting] = useState(true);
  useEffect(() => {
    let isWanted = true;
    const end = (found: Listing | null, sentence: string | null) => {
      if (!isWanted) return;
      if (found !== null) setListing({ ...found, entries: sortEntries(found.entries) });
      setTrouble(sentence);
      setWaiting(false);
    };
    setWaiting(true);
    host.ask('listFolder', { path: asked.path }).then(
      (reply) => (reply.outcome === 'listed' ? end(reply, null) : end(null, reply.sentence)),
      (fault: unknown) => end(null, faultSentence(fault)),
    );
    return () => {
      isWanted = false;
    };
  }, [host, asked]);
  return { listing, trouble, isWaiting, look: (path) => setAsked({ path }) };
}
