/** The overhang chart as two tables, written a row at a time. */
import Table from 'cli-table3';
import { STOCK_ARMS } from '../../../src-core/bracket';
import type { ChartBasis, ChartEntry, ChartProgress, ChartRow } from '../../../src-core/overhang-chart';
import { CHART_SPACINGS_IN, ruleOfThumbIn } from '../../../src-core/overhang-chart';
import { NOTICE } from '../../../src-core/report';
import type { UnitSystem } from '../../../src-core/units';
import { printForce, printLength, printSpreadLoad, printStress } from '../../../src-core/units';
import { shapeOf } from './marks';
import type { OverhangFacts } from './overhang-json';
import { section, textOf } from './result-lines';
import { BORDERS } from './table-borders';
import { wrap } from './wrap';

/** Widths of the columns with their padding; each fills a page of 100 at the most. */
const THICKNESS_COLUMNS = [11, 13, 20, 14, 14, 14, 14];
const SPACING_COLUMNS = [18, 22, 22];
const UNTESTED = 'untested concrete, 3000 psi (common practice, no source)';
const MM_PER_IN = 25.4;
const MM_STEP = 5;
/** So that a length on a step does not fall to the one below. */
const ROUNDING = 1e-9;

/** What stops an entry, in a word or two; a check that is not named here keeps its title. */
const STOPS: { readonly [checkId: string]: string } = {
  'bending-plain': 'cracks',
  'bending-reinforced': 'steel gives',
  'bearing-stress': 'bearing',
  bracket: 'bracket',
  'crack-width': 'wide cracks',
  deflection: 'edge drops',
  'one-way-shear': 'shear',
  'punching-shear': 'punches',
  'tie-force': 'ties',
};

/** What the chart is of, before the first table; then the heading of the table that begins with `row`. */
export function overhangHead(basis: ChartBasis, row: ChartRow, system: UnitSystem, isFirst: boolean): string {
  const length = (valueIn: number) => printLength(valueIn, { system });
  const title =
    row.over === 'thickness'
      ? 'Longest overhang, by thickness'
      : `Longest overhang ${length(row.thicknessIn)} thick, by bracket spacing`;
  const alone = `${shapeOf('holds')} Holds`;
  const steel = `${shapeOf('steel')} Holds with steel`;
  const headings =
    row.over === 'thickness'
      ? [
          'Thick',
          alone,
          steel,
          ...CHART_SPACINGS_IN.map((at) => `${shapeOf('holds')} Brackets at ${length(at)}`),
        ]
      : ['Brackets at', alone, steel];
  const intro = isFirst ? wrap(basisWords(basis, system)) : [];
  return textOf([...intro, '', title, '', ...tableRow(headings, columnsOf(row))]);
}

/** One row: the length, and below it what stops a longer one. */
export function overhangRow(row: ChartRow, system: UnitSystem): string {
  const name = printLength(row.spacingIn ?? row.thicknessIn, { system });
  return textOf(tableRow([name, ...row.entries.map((entry) => cellOf(entry, system))], columnsOf(row)));
}

/** What the words in the tables mean, the ties, the trade's rule, and the notice. */
export function overhangFoot(
  basis: ChartBasis,
  rows: readonly ChartRow[],
  system: UnitSystem,
  facts: OverhangFacts,
): string {
  const entries = rows.flatMap((row) => row.entries);
  return textOf([
    ...section(
      'What stops it',
      stopLines(entries).flatMap((line) => wrap(line, '- ')),
    ),
    ...section(
      'Beside it',
      besideLines(basis, entries, system).flatMap((line) => wrap(line, '- ')),
    ),
    '',
    ...wrap(NOTICE),
    '',
    ...wrap(
      `Computed in ${facts.seconds.toFixed(1)} s, ${facts.fromCache} of ${rows.length} rows kept from before. Everything as JSON: --json.`,
    ),
  ]);
}

/** "1-1/2 in thick with steel, an overhang of 9-1/4 in". */
export function progressWords({ asked, overhangIn }: ChartProgress, system: UnitSystem): string {
  const length = (valueIn: number) => printLength(valueIn, { system });
  const steel = asked.withSteel ? ' with steel' : '';
  const brackets = asked.spacingIn === null ? '' : ` with brackets at ${length(asked.spacingIn)}`;
  return `${length(asked.thicknessIn)} thick${steel}${brackets}, an overhang of ${length(overhangIn)}`;
}

function basisWords(basis: ChartBasis, system: UnitSystem): string {
  const length = (valueIn: number) => printLength(valueIn, { system });
  const { root, bracket, steel, roving } = basis;
  const ties = `tied every ${length(root.tieSpacingIn)}`;
  const load = roving.setting === 'none' ? 'nobody on it' : `someone ${LOAD_WORDS[roving.setting]}`;
  const spread = `${printSpreadLoad(basis.spreadPsf, { system })} spread over it`;
  const concrete =
    basis.strengthPsi === null ? UNTESTED : `concrete of ${printStress(basis.strengthPsi, { system })}`;
  const bars =
    steel.kind === 'mesh'
      ? `${steel.id} mesh`
      : `${steel.id} bars at ${length(steel.spacingIn)} both ways, hooked`;
  const arm = STOCK_ARMS.find(({ id }) => id === bracket.armId)?.words ?? bracket.armId;
  const fixed =
    bracket.ratedAtTipLbf === null
      ? 'lagged to studs'
      : `rated for ${printForce(bracket.ratedAtTipLbf, { system })} at the tip`;
  return `How far a ledge ${length(basis.lengthIn)} long may reach past a ${root.build} wall ${length(root.widthIn)} wide that it covers, ${ties}; ${load}, or ${spread}; ${concrete}. Steel: ${bars}, ${length(basis.limits.coverUnderTopIn)} below the top. Brackets: ${arm}, ${fixed}.`;
}

const LOAD_WORDS: { readonly [S in 'leaning' | 'sitting' | 'climbing' | 'own']: string } = {
  leaning: 'leaning',
  sitting: 'sitting',
  climbing: 'climbing',
  own: 'on it as entered',
};

function cellOf({ kind, overhangIn, governs }: ChartEntry, system: UnitSystem): string {
  const stop = governs === null ? '' : `\n${stopOf(governs)}`;
  switch (kind) {
    case 'longest':
      return `${roundedDown(overhangIn ?? 0, system)}${stop}`;
    case 'capped':
      return `over ${roundedDown(overhangIn ?? 0, system)}\n${shapeOf('engineer')} engineer`;
    case 'none':
      return `none${stop}`;
    case 'no-room':
      return 'no room';
    case 'engineer':
      return `${shapeOf('engineer')} engineer`;
  }
}

/** A capacity is rounded down: to an eighth, as it was searched, or to 5 mm. */
function roundedDown(valueIn: number, system: UnitSystem): string {
  if (system === 'imperial') return printLength(valueIn, { system, roundToIn: 1 / 8 });
  const mm = Math.floor((valueIn * MM_PER_IN) / MM_STEP + ROUNDING) * MM_STEP;
  return printLength(mm / MM_PER_IN, { system, roundToMm: MM_STEP });
}

function stopOf({ checkId, title }: NonNullable<ChartEntry['governs']>): string {
  return STOPS[checkId] ?? title;
}

/** Each word of the tables once, with the check behind it; then why a cell has no length. */
function stopLines(entries: readonly ChartEntry[]): string[] {
  const lines = new Set<string>();
  for (const { kind, governs, words } of entries) {
    if (kind === 'no-room') lines.add(`no room: ${words}`);
    if (kind === 'engineer') lines.add(`engineer: ${words}`);
    if (kind === 'capped') lines.add(`over: ${words}`);
    if ((kind === 'longest' || kind === 'none') && governs !== null) {
      lines.add(`${stopOf(governs)}: the check "${governs.title}"`);
    }
  }
  if (entries.some(({ governs, spacingIn }) => governs?.checkId === 'bracket' && spacingIn !== null)) {
    lines.add(
      'Where a bracket gives first the slab may reach further without it: all that is drawn must hold, and a thicker slab loads its brackets more.',
    );
  }
  return [...lines];
}

function besideLines(basis: ChartBasis, entries: readonly ChartEntry[], system: UnitSystem): string[] {
  const most = Math.max(0, ...entries.map(({ tieLbf }) => tieLbf ?? 0));
  const length = (valueIn: number) => printLength(valueIn, { system });
  const rule = ruleOfThumbIn(basis);
  const bare = entries.filter(({ spacingIn, withSteel }) => spacingIn === null && !withSteel);
  const longer = bare
    .filter(({ overhangIn }) => (overhangIn ?? 0) > rule)
    .map(({ thicknessIn }) => length(thicknessIn));
  const shorter = bare
    .filter(({ overhangIn }) => (overhangIn ?? 0) < rule)
    .map(({ thicknessIn }) => length(thicknessIn));
  return [
    `Ties every ${length(basis.root.tieSpacingIn)} that are each rated for ${printForce(Math.ceil(most / 10) * 10, { system })} serve every length above.`,
    `The trade's rule (a third of the depth, ${length(basis.limits.ruleOverhangIn)} at the most; common practice, no source) would stop at ${length(rule)} here. It is meant for a loose top and asks neither for thickness nor for ties.${sideWords('Tied, more holds', longer)}${sideWords('Less holds', shorter)}`,
    'Brackets every 18 to 24 in, out to two thirds of the overhang, are common practice, no source; here the arms reach to within an inch of the edge, 16 in at the most.',
  ];
}

function sideWords(what: string, thicknesses: readonly string[]): string {
  return thicknesses.length === 0 ? '' : ` ${what} at ${thicknesses.join(', ')}.`;
}

function columnsOf({ over }: ChartRow): number[] {
  return over === 'thickness' ? THICKNESS_COLUMNS : SPACING_COLUMNS;
}

/** A row of its own below a rule, so that it can be written before the next one is known. */
function tableRow(cells: readonly string[], colWidths: number[]): string[] {
  const table = new Table({
    colWidths,
    wordWrap: true,
    chars: Object.fromEntries(BORDERS.map((name) => [name, name === 'bottom' ? '─' : ''])),
    style: { head: [], border: [], 'padding-left': 0, 'padding-right': 2 },
  });
  table.push([...cells]);
  return table
    .toString()
    .split('\n')
    .map((line) => line.trimEnd());
}
