/** What a quick check puts under its piece: a wall, a row of cabinets, or piers. */
import type { Setting, SupportDraft } from './drafts';
import { blockPier, cabinetRow, placeIn } from './drafts';
import type { QuickFields } from './quick-fields';

/** Thickness of the walls asked about, in: a 2x4 wall lined on both sides; 8 in block laid with its joint. */
export const WALL_WIDTHS_IN = { 'stud-wall': 5.5, 'block-wall': 7.625 } as const;
/** Length of a pier along the piece, in: one block. */
export const PIER_IN = 8;
/** Clear span that a further pier would halve, in. Common practice, no source. */
const LONGEST_SPAN_IN = 48;
/** Widest base cabinet, in. Common practice, no source. */
const WIDEST_CABINET_IN = 36;

/** Pull that one tie of a quick check is taken to be good for, lbf: a clip screwed to the framing. Common practice, no source. */
export const QUICK_TIE_LBF = 400;
/** Spacing of the ties along a wall, in: one a stud. */
export const QUICK_TIE_SPACING_IN = 16;

type Hold = NonNullable<SupportDraft['hold']>;

/** The supports of a quick check's piece; `topIn` is the height of its top above the floor. */
export function quickSupports(setting: Setting, fields: QuickFields, topIn: number): SupportDraft[] {
  const heightIn = topIn - fields.thicknessIn;
  switch (fields.bearing) {
    case 'stud-wall':
    case 'block-wall':
      return [wallUnder(setting, fields, fields.bearing, heightIn)];
    case 'cabinets':
      return cabinetsUnder(setting, fields);
    case 'piers':
      return fields.kind === 'cap'
        ? [capPier(setting, fields, heightIn)]
        : piersUnder(setting, fields, heightIn);
  }
}

/** The wall's front face lies at the overhang; what of the wall the slab does not reach carries nothing. */
function wallUnder(
  setting: Setting,
  fields: QuickFields,
  bearing: keyof typeof WALL_WIDTHS_IN,
  heightIn: number,
): SupportDraft {
  const { lengthIn, depthIn, overhangIn } = fields;
  const widthIn = Math.min(WALL_WIDTHS_IN[bearing], depthIn - overhangIn);
  const centreIn = overhangIn + widthIn / 2;
  return {
    kind: 'wall',
    id: setting.makeId('wall'),
    name: bearing === 'stud-wall' ? 'stud wall' : 'block wall',
    build: bearing === 'stud-wall' ? 'stud' : 'block',
    from: placeIn(setting, 0, centreIn),
    to: placeIn(setting, lengthIn, centreIn),
    widthIn,
    heightIn,
    hold: holdOf(fields),
  };
}

/** As few cabinets of one width as the length takes, from the overhang to the back. */
function cabinetsUnder(setting: Setting, { lengthIn, depthIn, overhangIn }: QuickFields): SupportDraft[] {
  const count = Math.ceil(lengthIn / WIDEST_CABINET_IN);
  const widthsIn = Array.from({ length: count }, () => lengthIn / count);
  return cabinetRow(setting, { widthsIn, frontIn: overhangIn, depthIn: depthIn - overhangIn });
}

/** A pier at the overhang from either end, as deep as the slab, and more between them so that no clear span is long. */
function piersUnder(setting: Setting, fields: QuickFields, heightIn: number): SupportDraft[] {
  const { lengthIn, depthIn, overhangIn } = fields;
  const fromIn = overhangIn + PIER_IN / 2;
  const apartIn = lengthIn - 2 * fromIn;
  const spans = Math.max(1, Math.ceil(apartIn / (LONGEST_SPAN_IN + PIER_IN)));
  return Array.from({ length: spans + 1 }, (_, i) => ({
    ...blockPier(setting, {
      leftIn: fromIn + (apartIn * i) / spans,
      frontIn: depthIn / 2,
      widthIn: PIER_IN,
      depthIn,
      heightIn,
    }),
    hold: holdOf(fields),
  }));
}

function capPier(setting: Setting, fields: QuickFields, heightIn: number): SupportDraft {
  const { lengthIn, depthIn, overhangIn } = fields;
  const pier = {
    leftIn: lengthIn / 2,
    frontIn: depthIn / 2,
    widthIn: lengthIn - 2 * overhangIn,
    depthIn: depthIn - 2 * overhangIn,
    heightIn,
  };
  return { ...blockPier(setting, pier), hold: holdOf(fields) };
}

function holdOf({ held }: QuickFields): Hold {
  if (held === 'loose') return { kind: 'resting' };
  return { kind: 'tied', spacingIn: QUICK_TIE_SPACING_IN, ratingLbf: QUICK_TIE_LBF };
}
