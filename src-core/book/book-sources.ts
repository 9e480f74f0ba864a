/** Sources that the book names: of the lines that it works out, and of what it says in words. */
import type { Pour } from '../pour';
import type { Line } from '../workings';
import type { BookFacts } from './facts';
import { workedChecks, worstFloorLoad, worstFormChecks } from './worked-checks';

/** Every line that the workings show. */
export function allLines({ pieces, falsework, site, pours }: BookFacts): Line[] {
  return [
    ...pieces.flatMap(({ result }) => workedChecks(result.checks).flatMap(({ lines }) => lines)),
    ...worstFormChecks(falsework).flatMap(({ lines }) => lines),
    ...site.flatMap(({ workings }) => workings),
    ...(worstFloorLoad(falsework)?.lines ?? []),
    ...pours.pours.flatMap(pourLines),
    ...(pours.pours.length === 0 ? [] : pours.bucket.lines),
  ];
}

/** Lines of one pour, in the order in which its numbers follow from each other. */
export function pourLines({ pieces, volumes, bags, clock, weather }: Pour): Line[] {
  return [
    ...pieces.flatMap(({ lines }) => lines),
    ...volumes.lines,
    ...(bags === null ? [] : [...bags.lines, ...bags.perBag.lines]),
    ...(clock?.lines ?? []),
    ...weather.lines,
  ];
}

/** Whether a line rests on a value that is recalled and not read. */
export function isFromMemory({ source, fromMemory }: Line): boolean {
  return fromMemory || source.includes('from memory');
}

/** Sources of findings, days and tools, which have no lines. */
export function namedSources({ site, swaps, pieces, pours, takeoff }: BookFacts): string[] {
  return [
    ...site.map(({ source }) => source),
    ...swaps.flatMap(({ result }) =>
      'sentence' in result
        ? []
        : result.findings
            .filter(({ id, level }) => !(id === 'way-in' && level === 'holds'))
            .map(({ source }) => source),
    ),
    ...pieces.flatMap(({ earliest }) => earliest.map(({ source }) => source)),
    ...pours.pours.flatMap(({ findings, clock }) => [
      ...findings.map(({ source }) => source),
      ...(clock?.finish ?? []).map(({ source }) => source),
    ]),
    ...pours.findings.map(({ source }) => source),
    ...takeoff.tools.map(({ source }) => source),
  ];
}
