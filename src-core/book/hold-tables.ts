/** Tables of one piece's falsework: legs, sections in the order in which they come out, screws. */

import { governingCheck } from '../checks';
import type { DesignedSection, FalseworkDesign, Fastening, ReachedFrom } from '../falsework';
import { legNumber, sectionLetter } from '../falsework';
import { printRatio } from '../report';
import type { Block } from '../sheet';
import { columns, figureOf, list, table } from './blocks';
import type { BookContext } from './context';
import { removalOrder } from './hold-groups';
import { counted } from './print';

/** Every leg with its number on the plan, cut length, shim and floor. */
export function legTable({ print }: BookContext, { sections }: FalseworkDesign, id: string): Block[] {
  const legs = sections.flatMap((designed, i) =>
    designed.legs.map((leg, k) => ({ ...leg, designed, number: legNumber(sectionLetter(i), k) })),
  );
  const warnings = legs.flatMap(({ number, leg }) =>
    leg.warnings.map(({ sentence }) => ({ number, sentence })),
  );
  const sentences = [...new Set(warnings.map(({ sentence }) => sentence))];
  return [
    ...table(
      `${id}-legs`,
      ['Legs, numbered as in ', figureOf(`${id}-plan`), ': chalk the number on each as it is cut'],
      columns(
        ['Leg', 0.8],
        ['Cut to', 1.3, 'end'],
        ['Shim', 1, 'end'],
        ['Floor', 1.2, 'end'],
        ['Lumber', 1],
        ['Carries', 1.1, 'end'],
        ['Section', 3],
      ),
      legs.map(({ number, leg, loadLbf, designed }) => [
        number,
        print.length(leg.cutIn),
        print.fine(leg.shimIn),
        print.fine(leg.floorIn),
        designed.worked.framing.arrangement.legSize,
        print.forceUp(loadLbf),
        designed.section.name,
      ]),
    ),
    ...list(
      sentences.map((words) => {
        const of = warnings.filter(({ sentence }) => sentence === words).map(({ number }) => number);
        return `Legs ${of.join(', ')}: ${words}`;
      }),
    ),
  ];
}

const WAYS = { front: 'the front', left: 'the left', right: 'the right' } as const;

/** Sections in the order in which they come out, how each is framed, and what decides it. */
export function sectionBlocks(context: BookContext, design: FalseworkDesign, id: string): Block[] {
  const { print } = context;
  const letters = new Map(design.sections.map((section, i) => [section, sectionLetter(i)]));
  const order = removalOrder(design);
  return [
    ...table(
      `${id}-sections`,
      'Sections, in the order in which they come out',
      columns(
        ['Out', 0.6],
        ['Section', 2.6],
        ['Size', 1.7],
        ['On', 1.6],
        ['By', 0.9],
        ['Weighs', 0.9, 'end'],
        ['Stays under the slab', 1.7],
      ),
      order.map((designed, k) => {
        const { section, worked, way, layers } = designed;
        const stays = layers.layers.filter((layer) => layer.stays).map(({ what }) => what);
        return [
          String(k + 1),
          `${letters.get(designed)!}: ${section.name}`,
          `${print.length(section.frame.widthIn)} by ${print.length(section.frame.depthIn)}`,
          print.day(section.lastDay),
          way.by === null ? 'no way out' : WAYS[way.by],
          print.mass(worked.carried.handlingLb),
          stays.length === 0 ? 'nothing' : stays.join(', '),
        ];
      }),
    ),
    ...table(
      `${id}-frames`,
      'How each section is framed',
      columns(
        ['Section', 0.8],
        ['Joists', 2.4],
        ['Under them', 2.2],
        ['Held by', 1.5],
        ['Nearest its limit', 2.6],
      ),
      design.sections.map((designed) => [letters.get(designed)!, ...frameCells(context, designed)]),
    ),
    ...list(
      design.sections.flatMap((designed) =>
        designed.section.openings.length === 0
          ? []
          : [
              `Section ${letters.get(designed)!} opens for ${designed.section.openings.map(({ words }) => words).join(', ')}.`,
            ],
      ),
    ),
  ];
}

function frameCells({ print }: BookContext, { worked, checks }: DesignedSection): string[] {
  const { arrangement, joists, widestIn } = worked.framing;
  const { joistSize, joistRun, beamSize, legsALine, ledgerSide, legSize } = arrangement;
  const worst = governingCheck(checks);
  return [
    `${joists.length} of ${joistSize}, ${joistRun === 'back' ? 'from front to back' : 'along the front'}, ${print.length(widestIn)} apart at the most`,
    beamSize === null
      ? `a ${legSize} leg under every joist`
      : `${beamSize} stringers, ${counted(legsALine, 'leg')} of ${legSize} each`,
    ledgerSide === null ? 'braces both ways' : `a ledger at the ${ledgerSide}`,
    worst === null ? '' : `${worst.title}, ${printRatio(worst.ratio)}`,
  ];
}

const REACHED: { readonly [R in ReachedFrom]: string } = {
  above: 'above',
  below: 'below',
  front: 'the front',
  side: 'the side',
};

/** Screws by what they join, alike in every section they are told for; those that must come out say so. */
export function screwTable({ fastenings, sections }: FalseworkDesign, id: string): Block[] {
  const letters = new Map(sections.map(({ section }, i) => [section.id, sectionLetter(i)]));
  const groups = new Map<string, Fastening[]>();
  for (const fastening of fastenings) {
    const { from, into, count, screw, reachedFrom, mustComeOut } = fastening;
    const key = JSON.stringify([from, into, count, screw, reachedFrom, mustComeOut]);
    groups.set(key, [...(groups.get(key) ?? []), fastening]);
  }
  return table(
    `${id}-screws`,
    'Screws, and the side from which they are reached',
    columns(
      ['Sections', 1],
      ['Joins', 2.4],
      ['Each', 0.7, 'end'],
      ['Screws', 2.6],
      ['Reached from', 1.1],
      ['Before it comes out', 1.5],
    ),
    [...groups.values()].map((own) => {
      const { from, into, count, screw, reachedFrom, mustComeOut } = own[0]!;
      return [
        own.map(({ sectionId }) => letters.get(sectionId) ?? sectionId).join(', '),
        `${from} into ${into}`,
        String(count),
        screw,
        REACHED[reachedFrom],
        mustComeOut ? 'take them out' : 'they stay in the section',
      ];
    }),
  );
}
