/** What a design comes to in a line or two: sections, price and where it is from, and the check nearest its limit. */
import { governingCheck } from '../../src-core/checks';
import type { FalseworkDesign } from '../../src-core/falsework';
import { sectionLetter } from '../../src-core/falsework';
import { printRatio } from '../../src-core/report';

/** "6 sections, lumber and panel for 88.36, screws and offcuts left out." */
export function countWords({ sections, price }: FalseworkDesign): string {
  if (sections.length === 0) return 'No section to build.';
  const count = sections.length === 1 ? 'One section' : `${sections.length} sections`;
  return `${count}, lumber and panel for ${price.toFixed(2)}, screws and offcuts left out.`;
}

/** Which prices are invented, of those that the design uses; null where all are the job's own. */
export function inventedWords({ sections, prices }: FalseworkDesign): string | null {
  if (sections.length === 0) return null;
  const sizes = [...new Set(sections.flatMap(({ bill }) => bill.sticks.map(({ size }) => size)))].sort();
  const used = [
    ...sizes.map((size) => ({ what: size as string, from: prices.boardFoot[size].from })),
    { what: 'deck panel', from: prices.panelFt2.from },
  ];
  const invented = used.filter(({ from }) => from === 'invented').map(({ what }) => what);
  if (invented.length === 0) return null;
  const which = invented.length === used.length ? 'The prices are' : `The prices of ${listed(invented)} are`;
  return `${which} invented: good for comparing, not for buying.`;
}

/** The check that is nearest its limit, with its section; null where nothing was checked. */
export function worstWords({ sections }: FalseworkDesign): string | null {
  const worst = governingCheck(sections.flatMap(({ checks }) => checks));
  if (worst === null) return null;
  const index = sections.findIndex(({ checks }) => checks.some((check) => check === worst));
  return `Nearest its limit: ${worst.title.toLowerCase()} of section ${sectionLetter(index)}, ${printRatio(worst.ratio)}.`;
}

/** The highest and the lowest place of the floor that was read, and the fall between. */
export function floorWords({ floor }: FalseworkDesign, print: (valueIn: number) => string): string {
  if (floor === null) return 'The floor was not read, so every leg is cut for a level one.';
  if (floor.fallIn === 0) return 'The floor that was read is level.';
  return `Floor read: the highest place at ${print(floor.highestIn)}, the lowest at ${print(floor.lowestIn)}, a fall of ${print(floor.fallIn)}.`;
}

function listed(names: readonly string[]): string {
  return names.length === 1 ? names[0]! : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}
