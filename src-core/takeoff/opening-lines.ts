/** What the forms of openings take beside their strips and plugs: braces inside, rods, and sand in bowls. */
import type { Job } from '../job';
import type { OpeningForm } from '../openings';
import { printMass } from '../units';
import { AS_COUNTED, bulkWaste, listLine, wholeUnits } from './list-line';
import type { PieceTakeoff } from './piece-takeoff';
import { SAND_BAG_LB } from './practice';
import { sourceOf, sumOf } from './sources';
import type { ListLine, ListSource } from './types';
import { counted } from './words';

/** Lines for what braces, holds down and fills. */
export function openingLines(job: Job, pieces: readonly PieceTakeoff[]): ListLine[] {
  const each = (amountOf: (opening: OpeningForm) => number, word: string): ListSource[] =>
    pieces.flatMap((piece) =>
      piece.openings.flatMap((opening) =>
        sourceOf(job, piece, { id: `${opening.id}/${word}`, trace: opening.trace }, amountOf(opening)),
      ),
    );
  const braces = each(({ form }) => (form.kind === 'frame' ? form.braces : 0), 'braces');
  const rods = each(({ holdDown }) => (holdDown.kind === 'rod' ? 1 : 0), 'rod');
  const sand = each(({ infill }) => infill?.sandWeightLb ?? 0, 'sand');
  const waste = bulkWaste(job.forms.wasteRatio);
  const bags = wholeUnits(sumOf(sand), waste, SAND_BAG_LB);
  const bag = printMass(SAND_BAG_LB, { system: job.shownIn, digits: 3 });
  return [
    {
      id: 'braces/openings',
      group: 'timber-yard' as const,
      name: 'Braces across forms of openings',
      unit: 'each' as const,
      sources: braces,
      waste: AS_COUNTED,
      buy: sumOf(braces),
      buyWords: `${counted(sumOf(braces), 'brace', 'braces')}, from offcuts`,
      price: null,
    },
    {
      id: 'rods',
      group: 'hardware' as const,
      name: '1/4 in threaded rods with nuts, plate washers and two bars, through drains of bowls',
      unit: 'each' as const,
      sources: rods,
      waste: AS_COUNTED,
      buy: sumOf(rods),
      buyWords: counted(sumOf(rods), 'rod', 'rods'),
      price: null,
    },
    {
      id: 'sand',
      group: 'builders-merchant' as const,
      name: 'Damp sand that fills bowls cast in (a board laid over the bowl serves too)',
      unit: 'lb' as const,
      sources: sand,
      waste,
      buy: bags,
      buyWords: `${counted(bags, 'bag', 'bags')} of ${bag}`,
      price: null,
    },
  ].flatMap((draft) => listLine(draft, job.shownIn));
}
