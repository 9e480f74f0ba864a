/** Every kind of block as HTML. Classes alone: a window whose policy forbids inline styles can show it. */
import { figureMarkup } from '../exports';
import type { NoticeLevel, PlacedContent } from '../sheet';
import { htmlText, textHtml } from './html-text';
import { verdictMark, WARNING_SIGN } from './marks';
import { tableHtml } from './table-html';

type Placed<K extends PlacedContent['kind']> = Extract<PlacedContent, { kind: K }>;

const SIGNAL_WORDS: { readonly [L in NoticeLevel]: string } = {
  danger: 'Danger',
  warning: 'Warning',
  caution: 'Caution',
  notice: 'Notice',
};

export function blockHtml(content: PlacedContent): string {
  switch (content.kind) {
    case 'title':
      return `<h1 class="block title">${textHtml(content.words)}</h1>`;
    case 'chapter':
      return `<h2 class="block chapter" id="${htmlText(content.id)}">${textHtml(content.words)}</h2>`;
    case 'heading':
      return headingHtml(content);
    case 'paragraph':
      return `<p class="block paragraph">${textHtml(content.words)}</p>`;
    case 'list':
      return listHtml(content);
    case 'table':
      return tableHtml(content);
    case 'figure':
      return figureHtml(content);
    case 'workings':
      return workingsHtml(content);
    case 'facts':
      return factsHtml(content);
    case 'notice':
      return noticeHtml(content);
    case 'verdicts':
      return verdictsHtml(content);
    case 'checkboxes':
      return `<ul class="block checkboxes">${content.items.map((item) => `<li><span class="box" aria-hidden="true"></span>${textHtml(item)}</li>`).join('')}</ul>`;
    case 'contents':
      return contentsHtml(content);
    default:
      return assertNever(content);
  }
}

/** The chapter is the second rank, so headings within it are the third and the fourth. */
function headingHtml({ level, id, words }: Placed<'heading'>): string {
  const tag = level === 1 ? 'h3' : 'h4';
  return `<${tag} class="block heading${level}" id="${htmlText(id)}">${textHtml(words)}</${tag}>`;
}

function listHtml({ isNumbered, start, items }: Placed<'list'>): string {
  const rows = items.map((item) => `<li>${textHtml(item)}</li>`).join('');
  if (!isNumbered) return `<ul class="block list">${rows}</ul>`;
  return `<ol class="block list"${start === 1 ? '' : ` start="${start}"`}>${rows}</ol>`;
}

/** Ids within the drawing are made its own, as one drawing may stand in a book twice. */
function figureHtml({ id, figure, caption }: Placed<'figure'>): string {
  const drawing = figure === null ? '' : figureMarkup({ ...figure, id: `drawing-${id}` });
  return `<figure class="block figure" id="${htmlText(id)}">${drawing}<figcaption>${textHtml(caption)}</figcaption></figure>`;
}

function workingsHtml({ lines }: Placed<'workings'>): string {
  const rows = lines.map(
    ({ label, source, equation }) =>
      `<div><dt><strong>${textHtml(label)}</strong> <span class="source">${textHtml(source)}</span></dt><dd>${textHtml(equation)}</dd></div>`,
  );
  return `<dl class="block workings">${rows.join('')}</dl>`;
}

function factsHtml({ facts }: Placed<'facts'>): string {
  const rows = facts.map(
    ({ label, value }) => `<div><dt>${textHtml(label)}</dt><dd>${textHtml(value)}</dd></div>`,
  );
  return `<dl class="block facts">${rows.join('')}</dl>`;
}

function noticeHtml({ level, paragraphs }: Placed<'notice'>): string {
  const sign = level === 'notice' ? '' : WARNING_SIGN;
  const words = paragraphs.map((paragraph) => `<p>${textHtml(paragraph)}</p>`).join('');
  return `<div class="block notice signal-${level}" role="note"><p class="signal">${sign}${SIGNAL_WORDS[level]}</p>${words}</div>`;
}

function verdictsHtml({ rows }: Placed<'verdicts'>): string {
  const items = rows.map(
    ({ level, name, words, why }) =>
      `<li>${verdictMark(level)}<span class="name">${textHtml(name)}</span><span class="words">${textHtml(words)}</span><span class="why">${textHtml(why)}</span></li>`,
  );
  return `<ul class="block verdicts">${items.join('')}</ul>`;
}

function contentsHtml({ entries }: Placed<'contents'>): string {
  const items = entries.map(
    ({ level, id, words, page }) =>
      `<li class="entry${level}"><a href="#${htmlText(id)}"><span class="entry">${textHtml(words)}</span><span class="leader" aria-hidden="true"></span><span class="folio">${page}</span></a></li>`,
  );
  return `<nav class="block contents" aria-label="Contents"><ul>${items.join('')}</ul></nav>`;
}

function assertNever(content: never): never {
  throw new Error(`No such block: ${JSON.stringify(content)}`);
}
