/** Supports in words: what they are, how large, how they hold. */
import type { ArmSection, BracketFixing, BracketSupport, Support, SupportKind } from '../job';
import type { Print } from './print';
import { counted } from './print';

const KINDS: { readonly [K in SupportKind]: string } = {
  cabinet: 'Cabinet',
  wall: 'Wall',
  ledger: 'Ledger',
  pier: 'Pier',
  leg: 'Leg',
  bracket: 'Bracket',
  'full-bed': 'Mortar bed',
};

/** "Cabinet C1, corner"; the kind alone where it has no name. */
export function supportWords({ kind, name, id }: Support): string {
  return name === undefined ? `${KINDS[kind]} ${id}` : name;
}

/** Size in plan, and height where it has one. */
export function supportSize(support: Support, print: Print): string {
  const by = (widthIn: number, depthIn: number) => `${print.length(widthIn)} by ${print.length(depthIn)}`;
  switch (support.kind) {
    case 'cabinet':
      return `${by(support.widthIn, support.depthIn)}, ${print.length(support.heightIn)} high`;
    case 'wall':
    case 'ledger':
      return `${print.length(support.widthIn)} wide`;
    case 'pier': {
      const { footprint } = support;
      return footprint.kind === 'circle'
        ? `${print.length(footprint.diameterIn)} across`
        : by(footprint.widthIn, footprint.depthIn);
    }
    case 'leg':
      return by(support.widthIn, support.depthIn);
    case 'bracket':
      return `reaches ${print.length(support.reachIn)}, seat ${print.length(support.seatWidthIn)} wide, heel ${print.length(support.heelIn)} high`;
    case 'full-bed':
      return support.corners === null ? 'under the whole piece' : 'under part of the piece';
  }
}

/** What it is made of, how it is fixed, whether it holds down. */
export function supportFixing(support: Support, print: Print): string {
  const parts = [makeWords(support, print), holdWords(support, print), gapWords(support, print)];
  return parts.filter((part) => part !== '').join('; ');
}

function makeWords(support: Support, print: Print): string {
  switch (support.kind) {
    case 'cabinet':
      return cabinetWords(support, print);
    case 'wall':
      return support.build === 'stud' ? `studs at ${print.length(support.studSpacingIn)}` : support.build;
    case 'pier':
      return `${support.build === 'timber-post' ? 'timber post' : support.build}, ${support.bed === 'mortar' ? 'bedded in mortar' : 'dry'}`;
    case 'bracket':
      return `${armWords(support.arm, print)}; ${fixingWords(support.fixing, print)} into ${BACKINGS[support.backing]}`;
    case 'full-bed':
      return 'bedded in mortar';
    case 'ledger':
    case 'leg':
      return '';
  }
}

function cabinetWords(
  { feet, subTop, backingBoardIn }: Extract<Support, { kind: 'cabinet' }>,
  print: Print,
): string {
  return [
    feet === null
      ? 'no feet'
      : `${counted(feet.count, 'foot', 'feet')}, ${print.length(feet.shortestIn)} to ${print.length(feet.longestIn)}`,
    ...(subTop ? ['a full sub-top'] : []),
    ...(backingBoardIn === null ? [] : [`${print.length(backingBoardIn)} board stays on it`]),
  ].join(', ');
}

function holdWords({ hold }: Support, print: Print): string {
  return hold.kind === 'resting' ? 'rests' : `tied every ${print.length(hold.spacingIn)}`;
}

function gapWords({ gapIn, raisedIn }: Support, print: Print): string {
  if (gapIn > 0) return `${print.fine(gapIn)} short of touching`;
  return raisedIn > 0 ? `raised ${print.fine(raisedIn)} beyond touching` : '';
}

const BACKINGS: { readonly [B in BracketSupport['backing']]: string } = {
  'timber-stud': 'timber studs',
  'steel-post': 'a steel post',
  'grouted-block': 'grouted block',
  'hollow-block': 'hollow block',
  'brick-veneer': 'brick veneer',
  concrete: 'concrete',
  unknown: 'a wall of unknown build',
};

function armWords(arm: ArmSection, print: Print): string {
  const { length } = print;
  switch (arm.kind) {
    case 'flat-bar':
      return `flat bar ${length(arm.widthIn)} by ${length(arm.depthIn)}`;
    case 'angle':
      return `angle ${length(arm.legWidthIn)} by ${length(arm.legDepthIn)} by ${length(arm.wallIn)}`;
    case 'tee':
      return `tee ${length(arm.flangeWidthIn)} by ${length(arm.depthIn)} by ${length(arm.wallIn)}`;
    case 'tube':
      return `tube ${length(arm.widthIn)} by ${length(arm.depthIn)} by ${length(arm.wallIn)}`;
    case 'knee-brace':
      return `timber knee brace ${length(arm.widthIn)} by ${length(arm.depthIn)}, foot ${length(arm.dropIn)} below the arm`;
  }
}

function fixingWords(fixing: BracketFixing, print: Print): string {
  switch (fixing.kind) {
    case 'screws':
    case 'lags':
    case 'through-bolts': {
      const what = { screws: 'screws', lags: 'lag screws', 'through-bolts': 'through-bolts' }[fixing.kind];
      return `${fixing.totalCount} ${what} of ${print.length(fixing.diameterIn)}, ${fixing.topCount} in the top row, ${print.length(fixing.leverIn)} above the toe of the heel`;
    }
    case 'rated':
      return `rated ${print.force(fixing.ratedLoadLbf)} at ${print.length(fixing.ratedAtIn)} by ${fixing.ratedBy}`;
  }
}
