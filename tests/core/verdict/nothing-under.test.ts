import { expect, test } from 'vitest';
import { starterJob } from '../../../src-core/starters';
import { checkOnePiece } from '../../../src-core/verdict';

test('a slab with nothing drawn under it needs support, and no place for one is made up', () => {
  const job = starterJob('hearth');
  const bare = { ...job.pieces[0]!, supports: [] };
  const { result, analysis } = checkOnePiece({ ...job, pieces: [bare] }, bare, { changes: 'all' });
  expect(analysis).toBeNull();
  expect(result.verdict).toMatchObject({ level: 'change', words: 'Needs support' });
  expect(result.changes).toEqual([]);
});
