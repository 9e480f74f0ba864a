/** Parts that both reports print. */

import { NOTICE, printQuantity, printRatio } from '../../../src-core/report';
import type { UnitSystem } from '../../../src-core/units';
import type { JobResult, PieceResult } from '../../../src-core/verdict';
import { withoutControls } from '../io';
import { markOf, paintShape, shapeOf } from './marks';
import { wrap } from './wrap';

export interface ReportStyle {
  readonly system: UnitSystem;
  readonly colour: boolean;
}

/** A heading, and its lines below it; nothing where there are none. */
export function section(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', title, ...lines];
}

/** The job's line: "▲ 3 of 4 pieces hold; ...". */
export function jobLine({ verdict }: JobResult, { colour }: ReportStyle): string[] {
  const lines = wrap(verdict.words, `${shapeOf(verdict.level)} `);
  return lines.map((line) => paintShape(line, verdict.level, colour));
}

/** Findings about the site, each with its numbers where it has any. */
export function siteLines({ site }: JobResult, style: ReportStyle): string[] {
  return site.flatMap(({ level, title, words, demand, capacity, source }) => {
    const numbers =
      demand === null || capacity === null
        ? ''
        : ` ${printQuantity(demand, style.system)} against ${printQuantity(capacity, style.system)}.`;
    const lines = wrap(`${title}: ${words}${numbers} (${source})`, `${shapeOf(level)} `);
    return lines.map((line) => paintShape(line, level, style.colour));
  });
}

/** A piece's worst moment between pour and hand-over. */
export function onTheWayLines({ name, worstOnTheWay: way }: PieceResult, { colour }: ReportStyle): string[] {
  if (way === null) return [];
  const text = `Day ${way.day}, ${name}, ${printRatio(way.ratio)} of the limit: ${way.words}`;
  return wrap(text, `${shapeOf(way.level)} `).map((line) => paintShape(line, way.level, colour));
}

/** What every report ends with. */
export function noticeLines(): string[] {
  return ['', ...wrap(NOTICE)];
}

/** Whole report as one text. */
export function textOf(lines: readonly string[]): string {
  return `${lines.join('\n')}\n`;
}

/** A copy of a result whose texts a terminal can only show. */
export function showable<Value>(value: Value): Value {
  return JSON.parse(JSON.stringify(value), (_, item: unknown) =>
    typeof item === 'string' ? withoutControls(item) : item,
  ) as Value;
}

/** A piece's verdict as mark and words. */
export function verdictMark({ verdict }: PieceResult): string {
  return markOf(verdict.level, verdict.words);
}
