/** Mix, pigment and water, as the pour plan mixes them. */
import type { Job } from '../job';
import type { Pour, PourPlan } from '../pour';
import { IN3_PER_FT3, IN3_PER_GAL, L_PER_IN3, printMass } from '../units';
import { listLine, percentWords } from './list-line';
import { massWords, wholeMass } from './mass-sold';
import { sumOf } from './sources';
import type { ListLine, ListSource } from './types';
import { copiesWords, counted, placeWords } from './words';

/** A line for each mix, each pigment, and the water of all pours. */
export function mixLines(job: Job, plan: PourPlan): ListLine[] {
  return [
    ...plan.mixes.flatMap((mix) => [
      ...bagLine(job, mix, plan.pours),
      ...mix.pigments.flatMap((pigment) => pigmentLine(job, mix, pigment, plan.pours)),
    ]),
    ...waterLine(job, plan.pours),
  ];
}

type MixTotal = PourPlan['mixes'][number];

/** A pour's whole amount by the pieces in it, as their drawn volumes share it. */
function sharedOut(job: Job, pour: Pour, amount: number): ListSource[] {
  const { drawnFt3 } = pour.volumes;
  return pour.pieces.map(({ id, trace, copies, volumeFt3 }) => ({
    id,
    trace,
    amount: amount * (volumeFt3 / drawnFt3),
    words: `${placeWords(job, trace)}, poured on day ${pour.day}${copiesWords(copies)}`,
  }));
}

function bagLine(
  job: Job,
  { id, mixId, name, bags, bagsInHand, volumeFt3 }: MixTotal,
  pours: readonly Pour[],
): ListLine[] {
  const { overfillRatio, wasteRatio } = job.forms;
  const own = pours.filter((pour) => pour.mixId === mixId);
  const bagLb = own.find((pour) => pour.bags !== null)?.bags?.bagLb ?? null;
  const isImperial = job.shownIn === 'imperial';
  const byVolume = Math.ceil(volumeFt3 * (isImperial ? 1 : IN3_PER_FT3 * L_PER_IN3) - 1e-9);
  const hand = bagsInHand > 0 ? `; ${counted(bagsInHand, 'bag', 'bags')} in hand beside` : '';
  const toppingUp = bags === null ? '' : ' and what is kept back for topping up';
  const waste = {
    ratio: wasteRatio,
    words: `${percentWords(overfillRatio)} overfill, ${percentWords(wasteRatio)} waste${toppingUp} added to each pour, then whole bags${hand}`,
  };
  return listLine(
    {
      id,
      group: 'builders-merchant',
      name,
      unit: 'ft3',
      sources: own.flatMap((pour) => sharedOut(job, pour, pour.volumes.drawnFt3)),
      waste,
      buy: bags === null ? byVolume : bags + bagsInHand,
      buyWords:
        bags === null
          ? `${byVolume} ${isImperial ? 'cu ft' : 'L'}, ordered by volume: what a bag gives is not stated`
          : `${counted(bags + bagsInHand, 'bag', 'bags')}${bagLb === null ? '' : ` of ${printMass(bagLb, { system: job.shownIn, digits: 3 })}`}`,
      price: null,
    },
    job.shownIn,
  );
}

function pigmentLine(
  job: Job,
  { mixId, name }: MixTotal,
  { id, pigment }: MixTotal['pigments'][number],
  pours: readonly Pour[],
): ListLine[] {
  const sources = pours
    .filter((pour) => pour.mixId === mixId && pour.colour?.pigment === pigment)
    .flatMap((pour) =>
      pour.bags === null ? [] : sharedOut(job, pour, pour.bags.bags * (pour.bags.perBag.pigmentLb ?? 0)),
    )
    .filter(({ amount }) => amount > 0);
  const buy = wholeMass(sumOf(sources), job.shownIn);
  return listLine(
    {
      id,
      group: 'builders-merchant',
      name: `Pigment ${pigment}, in ${name}`,
      unit: 'lb',
      sources,
      waste: { ratio: 0, words: 'for every bag that is mixed, waste among them; weigh it for each batch' },
      buy,
      buyWords: massWords(buy, job.shownIn),
      price: null,
    },
    job.shownIn,
  );
}

function waterLine(job: Job, pours: readonly Pour[]): ListLine[] {
  const sources = pours
    .flatMap((pour) =>
      pour.bags === null ? [] : sharedOut(job, pour, pour.bags.bags * (pour.bags.perBag.waterGal ?? 0)),
    )
    .filter(({ amount }) => amount > 0);
  const isImperial = job.shownIn === 'imperial';
  const buy = Math.ceil(sumOf(sources) * (isImperial ? 1 : IN3_PER_GAL * L_PER_IN3) - 1e-9);
  return listLine(
    {
      id: 'water',
      group: 'builders-merchant',
      name: 'Mixing water, fit to drink',
      unit: 'gal',
      sources,
      waste: { ratio: 0, words: 'for every bag that is mixed; more for washing out' },
      buy,
      buyWords: `${buy} ${isImperial ? 'gal' : 'L'} from the tap`,
      price: null,
    },
    job.shownIn,
  );
}
