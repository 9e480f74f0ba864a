import { useMemo } from 'react';
import type { HostApi } from '../../src-core/host-contract';
import { Button } from '../look/Button';
import { Markdown } from './Markdown';
import { readMarkdown } from './markdown-page';
import { SheetBody } from './SheetBody';
import { Trouble } from './Trouble';
import { useAnswer } from './use-answer';

interface Props {
  readonly host: HostApi;
  /** Id of the check or finding that the page is about. */
  readonly id: string;
  readonly onClose: () => void;
}

/** A page of the manual: what a check asks, how it is worked, what it leaves out. */
export function ManualSheet({ host, id, onClose }: Props) {
  const answer = useAnswer(host, 'readManual', { id });
  const text = answer.state === 'answered' && answer.reply.outcome === 'read' ? answer.reply.text : null;
  const page = useMemo(() => (text === null ? null : readMarkdown(text)), [text]);
  return (
    <SheetBody
      title={page?.title ?? 'From the manual'}
      isText
      onClose={onClose}
      foot={<Button onPress={onClose}>Close</Button>}
    >
      {answer.state === 'waiting' && <p>Looking...</p>}
      {answer.state === 'failed' && <Trouble sentence={answer.sentence} />}
      {answer.state === 'answered' && answer.reply.outcome === 'trouble' && (
        <Trouble sentence={answer.reply.sentence} />
      )}
      {page !== null && <Markdown tokens={page.body} />}
    </SheetBody>
  );
}
