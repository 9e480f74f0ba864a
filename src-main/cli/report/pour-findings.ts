/** What a pour plan says beside its numbers, as lines with the mark of its level. */
import type { Level } from '../../../src-core/checks';
import type { PourFinding, PourLevel, PourPlan } from '../../../src-core/pour';
import { paintShape, shapeOf } from './marks';
import { wrap } from './wrap';

/** The rung whose shape and colour a finding takes; a note takes none. */
const RUNGS: { readonly [L in PourLevel]: Level | null } = {
  refused: 'engineer',
  attention: 'change',
  note: null,
};

const WORDS: { readonly [L in PourLevel]: string } = {
  refused: 'Refused',
  attention: 'Attention',
  note: 'Note',
};

const GRAVEST_FIRST: readonly PourLevel[] = ['refused', 'attention', 'note'];

/** Every finding of a plan: of the whole job, then of each pour. */
export function pourFindings({ findings, pours }: PourPlan): readonly PourFinding[] {
  return [...findings, ...pours.flatMap((pour) => pour.findings)];
}

/** Whether it asks for a change before anything is mixed. */
export function stopsThePour({ level }: PourFinding): boolean {
  return level !== 'note';
}

/** The rung that stands before a pour with these findings. */
export function rungOf(findings: readonly PourFinding[]): Level {
  const worst = GRAVEST_FIRST.find((level) => findings.some((finding) => finding.level === level));
  return (worst === undefined ? null : RUNGS[worst]) ?? 'holds';
}

/** One finding after another, the gravest first. */
export function findingLines(findings: readonly PourFinding[], colour: boolean): string[] {
  const ordered = GRAVEST_FIRST.flatMap((level) => findings.filter((finding) => finding.level === level));
  return ordered.flatMap(({ level, words, source }) => {
    const rung = RUNGS[level];
    const text = `${WORDS[level]}: ${words} (${source})`;
    if (rung === null) return wrap(text, '- ');
    return wrap(text, `${shapeOf(rung)} `).map((line) => paintShape(line, rung, colour));
  });
}
