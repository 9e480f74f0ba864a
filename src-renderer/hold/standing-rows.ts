/** What stands under a piece on a day, alike things together. */
import { stands } from '../../src-core/analysis';
import type { Job, Piece, Support, SupportKind } from '../../src-core/job';
import { isTemporary, standingOn, swapSteps } from '../../src-core/sequence';

export interface StandingRow {
  readonly key: string;
  /** "11 legs". */
  readonly title: string;
  /** "out on day 40"; empty for what stays. */
  readonly until: string;
  readonly names: string;
}

const KIND_NAMES: { readonly [K in SupportKind]: readonly [one: string, more: string] } = {
  cabinet: ['cabinet', 'cabinets'],
  wall: ['wall', 'walls'],
  ledger: ['ledger', 'ledgers'],
  pier: ['pier', 'piers'],
  leg: ['leg', 'legs'],
  bracket: ['row of brackets', 'rows of brackets'],
  'full-bed': ['full bed', 'full beds'],
};

interface Thing {
  readonly kind: readonly [one: string, more: string];
  readonly lastDay: number | null;
  readonly name: string;
}

/** Rows of a piece; what goes first comes first, what stays last. null is the finished job. */
export function standingRows(job: Job, piece: Piece, day: number | null): StandingRow[] {
  const groups = new Map<string, Thing[]>();
  for (const thing of thingsOn(job, piece, day)) {
    const key = `${thing.kind[0]} ${thing.lastDay ?? 'stays'}`;
    groups.set(key, [...(groups.get(key) ?? []), thing]);
  }
  return [...groups]
    .sort(([, a], [, b]) => (a[0]!.lastDay ?? Infinity) - (b[0]!.lastDay ?? Infinity))
    .map(([key, things]) => {
      const { kind, lastDay } = things[0]!;
      return {
        key,
        title: `${things.length} ${things.length === 1 ? kind[0] : kind[1]}`,
        until: lastDay === null ? '' : `stands until day ${lastDay}`,
        names: things.map(({ name }) => name).join(', '),
      };
    });
}

function thingsOn(job: Job, piece: Piece, day: number | null): Thing[] {
  const steps = swapSteps(job, piece);
  const thingOf = (support: Support): Thing => ({
    kind: KIND_NAMES[support.kind],
    lastDay: isTemporary(support, steps) ? support.lastDay : null,
    name: support.name ?? support.id,
  });
  if (day === null) return piece.supports.filter((support) => stands(support, null)).map(thingOf);
  const standing = standingOn(job, day).find(({ pieceId }) => pieceId === piece.id)!;
  const supports = piece.supports.filter(({ id }) => standing.supports.includes(id)).map(thingOf);
  const sections = job.falsework.sections
    .filter(({ id }) => standing.sections.includes(id))
    .map(
      ({ id, name, lastDay }): Thing => ({
        kind: ['falsework section', 'falsework sections'],
        lastDay,
        name: name ?? id,
      }),
    );
  return [...sections, ...supports];
}
