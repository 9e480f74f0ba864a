/** The readable report of one piece: every check with its numbers, words and workings. */
import Table from 'cli-table3';
import type { Check } from '../../../src-core/checks';
import { printQuantity, printRatio } from '../../../src-core/report';
import { printArea, printForce, printLength, printMass } from '../../../src-core/units';
import type { JobResult, PieceResult, SupportReaction } from '../../../src-core/verdict';
import type { Line } from '../../../src-core/workings';
import { markOf, paint, paintShape } from './marks';
import type { ReportStyle } from './result-lines';
import {
  jobLine,
  noticeLines,
  onTheWayLines,
  section,
  showable,
  siteLines,
  textOf,
  verdictMark,
} from './result-lines';
import { BORDERS } from './table-borders';
import { wrap } from './wrap';

const IN2_PER_FT2 = 144;

/** The report as text. Workings stay in inch, pound-force and psi, as their formulas are written. */
export function pieceReport(found: JobResult, style: ReportStyle): string {
  const result = showable(found);
  return textOf([
    ...wrap(`${result.name}, ${result.day === null ? 'finished' : `on day ${result.day}`}`),
    ...result.pieces.flatMap((piece) => pieceLines(piece, style)),
    ...section('The site', siteLines(result, style)),
    '',
    ...jobLine(result, style),
    ...noticeLines(),
  ]);
}

function pieceLines(piece: PieceResult, style: ReportStyle): string[] {
  const { verdict, checks, changes, triedInVain, remarks } = piece;
  return [
    ...wrap(headLine(piece, style)),
    '',
    paint(verdictMark(piece), verdict.level, style.colour),
    ...wrap(verdict.why, '  '),
    ...section('On the way', onTheWayLines(piece, style)),
    ...section(
      'Changes that pass',
      changes.flatMap(({ title, worstRatio }) =>
        wrap(`${title} (then ${printRatio(worstRatio)} of the limit)`, '- '),
      ),
    ),
    ...section(
      'Tried in vain',
      triedInVain.flatMap((words) => wrap(words, '- ')),
    ),
    ...section('What each support carries', reactionLines(piece.reactions, style)),
    ...checks.flatMap((check) => ['', ...checkLines(check, style)]),
    ...section(
      'Remarks',
      remarks.flatMap((remark) => wrap(remark, '- ')),
    ),
    ...section('The mesh', meshLines(piece, style)),
  ];
}

function headLine({ name, copies, thicknessIn, areaFt2, weightLb }: PieceResult, style: ReportStyle): string {
  const { system } = style;
  const thick = printLength(thicknessIn, { system });
  const area = printArea(areaFt2 * IN2_PER_FT2, { system });
  const each = copies > 1 ? ` each, ${copies} of them` : '';
  return `${name}: ${thick} thick, ${area}, ${printMass(weightLb, { system })}${each}`;
}

function checkLines(check: Check, { system, colour }: ReportStyle): string[] {
  const { title, level, ratio, demand, capacity, words, workings, cautions } = check;
  const numbers = `${printQuantity(demand, system)} against ${printQuantity(capacity, system)}`;
  const place = placeOf(check, system);
  const head = [title, ratio > 0 ? `${printRatio(ratio)} (${numbers})` : '', place].filter(
    (part) => part !== '',
  );
  const mark = markOf(level, head.join(', '));
  return [
    ...wrap(mark, '', '  ').map((line) => paintShape(line, level, colour)),
    ...wrap(words, '  '),
    ...workings.flatMap(workingLines),
    ...cautions.flatMap((caution) => wrap(`Caution: ${caution}`, '  ', '    ')),
  ];
}

function placeOf({ where }: Check, system: ReportStyle['system']): string {
  if (where.kind === 'piece') return '';
  const at = `at x ${printLength(where.at.xIn, { system })}, y ${printLength(where.at.yIn, { system })}`;
  return where.kind === 'support' ? `support ${where.supportId} ${at}` : at;
}

function workingLines({
  label,
  symbol,
  formula,
  substituted,
  result,
  unit,
  source,
  fromMemory,
}: Line): string[] {
  const from = fromMemory ? `${source}; from memory, verify` : source;
  const value = `${result} ${unit}`.trimEnd();
  const head = wrap(`${symbol}: ${label}`, '    ', '      ');
  const equals = formula === '' ? [value] : [formula, substituted, value];
  return [
    ...head,
    ...equals.flatMap((text) => wrap(text, '      = ', '        ')),
    ...wrap(`[${from}]`, '        '),
  ];
}

function reactionLines(reactions: readonly SupportReaction[], { system }: ReportStyle): string[] {
  if (reactions.length === 0) return [];
  const force = (lbf: number) => printForce(Math.round(lbf), { system });
  const table = new Table({
    head: ['Support', 'Stiffness', 'Dead', 'Most', 'Least', 'Ties'],
    colWidths: [40, 11, 12, 12, 12, 12],
    colAligns: ['left', 'left', 'right', 'right', 'right', 'right'],
    wordWrap: true,
    chars: Object.fromEntries(BORDERS.map((name) => [name, ''])),
    style: { head: [], border: [], 'padding-left': 0, 'padding-right': 2, compact: true },
  });
  for (const { supportId, words, bound, deadLbf, mostLbf, leastLbf, tieLbf } of reactions) {
    const name = words === supportId ? words : `${words} (${supportId})`;
    table.push([name, bound, force(deadLbf), force(mostLbf), force(leastLbf), force(tieLbf)]);
  }
  return table
    .toString()
    .split('\n')
    .map((line) => line.trimEnd());
}

function meshLines({ mesh }: PieceResult, { system }: ReportStyle): string[] {
  if (mesh === null) return [];
  const size = printLength(mesh.sizeIn, { system });
  return wrap(
    `About ${size} a side: ${mesh.nodes} nodes, ${mesh.triangles} triangles, ${mesh.contacts} contact points, ${mesh.loadCases} load cases, factored ${mesh.factorisations === 1 ? 'once' : `${mesh.factorisations} times`}. Reactions and load differ by ${mesh.imbalance.toExponential(1)} of the load at the most.`,
  );
}
