/**
 * Puts measured blocks on pages of one height: in order, as much on each as fits, no page ending where a block or its keeping
 * together forbids it.
 */
import type { Measured } from './measured';

/** Blocks of one chapter with what the pages need to know of it; lengths already in real points. */
export interface MeasuredChapter {
  readonly startsPage: boolean;
  /** Goes on one page, and is known to fit. */
  readonly isKeptWhole: boolean;
  readonly blocks: readonly Measured[];
}

/** Units of one block on one page. */
export interface Stretch {
  readonly chapter: number;
  readonly block: number;
  readonly from: number;
  readonly to: number;
  readonly gapPt: number;
  readonly heightPt: number;
}

export interface PagedStretches {
  readonly stretches: readonly Stretch[];
  readonly usedPt: number;
}

export interface Paginated {
  readonly pages: readonly PagedStretches[];
  /** Blocks that had to be parted from what they stay with, and units taller than a page. */
  readonly parted: readonly Place[];
  readonly tooTall: readonly Place[];
}

interface Place {
  readonly chapter: number;
  readonly block: number;
}

interface Unit extends Place {
  readonly unit: number;
  readonly heightPt: number;
  readonly gapPt: number;
  readonly againPt: number;
}

/** Sums of floating-point heights may differ from the room by this and still fit, pt. */
const CLOSE_PT = 1e-6;

export function paginate(chapters: readonly MeasuredChapter[], roomPt: number): Paginated {
  const pages: Unit[][] = [];
  const parted: Place[] = [];
  const tooTall: Place[] = [];
  let page: Unit[] = [];
  const endPage = () => {
    if (page.length > 0) pages.push(page);
    page = [];
  };
  const fits = (units: readonly Unit[]) => usedPt([...page, ...units]) <= roomPt + CLOSE_PT;
  const put = (units: readonly Unit[]) => {
    if (!fits(units)) endPage();
    page.push(...units);
  };
  chapters.forEach((chapter, chapterIndex) => {
    if (chapter.startsPage) endPage();
    for (const chunk of chunksOf(chapter, chapterIndex)) {
      if (usedPt(chunk) <= roomPt + CLOSE_PT) {
        put(chunk);
        continue;
      }
      for (const unit of chunk) {
        if (usedPt([unit]) > roomPt + CLOSE_PT) tooTall.push({ chapter: unit.chapter, block: unit.block });
        put([unit]);
      }
      if (chunk.length > 1) parted.push({ chapter: chapterIndex, block: chunk[0]!.block });
    }
  });
  endPage();
  return { pages: pages.map(stretchesOf), parted, tooTall };
}

/** Height of units that begin a page. */
function usedPt(units: readonly Unit[]): number {
  return units.reduce(
    (sum, { heightPt, gapPt }, index) => sum + heightPt + (index > 0 ? gapPt : 0),
    againPt(units),
  );
}

function againPt(units: readonly Unit[]): number {
  const first = units[0];
  return first !== undefined && first.unit > 0 ? first.againPt : 0;
}

/** Units between which no page may end. */
function chunksOf(chapter: MeasuredChapter, chapterIndex: number): Unit[][] {
  const chunks: Unit[][] = [];
  chapter.blocks.forEach((block, blockIndex) => {
    const count = block.unitsPt.length;
    block.unitsPt.forEach((heightPt, unit) => {
      const isBreak =
        unit === 0
          ? !(chapter.blocks[blockIndex - 1]?.keepsNext ?? false)
          : unit >= block.leastTogether && count - unit >= block.leastTogether;
      const isNew = chunks.length === 0 || (isBreak && !chapter.isKeptWhole);
      if (isNew) chunks.push([]);
      chunks.at(-1)!.push({
        chapter: chapterIndex,
        block: blockIndex,
        unit,
        heightPt,
        gapPt: unit === 0 ? block.gapPt : 0,
        againPt: block.againPt,
      });
    });
  });
  return chunks;
}

function stretchesOf(units: readonly Unit[]): PagedStretches {
  const stretches: Stretch[] = [];
  units.forEach((unit, index) => {
    const last = stretches.at(-1);
    if (last !== undefined && last.chapter === unit.chapter && last.block === unit.block) {
      stretches[stretches.length - 1] = {
        ...last,
        to: unit.unit + 1,
        heightPt: last.heightPt + unit.heightPt,
      };
      return;
    }
    stretches.push({
      chapter: unit.chapter,
      block: unit.block,
      from: unit.unit,
      to: unit.unit + 1,
      gapPt: index > 0 ? unit.gapPt : 0,
      heightPt: unit.heightPt + (index === 0 ? againPt(units) : 0),
    });
  });
  return { stretches, usedPt: usedPt(units) };
}
