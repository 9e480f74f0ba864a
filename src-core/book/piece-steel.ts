/** Reinforcement of a piece as it is laid: strips, laps, bars, trimmers, standoffs, cover, joints. */
import { steelPlan } from '../paper';
import type { Block } from '../sheet';
import type { BarPlacing, CoverFace, MeshPlacing, SteelPlacing } from '../steel-placing';
import { columns, drawing, heading, list, notice, paragraph, table } from './blocks';
import type { BookContext } from './context';
import type { PieceFacts } from './facts';
import { figureRoom } from './figure-room';
import { placesOf } from './place';
import { FIGURE_SHARES } from './practice';

export function steelBlocks(context: BookContext, found: PieceFacts, id: string): Block[] {
  const { piece } = found;
  const { steel } = found.takeoff;
  if (steel === null) return [];
  const plan = steelPlan(context.job, piece, steel, figureRoom(context.paper, FIGURE_SHARES.steel));
  const title = heading(`${id}-steel`, 'Steel and standoffs');
  if (plan === null && steel.joints.length === 0) {
    return [title, paragraph('No steel is drawn, and no corner asks for a trimmer.')];
  }
  return [
    title,
    ...(steel.meshes.length + steel.bars.length === 0 ? [paragraph('No mesh and no bars are drawn.')] : []),
    ...drawing(`${id}-steel-plan`, plan, 'Steel as it is laid, with its standoffs.'),
    ...steel.meshes.flatMap((mesh, k) => meshBlocks(context, mesh, `${id}-mesh-${k + 1}`)),
    ...steel.bars.flatMap((bars, k) => barBlocks(context, bars, `${id}-bars-${k + 1}`)),
    ...trimmerBlocks(context, found, steel, id),
    ...standoffBlocks(context, steel, id),
    ...coverBlocks(context, steel, id),
    ...jointBlocks(context, steel, id),
    ...notice('caution', steel.cautions),
  ];
}

function meshBlocks({ print }: BookContext, mesh: MeshPlacing, id: string): Block[] {
  const { stock, strips, laps, words, lapAlongIn, lapAcrossIn, notes } = mesh;
  const sheet = `${print.length(stock.lengthIn)} by ${print.length(stock.widthIn)}`;
  return [
    ...table(
      `${id}-strips`,
      `${words}: strips, cut from sheets of ${sheet}`,
      columns(
        ['Strip', 1],
        ['Along the sheet', 1.5, 'end'],
        ['Across it', 1.5, 'end'],
        ['Laid', 2],
        ['Weight', 1.2, 'end'],
      ),
      strips.map(({ label, lengthIn, widthIn, isTurned, massLb }) => [
        label,
        print.length(lengthIn),
        print.length(widthIn),
        isTurned ? 'turned, with the sheet across' : 'with the sheet',
        print.mass(massLb),
      ]),
    ),
    ...(laps.length === 0
      ? []
      : [
          paragraph(
            `Laps of ${print.length(lapAlongIn)} along the sheet and ${print.length(lapAcrossIn)} across it, at the least.`,
          ),
        ]),
    ...table(
      `${id}-laps`,
      'Laps',
      columns(['Joins', 1.4], ['Overlap', 1, 'end'], ['Clear of the nearest peak of bending', 3]),
      laps.map(({ joins, overlapIn, clearIn, nearestPeak }) => [
        joins.map((one) => strips.find((strip) => strip.id === one)?.label ?? one).join(' and '),
        print.length(overlapIn),
        clearWords(clearIn, nearestPeak, print.length),
      ]),
    ),
    ...list(notes),
  ];
}

function clearWords(
  clearIn: number | null,
  nearestPeak: string,
  length: (valueIn: number) => string,
): string {
  if (clearIn === null) return 'no peak is known';
  const peak = nearestPeak === '' ? '' : `, ${nearestPeak}`;
  return clearIn < 0 ? `lies over one${peak}` : `${length(clearIn)}${peak}`;
}

function barBlocks({ print }: BookContext, bars: BarPlacing, id: string): Block[] {
  return [
    ...table(
      `${id}-marks`,
      `${bars.words}: bars to cut`,
      columns(
        ['Mark', 1],
        ['Count', 1, 'end'],
        ['Bar', 1.4, 'end'],
        ['Cut to', 1.6, 'end'],
        ['Ends', 2],
        ['Weight of all', 1.4, 'end'],
      ),
      bars.marks.map(({ mark, count, barIn, cutLengthIn, shape, massLb }) => [
        mark,
        String(count),
        print.length(barIn),
        print.length(cutLengthIn),
        { straight: 'straight', 'one-hook': 'a hook at one end', 'two-hooks': 'a hook at each end' }[shape],
        print.mass(massLb),
      ]),
    ),
    ...(bars.laps.length === 0
      ? []
      : [
          paragraph(
            `Bars longer than the stock lap ${print.length(bars.lapIn)} at the least, ${bars.laps.length} times.`,
          ),
        ]),
    ...list(bars.notes),
  ];
}

function trimmerBlocks(
  { job, print }: BookContext,
  { piece }: PieceFacts,
  { trimmers }: SteelPlacing,
  id: string,
): Block[] {
  const place = placesOf(job, piece);
  return table(
    `${id}-trimmers`,
    'Trimmers across corners, beside the steel that is drawn',
    columns(
      ['Bar', 0.8],
      ['Corner from the left', 1.4, 'end'],
      ['From the front', 1.2, 'end'],
      ['Length', 1.1, 'end'],
      ['From the top to its middle', 1.2, 'end'],
      ['Why', 3.2],
    ),
    trimmers.map(({ label, barId, corner, status, lengthIn, depthIn, words }) => {
      const { fromLeft, fromFront } = place(corner);
      const isLaid = status === 'recommended';
      return [
        `${label}, ${barId}`,
        fromLeft,
        fromFront,
        isLaid ? print.length(lengthIn) : status === 'drawn' ? 'as drawn' : 'left out',
        depthIn === null ? '' : print.fine(depthIn),
        words,
      ];
    }),
  );
}

function standoffBlocks({ print }: BookContext, steel: SteelPlacing, id: string): Block[] {
  return [
    ...table(
      `${id}-standoffs`,
      'Standoffs, on a staggered grid',
      columns(['Under', 2.4], ['Height', 1, 'end'], ['Apart', 1, 'end'], ['Count', 1, 'end']),
      steel.standoffSets.map(({ layerId, heightIn, spacingIn, count }) => [
        layerWords(steel, layerId),
        print.fine(heightIn),
        print.length(spacingIn),
        String(count),
      ]),
    ),
    ...list(steel.sags.filter(({ level }) => level === 'enough').map(({ words }) => words)),
  ];
}

const FACES: { readonly [F in CoverFace]: string } = {
  top: 'top',
  'top-at-laps': 'top, at laps',
  bottom: 'underside',
  edge: 'edges',
  opening: 'openings',
};

function coverBlocks({ print }: BookContext, steel: SteelPlacing, id: string): Block[] {
  return table(
    `${id}-cover`,
    'Cover that is left',
    columns(['Steel', 2], ['To the', 1.2], ['Left', 1, 'end'], ['Wanted', 1, 'end'], ['', 1]),
    steel.covers.map(({ layerId, face, leftIn, wantedIn, level }) => [
      layerWords(steel, layerId),
      FACES[face],
      print.fine(leftIn),
      print.fine(wantedIn),
      { enough: 'enough', short: 'short', out: 'out of the concrete' }[level],
    ]),
  );
}

function jointBlocks({ print }: BookContext, { joints }: SteelPlacing, id: string): Block[] {
  return table(
    `${id}-joints`,
    'Joints and gaps',
    columns(['Joint', 1.3], ['Length', 1, 'end'], ['Width', 0.9, 'end'], ['Depth', 0.9, 'end'], ['How', 3.4]),
    joints.map(({ kind, lengthIn, widthIn, depthIn, words }) => [
      kind,
      print.length(lengthIn),
      print.fine(widthIn),
      print.fine(depthIn),
      words,
    ]),
  );
}

function layerWords({ meshes, bars }: SteelPlacing, layerId: string): string {
  return [...meshes, ...bars].find(({ id }) => id === layerId)?.words ?? layerId;
}
