/** A job from the eight answers of a quick check, to be checked and drawn like any other. */
import { BARS } from '../concrete';
import type { Job, PieceUse } from '../job';
import type { UnitSystem } from '../units';
import { printForce, printLength } from '../units';
import type { EdgeDraft, PieceDraft, Setting, SteelDraft } from './drafts';
import { AGAINST_WALL, EASED, lightMesh, rectangle } from './drafts';
import { newJob, newSetting } from './new-job';
import { QUICK_TIE_LBF, QUICK_TIE_SPACING_IN, quickSupports } from './quick-bearings';
import type { QuickFields, QuickKind } from './quick-fields';
import type { QuickProblem } from './quick-problems';
import { quickProblems } from './quick-problems';

export type QuickJob =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly problems: readonly QuickProblem[] };

interface KindFacts {
  readonly name: string;
  readonly use: PieceUse;
  /** Height of the top above the floor, in. Common practice, no source. */
  readonly topIn: number;
}

const KINDS: { readonly [K in QuickKind]: KindFacts } = {
  'bar-ledge': { name: 'Bar ledge', use: 'bar-ledge', topIn: 42 },
  counter: { name: 'Counter', use: 'counter', topIn: 36 },
  hearth: { name: 'Hearth', use: 'hearth', topIn: 16 },
  bench: { name: 'Bench', use: 'bench', topIn: 17.5 },
  cap: { name: 'Pier cap', use: 'cap', topIn: 48 },
};

/** Spacing of the bars both ways, in. Common practice, no source. */
const BAR_SPACING_IN = 6;
const BAR_ID = '#3';

/** The job that a quick check asks about, shown in the units it was asked in; or what is wrong beside which field. */
export function quickCheckJob(fields: QuickFields, system: UnitSystem = 'imperial'): QuickJob {
  const problems = quickProblems(fields, system);
  if (problems.length > 0) return { ok: false, problems };
  const piece = quickPiece(newSetting(), fields, system);
  return { ok: true, job: { ...newJob('quick-check', piece.name, piece), shownIn: system } };
}

function quickPiece(setting: Setting, fields: QuickFields, system: UnitSystem): PieceDraft {
  const { name, use, topIn } = KINDS[fields.kind];
  return {
    id: setting.makeId(fields.kind),
    name,
    use,
    corners: rectangle(setting, fields.lengthIn, fields.depthIn),
    edges: [EASED, EASED, backEdge(fields), EASED],
    thicknessIn: fields.thicknessIn,
    topElevationIn: topIn,
    mixId: setting.mixId,
    reinforcement: steelOf(setting, fields),
    supports: quickSupports(setting, fields, topIn),
    note: fields.held === 'tied' ? tieNote(system) : '',
  };
}

function backEdge({ bearing }: QuickFields): EdgeDraft {
  return bearing === 'cabinets' ? AGAINST_WALL : EASED;
}

function steelOf(setting: Setting, { steel, thicknessIn }: QuickFields): SteelDraft[] {
  switch (steel) {
    case 'none':
      return [];
    case 'light-mesh':
      return [lightMesh(setting, thicknessIn)];
    case 'bars':
      return crossedBars(setting, thicknessIn);
  }
}

/** Bars both ways about mid-depth: those from front to back, which an overhang asks for, lie on those along the piece. */
function crossedBars(setting: Setting, thicknessIn: number): SteelDraft[] {
  const bar = BARS.find(({ id }) => id === BAR_ID);
  if (bar === undefined) throw new Error(`No bar "${BAR_ID}" in the table of bars`);
  const shared = {
    kind: 'bars' as const,
    barIn: bar.diameterIn,
    areaIn2: bar.areaIn2,
    spacingIn: BAR_SPACING_IN,
    yieldPsi: bar.yieldPsi,
  };
  const middleIn = thicknessIn / 2;
  return [
    {
      ...shared,
      id: setting.makeId('bars-along'),
      label: '#3 bars along',
      angleDeg: 0,
      depthIn: middleIn + bar.diameterIn / 2,
    },
    {
      ...shared,
      id: setting.makeId('bars-across'),
      label: '#3 bars across, on the long ones',
      angleDeg: 90,
      depthIn: middleIn - bar.diameterIn / 2,
    },
  ];
}

function tieNote(system: UnitSystem): string {
  const spacing = printLength(QUICK_TIE_SPACING_IN, { system });
  const force = printForce(QUICK_TIE_LBF, { system });
  return `Ties are taken at ${spacing} along a wall and one a pier, each good for ${force} of pull: ask the maker of yours.`;
}
