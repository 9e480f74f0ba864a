/** What the book rests on that nobody has measured, and what it leaves to an engineer or to local code. */

import { stands } from '../checks';
import type { Piece, Support } from '../job';
import { rovingOf, stiffnessOf, UNTESTED_STRENGTH_PSI } from '../job';
import type { Block, Chapter, Words } from '../sheet';
import { STEEL_LB_PER_IN3 } from '../steel-placing';
import { IN3_PER_FT3, printDensity } from '../units';
import { columns, heading, list, paragraph, table } from './blocks';
import { allLines, isFromMemory, namedSources } from './book-sources';
import type { BookContext } from './context';
import { strengthWords } from './piece-amounts';
import { capital, sentence } from './print';

const ASSUMED = 'assumed';

export function assumedChapter(context: BookContext): Chapter {
  return {
    id: ASSUMED,
    title: 'What was assumed, and what is for others',
    startsPage: true,
    blocks: [
      paragraph(
        'Numbers that the job states, and defaults that stand in where it states none. Measure what you can, put it into the job, and print a new book.',
      ),
      heading(`${ASSUMED}-concrete`, 'Concrete and weights'),
      ...list(concreteWords(context)),
      heading(`${ASSUMED}-loads`, 'Loads'),
      ...list(loadWords(context)),
      ...stiffnessTable(context),
      heading(`${ASSUMED}-site`, 'Site and prices'),
      ...list(siteWords(context)),
      ...memoryBlocks(context),
      heading(`${ASSUMED}-others`, 'For an engineer, or for local code'),
      ...list(othersWords(context)),
    ],
  };
}

function concreteWords(context: BookContext): Words[] {
  const { job, print } = context;
  const density = (pcf: number) => printDensity(pcf, { system: print.system });
  return [
    ...job.mixes.map((mix) =>
      mix.strengthPsi === null
        ? `${mix.name}: no strength is stated, so ${print.stress(UNTESTED_STRENGTH_PSI)} is assumed, the figure for hand-mixed concrete that nobody has tested (common practice, no source). A cylinder test or the bag may say more.`
        : `${mix.name}: ${strengthWords(context, mix)}${mix.strengthFrom === 'tested' || mix.cylinders.length > 0 ? '' : '; nobody has tested it here'}.`,
    ),
    ...job.mixes.map(
      (mix) =>
        `${mix.name} weighs ${density(mix.densityPcf)} hardened; wet concrete is counted at ${density(job.falsework.wetDensityPcf)}.`,
    ),
    `Steel weighs ${density(STEEL_LB_PER_IN3 * IN3_PER_FT3)}. Fabric and fibre count nothing for strength.`,
    'Strength by day follows the age, the temperatures and the cement, unless cylinder tests of the job say otherwise.',
  ];
}

function loadWords(context: BookContext): Words[] {
  const { job, print } = context;
  const { livePsf, leastTotalPsf, durationFactor, wetService, species } = job.falsework;
  return [
    ...slabLoads(context),
    `Falsework: ${print.spread(livePsf)} for people and tools, ${print.spread(leastTotalPsf)} in all at the least; lumber ${species === 'spf' ? 'spruce-pine-fir' : 'douglas fir-larch'}, ${wetService ? 'wet' : 'dry'}, load duration factor ${durationFactor}.`,
    `While supports are swapped: ${print.spread(job.swap.workingLoadPsf)} on the slab.`,
  ];
}

/** Pieces with the same loads in one sentence. */
function slabLoads({ facts, print }: BookContext): Words[] {
  const byLoad = new Map<string, string[]>();
  for (const { piece, alike } of facts.pieces) {
    const load = `${rovingWords(piece, print.force, print.length)}, or ${print.spread(piece.loads.spreadPsf)} spread over the top; not both together`;
    byLoad.set(load, [...(byLoad.get(load) ?? []), ...alike.map(({ name }) => name)]);
  }
  return [...byLoad].map(([load, names]) => `${names.join(', ')}: ${load}.`);
}

function rovingWords(
  piece: Piece,
  force: (lbf: number) => string,
  length: (valueIn: number) => string,
): string {
  const roving = rovingOf(piece);
  return roving === null
    ? 'no person on it'
    : `one person at the worst place, ${force(roving.forceLbf)} on ${length(roving.widthIn)} by ${length(roving.depthIn)} (${roving.source})`;
}

const UNITS: { readonly [K in Exclude<Support['kind'], 'bracket'>]: string } = {
  cabinet: 'lbf/in per inch of side panel',
  wall: 'lbf/in per inch',
  ledger: 'lbf/in per inch',
  leg: 'lbf/in',
  pier: 'lbf/in per in2',
  'full-bed': 'lbf/in per in2',
};

/** Both bounds of every kind of support in the job. Units of the workings, in which they are stated. */
function stiffnessTable({ job }: BookContext): Block[] {
  const rows = new Map<string, string[]>();
  for (const support of job.pieces.flatMap(({ supports }) => supports)) {
    const bounds = stiffnessOf(support);
    if (bounds === null || support.kind === 'bracket') continue;
    const name = support.kind === 'wall' ? `${support.build} wall` : support.kind.replace('-', ' ');
    const from =
      support.stiffness === null
        ? 'default of its kind, from the stiffness of usual sections; no source'
        : 'stated in the job';
    const cells = [capital(name), String(bounds.low), String(bounds.high), UNITS[support.kind], from];
    rows.set(JSON.stringify(cells), cells);
  }
  return [
    ...table(
      `${ASSUMED}-stiffness`,
      'How stiff supports are taken to be: every verdict is the worse of both bounds',
      columns(['Support', 1.3], ['Low', 0.9, 'end'], ['High', 0.9, 'end'], ['Unit', 1.8], ['From', 3]),
      [...rows.values()],
    ),
    ...(job.pieces.some(({ supports }) => supports.some(({ kind }) => kind === 'bracket'))
      ? [paragraph('The stiffness of a bracket follows from its own arm and fixing.')]
      : []),
  ];
}

function siteWords({ job, facts, print }: BookContext): Words[] {
  const { standsOn, levels, weather, calendar } = job.site;
  const { list: shopping } = facts.takeoff;
  return [
    `It stands on: ${standsOn.kind.replaceAll('-', ' ')}. ${
      standsOn.allowancePsf === null
        ? 'What that may carry is not stated.'
        : `It may carry ${print.spread(standsOn.allowancePsf)}${standsOn.allowanceFrom === '' ? '; where that was found is not stated' : `, by ${standsOn.allowanceFrom}`}.`
    }`,
    levels.readings.length === 0
      ? 'The floor was not read and is taken to be level.'
      : `The floor was read at ${levels.readings.length} places; between them it is taken to run straight.`,
    `Weather: ${print.temperature(weather.airC)} in the air, ${print.temperature(weather.concreteC)} in the concrete, ${Math.round(100 * weather.humidity)} % humidity; ${weather.dailyC.length === 0 ? 'every day alike' : `${weather.dailyC.length} days are forecast, and the last goes on`}.`,
    calendar.startsOn === null ? 'No date is stated for day 0.' : `Day 0 is ${calendar.startsOn}.`,
    shopping.total.hasInvented
      ? 'Some prices are invented for the demo: they rank one way of building against another and say nothing of any shop.'
      : 'No price is invented.',
  ];
}

/** Values that are recalled and not read, by their source. */
function memoryBlocks({ facts }: BookContext): Block[] {
  const recalled = allLines(facts).filter(isFromMemory);
  const bySource = new Map<string, Set<string>>();
  for (const { source, label } of recalled)
    bySource.set(source, (bySource.get(source) ?? new Set()).add(label));
  const named = namedSources(facts).filter(
    (source) => source.includes('from memory') && !bySource.has(source),
  );
  if (bySource.size + named.length === 0) return [];
  return [
    heading(`${ASSUMED}-memory`, 'From memory: look these up before you rely on them'),
    ...list([
      ...[...bySource].map(([source, labels]) => `${capital(source)}: ${[...labels].join('; ')}.`),
      ...[...new Set(named)].map((source) => sentence(capital(source))),
    ]),
  ];
}

/** Everything at the rung of an engineer, then what no sheet of paper can decide. */
function othersWords({ facts }: BookContext): Words[] {
  const ofPieces = facts.pieces.flatMap(({ result, alike }) => {
    const asked = result.checks.filter(({ level }) => level === 'engineer');
    return asked.map(({ title, words }) => `${alike[0]!.name}, ${title}: ${sentence(words)}`);
  });
  const ofSite = facts.site
    .filter(({ level }) => !stands(level))
    .map(({ title, words }) => `${title}: ${sentence(words)}`);
  const ofFalsework = facts.falsework.designs
    .filter(({ level }) => level === 'engineer')
    .map(
      ({ pieceName, refusals, floorLoad }) =>
        `Falsework of ${pieceName}: ${sentence(refusals[0] ?? floorLoad?.words ?? 'it needs an engineer')}`,
    );
  return [
    ...new Set([...ofPieces, ...ofSite, ...ofFalsework]),
    'Walls, floors, decks and anchors that carry any of this: somebody who can see them must say that they do.',
    'Permits, inspection, fire clearances, guards and seismic anchorage: local code and its inspectors rule.',
    'Anything that the checks do not know of: vehicles, machines, people climbing, damage, damp and frost in what stands below.',
  ];
}
