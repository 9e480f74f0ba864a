/** What stands over each part that is folded away: enough to know whether to open it. */
import type { JobTakeoff, PieceTakeoff } from '../../src-core/takeoff';

export interface SectionTitles {
  readonly forms: string;
  readonly tools: string;
  readonly boards: string;
  readonly openings: string;
  readonly steel: string;
}

/** Titles with counts; those of a piece are empty where it has no such part. What asks for attention says so. */
export function sectionTitles(takeoff: JobTakeoff, own: PieceTakeoff | undefined): SectionTitles {
  const sticks = takeoff.formCuts.lists.reduce((sum, list) => sum + list.sticks.length, 0);
  const { boards = null, openings = [], steel = null } = own ?? {};
  const steelToMind =
    steel === null
      ? 0
      : steel.covers.filter(({ level }) => level !== 'enough').length +
        steel.sags.filter(({ level }) => level === 'caution').length;
  return {
    forms: `Edge forms: ${counted(sticks, 'stick')}`,
    tools: `Tools and protection: ${takeoff.tools.length}`,
    boards:
      boards === null
        ? ''
        : `Backing boards: ${counted(boards.boardCount, 'board')}${toMind(attention(boards.findings))}`,
    openings: `Openings: ${openings.length}${toMind(attention(openings.flatMap(({ findings }) => findings)))}`,
    steel: steel === null ? '' : `Steel: ${steelWords(steel)}${toMind(steelToMind)}`,
  };
}

function steelWords({
  meshes,
  bars,
  trimmers,
  standoffs,
  others,
}: NonNullable<PieceTakeoff['steel']>): string {
  const strips = meshes.reduce((sum, mesh) => sum + mesh.strips.length, 0);
  const lengths = bars.reduce((sum, layer) => sum + layer.bars.length, 0);
  const placed = trimmers.filter(({ status }) => status === 'recommended').length;
  const parts = [
    strips > 0 ? counted(strips, 'strip') : '',
    lengths > 0 ? counted(lengths, 'bar') : '',
    placed > 0 ? counted(placed, 'trimmer') : '',
    standoffs.length > 0 ? counted(standoffs.length, 'standoff') : '',
    ...others.map(({ kind }) => kind),
  ].filter((words) => words !== '');
  return parts.length === 0 ? 'none drawn' : parts.join(', ');
}

function attention(findings: readonly { readonly level: 'ok' | 'attention' }[]): number {
  return findings.filter(({ level }) => level === 'attention').length;
}

function toMind(count: number): string {
  return count === 0 ? '' : `; ${count} to mind`;
}

function counted(count: number, what: string): string {
  return count === 1 ? `1 ${what}` : `${count} ${what}s`;
}
