/** The readable report of a job: one table, one line, and what stands beside it. */
import Table from 'cli-table3';
import { governingCheck, rank, stands } from '../../../src-core/checks';
import { printRatio } from '../../../src-core/report';
import { printLength, printMass } from '../../../src-core/units';
import type { JobResult, PieceResult } from '../../../src-core/verdict';
import { paint } from './marks';
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
import { wrap } from './wrap';

/** Widths of the columns with their padding; they fill a page of 100. */
const COLUMNS = [17, 11, 10, 20, 14, 28];
const HEADINGS = ['Piece', 'Thick', 'Weight', 'Worst check', 'Verdict', 'What to do'];

/** The report as text, at most 100 columns wide. */
export function jobReport(found: JobResult, style: ReportStyle & { readonly seconds: number }): string {
  const result = showable(found);
  return textOf([
    ...wrap(`${result.name}, ${result.day === null ? 'finished' : `on day ${result.day}`}`),
    '',
    ...pieceTable(result.pieces, style),
    '',
    ...jobLine(result, style),
    ...section('The site', siteLines(result, style)),
    ...section('On the way', wayLines(result.pieces, style)),
    ...section('Changes that pass', changeLines(result.pieces, style)),
    ...section('Cautions', cautionLines(result)),
    ...noticeLines(),
    '',
    ...wrap(
      `Checked in ${style.seconds.toFixed(1)} s. Every number of a piece, with its formula and source: --piece ID. Everything as JSON: --json.`,
    ),
  ]);
}

function pieceTable(pieces: readonly PieceResult[], style: ReportStyle): string[] {
  const table = new Table({
    head: HEADINGS,
    colWidths: COLUMNS,
    colAligns: ['left', 'right', 'right', 'left', 'left', 'left'],
    wordWrap: true,
    chars: {
      top: '',
      'top-mid': '',
      'top-left': '',
      'top-right': '',
      bottom: '─',
      'bottom-mid': '',
      'bottom-left': '',
      'bottom-right': '',
      left: '',
      'left-mid': '',
      mid: '─',
      'mid-mid': '',
      right: '',
      'right-mid': '',
      middle: '',
    },
    style: { head: [], border: [], 'padding-left': 0, 'padding-right': 2 },
  });
  for (const piece of pieces) table.push(rowOf(piece, style));
  return table
    .toString()
    .split('\n')
    .map((line) => line.trimEnd());
}

function rowOf(piece: PieceResult, { system, colour }: ReportStyle): string[] {
  const { name, id, copies, thicknessIn, weightLb, checks, verdict } = piece;
  const each = printMass(weightLb, { system, digits: 3 });
  const worst = governingCheck(checks);
  return [
    `${name}${name.toLowerCase() === id ? '' : `\n${id}`}`,
    printLength(thicknessIn, { system }),
    copies > 1 ? `${each}\nx ${copies}` : each,
    worst === null ? '' : `${worst.title}${worst.ratio > 0 ? ` ${printRatio(worst.ratio)}` : ''}`,
    paint(verdictMark(piece), verdict.level, colour),
    whatToDo(piece),
  ];
}

/** What a builder does about a piece, in a sentence or two. */
function whatToDo({ verdict, changes }: PieceResult): string {
  const near = verdict.flags.includes('near-limit') ? ' Within 3 % of a limit.' : '';
  const close = near === '' && verdict.flags.includes('amber') ? ' Close to a limit.' : '';
  switch (verdict.level) {
    case 'holds':
      return `Build as drawn.${near}${close}`;
    case 'steel':
      return `Build as drawn, with the steel where it is drawn.${near}${close}`;
    case 'change':
      return `${ended(changes[0]?.title ?? verdict.why)}${near}`;
    case 'engineer':
      return `Ask an engineer. ${verdict.why}`;
  }
}

/** With a full stop at its end. */
function ended(sentence: string): string {
  return /[.!?]$/.test(sentence) ? sentence : `${sentence}.`;
}

/** Every moment on the way that needs attention; where all stand, the worst of them. */
function wayLines(pieces: readonly PieceResult[], style: ReportStyle): string[] {
  const moments = pieces.flatMap((piece) =>
    piece.worstOnTheWay === null ? [] : [{ piece, way: piece.worstOnTheWay }],
  );
  moments.sort((a, b) => rank(b.way.level) - rank(a.way.level) || b.way.ratio - a.way.ratio);
  const failing = moments.filter(({ way }) => !stands(way.level));
  const shown = failing.length > 0 ? failing : moments.slice(0, 1);
  return shown.flatMap(({ piece }) => onTheWayLines(piece, style));
}

/** All changes found, where more than the one in the table was looked for. */
function changeLines(pieces: readonly PieceResult[], { system }: ReportStyle): string[] {
  return pieces
    .filter(({ changes }) => changes.length > 1)
    .flatMap(({ name, changes }) => [
      ...wrap(`${name}:`),
      ...changes.flatMap(({ id, title, worstRatio, cost }) => {
        const weight = printMass(Math.abs(cost.weightLb), { system, digits: 3 });
        const heavier = cost.weightLb < 0 ? `${weight} lighter` : `${weight} heavier`;
        return wrap(
          `${id}: ${title} (then ${printRatio(worstRatio)} of the limit; ${heavier})`,
          '  - ',
          '    ',
        );
      }),
    ]);
}

/** Every caution once, with the pieces it is about where it is not about all of them. */
function cautionLines({ pieces, site }: JobResult): string[] {
  const about = new Map<string, Set<string>>();
  for (const { name, checks } of pieces)
    for (const { cautions } of checks)
      for (const caution of cautions) {
        const names = about.get(caution) ?? new Set<string>();
        about.set(caution, names.add(name));
      }
  const lines = [...about].flatMap(([caution, names]) =>
    wrap(names.size === pieces.length ? caution : `${[...names].join(', ')}: ${caution}`, '- '),
  );
  const ofSite = site.flatMap(({ title, cautions }) => cautions.map((caution) => `${title}: ${caution}`));
  return [...lines, ...ofSite.flatMap((caution) => wrap(caution, '- '))];
}
