/** The choices that make one section's framing, and every combination of them that is tried. */
import type { LumberSize } from '../timber';
import type { FalseworkPractice } from './practice';
import type { Section } from './section';

/** Which way the joists run: from front to back, or along the front. */
export type JoistRun = 'back' | 'along';

export interface Arrangement {
  readonly joistRun: JoistRun;
  readonly joistSize: LumberSize;
  /** Joists before any opening is framed, evenly spread. */
  readonly joistCount: number;
  /** Stringers under the joists; null where every joist stands on legs of its own. */
  readonly beamSize: LumberSize | null;
  /** Lines on which the joists bear, a ledger among them. */
  readonly lineCount: 2 | 3;
  /** From the end of the joists to their first and last line, in; a ledger lies at the wall itself. */
  readonly lineEndIn: number;
  /** Legs under each stringer, and how far from its ends the outer ones stand, in. One, at each joist, without stringers. */
  readonly legsALine: number;
  readonly legEndIn: number;
  readonly legSize: LumberSize;
  /** The side along which a ledger takes the place of a line of legs; null for none. */
  readonly ledgerSide: 'back' | 'left' | 'right' | null;
}

/** What is tried, each list cheapest first by habit. */
export interface ArrangementChoices {
  readonly joistSizes: readonly LumberSize[];
  /** Widest joist spacings, in. */
  readonly spacingsIn: readonly number[];
  readonly beamSizes: readonly LumberSize[];
  readonly legSizes: readonly LumberSize[];
  readonly endsIn: readonly number[];
  readonly legsALine: readonly number[];
  readonly mayUseLedger: boolean;
}

/** Sizes and spacings of common practice. */
export const DEFAULT_CHOICES: ArrangementChoices = {
  joistSizes: ['2x4', '2x6'],
  spacingsIn: [24, 19.2, 16, 12, 9.6, 8],
  beamSizes: ['2x4', '2x6'],
  legSizes: ['2x4', '4x4'],
  endsIn: [2, 6],
  legsALine: [2, 3, 4],
  mayUseLedger: true,
};

/** Length across the joists, and along them, of a section, in. */
export function sectionSpread({ frame }: Section, run: JoistRun): { acrossIn: number; alongIn: number } {
  const { widthIn, depthIn } = frame;
  return run === 'back' ? { acrossIn: widthIn, alongIn: depthIn } : { acrossIn: depthIn, alongIn: widthIn };
}

/** Every arrangement of a section that is tried, in a fixed order. */
export function arrangementsOf(
  section: Section,
  choices: ArrangementChoices,
  practice: FalseworkPractice,
): Arrangement[] {
  const all: Arrangement[] = [];
  for (const joistRun of ['back', 'along'] as const) {
    const { acrossIn } = sectionSpread(section, joistRun);
    const counts = choices.spacingsIn.map((mostIn) => joistCount(acrossIn, mostIn, practice.seamIn));
    const ledgers = choices.mayUseLedger ? ledgerSides(section, joistRun) : [null];
    for (const joistSize of choices.joistSizes)
      for (const count of new Set(counts))
        for (const ledgerSide of ledgers)
          for (const lineCount of [2, 3] as const)
            for (const lineEndIn of choices.endsIn)
              for (const legSize of choices.legSizes)
                for (const under of undersOf(choices))
                  all.push({
                    joistRun,
                    joistSize,
                    joistCount: count,
                    lineCount,
                    lineEndIn,
                    legSize,
                    ledgerSide,
                    ...under,
                  });
  }
  return all;
}

/** Joists are 1-1/2 in thick. */
export const JOIST_IN = 1.5;

/** Joists that a length across them takes at a widest spacing: one at either end, the rest evenly between. */
export function joistCount(acrossIn: number, mostIn: number, seamIn: number): number {
  return Math.max(2, Math.ceil((acrossIn - 2 * seamIn - JOIST_IN) / mostIn - 1e-9) + 1);
}

/** Sides at an end of the joists along which a ledger may run, and none. */
function ledgerSides({ wallSides }: Section, run: JoistRun): Arrangement['ledgerSide'][] {
  const sides = wallSides.filter((side) => (run === 'back') === (side === 'back'));
  return [null, ...sides];
}

function undersOf({
  beamSizes,
  legsALine,
  endsIn,
}: ArrangementChoices): Pick<Arrangement, 'beamSize' | 'legsALine' | 'legEndIn'>[] {
  return [
    { beamSize: null, legsALine: 1, legEndIn: 0 },
    ...beamSizes.flatMap((beamSize) =>
      legsALine.flatMap((count) => endsIn.map((legEndIn) => ({ beamSize, legsALine: count, legEndIn }))),
    ),
  ];
}
