/** The fewest sheets of all, for a few pieces: every box that can be made of every selection. */
import {
  type Box,
  fitsIn,
  joinBoxes,
  largestOffcut,
  pieceBoxes,
  type SheetKind,
  type SheetSize,
} from './boxes';
import { cheapestSelections, type Selections, selectionsOf, within } from './selections';

/**
 * One box a sheet, on the fewest sheets. Exact for cuts from edge to edge: whatever the first cut is, it leaves two selections, each in
 * the smallest boxes that hold it. Every piece must fit the sheet.
 */
export function fewestBoxes(kinds: readonly SheetKind[], counts: readonly number[], sheet: SheetSize): Box[] {
  const selections = selectionsOf(counts);
  const boxes = boxesOf(kinds, selections, sheet);
  const areas = kinds.map(({ length, width }) => length * width);
  const oneSheet = (selection: number) => (boxes[selection]!.length > 0 ? 1 : Number.POSITIVE_INFINITY);
  return cheapestSelections(selections, areas, oneSheet).map((selection) =>
    boxes[selection]!.reduce((best, box) =>
      largestOffcut(box, sheet) > largestOffcut(best, sheet) ? box : best,
    ),
  );
}

/** For each selection the boxes that hold it and fit the sheet, none both longer and wider than another. */
function boxesOf(kinds: readonly SheetKind[], selections: Selections, sheet: SheetSize): Box[][] {
  const boxes: Box[][] = Array.from({ length: selections.size }, () => []);
  for (let selection = 1; selection < selections.size; selection++) {
    const found: Box[] = [];
    const kind = selections.places.indexOf(selection);
    if (kind >= 0) for (const box of pieceBoxes(kinds[kind]!, kind, sheet)) keepSmallest(found, box);
    for (const part of within(selections, selection)) {
      // Each pair once: which of two parts comes first makes no other box.
      if (part === 0 || 2 * part > selection) continue;
      for (const first of boxes[part]!) {
        for (const second of boxes[selection - part]!) {
          for (const way of ['across', 'along'] as const) {
            const box = joinBoxes(way, first, second);
            if (fitsIn(box, sheet)) keepSmallest(found, box);
          }
        }
      }
    }
    boxes[selection] = found;
  }
  return boxes;
}

function keepSmallest(kept: Box[], box: Box): void {
  if (kept.some((other) => fitsIn(other, box))) return;
  for (let i = kept.length - 1; i >= 0; i--) if (fitsIn(box, kept[i]!)) kept.splice(i, 1);
  kept.push(box);
}
