/** The pour of a job: one plain result for window, page and command line. */
import type { Job } from '../job';
import type { Trace } from '../trace';
import type { Bag, Colour } from './bag-amounts';
import type { BatchAmounts } from './batches';
import type { PourFinding } from './finding';
import { numbered } from './finding';
import type { BucketLift } from './lifting';
import { bagLiftFindings, bucketLift } from './lifting';
import type { PieceVolume } from './piece-volume';
import { pieceVolume } from './piece-volume';
import type { PourBags, PouredPiece, PourVolumes } from './pour-amounts';
import { pourBags, pouredPiece, pourVolumes } from './pour-amounts';
import type { PourClock } from './pour-clock';
import { pourClock } from './pour-clock';
import type { PourGroup } from './pour-groups';
import { pourGroups } from './pour-groups';
import { BAGS_IN_HAND } from './practice';
import type { PieceScreed } from './screed';
import { pieceScreed } from './screed';
import type { PourWeather } from './weather';
import { pourWeather } from './weather';

/** A batch on the page of the crew lead. */
export interface Batch extends BatchAmounts {
  readonly id: string;
  /** The piece that its first bucket goes into; for one that is all kept back, the last piece of the pour. */
  readonly trace: Trace;
  /** Minutes from the first water of the pour. */
  readonly waterMinutes: number;
  readonly readyMinutes: number;
  readonly placedMinutes: number;
}

export interface Pour {
  readonly id: string;
  readonly trace: Trace;
  readonly day: number;
  readonly mixId: string;
  readonly mixName: string;
  readonly colour: Colour | null;
  readonly pieces: readonly PouredPiece[];
  readonly volumes: PourVolumes;
  /** Null where the mix has no bag data, as the two below. */
  readonly bags: Omit<PourBags, 'batches'> | null;
  readonly batches: readonly Batch[];
  readonly clock: PourClock | null;
  readonly screed: readonly PieceScreed[];
  readonly weather: PourWeather;
  readonly findings: readonly PourFinding[];
}

/** What is bought of a mix. */
export interface MixTotal {
  readonly id: string;
  readonly mixId: string;
  readonly name: string;
  readonly volumeFt3: number;
  /** Bags that the pours mix, and bags in hand beside them; null without bag data. */
  readonly bags: number | null;
  readonly bagsInHand: number;
  readonly pigments: readonly { readonly id: string; readonly pigment: string; readonly weightLb: number }[];
}

export interface PourPlan {
  readonly pours: readonly Pour[];
  readonly mixes: readonly MixTotal[];
  readonly bucket: BucketLift;
  readonly findings: readonly PourFinding[];
  readonly cautions: readonly string[];
}

/** What the work does to people. OSHA 1926.1153; the caution of ASTM C1074; NIOSH 94-110. */
export const POUR_CAUTIONS: readonly string[] = [
  'Silica: dry mix, and dry grinding later, give off dust that scars the lungs for good. Open and tip bags low and upwind with a fitted respirator on, add the water first, sweep nothing dry. OSHA 1926.1153 holds the air to 50 µg/m3 over eight hours.',
  'Wet concrete is caustic, and its burns begin without pain. Waterproof gloves, boots and eye protection; rinse skin at once and never kneel in it. Rinse an eye at once and for long, and have a doctor see it.',
  'Lifting: bags and buckets over 51 lb take two people (NIOSH 94-110). Keep the way from mixer to form clear, level and short.',
  'Nobody under the slab while it is poured or after, before its supports may come out.',
  'This plan is arithmetic. The label on the bag, local codes and licensed practice stand above it.',
];

/** The pours of a job by day, mix and colour, with their batches, clock, screed and weather. */
export function pourPlan(job: Job): PourPlan {
  const volumes = new Map(job.pieces.map((piece) => [piece.id, pieceVolume(piece)]));
  const groups = pourGroups({ ...job, pieces: job.pieces.filter(({ id }) => volumes.get(id)!.isDrawn) });
  const pours = groups.map((group) => {
    const isAlone = groups.every((other) => other === group || other.day !== group.day);
    return pourOf(job, group, volumes, isAlone);
  });
  const bucket = bucketLift(job);
  const undrawn = job.pieces.filter(({ id }) => !volumes.get(id)!.isDrawn);
  return {
    pours,
    mixes: job.mixes.map((mix) => mixTotal(mix, pours)),
    bucket,
    findings: numbered(
      [
        ...undrawn.map(({ id, name }) => ({
          kind: 'piece-undrawn' as const,
          level: 'refused' as const,
          trace: volumes.get(id)!.trace,
          words: `${name} cannot be drawn and is left out of the pour: mend its outline first.`,
          source: 'the drawing',
        })),
        ...bucket.findings,
        ...job.mixes
          .filter(({ id }) => groups.some(({ mix }) => mix.id === id))
          .flatMap((mix) => bagLiftFindings(mix, job.shownIn)),
      ],
      null,
    ),
    cautions: POUR_CAUTIONS,
  };
}

function pourOf(job: Job, group: PourGroup, known: ReadonlyMap<string, PieceVolume>, isAlone: boolean): Pour {
  const { id, day, mix, colour } = group;
  const pieces = group.pieces.map((piece) => pouredPiece(job, group, piece, known.get(piece.id)!));
  const volumes = pourVolumes(job, pieces, mix.bag);
  const weather = pourWeather(job, day);
  const bagged = mix.bag === null ? null : bagging(job, group, pieces, mix.bag, volumes);
  return {
    id,
    trace: { pieceId: group.pieces[0]!.id, part: { kind: 'piece' } },
    day,
    mixId: mix.id,
    mixName: mix.name,
    colour,
    pieces,
    volumes,
    bags: bagged?.bags ?? null,
    batches: bagged?.batches ?? [],
    clock: bagged?.clock ?? null,
    screed: group.pieces.map((piece) => pieceScreed(piece, job.shownIn)),
    weather,
    findings: numbered(
      [
        ...(mix.bag === null ? [noBagData(mix.name)] : []),
        ...(bagged?.bags.perBag.findings ?? []),
        ...(bagged?.clock.findings ?? []),
        ...(isAlone ? [] : [SEVERAL_POURS]),
        ...weather.findings,
      ],
      id,
    ),
  };
}

const SEVERAL_POURS = {
  kind: 'several-pours',
  level: 'note',
  trace: null,
  words:
    'More than one mix or colour is poured on this day. Each clock begins at its own first water: finish placing one and wash mixers, buckets and tools before the next.',
  source: 'common practice, no source',
} as const;

function noBagData(name: string) {
  return {
    kind: 'no-bag-data',
    level: 'attention',
    trace: null,
    words: `Only volumes can be given: weight, yield and water of a bag of ${name} are missing. Write down what the bag says, or order by the volume.`,
    source: 'the job',
  } as const;
}

function bagging(
  job: Job,
  group: PourGroup,
  pieces: readonly PouredPiece[],
  bag: Bag,
  volumes: PourVolumes,
): {
  readonly bags: Omit<PourBags, 'batches'>;
  readonly batches: readonly Batch[];
  readonly clock: PourClock;
} {
  const { batches, ...bags } = pourBags(job, group, bag, volumes);
  const clock = pourClock(job, group, pieces, batches);
  const lastTrace: Trace = { pieceId: clock.order.at(-1)!.pieceId, part: { kind: 'piece' } };
  return {
    bags,
    clock,
    batches: batches.map((batch, k) => ({
      ...batch,
      ...clock.times[k]!,
      id: `${group.id}/batch/${batch.number}`,
      trace: clock.buckets.find((bucket) => bucket.batch === batch.number)?.trace ?? lastTrace,
    })),
  };
}

function mixTotal({ id, name, bag }: Job['mixes'][number], pours: readonly Pour[]): MixTotal {
  const own = pours.filter(({ mixId }) => mixId === id);
  const bags = own.reduce((sum, pour) => sum + (pour.bags?.bags ?? 0), 0);
  const byPigment = new Map<string, number>();
  for (const { colour, bags: used } of own) {
    const forBagLb = used?.perBag.pigmentLb ?? null;
    if (colour === null || used === null || forBagLb === null) continue;
    const { pigment } = colour;
    byPigment.set(pigment, (byPigment.get(pigment) ?? 0) + used.bags * forBagLb);
  }
  return {
    id: `mix/${id}`,
    mixId: id,
    name,
    volumeFt3: own.reduce((sum, { volumes }) => sum + volumes.totalFt3, 0),
    bags: bag === null ? null : bags,
    bagsInHand: bag === null || bags === 0 ? 0 : BAGS_IN_HAND,
    pigments: [...byPigment].map(([pigment, weightLb]) => ({
      id: `mix/${id}/pigment/${pigment}`,
      pigment,
      weightLb,
    })),
  };
}
