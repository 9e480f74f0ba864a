import { useEffect } from 'react';

/** Frees what a part of the scene holds on the graphics card, once it is replaced or taken away. */
export function useDisposal(thing: { dispose: () => void }): void {
  useEffect(() => () => thing.dispose(), [thing]);
}
