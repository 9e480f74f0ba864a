/** How long a text is in the bundled fonts. */
import type { FontFace } from './font-metrics';
import { ADVANCES } from './font-metrics';
import type { TextStyle } from './practice';

const EM = 1000;

const FACES: { readonly [F in FontFace]: Face } = {
  text: faceOf('text'),
  strong: faceOf('strong'),
  narrow: faceOf('narrow'),
};

interface Face {
  readonly advances: ReadonlyMap<string, number>;
  /** Taken for a letter that the font lacks: another font draws it, up to an em wide, or as wide as the widest of this one. */
  readonly unknown: number;
}

function faceOf(face: FontFace): Face {
  const advances = new Map(
    Object.entries(ADVANCES[face]).flatMap(([advance, letters]) =>
      [...letters].map((letter): [string, number] => [letter, Number(advance)]),
    ),
  );
  return { advances, unknown: Math.max(EM, ...advances.values()) };
}

/** Sum of the advances of the letters, pt, without kerning. */
export function textWidthPt(text: string, { face, sizePt }: Pick<TextStyle, 'face' | 'sizePt'>): number {
  const { advances, unknown } = FACES[face];
  let sum = 0;
  for (const letter of text) sum += advances.get(letter) ?? unknown;
  return (sum * sizePt) / EM;
}

const ELLIPSIS = '…';

/** The text, or as much of its beginning as fits, with an ellipsis. */
export function fittingText(
  text: string,
  style: Pick<TextStyle, 'face' | 'sizePt'>,
  widthPt: number,
): string {
  if (textWidthPt(text, style) <= widthPt) return text;
  const letters = [...text];
  while (letters.length > 0 && textWidthPt(letters.join('').trimEnd() + ELLIPSIS, style) > widthPt)
    letters.pop();
  return letters.join('').trimEnd() + ELLIPSIS;
}
