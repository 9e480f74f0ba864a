/** What the host answers to a question that a sheet asks when it opens. */
import { useEffect, useState } from 'react';
import type { HostApi, ReplyOf, RequestName, RequestOf } from '../../src-core/host-contract';

export type Answer<N extends RequestName> =
  | { readonly state: 'waiting' }
  | { readonly state: 'answered'; readonly reply: ReplyOf<N> }
  | { readonly state: 'failed'; readonly sentence: string };

/** Asks once, and again when the request changes; an answer to an older request is dropped. */
export function useAnswer<N extends RequestName>(host: HostApi, name: N, request: RequestOf<N>): Answer<N> {
  const [answer, setAnswer] = useState<Answer<N>>({ state: 'waiting' });
  // Requests are small plain data; their text tells two apart where their identity changes with every drawing.
  const asked = JSON.stringify(request);
  useEffect(() => {
    let isWanted = true;
    setAnswer({ state: 'waiting' });
    host.ask(name, JSON.parse(asked) as RequestOf<N>).then(
      (reply) => isWanted && setAnswer({ state: 'answered', reply }),
      (fault: unknown) => isWanted && setAnswer({ state: 'failed', sentence: faultSentence(fault) }),
    );
    return () => {
      isWanted = false;
    };
  }, [host, name, asked]);
  return answer;
}

/** One sentence for a host that did not answer. */
export function faultSentence(fault: unknown): string {
  const said = fault instanceof Error ? fault.message : String(fault);
  return `The program behind this window did not answer: ${said}`;
}
