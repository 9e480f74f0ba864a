import { describe, expect, test } from 'vitest';
import {
  boardFindings,
  boardPlan,
  boardRows,
  boardWords,
  cutBoardDrawing,
} from '../../../src-renderer/buy/board-rows';
import { fitToWidth } from '../../../src-renderer/buy/fit-to-width';
import { GALLEY_TAKEOFF, ofPiece } from './taken-off';

const counter = ofPiece('serving-counter').boards!;
const all = GALLEY_TAKEOFF.pieces.flatMap(({ boards }) => (boards === null ? [] : [boards]));

describe('a plan in the width of a panel', () => {
  const room = { widthPx: 340, mostHeightPx: 220, marginPx: 10 };

  test('a box of 80 x 10 in fills the width at 4 px to the inch, its front at the bottom', () => {
    const fitted = fitToWidth({ minXIn: -20, maxXIn: 60, minYIn: 5, maxYIn: 15 }, room)!;
    expect(fitted.pxPerIn).toBe(4);
    expect(fitted.heightPx).toBe(60);
    expect(fitted.toPx({ xIn: -20, yIn: 5 })).toEqual({ x: 10, y: 50 });
    expect(fitted.toPx({ xIn: 60, yIn: 15 })).toEqual({ x: 330, y: 10 });
  });

  test('a box of 20 x 100 in is held to the height, and stands in the middle', () => {
    const fitted = fitToWidth({ minXIn: 0, maxXIn: 20, minYIn: 0, maxYIn: 100 }, room)!;
    expect(fitted.pxPerIn).toBe(2);
    expect(fitted.toPx({ xIn: 10, yIn: 0 }).x).toBe(170);
    expect(
      fitToWidth({ minXIn: 0, maxXIn: 20, minYIn: 0, maxYIn: 100 }, { ...room, widthPx: 20 }),
    ).toBeNull();
  });
});

describe('backing boards of the galley', () => {
  test('every part of every piece lies on one board, under its number in the plan', () => {
    for (const boards of all) {
      const plan = boardPlan(boards, 340)!;
      expect(plan.parts.map(({ number }) => number)).toEqual(boards.parts.map((_, i) => String(i + 1)));
      const onBoards = boardRows(boards, 'imperial').flatMap(({ parts }) =>
        parts.map(({ number }) => number),
      );
      expect([...onBoards].sort()).toEqual(plan.parts.map(({ number }) => number).sort());
      expect(plan.seams).toHaveLength(boards.seams.length);
    }
  });

  test('a cut part has its front edge on its board drawn at its own length; a whole board needs none', () => {
    for (const boards of all) {
      boards.boards.forEach((_, index) => {
        const drawn = cutBoardDrawing(boards, index, 352)!;
        const pxPerIn = Math.min(340 / boards.board.lengthIn, 178 / boards.board.widthIn);
        for (const { key, frontEdge, isFull } of drawn.parts) {
          const part = boards.parts.find(({ id }) => id === key)!;
          expect(frontEdge === null).toBe(isFull);
          if (frontEdge === null) continue;
          const { from, to } = frontEdge;
          expect(Math.hypot(to.x - from.x, to.y - from.y) / pxPerIn).toBeCloseTo(part.widthIn, 6);
        }
      });
    }
  });

  test('no board is drawn without a width, nor one that is not there', () => {
    expect(cutBoardDrawing(counter, 0, 0)).toBeNull();
    expect(cutBoardDrawing(counter, counter.boardCount, 340)).toBeNull();
    expect(boardPlan(counter, 0)).toBeNull();
  });

  test('the bar ledge of 96 x 17-1/2 in is one board with one cut along it', () => {
    const [row, ...others] = boardRows(ofPiece('bar-ledge').boards!, 'imperial');
    expect(others).toEqual([]);
    expect(row!.isWhole).toBe(false);
    expect(row!.cuts.map(({ words }) => words)).toEqual(['The board lengthways at 17-1/2 in']);
    expect(row!.parts[0]!.size).toBe('96 in by 17-1/2 in');
    // 48 in less 17-1/2 in and a kerf of 1/8 in
    expect(row!.left).toBe('96 in by 30-3/8 in');
  });

  test('the words count the boards and round the waste', () => {
    // 17.5 of 48 in are used, so that 63.5 % is offcut
    expect(boardWords(ofPiece('bar-ledge').boards!, 'imperial')).toBe(
      '1 board of 96 in by 48 in, 1/2 in thick; 64 % is offcut.',
    );
    expect(boardWords(counter, 'metric')).toMatch(/^2 boards of 2438 mm by 1219 mm, 13 mm thick;/);
  });

  test('what asks for attention stands before what is in order', () => {
    const [last] = counter.findings.slice(-1);
    const findings = boardFindings({
      ...counter,
      findings: [...counter.findings, { ...last!, level: 'attention' }],
    });
    expect(findings[0]!.level).toBe('attention');
    expect(findings).toHaveLength(counter.findings.length + 1);
  });
});
