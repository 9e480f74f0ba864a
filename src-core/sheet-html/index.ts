export { BOOK_CSS } from './book-css';
export type { BookHtmlOptions } from './book-html';
export { bookBody, bookHtml, pageCss } from './book-html';
