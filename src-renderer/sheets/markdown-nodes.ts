/**
 * Markdown as elements of the page, each made here: text stays text, so that markup in a page is shown and never obeyed. Links
 * keep their words alone and pictures theirs, because the window goes nowhere else.
 */
import type { MarkedToken, Token, Tokens } from 'marked';
import type { ReactNode } from 'react';
import { createElement, Fragment } from 'react';

/** The parts of a page, or of a line in it, in order. */
export function markdownNodes(tokens: readonly Token[]): ReactNode {
  // Handed over one by one, they need no keys: a page is drawn whole and never reordered.
  return createElement(Fragment, null, ...tokens.map((token) => node(token as MarkedToken)));
}

function node(token: MarkedToken): ReactNode {
  switch (token.type) {
    case 'heading':
      return createElement(token.depth <= 2 ? 'h2' : 'h3', null, markdownNodes(token.tokens));
    case 'paragraph':
      return createElement('p', null, markdownNodes(token.tokens));
    case 'strong':
    case 'em':
    case 'del':
    case 'blockquote':
      return createElement(token.type, null, markdownNodes(token.tokens));
    case 'list':
      return listNode(token);
    case 'table':
      return tableNode(token);
    case 'code':
      return createElement('pre', null, createElement('code', null, token.text));
    case 'codespan':
      return createElement('code', null, token.text);
    case 'hr':
    case 'br':
      return createElement(token.type);
    case 'checkbox':
      return token.checked ? '[x] ' : '[ ] ';
    case 'link':
      return markdownNodes(token.tokens);
    case 'text':
      return token.tokens === undefined ? token.text : markdownNodes(token.tokens);
    case 'escape':
    case 'html':
    case 'image':
      return token.text;
    case 'list_item':
    case 'space':
    case 'def':
      return null;
  }
}

function listNode({ ordered, start, items }: Tokens.List): ReactNode {
  const made = items.map(({ tokens }) => createElement('li', null, markdownNodes(tokens)));
  if (!ordered) return createElement('ul', null, ...made);
  return createElement('ol', start === '' ? null : { start }, ...made);
}

function tableNode({ header, rows }: Tokens.Table): ReactNode {
  const cell = (tag: 'th' | 'td', { align, tokens }: Tokens.TableCell) => {
    const style = { textAlign: align ?? 'left' };
    return createElement(tag, tag === 'th' ? { scope: 'col', style } : { style }, markdownNodes(tokens));
  };
  const row = (tag: 'th' | 'td', cells: readonly Tokens.TableCell[]) =>
    createElement('tr', null, ...cells.map((one) => cell(tag, one)));
  return createElement(
    'table',
    null,
    createElement('thead', null, row('th', header)),
    createElement('tbody', null, ...rows.map((cells) => row('td', cells))),
  );
}
