/** What the shell tells the page unasked. */
import type { WebContents } from 'electron';
import type { HostEvent } from '../../src-core/host-contract';
import { EVENT_CHANNEL } from './channels';

export interface Teller {
  readonly tell: (event: HostEvent) => void;
}

/** Tells a page, once it is loaded; what comes before then waits. */
export function tellerOf(contents: WebContents): Teller {
  const waiting: HostEvent[] = [];
  let isLoaded = false;
  const send = (event: HostEvent) => contents.send(EVENT_CHANNEL, event);
  contents.on('did-finish-load', () => {
    isLoaded = true;
    for (const event of waiting.splice(0)) send(event);
  });
  return {
    tell: (event) => {
      if (isLoaded) send(event);
      else waiting.push(event);
    },
  };
}
