/** What protects people and slabs, as far as the job says how much. */
import type { Job } from '../job';
import type { PourPlan } from '../pour';
import { AS_COUNTED, bulkWaste, listLine, wholeUnits } from './list-line';
import { COVER_SHEET } from './practice';
import { sumOf } from './sources';
import type { Tool } from './tools';
import type { ListLine } from './types';
import { copiesWords, counted, placeWords, sheetWords } from './words';

/** Protection that is counted, for the crew of the first pour, who pour the others too, and sheeting by the area of the slabs. */
export function protectionLines(job: Job, tools: readonly Tool[], plan: PourPlan): ListLine[] {
  const { shownIn: system } = job;
  const [first] = plan.pours;
  if (first === undefined) return [];
  const { trace } = first;
  const worn = tools.flatMap(({ id, kind, name, count, countWords }) =>
    kind === 'tool' || count === null
      ? []
      : listLine(
          {
            id: `protection/${id}`,
            group: 'protection',
            name,
            unit: 'each',
            sources: [
              { id, trace, amount: count, words: `${placeWords(job, trace)}, ${countWords} at the pour` },
            ],
            waste: AS_COUNTED,
            buy: count,
            buyWords: String(count),
            price: null,
          },
          system,
        ),
  );
  return [...worn, ...sheetLine(job, plan)];
}

/** Sheeting as large as the slabs, to keep them damp; before the pour the same sheets keep floors and cabinets clean. */
function sheetLine(job: Job, { pours }: PourPlan): ListLine[] {
  const { shownIn: system } = job;
  const waste = bulkWaste(job.forms.wasteRatio);
  const sources = pours.flatMap(({ pieces }) =>
    pieces.map(({ id, trace, copies, volume }) => ({
      id,
      trace,
      amount: copies * volume.areaIn2,
      words: `${placeWords(job, trace)}, over the slab${copiesWords(copies)}`,
    })),
  );
  const buy = wholeUnits(sumOf(sources), waste, COVER_SHEET.lengthIn * COVER_SHEET.widthIn);
  return listLine(
    {
      id: 'protection/sheeting',
      group: 'protection',
      name: 'Plastic sheeting, over floors and cabinets, then over the slabs to keep them damp',
      unit: 'in2',
      sources,
      waste,
      buy,
      buyWords: `${counted(buy, 'sheet', 'sheets')} of ${sheetWords(COVER_SHEET.lengthIn, COVER_SHEET.widthIn, system)}`,
      price: null,
    },
    system,
  );
}
