/** Colour and sheen of the concrete as cast, near enough to choose by; a sample slab decides. */
import type { Piece } from '../../src-core/job';
import type { Rgb } from './colour-of-share';

type Colour = Piece['colour'];
type Finish = Piece['finish'];

/** Plain grey cement, trowelled and dry. */
const PLAIN: Rgb = [176, 172, 163];
/** Pigment by weight of cement at which about two thirds of its colour shows; above a tenth hardly more is gained. */
const DOSE_RATIO = 0.035;

/** What a pigment tends to, by the words in its name; the first that fits. */
const PIGMENTS: readonly (readonly [words: RegExp, full: Rgb])[] = [
  [/charcoal|black|soot|coal/i, [52, 51, 50]],
  [/slate|graphite|anthracite/i, [78, 83, 90]],
  [/terracotta|brick|rust/i, [156, 82, 58]],
  [/red|rose|oxblood/i, [140, 68, 58]],
  [/ochre|yellow|straw|gold/i, [201, 164, 88]],
  [/buff|sand|tan|cream/i, [205, 184, 146]],
  [/brown|umber|walnut|coffee|earth/i, [104, 76, 56]],
  [/green|sage|moss|olive/i, [98, 120, 94]],
  [/blue|navy|sea|water/i, [74, 102, 132]],
  [/white|chalk|ivory|lime/i, [232, 228, 218]],
  [/gr[ae]y|silver|stone/i, [120, 119, 115]],
];
/** A pigment whose name says no colour is drawn a shade darker, so that it still shows as coloured. */
const UNNAMED: Rgb = [132, 126, 116];

/** Grinding bares the fine sand and lightens; baring the stone darkens. */
const FINISH_FACTOR: { readonly [F in Finish]: number } = { smooth: 1, honed: 1.03, exposed: 0.92 };

/** sRGB colour of a piece: warm grey towards its pigment's colour, the more the larger its share of the cement. */
export function concreteColour(colour: Colour, finish: Finish): Rgb {
  const full = colour === null ? PLAIN : fullColour(colour.pigment);
  const taken = colour === null ? 0 : 1 - Math.exp(-colour.pigmentRatio / DOSE_RATIO);
  const mixed = PLAIN.map((from, k) => (from + (full[k]! - from) * taken) * FINISH_FACTOR[finish]);
  const [red, green, blue] = mixed.map((value) => Math.min(255, Math.round(value)));
  return [red!, green!, blue!];
}

/** How dull a finish is: 0 a mirror, 1 chalk. */
export function concreteRoughness(finish: Finish): number {
  const roughness: { readonly [F in Finish]: number } = { smooth: 0.55, honed: 0.78, exposed: 0.96 };
  return roughness[finish];
}

function fullColour(pigment: string): Rgb {
  return PIGMENTS.find(([words]) => words.test(pigment))?.[1] ?? UNNAMED;
}
