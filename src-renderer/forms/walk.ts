/** How a person got to the form that is open, so that the focus goes along from a row to its form and back to the row. */
import { createContext } from 'react';
import type { Selection } from '../state/selection';

export interface Walk {
  /** The part whose form was just left for the piece's; null where the piece was not come to that way. */
  readonly cameFrom: Selection | null;
  /** Opens a part's form from its row. */
  readonly open: (selection: Selection) => void;
}

export const WalkContext = createContext<Walk>({ cameFrom: null, open: () => {} });
