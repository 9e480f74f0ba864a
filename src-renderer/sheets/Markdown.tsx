import type { Token } from 'marked';
import styles from './Markdown.module.css';
import { markdownNodes } from './markdown-nodes';

interface Props {
  readonly tokens: readonly Token[];
}

/** A page of Markdown. */
export function Markdown({ tokens }: Props) {
  return <div className={styles.page}>{markdownNodes(tokens)}</div>;
}
