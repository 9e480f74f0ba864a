import { describe, expect, it } from 'vitest';
import { answerWords, progressWords } from '../../../src-renderer/verdict/answer-words';
import { flagWords } from '../../../src-renderer/verdict/level-words';
import { pieceLine } from '../../../src-renderer/verdict/piece-line';

const answer = (level: 'holds' | 'change') => ({
  quality: 'fine' as const,
  isSearching: false,
  isStale: false,
  result: { verdict: { level } },
});

describe('what is said while an answer is on its way', () => {
  it('is nothing once the answer is whole', () => {
    expect(answerWords(answer('change'))).toBe('');
  });

  it('names the first thing that is missing', () => {
    expect(answerWords(undefined)).toBe('Working out whether it stands.');
    expect(answerWords({ ...answer('holds'), quality: 'coarse', isStale: true })).toBe(
      'Changed since; checking again.',
    );
    expect(answerWords({ ...answer('holds'), quality: 'coarse', isSearching: true })).toBe(
      'A quick look; the full answer follows.',
    );
  });

  it('is about changes only where the piece fails', () => {
    expect(answerWords({ ...answer('change'), isSearching: true })).toBe('Looking for changes that pass.');
    expect(answerWords({ ...answer('holds'), isSearching: true })).toBe('Looking at the days before it.');
  });

  it('counts the pieces of the job from one', () => {
    expect(progressWords({ done: 2, total: 8, words: 'Bench seat' })).toBe('Checking Bench seat, 3 of 8.');
    expect(progressWords({ done: 8, total: 8, words: 'done' })).toBe('');
    expect(progressWords(null)).toBe('');
  });
});

describe('flags in words', () => {
  it('stand gravest first', () => {
    expect(flagWords(['corbel', 'tips'])).toEqual([
      'It can turn over as drawn.',
      'A corbel is among the changes that pass.',
    ]);
  });

  it('say how near the limit is, and then not also that it is close', () => {
    expect(flagWords(['near-limit', 'amber'])).toEqual(['Within 3 % of a limit.']);
    expect(flagWords(['amber'])).toEqual(['Close to a limit.']);
  });
});

describe('the line about the slab', () => {
  it('has thickness, area and weight, in inches or millimetres', () => {
    const slab = { thicknessIn: 1.5, areaFt2: 17, weightLb: 308.1, copies: 1 };
    expect(pieceLine(slab, 'imperial')).toBe('1-1/2 in thick, 17 sq ft, 308 lb');
    expect(pieceLine(slab, 'metric')).toBe('38 mm thick, 1.58 m2, 140 kg');
  });

  it('counts copies, and leaves out what was not measured', () => {
    expect(pieceLine({ thicknessIn: 1.5, areaFt2: 2.8, weightLb: 50.3, copies: 3 }, 'imperial')).toBe(
      '1-1/2 in thick, 2.8 sq ft, 50.3 lb each, 3 of them',
    );
    expect(pieceLine({ thicknessIn: 2, areaFt2: 0, weightLb: 0, copies: 1 }, 'imperial')).toBe('2 in thick');
  });
});
