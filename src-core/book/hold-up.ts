/** The falsework: plan, legs, sections and their order, screws, what the floor takes, and the levels. */
import { FALSEWORK_CAUTIONS } from '../falsework';
import { falseworkPlan } from '../paper';
import type { Block, Chapter, Words } from '../sheet';
import { drawing, heading, list, notice, paragraph } from './blocks';
import type { BookContext } from './context';
import { figureRoom } from './figure-room';
import { ownCautions, sharedCautions } from './hold-cautions';
import { lumberBlocks } from './hold-cuts';
import type { HoldGroup } from './hold-groups';
import { groupName, holdGroups, holdId, isHeld } from './hold-groups';
import { levelBlocks } from './hold-levels';
import { legTable, screwTable, sectionBlocks } from './hold-tables';
import { FIGURE_SHARES, LEVEL_WORDS } from './practice';
import { sentence } from './print';

export const HOLD_UP = 'hold-up';

export function holdUpChapter(context: BookContext): Chapter {
  const groups = holdGroups(context);
  const built = groups.filter(({ held }) => isHeld(held[0]));
  const shared = sharedCautions(built);
  return {
    id: HOLD_UP,
    title: 'Hold it up',
    startsPage: true,
    blocks: [
      ...(built.length === 0
        ? [paragraph('No piece needs a deck below it.')]
        : notice('warning', FALSEWORK_CAUTIONS)),
      ...list(shared),
      ...verdictRows(groups),
      ...built.flatMap((group) => groupBlocks(context, group, shared)),
      ...restBlocks(groups),
      ...lumberBlocks(context),
      ...(built.length === 0 ? [] : levelBlocks(context)),
    ],
  };
}

function verdictRows(groups: readonly HoldGroup[]): Block[] {
  const rows = groups
    .filter(({ held }) => isHeld(held[0]))
    .map((group) => {
      const { design } = group.held[0];
      return {
        level: design.level,
        name: groupName(group),
        words: LEVEL_WORDS[design.level],
        why: whyWords(group),
      };
    });
  return rows.length === 0 ? [] : [{ kind: 'verdicts', rows }];
}

/** What is wrong with the design, or how many sections it has. */
function whyWords({ held }: HoldGroup): string {
  const { refusals, sections, floorLoad } = held[0].design;
  if (refusals.length > 0) return refusals[0]!;
  const count = sections.length === 1 ? 'One section' : `${sections.length} sections`;
  return `${count}. ${floorLoad?.words ?? ''}`.trim();
}

function groupBlocks(context: BookContext, group: HoldGroup, shared: readonly string[]): Block[] {
  const { job, paper, print } = context;
  const id = holdId(context, group);
  const [{ piece, design }] = group.held;
  const plan = falseworkPlan(job, piece, design, figureRoom(paper, FIGURE_SHARES.falsework));
  const { refusals, remarks, floorLoad } = design;
  return [
    heading(id, groupName(group)),
    ...(group.held.length === 1
      ? []
      : [paragraph(`Built alike for each of: ${group.held.map(({ piece: one }) => one.name).join(', ')}.`)]),
    ...notice('caution', refusals),
    ...drawing(`${id}-plan`, plan, `Falsework under ${piece.name}.`),
    ...floorWords(context, group),
    ...legTable(context, design, id),
    ...sectionBlocks(context, design, id),
    ...screwTable(design, id),
    ...(floorLoad === null
      ? []
      : [paragraph(`In all ${print.forceUp(floorLoad.totalLbf)}. ${sentence(floorLoad.words)}`)]),
    ...list([...remarks, ...ownCautions(design).filter((words) => !shared.includes(words))]),
    ...reuseBlocks(group),
  ];
}

/** What is known of the floor that legs are cut to. */
function floorWords({ print }: BookContext, { held }: HoldGroup): Block[] {
  const [{ design }] = held;
  if (design.sections.length === 0) return [];
  return [
    paragraph(
      design.floor === null
        ? 'The floor was not read: legs are cut as if it were level. Read it under every leg and cut each to fit.'
        : `Heights of the floor are measured from its highest reading: what lies lower has a minus. The lowest reading lies ${print.fine(design.floor.fallIn)} below it.`,
    ),
  ];
}

function reuseBlocks({ held }: HoldGroup): Block[] {
  const words = held.flatMap(({ design }) =>
    design.reuse.from.map((use): Words => `"${use.to.name}", built on day ${use.to.day}: ${use.words}`),
  );
  return list([...new Set(words)]);
}

/** Pieces that need no deck, by name, and why. */
function restBlocks(groups: readonly HoldGroup[]): Block[] {
  const rest = groups.filter(({ held }) => !isHeld(held[0]));
  if (rest.length === 0) return [];
  const remarks = rest.flatMap(({ held }) => held.flatMap(({ design }) => design.remarks));
  return [heading(`${HOLD_UP}-rest`, 'Pieces without a deck'), ...list([...new Set(remarks)])];
}
