/** What every starter is made of: rectangles, the light mesh, cabinets and piers as drafts of a job file. */
import type { JobDraft } from '../job';
import type { Point } from '../outline';
import type { IdMaker } from './fresh-ids';

export type PieceDraft = JobDraft['pieces'][number];
export type SupportDraft = NonNullable<PieceDraft['supports']>[number];
export type SteelDraft = NonNullable<PieceDraft['reinforcement']>[number];
export type EdgeDraft = NonNullable<NonNullable<PieceDraft['edges']>[number]>;

/** What a starter is drawn with: where its front left corner comes to lie, its mix, and ids that the job does not have. */
export interface Setting {
  readonly at: Point;
  readonly mixId: string;
  readonly makeId: IdMaker;
}

/** Draws a starter. */
export type Design = (setting: Setting) => PieceDraft;

export const EASED: EdgeDraft = { kind: 'free', profile: { kind: 'eased' } };
export const AGAINST_WALL: EdgeDraft = { kind: 'wall' };
/** An edge over the weather or bare feet: water drops off it before it runs back underneath. */
export const DRIPPING: EdgeDraft = {
  kind: 'free',
  profile: { kind: 'eased' },
  dripGroove: { widthIn: 0.25, depthIn: 0.25, setbackIn: 0.75 },
};

/** A point by its distance from the starter's left and front. */
export function placeIn({ at }: Setting, leftIn: number, frontIn: number): Point {
  return { xIn: at.xIn + leftIn, yIn: at.yIn + frontIn };
}

/** Corners of a rectangle from the front left one, counter-clockwise: front edge first, then right, back and left. */
export function rectangle(setting: Setting, lengthIn: number, depthIn: number): Point[] {
  return [
    placeIn(setting, 0, 0),
    placeIn(setting, lengthIn, 0),
    placeIn(setting, lengthIn, depthIn),
    placeIn(setting, 0, depthIn),
  ];
}

/** Square mesh of thin wire at mid-depth, as sold for stucco and worktops: it keeps cracks fine and carries a little. */
export function lightMesh({ makeId }: Setting, thicknessIn: number): SteelDraft {
  return {
    kind: 'mesh',
    id: makeId('mesh'),
    label: 'light mesh',
    wireIn: 0.08,
    spacingIn: 2,
    crossWireIn: 0.08,
    crossSpacingIn: 2,
    depthIn: thicknessIn / 2,
  };
}

/** Base cabinets in a row from the left, with their fronts at `frontIn` from the front of the piece. */
export function cabinetRow(
  setting: Setting,
  row: { readonly widthsIn: readonly number[]; readonly frontIn: number; readonly depthIn: number },
): SupportDraft[] {
  let leftIn = 0;
  return row.widthsIn.map((widthIn, i) => {
    const corner = placeIn(setting, leftIn, row.frontIn);
    leftIn += widthIn;
    const id = setting.makeId('cabinet-1');
    return { kind: 'cabinet', id, name: `B${i + 1}`, corner, widthIn, depthIn: row.depthIn, weightLb: 70 };
  });
}

/** A block pier by its middle. */
export function blockPier(
  setting: Setting,
  pier: {
    readonly leftIn: number;
    readonly frontIn: number;
    readonly widthIn: number;
    readonly depthIn: number;
    readonly heightIn: number;
  },
): SupportDraft {
  const { leftIn, frontIn, widthIn, depthIn, heightIn } = pier;
  const centre = placeIn(setting, leftIn, frontIn);
  return {
    kind: 'pier',
    id: setting.makeId('pier-1'),
    build: 'block',
    footprint: { kind: 'rectangle', centre, widthIn, depthIn },
    heightIn,
  };
}
