/** What is said about the boards of a piece: seams out of place, and whether fewer boards could do. */
import type { Job } from '../job';
import type { Trace } from '../trace';
import { printExactLength } from '../units';
import { SEAM_CLEAR_IN } from './practice';
import type { SeamFault } from './seam-rules';

export interface BoardFinding {
  readonly id: string;
  readonly about: SeamFault | 'fewest-boards';
  readonly trace: Trace;
  readonly level: 'ok' | 'attention';
  readonly words: string;
  readonly source: string;
}

interface Laid {
  readonly trace: Trace;
  readonly pieceId: string;
  readonly boardCount: number;
  readonly isProvedFewest: boolean;
  readonly isCuttingProved: boolean;
  readonly waysTried: number;
  readonly seams: readonly { readonly faults: readonly SeamFault[] }[];
}

const FAULTS: readonly SeamFault[] = ['corner', 'edge', 'overhang'];

/** One finding a rule, and one about the count. */
export function boardFindings(job: Job, laid: Laid): BoardFinding[] {
  const clear = printExactLength(SEAM_CLEAR_IN, { system: job.shownIn });
  const kept: { readonly [F in SeamFault]: readonly [string, string] } = {
    corner: [
      `Every seam stays ${clear} or more off the corners of openings and inside corners.`,
      `within ${clear} of the corner of an opening or an inside corner, where a crack begins most easily`,
    ],
    edge: [
      `No seam runs along an edge within ${clear} of it.`,
      `along an edge within ${clear} of it, which leaves a narrow strip of board`,
    ],
    overhang: [
      'No seam runs along an overhang beyond its last support.',
      'along an overhang beyond its last support, where the slab is bent most',
    ],
  };
  const bySeams = FAULTS.map((fault): BoardFinding => {
    const count = laid.seams.filter(({ faults }) => faults.includes(fault)).length;
    const [good, bad] = kept[fault];
    const seams = count === 1 ? 'One seam runs' : `${count} seams run`;
    return {
      id: `${laid.pieceId}/boards/${fault}`,
      about: fault,
      trace: laid.trace,
      level: count === 0 ? 'ok' : 'attention',
      words:
        count === 0
          ? good
          : `${seams} ${bad}. No way of laying that was tried keeps all seams clear; a larger board may.`,
      source: 'common practice, no source',
    };
  });
  return [...bySeams, countFinding(laid)];
}

function countFinding(laid: Laid): BoardFinding {
  const { trace, pieceId, boardCount, isProvedFewest, isCuttingProved, waysTried } = laid;
  const boards = boardCount === 1 ? 'One board is' : `${boardCount} boards are`;
  const tried = waysTried === 1 ? 'the one way' : `the ${waysTried} ways`;
  return {
    id: `${pieceId}/boards/fewest-boards`,
    about: 'fewest-boards',
    trace,
    level: 'ok',
    words: isProvedFewest
      ? `${boards} enough, and by area no fewer can be.`
      : `${boards} the fewest of ${tried} of laying that were tried, with offcuts used again${isCuttingProved ? ', and these parts cannot be cut from fewer' : ''}. Another way of laying may need fewer.`,
    source: 'plane geometry; each part is cut from the rectangle round it, with cuts from edge to edge',
  };
}
