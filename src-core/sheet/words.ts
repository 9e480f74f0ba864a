/** Words of the book, and the references within them that are known only once the pages are laid out. */

/** Points at another place of the book by its id: prints "page 7" for any id, "Figure 3" for that of a figure. */
export interface Reference {
  readonly kind: 'page' | 'figure';
  readonly to: string;
}

export type Run = string | { readonly kind: 'strong'; readonly words: string } | Reference;

/** A line break in the text counts as a space. A space that must not break a line is U+00A0. */
export type Words = string | readonly Run[];

export function runsOf(words: Words): readonly Run[] {
  return typeof words === 'string' ? [words] : words;
}
