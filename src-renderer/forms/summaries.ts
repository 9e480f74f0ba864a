/** One line for each part of a piece, as its row in the piece's form has it. */
import type { Cutout, Job, Piece, PieceEdge, Reinforcement, Support } from '../../src-core/job';
import { distanceIn } from '../../src-core/outline';
import type { UnitSystem } from '../../src-core/units';
import { printExactLength, printMass } from '../../src-core/units';
import type { Part } from '../state/selection';
import type { PartsField } from './specs/field';
import { SUPPORT_WORDS } from './specs/support-fields';
import { edgesOf } from './starts/new-parts';

export interface PartRow {
  readonly part: Part;
  readonly name: string;
  readonly facts: string;
}

const PURPOSES: { readonly [P in Cutout['purpose']]: string } = {
  sink: 'Sink',
  hob: 'Hob',
  tap: 'Tap hole',
  drain: 'Drain',
  other: 'Opening',
};

const JOINTS: { readonly [K in Piece['joints'][number]['kind']]: string } = {
  control: 'Control joint',
  isolation: 'Isolation joint',
  construction: 'Construction joint',
};

/** Rows of one list of a piece, in the order of the job. */
export function partRows(of: PartsField['part'], piece: Piece, job: Job): readonly PartRow[] {
  const system = job.shownIn;
  switch (of) {
    case 'corner':
      return piece.corners.map(({ xIn, yIn }, index) => ({
        part: { kind: 'corner', index },
        name: `Corner ${index + 1}`,
        facts: `${printExactLength(xIn, { system })} from the left, ${printExactLength(yIn, { system })} from the front`,
      }));
    case 'edge':
      return edgesOf(piece).map((edge, index) => ({
        part: { kind: 'edge', index },
        name: `Edge ${index + 1}, ${printExactLength(edgeLengthIn(piece, index), { system })}`,
        facts: edgeFacts(edge, job),
      }));
    case 'cutout':
      return piece.cutouts.map((cutout) => ({
        part: { kind: 'cutout', id: cutout.id },
        name: cutout.name ?? PURPOSES[cutout.purpose],
        facts: cutoutFacts(cutout, system),
      }));
    case 'support':
      return piece.supports.map((support) => ({
        part: { kind: 'support', id: support.id },
        name: support.name ?? support.id,
        facts: [
          SUPPORT_WORDS[support.kind],
          supportFacts(support, system),
          holdFacts(support),
          dayFacts(support),
        ]
          .filter((fact) => fact !== '')
          .join(', '),
      }));
    case 'steel':
      return piece.reinforcement.map((steel) => ({
        part: { kind: 'steel', id: steel.id },
        name: steel.label ?? steel.id,
        facts: steelFacts(steel, system),
      }));
    case 'load':
      return piece.loads.fixed.map(({ id, name, weightLb }) => ({
        part: { kind: 'load', id },
        name,
        facts: printMass(weightLb, { system }),
      }));
    case 'joint':
      return piece.joints.map(({ id, kind, from, to }) => ({
        part: { kind: 'joint', id },
        name: JOINTS[kind],
        facts: `${printExactLength(distanceIn(from, to), { system })} long`,
      }));
  }
}

/** Length of edge `index` between its corners, before they are rounded. */
export function edgeLengthIn({ corners }: Piece, index: number): number {
  return distanceIn(corners[index]!, corners[(index + 1) % corners.length]!);
}

function edgeFacts(edge: PieceEdge, job: Job): string {
  switch (edge.kind) {
    case 'free':
      return `free, ${edge.profile.kind.replace('-', ' ')}${edge.dripGroove === null ? '' : ', drip groove'}`;
    case 'wall':
      return `against a wall, gap ${printExactLength(edge.gapIn, { system: job.shownIn })}`;
    case 'butted':
      return `against ${job.pieces.find(({ id }) => id === edge.toPieceId)?.name ?? edge.toPieceId}`;
  }
}

function cutoutFacts({ shape }: Cutout, system: UnitSystem): string {
  switch (shape.kind) {
    case 'rectangle':
      return sizeWords(shape.widthIn, shape.depthIn, system);
    case 'circle':
      return `${printExactLength(shape.diameterIn, { system })} across`;
    case 'polygon':
      return `${shape.corners.length} corners`;
  }
}

function supportFacts(support: Support, system: UnitSystem): string {
  switch (support.kind) {
    case 'cabinet':
    case 'leg':
      return sizeWords(support.widthIn, support.depthIn, system);
    case 'wall':
    case 'ledger':
      return `${printExactLength(support.widthIn, { system })} wide`;
    case 'pier':
      return support.footprint.kind === 'circle'
        ? `${printExactLength(support.footprint.diameterIn, { system })} across`
        : sizeWords(support.footprint.widthIn, support.footprint.depthIn, system);
    case 'bracket':
      return `${support.roots.length} ${support.roots.length === 1 ? 'arm' : 'arms'}, reach ${printExactLength(support.reachIn, { system })}`;
    case 'full-bed':
      return support.corners === null ? 'under all of it' : `${support.corners.length} corners`;
  }
}

function holdFacts({ hold }: Support): string {
  return hold.kind === 'tied' ? 'tied' : '';
}

function dayFacts({ firstDay, lastDay }: Support): string {
  if (lastDay !== null) return `day ${firstDay} to ${lastDay}`;
  return firstDay === 0 ? '' : `from day ${firstDay}`;
}

function steelFacts(steel: Reinforcement, system: UnitSystem): string {
  switch (steel.kind) {
    case 'mesh':
    case 'bars':
      return `${printExactLength(steel.spacingIn, { system })} apart, ${printExactLength(steel.depthIn, { system })} down`;
    case 'fabric':
    case 'fibre':
      return `${steel.material} ${steel.kind}, counts zero for strength`;
  }
}

function sizeWords(widthIn: number, depthIn: number, system: UnitSystem): string {
  return `${printExactLength(widthIn, { system })} by ${printExactLength(depthIn, { system })}`;
}
