import { describe, expect, test } from 'vitest';
import { designFalsework, useFalsework } from '../../../src-core/falsework';
import { done, exampleJob, pieceOf, refusal } from '../edit/editing';
import { cabinet, formJob, WALL_BEHIND } from './form-jobs';

const job = formJob(72, 25.5, {
  edges: WALL_BEHIND,
  supports: [cabinet('b1', 0, 36, 30), cabinet('b2', 36, 36, 33)],
});
const design = designFalsework(job, 'counter');

describe('falsework drawn in the job', () => {
  test('puts 2 sections with 4 legs and 2 ledgers in beside the 2 cabinets, as one named step', () => {
    const edited = done(useFalsework.perform(job, { design }));
    expect(edited.title).toBe('Draw the falsework under Counter');
    expect(edited.mergeKey).toBeNull();
    expect(edited.job.falsework.sections.map(({ id }) => id)).toEqual(['counter-fw-1', 'counter-fw-2']);
    const kinds = pieceOf(edited.job, 'counter').supports.map(({ kind }) => kind);
    expect(kinds.filter((kind) => kind === 'leg')).toHaveLength(4);
    expect(kinds.filter((kind) => kind === 'ledger')).toHaveLength(2);
    expect(kinds.filter((kind) => kind === 'cabinet')).toHaveLength(2);
  });

  test('drawn twice, or designed again from what was drawn, changes nothing more', () => {
    const first = done(useFalsework.perform(job, { design }));
    expect(done(useFalsework.perform(first.job, { design })).job).toBe(first.job);
    const again = designFalsework(first.job, 'counter');
    expect(done(useFalsework.perform(first.job, { design: again })).job).toBe(first.job);
  });

  test('leaves every other piece of the galley the very same', () => {
    const galley = exampleJob('boathouse-galley');
    const edited = done(useFalsework.perform(galley, { design: designFalsework(galley, 'bar-ledge') }));
    const changed = edited.job.pieces.filter((piece, i) => piece !== galley.pieces[i]);
    expect(changed.map(({ id }) => id)).toEqual(['bar-ledge']);
  });

  test('is refused for a piece that is gone', () => {
    expect(refusal(useFalsework.perform(formJob(72, 25.5, { id: 'bench' }), { design }))).toMatchObject({
      path: 'pieces',
      sentence: 'The job no longer has "Counter".',
    });
  });

  test('is refused where there is no section to draw', () => {
    const none = { ...design, sections: [] };
    expect(refusal(useFalsework.perform(job, { design: none })).sentence).toContain(
      'no section of falsework',
    );
  });

  test('is refused where a section no longer fits the job', () => {
    const [first] = design.sections;
    const reversed = {
      ...design,
      sections: [{ ...first!, section: { ...first!.section, firstDay: 40, lastDay: 3 } }],
    };
    expect(useFalsework.perform(job, { design: reversed }).ok).toBe(false);
  });
});
