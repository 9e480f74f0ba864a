/** Strips, blocks and plugs of edge forms, and of the forms of openings. */
import type { CutEdgeForms, Strip, StripCutList, StripKind } from '../edge-forms';
import type { Job } from '../job';
import { printLength } from '../units';
import { byKind } from './by-kind';
import { AS_COUNTED, bulkWaste, listLine, wholeUnits } from './list-line';
import type { PieceTakeoff } from './piece-takeoff';
import { RUN_STICK_IN } from './practice';
import { sourceOf, sumOf } from './sources';
import { stickLines } from './stick-lines';
import { priceOfStock } from './stock-prices';
import type { ListLine, ListSource } from './types';
import { counted, placeWords, profileWords, stockWords } from './words';

/** Lines for the strips that are cut, the blocks that are shaped, plugs, and strips of drip grooves. */
export function formLines(job: Job, pieces: readonly PieceTakeoff[], formCuts: CutEdgeForms): ListLine[] {
  return [
    ...formCuts.lists.flatMap((list) => stripLines(job, list)),
    ...blockLine(job, formCuts.blocks),
    ...plugLine(job, pieces),
    ...grooveLines(job, pieces),
  ];
}

function stripLines(job: Job, { id, of, sticks }: StripCutList): ListLine[] {
  const isIsolation = of.material === 'isolation-strip';
  return stickLines(
    {
      id: `strip/${id}`,
      group: isIsolation ? 'builders-merchant' : 'timber-yard',
      name: stripName(job, of),
      one: 'stick',
      priceOf: ({ stockId }) => priceOfStock(job, stockId),
    },
    sticks.map(({ stockId, stockLengthIn, cuts }) => ({
      stockId,
      stockLengthIn,
      cuts: cuts.map(({ strip }) => stripSource(job, strip, strip.longIn)),
    })),
    job.shownIn,
  );
}

/** "Edge form, eased 1/8 in, 2 in high, 1-1/2 in thick". */
export function stripName(job: Job, { kind, material, profile, heightIn, faceIn }: StripKind): string {
  const length = (valueIn: number) => printLength(valueIn, { system: job.shownIn });
  const size = `${length(heightIn)} high, ${length(faceIn)} thick`;
  if (material === 'isolation-strip') return `Isolation strip, ${size}`;
  switch (kind) {
    case 'profiled':
      return `Edge form, ${profileWords(profile, job.shownIn)}, ${size}`;
    case 'flat':
      return `Edge form, flat, ${size}`;
    case 'sink':
      return `Strip for forms of openings, ${size}`;
  }
}

/** A strip of one copy; strips of every copy are cut one by one. */
function stripSource(job: Job, { id, trace, copy }: Strip, amount: number): ListSource {
  return { id, trace, amount, words: `${placeWords(job, trace)}${copy === 1 ? '' : `, copy ${copy}`}` };
}

function blockLine(job: Job, blocks: readonly Strip[]): ListLine[] {
  return listLine(
    {
      id: 'corner-blocks',
      group: 'timber-yard',
      name: 'Blocks shaped to tight corners',
      unit: 'each',
      sources: blocks.map((block) => stripSource(job, block, 1)),
      waste: AS_COUNTED,
      buy: blocks.length,
      buyWords: `${counted(blocks.length, 'block', 'blocks')}, from offcuts`,
      price: null,
    },
    job.shownIn,
  );
}

function plugLine(job: Job, pieces: readonly PieceTakeoff[]): ListLine[] {
  const sources = pieces.flatMap((piece) =>
    (piece.forms?.plugs ?? []).flatMap((plug) => sourceOf(job, piece, plug, 1)),
  );
  const count = sumOf(sources);
  return listLine(
    {
      id: 'plugs',
      group: 'hardware',
      name: 'Knock-out plugs for small openings',
      unit: 'each',
      sources,
      waste: AS_COUNTED,
      buy: count,
      buyWords: counted(count, 'plug', 'plugs'),
      price: null,
    },
    job.shownIn,
  );
}

function grooveLines(job: Job, pieces: readonly PieceTakeoff[]): ListLine[] {
  const waste = bulkWaste(job.forms.wasteRatio);
  const length = (valueIn: number) => printLength(valueIn, { system: job.shownIn });
  const found = pieces.flatMap((piece) =>
    (piece.forms?.grooves ?? []).flatMap((groove) =>
      sourceOf(job, piece, groove, groove.lengthIn).map((source) => {
        const { widthIn, depthIn } = groove.section;
        const name = `Strip for drip grooves, ${length(widthIn)} wide, ${length(depthIn)} high`;
        return { key: `${widthIn}/${depthIn}`, name, source };
      }),
    ),
  );
  return byKind(found).flatMap(({ key, name, sources }) => {
    const buy = wholeUnits(sumOf(sources), waste, RUN_STICK_IN);
    return listLine(
      {
        id: `groove/${key}`,
        group: 'timber-yard',
        name,
        unit: 'in',
        sources,
        waste,
        buy,
        buyWords: `${counted(buy, 'stick', 'sticks')} of ${stockWords(RUN_STICK_IN, job.shownIn)}`,
        price: null,
      },
      job.shownIn,
    );
  });
}
