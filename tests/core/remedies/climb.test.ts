import { describe, expect, test } from 'vitest';
import type { Check } from '../../../src-core/checks';
import { climbLadder } from '../../../src-core/remedies/climb';
import type { Ladder, Step } from '../../../src-core/remedies/step';
import { ladder } from '../../../src-core/remedies/step';
import type { Trial } from '../../../src-core/remedies/trial';
import { LEDGE_E1 } from '../../support/pieces';

const piece = LEDGE_E1().pieces[0]!;

const stepsOf = (names: readonly string[]): Step[] =>
  names.map((shortTitle) => ({
    kind: 'thickness',
    piece,
    ratedSupportIds: [],
    words: () => ({ title: shortTitle, parts: 1, partsWords: [] }),
    givesLess: false,
    shortTitle,
  }));

const failure = (ratio: number): Check => ({
  id: 'bending-plain',
  title: 'Bending',
  pieceId: 'piece',
  where: { kind: 'piece' },
  demand: { value: ratio, unit: '' },
  capacity: { value: 1, unit: '' },
  ratio,
  level: 'change',
  words: 'It will want to crack.',
  needs: ['thickness'],
  workings: [],
  cautions: [],
});

/** Tries steps by name: those listed pass, the others fail by the given ratio. */
function climbing(steps: Ladder, ratioOf: (name: string) => number) {
  const asked: string[] = [];
  const climb = climbLadder(steps, (step): Trial => {
    asked.push(step.shortTitle);
    const ratio = ratioOf(step.shortTitle);
    const failing = ratio > 1 ? [failure(ratio)] : [];
    return { piece, analysis: null, checks: failing, failing };
  });
  return { asked, passing: climb.passing?.first.step.shortTitle ?? null, climb };
}

const nine = stepsOf(['2', '2.5', '3', '3.5', '4', '4.5', '5', '5.5', '6']);
const alone = (run: readonly Step[]) => ladder('thickness', [[run]], 1, 'none');

describe('a ladder of nine thicknesses', () => {
  test('finds the smallest that passes, wherever it stands, in at most five trials', () => {
    for (const smallest of nine) {
      const least = Number(smallest.shortTitle);
      const { passing, asked } = climbing(alone(nine), (name) => (Number(name) >= least ? 0.9 : 1.1));
      expect(passing).toBe(smallest.shortTitle);
      expect(asked.length).toBeLessThanOrEqual(5);
    }
  });

  test('still finds 3 in where the slab is too heavy from 5 in on', () => {
    const { passing } = climbing(alone(nine), (name) => (Number(name) >= 3 && Number(name) < 5 ? 0.9 : 1.2));
    expect(passing).toBe('3');
  });

  test('gives up after two trials where nothing passes, and names the nearest', () => {
    const { passing, asked, climb } = climbing(alone(nine), (name) => 10 / Number(name));
    expect(passing).toBeNull();
    expect(asked).toEqual(['6', '4']);
    expect(climb.nearest?.step.shortTitle).toBe('6');
  });

  test('names the smaller of two misses that are as good as equal', () => {
    const { climb } = climbing(alone(nine), (name) => 2 - Number(name) / 1000);
    expect(climb.nearest?.step.shortTitle).toBe('4');
  });
});

describe('runs that grow stronger', () => {
  const wide = stepsOf(['48 limp', '48 middle', '48 stiff']);
  const closer = stepsOf(['32 limp', '32 middle', '32 stiff']);
  const close = stepsOf(['16 limp', '16 middle', '16 stiff']);
  const rows = ladder('corbel', [[wide, closer, close]], 3, 'none');
  const passingAre =
    (...names: string[]) =>
    (name: string) =>
      names.includes(name) ? 0.5 : 1.5;

  test('give the widest spacing that passes, with the limpest arm that passes there', () => {
    const passes = passingAre('32 stiff', '32 middle', '16 limp', '16 middle', '16 stiff');
    expect(climbing(rows, passes).passing).toBe('32 middle');
  });

  test('are left at once where the closest spacing fails', () => {
    expect(climbing(rows, () => 1.5).asked).toEqual(['16 stiff', '16 middle']);
  });

  test('do not try arms at wide spacing that are too limp at the closest', () => {
    const { asked } = climbing(rows, passingAre('48 stiff', '32 stiff', '16 stiff'));
    expect(asked).not.toContain('48 limp');
    expect(asked).not.toContain('48 middle');
  });
});

describe('alternatives', () => {
  test('are tried in turn: the second only where the first fails', () => {
    const first = stepsOf(['mesh']);
    const second = stepsOf(['bars']);
    const both = ladder('steel', [[first], [second]], 1, 'none');
    expect(climbing(both, () => 0.5).asked).toEqual(['mesh']);
    expect(climbing(both, (name) => (name === 'bars' ? 0.5 : 2)).passing).toBe('bars');
  });
});
