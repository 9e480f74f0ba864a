/** What can be added to a piece, in words, and what adding it does. */

import { BARS, MESHES } from '../../src-core/concrete';
import { addCutout, addJoint, addLoad, addSteel, addSupport, newId, splitEdge } from '../../src-core/edit';
import type { Job, JobProblem, Piece, SupportKind } from '../../src-core/job';
import type { Part } from '../state/selection';
import type { WindowState } from '../state/window-store';
import type { PartsField } from './specs/field';
import { SUPPORT_WORDS } from './specs/support-fields';
import type { CutoutStart } from './starts/new-cutout';
import { newCutout } from './starts/new-cutout';
import { newCornerPlace, newFixedLoad, newJoint } from './starts/new-parts';
import { newBars, newFibre, newMesh } from './starts/new-steel';
import { newSupport } from './starts/new-support';

export interface AddChoice {
  readonly id: string;
  readonly words: string;
}

export interface AddGroup {
  /** null where there is only one. */
  readonly title: string | null;
  readonly choices: readonly AddChoice[];
}

const CUTOUTS: { readonly [S in CutoutStart]: string } = {
  'dropped-in': 'Sink, dropped in',
  'under-rim': 'Sink, under the rim',
  'cast-over': 'Sink, cast over',
  hob: 'Hob',
  tap: 'Tap hole',
  drain: 'Drain',
  other: 'Another opening',
};

/** What the button that adds one is called; edges come with their corners. */
export const ADD_WORDS: { readonly [K in Exclude<PartsField['part'], 'edge'>]: string } = {
  corner: 'Add a corner',
  cutout: 'Add an opening',
  support: 'Add a support',
  steel: 'Add steel',
  load: 'Add equipment',
  joint: 'Add a joint',
};

/** The choices of a kind of part; a single one needs no menu. */
export function addGroups(part: PartsField['part']): readonly AddGroup[] {
  switch (part) {
    case 'edge':
      return [];
    case 'corner':
    case 'load':
    case 'joint':
      return [{ title: null, choices: [{ id: part, words: ADD_WORDS[part] }] }];
    case 'cutout':
      return [{ title: null, choices: fromWords(CUTOUTS) }];
    case 'support':
      return [{ title: null, choices: fromWords(SUPPORT_WORDS) }];
    case 'steel':
      return [
        { title: 'Welded mesh', choices: MESHES.map(({ id }) => ({ id: `mesh ${id}`, words: id })) },
        { title: 'Bars', choices: BARS.map(({ id }) => ({ id: `bars ${id}`, words: id })) },
        {
          title: 'Counts zero for strength',
          choices: [
            { id: 'fabric', words: 'Glass fabric' },
            { id: 'fibre', words: 'Glass fibre' },
          ],
        },
      ];
  }
}

export type Added =
  | { readonly ok: true; readonly part: Part }
  | { readonly ok: false; readonly problems: readonly JobProblem[] };

/** Adds what was chosen and names it, so that its form can be opened. */
export function addPart(
  run: WindowState['run'],
  job: Job,
  piece: Piece,
  part: Exclude<PartsField['part'], 'edge'>,
  choice: string,
): Added {
  const pieceId = piece.id;
  const ended = (problems: readonly JobProblem[], made: Part): Added =>
    problems.length === 0 ? { ok: true, part: made } : { ok: false, problems };
  switch (part) {
    case 'corner': {
      const { index, at } = newCornerPlace(piece);
      return ended(run(splitEdge, { pieceId, index, at }), { kind: 'corner', index: index + 1 });
    }
    case 'cutout': {
      const id = newId(job, choice);
      const cutout = newCutout(choice as CutoutStart, piece, id);
      return ended(run(addCutout, { pieceId, cutout }), { kind: 'cutout', id });
    }
    case 'support': {
      const id = newId(job, choice);
      const support = newSupport(choice as SupportKind, piece, id);
      return ended(run(addSupport, { pieceId, support }), { kind: 'support', id });
    }
    case 'steel': {
      const layer = newSteel(job, piece, choice);
      return ended(run(addSteel, { pieceId, layer }), { kind: 'steel', id: layer.id });
    }
    case 'load': {
      const id = newId(job, 'load');
      return ended(run(addLoad, { pieceId, load: newFixedLoad(piece, id) }), { kind: 'load', id });
    }
    case 'joint': {
      const id = newId(job, 'joint');
      return ended(run(addJoint, { pieceId, joint: newJoint(piece, id) }), { kind: 'joint', id });
    }
  }
}

function newSteel(job: Job, piece: Piece, choice: string) {
  if (choice === 'fabric' || choice === 'fibre') return newFibre(choice, newId(job, choice));
  const [kind, tableId] = [choice.slice(0, 4), choice.slice(5)];
  return kind === 'mesh'
    ? newMesh(tableId, piece, newId(job, 'mesh'))
    : newBars(tableId, piece, newId(job, 'bars'));
}

function fromWords(words: Readonly<Record<string, string>>): AddChoice[] {
  return Object.entries(words).map(([id, word]) => ({ id, words: word }));
}
