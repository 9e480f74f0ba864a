import type { RefObject } from 'react';
import { useLayoutEffect, useState } from 'react';

/** Width of an element, px, kept as the window changes; 0 before it was measured. */
export function useWidth(element: RefObject<HTMLElement | null>): number {
  const [widthPx, setWidthPx] = useState(0);
  useLayoutEffect(() => {
    const measured = element.current;
    if (measured === null) return;
    const observer = new ResizeObserver(() => setWidthPx(measured.clientWidth));
    observer.observe(measured);
    setWidthPx(measured.clientWidth);
    return () => observer.disconnect();
  }, [element]);
  return widthPx;
}
