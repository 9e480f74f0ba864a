/** What a piece weighs and is made of. */
import type { Mix, Piece } from '../job';
import type { PouredPiece } from '../pour';
import type { Block } from '../sheet';
import { facts, heading } from './blocks';
import type { BookContext } from './context';
import type { PieceFacts } from './facts';

/** The concrete of a piece; job files without it are refused when they are read. */
export function mixOf({ job }: Pick<BookContext, 'job'>, { id, mixId }: Piece): Mix {
  const mix = job.mixes.find((one) => one.id === mixId);
  if (mix === undefined) throw new Error(`no mix "${mixId}" for piece "${id}"`);
  return mix;
}

/** What the pour plan says of a piece; null where it cannot be drawn. */
export function pouredOf(
  { facts: { pours } }: Pick<BookContext, 'facts'>,
  pieceId: string,
): PouredPiece | null {
  return pours.pours.flatMap(({ pieces }) => pieces).find((poured) => poured.pieceId === pieceId) ?? null;
}

export function amountBlocks(context: BookContext, { piece, result }: PieceFacts, id: string): Block[] {
  const { print } = context;
  const mix = mixOf(context, piece);
  const poured = pouredOf(context, piece.id);
  const { thicknessIn, topElevationIn, fall, colour, exposure, finish, pourDay, note } = piece;
  return [
    heading(`${id}-amounts`, 'Volume, weight and mix'),
    ...facts([
      ['Thickness', print.length(thicknessIn)],
      ['Top above the highest floor', print.length(topElevationIn)],
      [
        'Fall',
        fall === null ? null : `${print.fine(fall.inPerFt)} in ${print.length(12)}, made by tilting the form`,
      ],
      ['Plan area', poured === null ? null : print.area(poured.volume.areaIn2)],
      ['Concrete in one', poured === null ? null : print.volume(poured.volumeFt3 / poured.copies)],
      [
        'Weight of one',
        `${print.mass(result.weightLb)} hardened${poured === null ? '' : `, ${print.mass(poured.wetWeightLb / poured.copies)} wet`}`,
      ],
      ['Mix', `${mix.name}, ${strengthWords(context, mix)}`],
      [
        'Colour',
        colour === null
          ? 'none'
          : `${colour.pigment}, ${Number((100 * colour.pigmentRatio).toPrecision(3))} % of the cement by weight`,
      ],
      ['Finish', `${finish}, ${exposure}`],
      ['Poured on', print.day(pourDay)],
      ['Note', note === '' ? null : note],
    ]),
  ];
}

/** "5000 psi at 28 days, from the bag". */
export function strengthWords(
  { print }: Pick<BookContext, 'print'>,
  { strengthPsi, strengthFrom }: Mix,
): string {
  if (strengthPsi === null) return 'strength not stated';
  const from = { tested: 'tested', bag: 'from the bag', assumed: 'assumed' }[strengthFrom];
  return `${print.stress(strengthPsi)} at 28 days, ${from}`;
}
