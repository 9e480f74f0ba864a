import type { Ref } from 'react';
import { useEffect, useImperativeHandle, useRef } from 'react';
import { BOOK_CSS } from '../../src-core/sheet-html';
import styles from './BookPages.module.css';

export interface PagesHandle {
  /** Brings the place with this id into view and moves the focus to it. */
  readonly goTo: (id: string) => void;
}

interface Props {
  /** Markup of all pages. */
  readonly body: string;
  readonly label: string;
  readonly ref?: Ref<PagesHandle>;
}

/**
 * The pages of the book, as they are printed. They stand in a tree of their own with the book's style sheet, so that neither it nor
 * the window's reaches the other; the fonts are those that the window has loaded.
 */
export function BookPages({ body, label, ref }: Props) {
  const stage = useRef<HTMLElement>(null);
  useEffect(() => {
    const element = stage.current;
    if (element === null) return;
    const tree = element.shadowRoot ?? element.attachShadow({ mode: 'open' });
    tree.adoptedStyleSheets = [bookSheet()];
    tree.innerHTML = body;
    // An address within the pages is none of the window's, which would go to it.
    const follow = (event: Event) => {
      const link = event.target instanceof Element ? event.target.closest('a[href^="#"]') : null;
      if (link === null) return;
      event.preventDefault();
      goTo(tree, decodeURIComponent(link.getAttribute('href')!.slice(1)));
    };
    tree.addEventListener('click', follow);
    return () => tree.removeEventListener('click', follow);
  }, [body]);
  useImperativeHandle(ref, () => ({ goTo: (id) => goTo(stage.current?.shadowRoot ?? null, id) }), []);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: pages that scroll have to be reached by the keyboard
    <section ref={stage} className={styles.pages} aria-label={label} tabIndex={0} />
  );
}

function goTo(tree: ShadowRoot | null, id: string): void {
  const place = tree?.getElementById(id);
  if (place == null) return;
  place.tabIndex = -1;
  place.focus({ preventScroll: true });
  place.scrollIntoView({ block: 'start' });
}

let sheet: CSSStyleSheet | null = null;

/** What a window adds: as little white round the pages as there is room, and no ring round what was jumped to. */
const WINDOW_CSS = `
.book { box-sizing: border-box; width: max-content; min-width: 100%; padding: 4px; }
[tabindex='-1']:focus { outline: none; }`;

/** One sheet for all books. */
function bookSheet(): CSSStyleSheet {
  if (sheet !== null) return sheet;
  sheet = new CSSStyleSheet();
  sheet.replaceSync(`${BOOK_CSS}\n${WINDOW_CSS}`);
  return sheet;
}
