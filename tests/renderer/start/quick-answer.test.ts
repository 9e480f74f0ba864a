import { describe, expect, it } from 'vitest';
import { DEFAULT_QUICK_FIELDS, quickCheckJob } from '../../../src-core/starters';
import { checkJob } from '../../../src-core/verdict';
import { quickAnswer } from '../../../src-renderer/start/quick-answer';

function resultOf(fields: Partial<typeof DEFAULT_QUICK_FIELDS>) {
  const made = quickCheckJob({ ...DEFAULT_QUICK_FIELDS, ...fields });
  if (!made.ok) throw new Error(made.problems.map(({ sentence }) => sentence).join(' '));
  return checkJob(made.job).pieces[0]!;
}

describe('quickAnswer', () => {
  it('says of a loose ledge 11 in past a 5-1/2 in wall what it needs and the smallest change that passes', () => {
    const result = resultOf({});
    const answer = quickAnswer(result);
    expect(answer.level).toBe('change');
    expect(answer.words).toMatch(/^Needs /);
    expect(answer.change).toBe(result.changes[0]!.title);
    expect(answer.why.length).toBeGreaterThan(20);
  });

  it('asks for no change where a ledge 2 in out holds', () => {
    const answer = quickAnswer(resultOf({ overhangIn: 2, depthIn: 7.5 }));
    expect(answer).toMatchObject({ level: 'holds', words: 'Holds', change: null });
  });
});
