import type { Job, JobDraft } from '../../../src-core/job';
import { jobSchema } from '../../../src-core/job';
import { rectangle } from '../../support/pieces';

type PieceDraft = JobDraft['pieces'][number];
type SupportDraft = NonNullable<PieceDraft['supports']>[number];
type SectionDraft = NonNullable<NonNullable<JobDraft['falsework']>['sections']>[number];

/** Day on which the cabinets of these jobs come. */
export const SWAP_DAY = 30;

/** A cabinet 24 in deep that comes on the day of the swap. */
export function lateCabinet(
  id: string,
  corner: { xIn: number; yIn: number },
  widthIn: number,
  more: Record<string, unknown> = {},
): SupportDraft {
  return { kind: 'cabinet', id, corner, widthIn, depthIn: 24, firstDay: SWAP_DAY, ...more } as SupportDraft;
}

/** A leg that goes on the day of the swap. */
export function prop(id: string, xIn: number, yIn: number, more: Record<string, unknown> = {}): SupportDraft {
  return { kind: 'leg', id, centre: { xIn, yIn }, lastDay: SWAP_DAY, ...more } as SupportDraft;
}

/** A ledger on the studs that goes last. */
export function wallLedger(id: string, from: [number, number], to: [number, number]): SupportDraft {
  const at = ([xIn, yIn]: [number, number]) => ({ xIn, yIn });
  return { kind: 'ledger', id, from: at(from), to: at(to), widthIn: 1.5, lastDay: SWAP_DAY };
}

/** A job of one counter poured on day 0, with f'c 5000 psi. */
export function counterJob(
  piece: Partial<PieceDraft> & Pick<PieceDraft, 'corners' | 'supports'>,
  more: Partial<JobDraft> = {},
): Job {
  return jobSchema.parse({
    format: 'ledgewright-job',
    version: 1,
    id: 'swap-test',
    name: 'Swap test',
    mixes: [{ id: 'mix', name: 'Mix', strengthPsi: 5000, strengthFrom: 'tested' }],
    ...more,
    pieces: [
      {
        id: 'counter',
        name: 'Counter',
        use: 'counter',
        thicknessIn: 2,
        mixId: 'mix',
        ...piece,
      } as PieceDraft,
    ],
  });
}

/** The straight counter 144 x 25-1/2 in on four cabinets 36 in wide, held until then by two legs a bay and a ledger at its back. */
export function straightCounter(thicknessIn = 2, more: Partial<JobDraft> = {}): Job {
  const bays = [0, 36, 72, 108];
  return counterJob(
    {
      corners: rectangle(144, 25.5),
      thicknessIn,
      supports: [
        ...bays.map((xIn, i) => lateCabinet(`cab-${i + 1}`, { xIn, yIn: 1.5 }, 36)),
        ...bays.flatMap((xIn, i) => [prop(`leg-${i + 1}a`, xIn + 6, 4), prop(`leg-${i + 1}b`, xIn + 30, 4)]),
        wallLedger('ledger', [0, 24.75], [144, 24.75]),
      ],
    },
    more,
  );
}

/** A corner counter on eight cabinets: five along the back wall, three down the return, with a leg pair a bay and two ledgers. */
export function cornerCounter(): Job {
  const back = [0, 36, 60, 84, 108];
  const widths = [36, 24, 24, 24, 24];
  const down = [-22.5, -46.5, -70.5];
  return counterJob({
    corners: [
      { xIn: 0, yIn: -72 },
      { xIn: 25.5, yIn: -72 },
      { xIn: 25.5, yIn: 0 },
      { xIn: 133.5, yIn: 0 },
      { xIn: 133.5, yIn: 25.5 },
      { xIn: 0, yIn: 25.5 },
    ],
    supports: [
      ...back.map((xIn, i) => lateCabinet(`back-${i + 1}`, { xIn, yIn: 1.5 }, widths[i]!)),
      ...down.map((yIn, i) => lateCabinet(`down-${i + 1}`, { xIn: 24, yIn }, 24, { angleDeg: 90 })),
      ...back.flatMap((xIn, i) => [
        prop(`leg-b${i + 1}a`, xIn + 5, 4),
        prop(`leg-b${i + 1}b`, xIn + widths[i]! - 5, 4),
      ]),
      ...down.flatMap((yIn, i) => [
        prop(`leg-d${i + 1}a`, 21, yIn + 5),
        prop(`leg-d${i + 1}b`, 21, yIn + 19),
      ]),
      wallLedger('ledger-back', [0, 24.75], [133.5, 24.75]),
      wallLedger('ledger-side', [0.75, -72], [0.75, 24]),
    ],
  });
}

/** A falsework section under a rectangle of the counter. */
export function sectionUnder(
  id: string,
  [left, front, right, backIn]: readonly [number, number, number, number],
): SectionDraft {
  return {
    id,
    pieceId: 'counter',
    firstDay: 0,
    lastDay: SWAP_DAY,
    corners: [
      { xIn: left, yIn: front },
      { xIn: right, yIn: front },
      { xIn: right, yIn: backIn },
      { xIn: left, yIn: backIn },
    ],
  };
}
