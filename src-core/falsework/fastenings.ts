/** Every group of screws of a section: what it joins, from where it is reached, and whether it must come out. */
import { BOARD_SCREW_IN, LAG, SCREW } from './practice';
import type { FormStack } from './stack';
import type { WorkedSection } from './work-section';

/** From where a screw is driven and drawn. */
export type ReachedFrom = 'above' | 'below' | 'front' | 'side';

export interface Fastening {
  readonly id: string;
  readonly sectionId: string;
  /** The part under its heads, and the part that its points are in. */
  readonly from: string;
  readonly into: string;
  readonly count: number;
  readonly screw: string;
  readonly reachedFrom: ReachedFrom;
  /** Holds the section up or in place, so that it must come out before the section can. */
  readonly mustComeOut: boolean;
  /** Passes through what stays under the slab. */
  readonly throughWhatStays: boolean;
  /** Reaches into the concrete above the board, in; 0 where it does not. */
  readonly intoConcreteIn: number;
}

/** The fastenings of a section as it is built here. */
export function fasteningsOf({ framing, carried, lateral }: WorkedSection, stack: FormStack): Fastening[] {
  const { section, arrangement } = framing;
  const joists = framing.joists.length;
  const list: Fastening[] = [];
  const add = (part: Omit<Fastening, 'id' | 'sectionId' | 'throughWhatStays' | 'intoConcreteIn'>) =>
    list.push({
      ...part,
      id: `${section.id}-fix-${list.length + 1}`,
      sectionId: section.id,
      throughWhatStays: false,
      intoConcreteIn: 0,
    });
  add({
    from: 'deck panel',
    into: 'joists',
    count: joists * Math.max(2, Math.ceil(framing.alongIn / 12)),
    screw: '#8 x 1-1/2 in wood screws, driven before the board is laid',
    reachedFrom: 'above',
    mustComeOut: false,
  });
  if (stack.boardIn > 0) {
    list.push({
      id: `${section.id}-fix-${list.length + 1}`,
      sectionId: section.id,
      from: 'deck panel',
      into: 'backing board',
      count: 4,
      screw: '#8 x 3/4 in wood screws',
      reachedFrom: 'below',
      mustComeOut: true,
      throughWhatStays: false,
      intoConcreteIn: Math.max(0, BOARD_SCREW_IN - stack.panelIn - stack.boardIn),
    });
  }
  if (carried.headers.length > 0) {
    add({
      from: 'trimmers',
      into: 'headers',
      count: 2 * carried.headers.length * 2,
      screw: SCREW.words,
      reachedFrom: 'side',
      mustComeOut: false,
    });
  }
  const crossings = framing.joists.length * framing.lines.filter(({ kind }) => kind === 'stringer').length;
  if (crossings > 0) {
    add({
      from: 'joists',
      into: 'stringers',
      count: crossings * 2,
      screw: `${SCREW.words}, aslant`,
      reachedFrom: 'side',
      mustComeOut: false,
    });
  }
  add({
    from: arrangement.beamSize === null ? 'cleats on the joists' : 'cleats on the stringers',
    into: 'heads of the legs',
    count: carried.legs.length * 4,
    screw: SCREW.words,
    reachedFrom: 'side',
    mustComeOut: true,
  });
  add({
    from: 'feet of the legs',
    into: 'wedges and soles',
    count: carried.legs.length * 2,
    screw: `${SCREW.words}, aslant`,
    reachedFrom: 'side',
    mustComeOut: true,
  });
  if (lateral.kind === 'ledger') {
    add({
      from: 'joists',
      into: 'ledger',
      count: carried.ledger.length * 2,
      screw: `${SCREW.words}, aslant`,
      reachedFrom: 'below',
      mustComeOut: true,
    });
    add({
      from: 'ledger',
      into: 'studs',
      count: lateral.lagsAStud * lateral.studs,
      screw: LAG.words,
      reachedFrom: 'front',
      mustComeOut: true,
    });
  } else {
    add({
      from: 'braces',
      into: 'legs',
      count: lateral.bracesIn.length * 2 * lateral.screwsABraceEnd,
      screw: SCREW.words,
      reachedFrom: 'side',
      mustComeOut: true,
    });
  }
  return list;
}

/** What is wrong with fastenings, a sentence each: nothing that holds a section up may be cast in, or driven down through what stays. */
export function fasteningRefusals(fastenings: readonly Fastening[]): string[] {
  return fastenings.flatMap((fastening) => {
    const { from, into, reachedFrom, mustComeOut, throughWhatStays, intoConcreteIn } = fastening;
    const which = `The screws from ${from} into ${into}`;
    const found: string[] = [];
    if (mustComeOut && reachedFrom === 'above') {
      found.push(
        `${which} must come out, but their heads would be under the concrete. Drive them from below or from the side.`,
      );
    }
    if (throughWhatStays && mustComeOut && reachedFrom !== 'above') {
      found.push(
        `${which} go through the board that stays and hold the section as well. Fasten the two apart.`,
      );
    }
    if (throughWhatStays && reachedFrom === 'above') {
      found.push(`${which} are driven down through what stays under the slab, so the section hangs on it.`);
    }
    if (intoConcreteIn > 0) {
      found.push(`${which} reach into the concrete and would be cast in. Use shorter ones.`);
    }
    return found;
  });
}
