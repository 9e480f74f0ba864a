/** The picture in words, for those who hear the window rather than see it. */
import type { DeflectedShape } from '../../src-core/field-map';
import type { Job, Piece } from '../../src-core/job';
import { printLength } from '../../src-core/units';
import type { PieceResult } from '../../src-core/verdict';
import type { ModelOptions } from '../state/window-store';
import { governingPlace } from './governing-place';
import { PERSON_HEIGHT_IN } from './person';

interface Shown {
  readonly job: Job;
  readonly piece: Piece;
  readonly result: PieceResult | null;
  readonly deflected: DeflectedShape | null;
  readonly options: ModelOptions;
}

/** What stands in the model, what is coloured, and where the load that governs is drawn; a few sentences. */
export function describeModel({ job, piece, result, deflected, options }: Shown): string {
  const how = { system: job.shownIn };
  const others = job.pieces.length - 1;
  const company = others === 0 ? '' : ` with ${others} other ${others === 1 ? 'piece' : 'pieces'}`;
  const sentences = [
    `${piece.name}${company}, ${printLength(piece.thicknessIn, how)} thick, its top ${printLength(piece.topElevationIn, how)} above the floor.`,
    coloured(options, deflected),
    governing(result),
  ];
  if (options.isSeeThrough) sentences.push('The slab is seen through, with its steel and standoffs.');
  if (options.cutShare !== null) {
    sentences.push(`Cut at ${Math.round(options.cutShare * 100)} % of the length of the job.`);
  }
  if (options.explodeShare > 0) sentences.push('Pulled apart: the slabs are lifted off what they stand on.');
  if (options.showsReactions && deflected !== null) {
    sentences.push('Arrows show what the supports give back.');
  }
  if (options.showsPerson)
    sentences.push(`A person ${printLength(PERSON_HEIGHT_IN, how)} tall stands beside it.`);
  return sentences.filter((sentence) => sentence !== '').join(' ');
}

function coloured({ map }: ModelOptions, deflected: DeflectedShape | null): string {
  switch (map) {
    case 'none':
      return 'The concrete is in its own colour.';
    case 'bending':
      return 'Its top is coloured by bending, as a share of the cracking limit.';
    case 'deflected':
      return deflected === null
        ? 'Its sag is being worked out.'
        : `Drawn bent, much enlarged, under ${deflected.words}.`;
  }
}

function governing(result: PieceResult | null): string {
  if (result === null) return 'It has not been checked yet.';
  const place = governingPlace(result);
  if (place === null) return `${result.verdict.words}.`;
  const load =
    result.governing?.loadAt == null ? '' : ' The load is drawn where the slab bends most under it.';
  return `${result.verdict.words}. ${place.check.words}${load}`;
}
