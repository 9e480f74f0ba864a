import { describe, expect, test } from 'vitest';
import type { Figure } from '../../../src-core/figure';
import { edgeSections, overhangSection, piecePlan } from '../../../src-core/paper';
import { steelRuns } from '../../../src-core/solid';
import { exampleJob, pieceOfJob, ROOM, wordsOf } from './jobs';

const galley = exampleJob('boathouse-galley', 'imperial');
const metric = exampleJob('boathouse-galley', 'metric');

function widthOf(points: readonly { readonly x: number }[]): number {
  return Math.max(...points.map(({ x }) => x)) - Math.min(...points.map(({ x }) => x));
}

/** The heavy outline. */
function outlineOf({ marks }: Figure) {
  const runs = marks.flatMap((mark) => (mark.kind === 'run' && mark.pen === 'cut' ? [mark] : []));
  expect(runs).toHaveLength(1);
  return runs[0]!;
}

describe('the plan of a piece', () => {
  const plan = piecePlan(galley, pieceOfJob(galley, 'serving-counter'), ROOM)!;

  test('draws 121-1/2 in at 1/2 in = 1 ft as 5-1/16 in', () => {
    expect(plan.scaleWords).toBe('1/2 in = 1 ft');
    expect(widthOf(outlineOf(plan).points)).toBeCloseTo(121.5 / 24, 9);
  });

  test('has every edge once: 121-1/2, 25-1/2 twice, 85-1/2, 96, 60', () => {
    const words = wordsOf(plan);
    for (const length of ['121-1/2', '85-1/2', '96', '60']) {
      expect(words.filter((each) => each === length)).toHaveLength(1);
    }
    expect(words.filter((each) => each === '25-1/2')).toHaveLength(2);
  });

  test('measures an edge once where another opposite is as long', () => {
    const bench = wordsOf(piecePlan(galley, pieceOfJob(galley, 'bench-seat'), ROOM)!);
    expect(bench.filter((each) => each === '54')).toHaveLength(1);
  });

  test('numbers its six edges, marks the inside corner and the radius, names cabinets and openings', () => {
    const words = wordsOf(plan);
    expect(words.slice(0, words.length)).toEqual(
      expect.arrayContaining([
        '1',
        '2',
        '3',
        '4',
        '5',
        '6',
        'inside corner 3',
        'R 1-1/2',
        'R1',
        'C2, sink',
        'Front',
      ]),
    );
    expect(words.some((each) => each.startsWith('Sink 26 x 14'))).toBe(true);
    expect(words.some((each) => each.startsWith('Tap, 1-3/8'))).toBe(true);
    expect(words.join(' ')).toContain('Dimensions in inches.');
  });

  test('turns upright dimensions to be read from the right', () => {
    const turned = plan.marks.flatMap((mark) =>
      mark.kind === 'text' && mark.words === '85-1/2' ? [mark.turnDeg] : [],
    );
    expect(turned).toEqual([-90]);
  });

  test('ends dimension lines in oblique strokes at 45 degrees, two a line', () => {
    const dimensions = plan.marks.filter((mark) => mark.kind === 'line' && mark.pen === 'dimension');
    const strokes = plan.marks.filter((mark) => {
      if (mark.kind !== 'line' || mark.pen !== 'visible') return false;
      const { from, to } = mark;
      return (
        Math.abs(Math.abs(to.x - from.x) - Math.abs(to.y - from.y)) < 1e-9 && Math.abs(to.x - from.x) < 0.1
      );
    });
    expect(strokes.length).toBeGreaterThan(20);
    // each dimension beside the outline has its line and two witness lines, each on the spot its line alone
    expect(strokes.length % 2).toBe(0);
    expect(dimensions.length).toBeGreaterThanOrEqual(strokes.length / 2);
  });

  test('is in millimetres for a metric job, where 3086 mm and its dimensions fit at 1 : 25', () => {
    const drawn = piecePlan(metric, pieceOfJob(metric, 'serving-counter'), ROOM)!;
    expect(drawn.scaleWords).toBe('1 : 25');
    expect(wordsOf(drawn)).toEqual(expect.arrayContaining(['3086', '2172', '1524', 'R 38']));
    expect(wordsOf(drawn).join(' ')).toContain('Dimensions in millimetres.');
  });

  test('has a scale bar that is true: 4 ft at 1/2 in = 1 ft is 2 in long', () => {
    const fields = plan.marks.flatMap((mark) =>
      mark.kind === 'area' && (mark.fill === 'ink' || mark.fill === 'paper') && mark.loops[0]!.length === 4
        ? [mark.loops[0]!]
        : [],
    );
    expect(wordsOf(plan)).toContain('4 ft');
    expect(fields).toHaveLength(4);
    expect(widthOf(fields.flat())).toBeCloseTo(2, 9);
  });

  test('shows which way a bench falls', () => {
    const bench = wordsOf(piecePlan(galley, pieceOfJob(galley, 'fish-bench'), ROOM)!);
    expect(bench).toContain('fall 1/8 in a foot');
    // 1/8 in a foot is 0.125/12, 10.4 mm a metre
    const same = wordsOf(piecePlan(metric, pieceOfJob(metric, 'fish-bench'), ROOM)!);
    expect(same).toContain('fall 10.4 mm a metre');
  });

  test('is none for a piece whose outline crosses itself', () => {
    const piece = pieceOfJob(galley, 'bar-ledge');
    const corners = [piece.corners[0]!, piece.corners[2]!, piece.corners[1]!, piece.corners[3]!];
    expect(piecePlan(galley, { ...piece, corners }, ROOM)).toBeNull();
  });

  test('still has room for its words with ten legs an inch apart', () => {
    const piece = pieceOfJob(galley, 'bench-seat');
    const legs = Array.from({ length: 10 }, (_, k) => ({
      kind: 'leg' as const,
      id: `leg-${k}`,
      name: `screw foot number ${k}`,
      firstDay: 0,
      lastDay: null,
      gapIn: 0,
      raisedIn: 0,
      stiffness: null,
      hold: { kind: 'resting' as const },
      centre: { xIn: 160 + k, yIn: 66 },
      widthIn: 0.5,
      depthIn: 0.5,
      angleDeg: 0,
    }));
    const words = wordsOf(piecePlan(galley, { ...piece, supports: legs }, ROOM)!);
    for (const { name } of legs) expect(words).toContain(name);
    expect(words.filter((each) => each === '1').length).toBeGreaterThanOrEqual(9);
  });
});

describe('sections through edges', () => {
  test('edges alike are drawn once: of the counter’s six, four are eased and two stand against a wall', () => {
    const words = wordsOf(edgeSections(galley, pieceOfJob(galley, 'serving-counter'), ROOM)).join(' ');
    expect(words).toContain('Edges 1, 2, 3 and 4: eased 1/8 in');
    expect(words).toContain('Edges 5 and 6: against a wall');
  });

  test('a profile that names its own usual size is the same edge: all four of the bench seat', () => {
    const bench = pieceOfJob(galley, 'bench-seat');
    const words = wordsOf(edgeSections(galley, bench, ROOM)).join(' ');
    expect(words).toContain('Edges 1, 2, 3 and 4: round-over 1/2 in');
  });

  // #3 bars are 3/8 in: long bars centred 15/16 in up and cross bars on them reach from 3/4 to 1-1/2 in of 2 in.
  test('cover is what is left over and under the steel: 1/2 in and 3/4 in on the fish bench', () => {
    const words = wordsOf(edgeSections(galley, pieceOfJob(galley, 'fish-bench'), ROOM));
    expect(words).toEqual(expect.arrayContaining(['1/2', '3/4', '2', '1']));
  });

  test('a drip groove is measured from the face: 3/4 in and 1/4 in wide on the bar ledge', () => {
    const words = wordsOf(edgeSections(galley, pieceOfJob(galley, 'bar-ledge'), ROOM));
    expect(words).toEqual(expect.arrayContaining(['3/4', '1/4', 'groove 1/4 in deep']));
  });
});

describe('the section at the longest overhang', () => {
  test('of the bar ledge shows 11 in past the wall and the 5-1/2 in that it bears on', () => {
    const section = overhangSection(galley, pieceOfJob(galley, 'bar-ledge'), ROOM)!;
    expect(wordsOf(section)).toEqual(
      expect.arrayContaining(['overhang 11', 'back span 5-1/2', 'edge 3', 'top 42 above the floor', '1']),
    );
    expect(section.words).toContain('edge 3 overhangs 11 in');
  });

  test('of the bar ledge cuts as many wires as run along it in the model', () => {
    const piece = pieceOfJob(galley, 'bar-ledge');
    const { marks } = overhangSection(galley, piece, ROOM)!;
    const along = steelRuns(piece).filter(({ from, to }) => Math.abs(to[0] - from[0]) > 50);
    expect(along.length).toBeGreaterThan(5);
    // leaders end in larger dots
    const cut = marks.filter((mark) => mark.kind === 'circle' && mark.radius < 0.017);
    expect(cut).toHaveLength(along.length);
  });

  test('of the foot ledge shows the brackets behind it', () => {
    const words = wordsOf(overhangSection(galley, pieceOfJob(galley, 'foot-ledge'), ROOM)!);
    expect(words.some((each) => each.endsWith(', behind'))).toBe(true);
  });

  test('is none where a bed carries the whole piece', () => {
    const piece = pieceOfJob(galley, 'gate-cap');
    const bed = {
      kind: 'full-bed' as const,
      id: 'bed',
      firstDay: 0,
      lastDay: null,
      gapIn: 0,
      raisedIn: 0,
      stiffness: null,
      hold: { kind: 'resting' as const },
      corners: null,
    };
    expect(overhangSection(galley, { ...piece, supports: [bed] }, ROOM)).toBeNull();
  });
});
