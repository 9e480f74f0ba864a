/** Cut diagrams over as many drawings as they need: a page has room for so many sticks or sheets. */
import type { Figure } from '../figure';
import type { DrawnSheet, DrawnStick, PaperSize } from '../paper';
import { sheetDiagram, stickDiagram } from '../paper';
import type { FigureBlock, Words } from '../sheet';
import type { UnitSystem } from '../units';

/** Sticks and sheets on one drawing, those that are cut alike counted once. */
const STICKS_A_FIGURE = 9;
const SHEETS_A_FIGURE = 2;

interface CutDrawing {
  readonly id: string;
  readonly title: string;
  readonly system: UnitSystem;
  readonly caption: Words;
}

/** Sticks in drawings of a few each. */
export function stickFigures(
  sticks: readonly DrawnStick[],
  room: PaperSize,
  named: CutDrawing,
): FigureBlock[] {
  const { system } = named;
  return figuresOf(countedAlike(sticks), STICKS_A_FIGURE, room, named, (some, id, title) =>
    stickDiagram({ id, title, sticks: some, system }, room),
  );
}

/** Sheets in drawings of a few each. */
export function sheetFigures(
  sheets: readonly DrawnSheet[],
  room: PaperSize,
  named: CutDrawing,
): FigureBlock[] {
  const { system } = named;
  return figuresOf(countedAlike(sheets), SHEETS_A_FIGURE, room, named, (some, id, title) =>
    sheetDiagram({ id, title, sheets: some, system }, room),
  );
}

type Draw<Item> = (items: readonly Item[], id: string, title: string) => Figure | null;

/** In the order given, as many to a drawing as it has room for. */
function figuresOf<Item>(
  items: readonly Item[],
  most: number,
  room: PaperSize,
  { id, title, caption }: CutDrawing,
  draw: Draw<Item>,
): FigureBlock[] {
  const blocks: FigureBlock[] = [];
  const add = (some: readonly Item[]): void => {
    const figure = draw(some, `${id}-${blocks.length + 1}`, title);
    if (figure === null) return;
    const isTooTall = figure.heightIn > room.heightIn && some.length > 1;
    if (!isTooTall) {
      blocks.push({ kind: 'figure', id: `${id}-${blocks.length + 1}`, figure, caption });
      return;
    }
    const half = Math.ceil(some.length / 2);
    add(some.slice(0, half));
    add(some.slice(half));
  };
  for (let from = 0; from < items.length; from += most) add(items.slice(from, from + most));
  return blocks;
}

/** Items that are cut alike as one with their count, in the order in which they first come. */
function countedAlike<Item extends { readonly count: number }>(items: readonly Item[]): Item[] {
  const alike = new Map<string, Item>();
  for (const item of items) {
    const key = JSON.stringify({ ...item, count: 0 });
    const known = alike.get(key);
    alike.set(key, known === undefined ? item : { ...known, count: known.count + item.count });
  }
  return [...alike.values()];
}
