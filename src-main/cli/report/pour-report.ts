/** The pours of a job as a person reads them: amounts, batches, buckets, crew, screed, finish, weather, cautions. */
import type { Job } from '../../../src-core/job';
import type { DryingBand, MixTotal, Pour, PourPlan } from '../../../src-core/pour';
import { printMass, printSpreadLoad, printTemperature, type UnitSystem } from '../../../src-core/units';
import { markOf, paintShape } from './marks';
import { findingLines, rungOf } from './pour-findings';
import { batchTable, finishTable, formName } from './pour-tables';
import {
  colourWords,
  countWords,
  dayWords,
  massWords,
  minutesWords,
  pigmentWords,
  plain,
  volumeWords,
  waterWords,
  windWords,
} from './pour-words';
import { noticeLines, section, showable, textOf } from './result-lines';
import { wrap } from './wrap';

const DRYING: { readonly [B in DryingBand]: string } = {
  slow: 'slow, the first of three bands',
  watch: 'to be watched, the second of three bands',
  act: 'too fast, the third of three bands',
};

/** The report as text, at most 100 columns wide. */
export function pourReport(
  foundJob: Job,
  foundPlan: PourPlan,
  { colour }: { readonly colour: boolean },
): string {
  const [job, plan] = [showable(foundJob), showable(foundPlan)];
  const system = job.shownIn;
  return textOf([
    ...wrap(`${job.name}: ${countWords(plan.pours.length, 'pour', 'pours')}`),
    ...section('For every pour', findingLines(plan.findings, colour)),
    ...plan.pours.flatMap((pour, index) => pourLines(job, plan, pour, index, colour)),
    ...section(
      'To buy',
      plan.mixes.flatMap((mix) => mixLines(mix, system)),
    ),
    ...section(
      'Cautions',
      plan.cautions.flatMap((words) => wrap(words, '- ')),
    ),
    ...noticeLines(),
  ]);
}

function pourLines(job: Job, plan: PourPlan, pour: Pour, index: number, colour: boolean): string[] {
  const system = job.shownIn;
  const rung = rungOf(pour.findings);
  const names = pour.pieces
    .map(({ name, copies }) => (copies === 1 ? name : `${name} x ${copies}`))
    .join(', ');
  const title = `Pour ${index + 1}, ${dayWords(job, pour.day)}: ${names}`;
  return [
    '',
    ...wrap(markOf(rung, title), '', '  ').map((line) => paintShape(line, rung, colour)),
    ...section('Found', findingLines(pour.findings, colour)),
    ...section('Concrete', amountLines(pour, system)),
    ...section(
      'Batches, minutes from the first water',
      pour.batches.length === 0 ? [] : batchTable(pour, system),
    ),
    ...section('Buckets and lifting', bucketLines(plan, pour, system)),
    ...section('Crew', crewLines(job, pour)),
    ...section('Screed', screedLines(pour)),
    ...section('Finish, minutes from the first water', finishTable(pour)),
    ...section('Weather', weatherLines(pour, system)),
  ];
}

function amountLines(pour: Pour, system: UnitSystem): string[] {
  const { volumes, bags, pieces, mixName, colour } = pour;
  const yards = system === 'imperial' ? ` (${plain(volumes.totalYd3)} cu yd)` : '';
  return [
    ...wrap(
      `${volumeWords(volumes.drawnFt3, system)} as drawn; ${volumeWords(volumes.totalFt3, system)}${yards} to mix with overfill, waste and what is kept back to top up.`,
    ),
    ...wrap(
      bags === null
        ? `${mixName}, ${colourWords(colour)}.`
        : `${countWords(bags.bags, 'bag', 'bags')} of ${massWords(bags.bagLb, system)}: ${mixName}, ${colourWords(colour)}. They give ${volumeWords(bags.surplusFt3, system)} beyond that.`,
    ),
    ...(bags === null
      ? []
      : wrap(
          `To each bag: water ${waterWords(bags.perBag, system)}; pigment ${pigmentWords(bags.perBag.pigmentLb, colour, system)}.${bags.perBag.waterCementRatio === null ? '' : ` Water to cement ${plain(bags.perBag.waterCementRatio)}.`}`,
        )),
    ...pieces.flatMap(({ name, volumeFt3, wetWeightLb, edgePressurePsf }) =>
      wrap(
        `${name}: ${volumeWords(volumeFt3, system)}, ${massWords(wetWeightLb, system)} wet, ${printSpreadLoad(edgePressurePsf, { system, digits: 3 })} at the foot of its edge forms`,
        '- ',
      ),
    ),
  ];
}

function bucketLines({ bucket }: PourPlan, { clock }: Pour, system: UnitSystem): string[] {
  const filled = `A bucket as this crew fills it holds ${volumeWords(bucket.volumeFt3, system)} and weighs ${printMass(bucket.weightLb, { system, digits: 3 })}; one pair of hands lifts it at ${Math.floor(100 * bucket.mostFillRatio)} % full or less.`;
  if (clock === null || clock.buckets.length === 0) return wrap(filled);
  const heaviestLb = Math.max(...clock.buckets.map(({ weightLb }) => weightLb));
  return wrap(
    `${countWords(clock.buckets.length, 'bucket', 'buckets')}, the heaviest ${massWords(heaviestLb, system)}. ${filled}`,
  );
}

function crewLines({ crew }: Job, pour: Pour): string[] {
  const { clock } = pour;
  if (clock === null) return [];
  const { pace, leastCrew, leastSlackMinutes, workingMinutes, order } = clock;
  const spare =
    leastSlackMinutes < 0
      ? `${minutesWords(Math.ceil(-leastSlackMinutes))} too slow`
      : `${minutesWords(leastSlackMinutes)} to spare at the least`;
  const names = order.map(({ pieceId, copy }) => formName(pour, pieceId, copy)).join(', ');
  return [
    ...wrap(
      `${countWords(crew.people, 'person', 'people')}, ${countWords(pace.mixers, 'mixer', 'mixers')} running; ${minutesWords(workingMinutes)} of working time: ${spare}.`,
    ),
    ...wrap(
      leastCrew === null
        ? 'No crew of up to ten people with four mixers is fast enough.'
        : `Least crew with time to spare: ${leastCrew.people} people, ${countWords(leastCrew.mixers, 'mixer', 'mixers')}; ${minutesWords(leastCrew.slackMinutes)} to spare.`,
    ),
    ...wrap(`Fill in this order: ${names}.`),
  ];
}

function screedLines({ pieces, screed }: Pour): string[] {
  return screed.flatMap(({ pieceId, datumWords, runs, rails, plugs }) => [
    ...wrap(`${pieces.find((piece) => piece.pieceId === pieceId)!.name}: ${datumWords}`, '- '),
    ...[...runs, ...rails, ...plugs].flatMap(({ words }) => wrap(words, '  - ')),
  ]);
}

function weatherLines({ weather }: Pour, system: UnitSystem): string[] {
  const { airC, concreteC, humidityRatio, windMph, isOutdoors, drying, dryingWords } = weather;
  const degrees = (tempC: number) => printTemperature(tempC, { system, digits: 2 });
  return wrap(
    `${isOutdoors ? 'Outdoors' : 'Indoors'}, air ${degrees(airC)}, concrete ${degrees(concreteC)}, humidity ${Math.round(100 * humidityRatio)} %, wind ${windWords(windMph, system)}. Drying is ${DRYING[drying]}. ${dryingWords}`,
  );
}

function mixLines({ name, volumeFt3, bags, bagsInHand, pigments }: MixTotal, system: UnitSystem): string[] {
  const what =
    bags === null
      ? `${volumeWords(volumeFt3, system)}; the bag is not known`
      : `${countWords(bags, 'bag', 'bags')} and ${bagsInHand} in hand, for ${volumeWords(volumeFt3, system)}`;
  const colours = pigments
    .map(({ pigment, weightLb }) => `; ${pigment}, ${massWords(weightLb, system)}`)
    .join('');
  return wrap(`${name}: ${what}${colours}`, '- ');
}
