/** Standoffs, fabric, fibre, and the strip of joints drawn in a slab. */
import type { Job } from '../job';
import { IN_PER_YD, MM_PER_IN, printLength } from '../units';
import { byKind } from './by-kind';
import { AS_COUNTED, bulkWaste, listLine, wholeUnits } from './list-line';
import { massWords, wholeMass } from './mass-sold';
import type { PieceTakeoff } from './piece-takeoff';
import { RUN_STICK_IN } from './practice';
import { sourceOf, sumOf } from './sources';
import type { ListLine } from './types';
import { counted, stockWords } from './words';

/** Standoffs by their height, fabric, fibre, and strip for isolation joints that are drawn in a slab. */
export function steelExtras(job: Job, pieces: readonly PieceTakeoff[]): ListLine[] {
  return [
    ...standoffLines(job, pieces),
    ...fabricLines(job, pieces),
    ...fibreLines(job, pieces),
    ...jointLines(job, pieces),
  ];
}

function standoffLines(job: Job, pieces: readonly PieceTakeoff[]): ListLine[] {
  const { shownIn: system } = job;
  const found = pieces.flatMap((piece) =>
    (piece.steel?.standoffSets ?? []).flatMap((set) => {
      const height = printLength(set.heightIn, { system });
      return sourceOf(job, piece, set, set.count).map((source) => ({
        key: set.heightIn.toFixed(4),
        name: `Standoffs, ${height} high`,
        source,
      }));
    }),
  );
  return byKind(found).flatMap(({ key, name, sources }) => {
    const count = sumOf(sources);
    return listLine(
      {
        id: `standoffs/${key}`,
        group: 'hardware',
        name,
        unit: 'each',
        sources,
        waste: AS_COUNTED,
        buy: count,
        buyWords: counted(count, 'standoff', 'standoffs'),
        price: null,
      },
      system,
    );
  });
}

function fabricLines(job: Job, pieces: readonly PieceTakeoff[]): ListLine[] {
  const waste = bulkWaste(job.forms.wasteRatio);
  const found = othersOf(pieces, 'fabric').flatMap(({ piece, layer }) =>
    sourceOf(job, piece, layer, layer.areaIn2).map((source) => ({
      key: layer.material,
      name: `Fabric, ${layer.material}`,
      source,
    })),
  );
  const isImperial = job.shownIn === 'imperial';
  const holdsIn2 = isImperial ? IN_PER_YD ** 2 : (1000 / MM_PER_IN) ** 2;
  return byKind(found).flatMap(({ key, name, sources }) => {
    const buy = wholeUnits(sumOf(sources), waste, holdsIn2);
    return listLine(
      {
        id: `fabric/${key}`,
        group: 'builders-merchant',
        name,
        unit: 'in2',
        sources,
        waste,
        buy,
        buyWords: `${buy} ${isImperial ? 'sq yd' : 'm2'} off the roll`,
        price: null,
      },
      job.shownIn,
    );
  });
}

function fibreLines(job: Job, pieces: readonly PieceTakeoff[]): ListLine[] {
  const waste = bulkWaste(job.forms.wasteRatio);
  const found = othersOf(pieces, 'fibre').flatMap(({ piece, layer }) =>
    sourceOf(job, piece, layer, layer.massLb ?? 0).map((source) => ({
      key: layer.material,
      name: `Fibre for the mix, ${layer.material}`,
      source,
    })),
  );
  return byKind(found).flatMap(({ key, name, sources }) => {
    const buy = wholeMass(sumOf(sources) * (1 + waste.ratio), job.shownIn);
    return listLine(
      {
        id: `fibre/${key}`,
        group: 'builders-merchant',
        name,
        unit: 'lb',
        sources,
        waste,
        buy,
        buyWords: massWords(buy, job.shownIn),
        price: null,
      },
      job.shownIn,
    );
  });
}

function othersOf(pieces: readonly PieceTakeoff[], kind: 'fabric' | 'fibre') {
  return pieces.flatMap((piece) =>
    (piece.steel?.others ?? []).flatMap((layer) => (layer.kind === kind ? [{ piece, layer }] : [])),
  );
}

/** Strip along walls and butted edges is cut with the edge forms; this is of joints that are drawn across a slab. */
function jointLines(job: Job, pieces: readonly PieceTakeoff[]): ListLine[] {
  const { shownIn: system } = job;
  const waste = bulkWaste(job.forms.wasteRatio);
  const found = pieces.flatMap((piece) =>
    (piece.steel?.joints ?? []).flatMap((joint) => {
      if (joint.kind !== 'isolation' || joint.along !== 'joint') return [];
      const [width, depth] = [joint.widthIn, joint.depthIn].map((valueIn) =>
        printLength(valueIn, { system }),
      );
      return sourceOf(job, piece, joint, joint.lengthIn).map((source) => ({
        key: `${joint.widthIn}/${joint.depthIn}`,
        name: `Isolation strip across slabs, ${depth} high, ${width} thick`,
        source,
      }));
    }),
  );
  return byKind(found).flatMap(({ key, name, sources }) => {
    const buy = wholeUnits(sumOf(sources), waste, RUN_STICK_IN);
    return listLine(
      {
        id: `isolation-joint/${key}`,
        group: 'builders-merchant',
        name,
        unit: 'in',
        sources,
        waste,
        buy,
        buyWords: `${counted(buy, 'stick', 'sticks')} of ${stockWords(RUN_STICK_IN, system)}`,
        price: null,
      },
      system,
    );
  });
}
