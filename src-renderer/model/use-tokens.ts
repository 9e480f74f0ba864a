/** Colours of the look as the page has them now, for what CSS cannot paint. */
import { useMemo, useSyncExternalStore } from 'react';

export interface Tokens {
  readonly ink: string;
  readonly soft: string;
  readonly chalk: string;
  readonly change: string;
  readonly paper: string;
}

/** Read anew when the page's theme changes; the page changes after the store, so the store's theme would be too early. */
export function useTokens(): Tokens {
  const theme = useSyncExternalStore(watchTheme, themeOfPage);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the page's style, which is read, follows its theme
  return useMemo(readTokens, [theme]);
}

function readTokens(): Tokens {
  const style = getComputedStyle(document.documentElement);
  const read = (name: string) => style.getPropertyValue(name).trim();
  return {
    ink: read('--ink'),
    soft: read('--soft'),
    chalk: read('--chalk'),
    change: read('--change'),
    paper: read('--paper'),
  };
}

function themeOfPage(): string {
  return document.documentElement.dataset.theme ?? '';
}

function watchTheme(changed: () => void): () => void {
  const observer = new MutationObserver(changed);
  observer.observe(document.documentElement, { attributeFilter: ['data-theme'] });
  return () => observer.disconnect();
}
