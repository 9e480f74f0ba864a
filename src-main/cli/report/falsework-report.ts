/** The falsework of a job as a person reads it: sections, checks, legs, screws, cut list, cautions. */
import Table from 'cli-table3';
import { governingCheck } from '../../../src-core/checks';
import type { Bill, DesignedSection, FalseworkDesign, FalseworkReuse } from '../../../src-core/falsework';
import { CUTTING_METHOD } from '../../../src-core/falsework';
import { printRatio } from '../../../src-core/report';
import { printArea, printForce, printLength, type UnitSystem } from '../../../src-core/units';
import { markOf, paintShape } from './marks';
import { noticeLines, type ReportStyle, section, showable, textOf } from './result-lines';
import { BORDERS } from './table-borders';
import { wrap } from './wrap';

/** Name of the job, a design for each of its pieces that was asked for, and what the whole job uses again; null for one piece alone. */
export interface FalseworkReport {
  readonly name: string;
  readonly designs: readonly FalseworkDesign[];
  readonly reuse: FalseworkReuse | null;
}

/** The report as text. */
export function falseworkReport(found: FalseworkReport, style: ReportStyle): string {
  const { name, designs, reuse } = showable(found);
  return textOf([
    ...wrap(`${name}, falsework`),
    ...designs.flatMap((design) => designLines(design, style)),
    ...section('Bought for the whole job', reuse === null ? [] : boughtLines(reuse, style.system)),
    ...section(
      'Shoot the levels again',
      (designs[0]?.levelAgain ?? []).flatMap((words) => wrap(words, '- ')),
    ),
    ...section(
      'Cautions',
      [...new Set(designs.flatMap(({ cautions }) => cautions))].flatMap((words) => wrap(words, '- ')),
    ),
    ...noticeLines(),
  ]);
}

function designLines(design: FalseworkDesign, style: ReportStyle): string[] {
  const { sections, refusals, remarks, fastenings } = design;
  const { system } = style;
  return [
    '',
    ...wrap(markOf(design.level, `${design.pieceName}: ${headline(design)}`), '', '  ').map((line) =>
      paintShape(line, design.level, style.colour),
    ),
    ...section(
      'Cannot be built so',
      refusals.flatMap((words) => wrap(words, '- ')),
    ),
    ...section(
      'Sections',
      sections.flatMap((each) => sectionLines(each, style)),
    ),
    ...section('Legs, cut to the floor', legLines(design, system)),
    ...section('The floor below', floorLines(design, system)),
    ...section(
      'Screws',
      fastenings.flatMap((fastening) => screwLines(fastening)),
    ),
    ...section(
      'Used again',
      design.reuse.from.flatMap(({ to, words }) =>
        wrap(`"${to.name}", built on day ${to.day}: ${words}`, '- '),
      ),
    ),
    ...section('Parts', partLines(design, system)),
    ...section('Cut list', cutLines(design, system)),
    ...section(
      'Remarks',
      remarks.flatMap((words) => wrap(words, '- ')),
    ),
  ];
}

function headline({ sections, price, prices }: FalseworkDesign): string {
  if (sections.length === 0) return 'no falsework section';
  const count = sections.length === 1 ? 'one section' : `${sections.length} sections`;
  const told = prices.areInvented ? ' at prices of which some are invented' : '';
  return `${count}, lumber and panel for ${price.toFixed(2)}${told}, screws and offcuts left out`;
}

function sectionLines(designed: DesignedSection, style: ReportStyle): string[] {
  const { section: own, worked, checks, fitting, tried, layers } = designed;
  const { system } = style;
  const length = (valueIn: number) => printLength(valueIn, { system });
  const { arrangement, widestIn, joists } = worked.framing;
  const under =
    arrangement.beamSize === null
      ? 'a leg under every joist'
      : `${arrangement.beamSize} stringers on ${arrangement.legsALine} legs each`;
  const way = arrangement.joistRun === 'back' ? 'from front to back' : 'along the front';
  const held =
    arrangement.ledgerSide === null ? 'braced both ways' : `a ledger at the ${arrangement.ledgerSide}`;
  const worst = governingCheck(checks);
  const stays = layers.layers.filter((layer) => layer.stays).map(({ what }) => what);
  const lines = [
    `${own.name} (${own.id}), ${length(own.frame.widthIn)} by ${length(own.frame.depthIn)}, days ${own.firstDay} to ${own.lastDay}:`,
    `${joists.length} ${arrangement.joistSize} joists ${way}, ${length(widestIn)} apart at the most; ${under}; ${arrangement.legSize} legs; ${held}.`,
    worst === null ? '' : `Worst: ${worst.title}, ${printRatio(worst.ratio)}. ${worst.words}`,
    `Cheapest of ${fitting} that fit, ${tried} worked. ${layers.words} Stays under the slab: ${stays.length === 0 ? 'nothing' : stays.join(', ')}.`,
  ];
  return lines.flatMap((line, i) => (line === '' ? [] : i === 0 ? wrap(line, '- ') : wrap(line, '  ')));
}

function legLines({ sections, floor }: FalseworkDesign, system: UnitSystem): string[] {
  const legs = sections.flatMap((each) => each.legs);
  if (legs.length === 0) return [];
  const length = (valueIn: number) => printLength(valueIn, { system });
  const table = plainTable([38, 24, 12, 26], ['left', 'left', 'right', 'right']);
  table.push(['Leg', 'Cut to, shim', 'Load', 'At x, y']);
  for (const { id, leg, loadLbf, at } of legs) {
    table.push([
      id,
      leg.words.replace(', shim', ' +'),
      printForce(Math.ceil(loadLbf), { system }),
      `${length(at.xIn)}, ${length(at.yIn)}`,
    ]);
  }
  const fall =
    floor === null
      ? 'The floor was not read.'
      : `Floor read: the lowest place is ${length(floor.fallIn)} below the highest.`;
  return [...wrap(fall), ...rows(table)];
}

function floorLines({ floorLoad }: FalseworkDesign, system: UnitSystem): string[] {
  if (floorLoad === null) return [];
  return [
    ...wrap(
      `${printForce(Math.ceil(floorLoad.totalLbf), { system })} in all. ${floorLoad.words}`,
      `${markOf(floorLoad.level, '')}`,
      '  ',
    ),
  ];
}

function screwLines({
  sectionId,
  from,
  into,
  count,
  screw,
  reachedFrom,
  mustComeOut,
}: FalseworkDesign['fastenings'][number]): string[] {
  const out = mustComeOut ? 'must come out' : 'stays in the section';
  return wrap(
    `${sectionId}: ${from} into ${into}, ${count} ${screw}; reached from ${reachedFrom === 'side' ? 'the side' : reachedFrom === 'front' ? 'the front' : reachedFrom}; ${out}.`,
    '- ',
  );
}

/** Nothing where every part is bought anyway. */
function boughtLines(
  { uses, bought, boughtPrice, askedPrice }: FalseworkReuse,
  system: UnitSystem,
): string[] {
  if (uses.length === 0) return [];
  const length = (valueIn: number) => printLength(valueIn, { system });
  return [
    ...wrap(
      `Lumber and panel for ${boughtPrice.toFixed(2)}; without using anything again it would be ${askedPrice.toFixed(2)}. Lengths as they are first cut:`,
    ),
    ...stickLines(bought.sticks, system),
    ...bought.panels.flatMap(({ what, lengthIn, widthIn }) =>
      wrap(`1 ${what}, ${length(lengthIn)} by ${length(widthIn)}`, '- '),
    ),
  ];
}

function partLines({ sections }: FalseworkDesign, system: UnitSystem): string[] {
  return stickLines(
    sections.flatMap(({ bill }) => bill.sticks),
    system,
  );
}

function stickLines(sticks: Bill['sticks'], system: UnitSystem): string[] {
  const counts = new Map<string, number>();
  for (const { what, size, lengthIn, count } of sticks) {
    const key = `${what}, ${size}, ${printLength(lengthIn, { system })}`;
    counts.set(key, (counts.get(key) ?? 0) + count);
  }
  return [...counts].flatMap(([part, count]) => wrap(`${count} ${part}`, '- '));
}

function cutLines({ cuts }: FalseworkDesign, system: UnitSystem): string[] {
  if (cuts.bySize.length === 0) return [];
  const length = (valueIn: number) => printLength(valueIn, { system });
  const lines = cuts.bySize.flatMap(({ size, sticks, wasteRatio, found, tooLong }) => [
    ...wrap(`${size}: ${sticks.length} sticks, ${Math.round(wasteRatio * 100)} % waste; ${found}`),
    ...sticks.flatMap(({ stockLengthIn, cuts: pieces, offcutIn }) =>
      wrap(
        `${length(stockLengthIn)}: ${pieces.map(({ what, lengthIn }) => `${what} ${length(lengthIn)}`).join(', ')}; ${length(offcutIn)} left`,
        '  - ',
      ),
    ),
    ...tooLong.flatMap(({ what, lengthIn }) =>
      wrap(`${what} ${length(lengthIn)} is longer than any stock.`, '  - '),
    ),
  ]);
  const sheets = cuts.sheets.flatMap(({ lengthIn, widthIn, pieces }, i) =>
    wrap(
      `sheet ${i + 1}, ${length(lengthIn)} by ${length(widthIn)} (${printArea(lengthIn * widthIn, { system })}): ${pieces.map((piece) => `${length(piece.lengthIn)} by ${length(piece.widthIn)}`).join(', ')}`,
      '  - ',
    ),
  );
  return [
    ...lines,
    ...wrap(
      `Deck panels: ${cuts.sheets.length} sheets, ${Math.round(cuts.sheetWasteRatio * 100)} % waste; ${cuts.sheetsFound}; the first measure runs along the sheet`,
    ),
    ...sheets,
    ...wrap(`How: ${CUTTING_METHOD}.`),
  ];
}

function plainTable(colWidths: number[], colAligns: ('left' | 'right')[]): Table.Table {
  return new Table({
    colWidths,
    colAligns,
    wordWrap: true,
    chars: Object.fromEntries(BORDERS.map((name) => [name, ''])),
    style: { head: [], border: [], 'padding-left': 0, 'padding-right': 2, compact: true },
  });
}

function rows(table: Table.Table): string[] {
  return table
    .toString()
    .split('\n')
    .map((line) => line.trimEnd());
}
