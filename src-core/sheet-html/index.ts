export { BOOK_CSS } from './book-css';
export { bookBody, bookHtml, pageCss } from './book-html';
export type { DocumentOptions } from './document-html';
export { templateHtml } from './template-html';
