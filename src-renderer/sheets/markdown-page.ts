/** A page of the manual, read from Markdown. */
import type { Token, Tokens } from 'marked';
import { lexer } from 'marked';

export interface MarkdownText {
  /** The first heading, where the page begins with one. */
  readonly title: string | null;
  /** The rest, as the parts that the lexer finds; nothing in it is markup of a page yet. */
  readonly body: readonly Token[];
}

/** Splits a page into its title and what follows. */
export function readMarkdown(text: string): MarkdownText {
  const tokens = lexer(text).filter(({ type }) => type !== 'space');
  const [first, ...rest] = tokens;
  if (first?.type === 'heading' && (first as Tokens.Heading).depth === 1) {
    return { title: (first as Tokens.Heading).text, body: rest };
  }
  return { title: null, body: tokens };
}
