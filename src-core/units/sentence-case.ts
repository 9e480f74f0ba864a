/** First letter large, for a sentence or a label that starts with common words. */
export function sentenceCase(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
