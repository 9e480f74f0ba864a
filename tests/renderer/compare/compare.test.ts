import { describe, expect, it } from 'vitest';
import { compareRows, versionWords, weightDifference } from '../../../src-renderer/compare/compare-rows';
import type { Choices } from '../../../src-renderer/compare/instead';
import {
  choose,
  drawnProfile,
  insteadArgs,
  insteadJob,
  insteadOf,
  isAsDrawn,
} from '../../../src-renderer/compare/instead';
import { sectionDrawings, shownEdge } from '../../../src-renderer/compare/section-drawing';
import { pieceFacts } from '../../../src-renderer/pieces/piece-facts';
import { sampleCheck, smallRead } from '../verdict/sample-checks';

const job = smallRead();
const counter = job.pieces[0]!;
const ledge = job.pieces[1]!;

describe('the other version of a piece', () => {
  it('keeps its soffit: 2 in to 2-1/2 in brings the top up from 36 in to 36-1/2 in', () => {
    const thicker = insteadOf(counter, { thicknessIn: 2.5 });
    expect(thicker.thicknessIn).toBe(2.5);
    expect(thicker.topElevationIn).toBe(counter.topElevationIn + 0.5);
    expect(thicker.topElevationIn - thicker.thicknessIn).toBe(counter.topElevationIn - counter.thicknessIn);
  });

  it('keeps the cover below of steel in the lower half, and the depth of steel in the upper', () => {
    // mesh 1 in and bars 0.7 in below the top of a 2 in slab
    const [mesh, bars] = insteadOf(counter, { thicknessIn: 3 }).reinforcement;
    expect(mesh).toMatchObject({ depthIn: 2 });
    expect(bars).toMatchObject({ depthIn: 0.7 });
  });

  it('puts a profile on every free edge and leaves the others alone', () => {
    const { edges } = insteadOf(counter, { profile: 'bullnose' });
    expect(edges!.map((edge) => (edge.kind === 'free' ? edge.profile.kind : edge.kind))).toEqual([
      'bullnose',
      'bullnose',
      'wall',
      'butted',
    ]);
    expect(edges![1]).toMatchObject({ dripGroove: { widthIn: 0.25 } });
    expect(insteadOf(ledge, { profile: 'cove' }).edges).toHaveLength(4);
  });

  it('is the drawn one where nothing is chosen', () => {
    expect(insteadOf(counter, {})).toEqual(counter);
  });

  it('alters neither the drawing nor its pieces', () => {
    const before = structuredClone(counter);
    insteadOf(counter, { thicknessIn: 3, profile: 'ogee', finish: 'honed', colour: null });
    expect(counter).toEqual(before);
  });
});

describe('choosing', () => {
  it('takes a choice back where it is what is drawn', () => {
    const chosen = choose(counter, {}, { thicknessIn: 2.5, finish: 'honed' });
    expect(chosen).toEqual({ thicknessIn: 2.5, finish: 'honed' });
    const back = choose(counter, chosen, { thicknessIn: 2, finish: 'smooth', colour: null });
    expect(isAsDrawn(back)).toBe(true);
    expect(choose(ledge, {}, { profile: 'eased' })).toEqual({});
  });

  it('names one profile only where all free edges have it', () => {
    expect(drawnProfile(ledge)).toBe('eased');
    expect(drawnProfile(counter)).toBeNull();
    expect(drawnProfile(insteadOf(counter, { profile: 'chamfer' }))).toBe('chamfer');
  });
});

describe('the job with the other version in it', () => {
  it('is one edit of the drawing', () => {
    const made = insteadJob(job, ledge, { thicknessIn: 2, finish: 'honed' });
    expect(made).toMatchObject({ ok: true, job: { pieces: [{}, { thicknessIn: 2, finish: 'honed' }] } });
    expect(insteadArgs(job, ledge, {}).path).toEqual(['pieces', 1]);
  });

  it('is refused in a sentence where a mesh 1 in above the soffit would lie above a 1/2 in slab', () => {
    const made = insteadJob(job, counter, { thicknessIn: 0.5 });
    expect(made).toMatchObject({ ok: false, sentences: [expect.stringContaining('Steel "mesh"')] });
  });

  it('is refused for its thickness where no slab is so thin or so thick, whatever its steel', () => {
    const sentences = (thicknessIn: number) => {
      const made = insteadJob(job, counter, { thicknessIn });
      return made.ok ? [] : made.sentences;
    };
    expect(sentences(-5)).toEqual([expect.stringContaining('must be at least 1/4 in; it is -5 in.')]);
    expect(sentences(40)).toEqual([expect.stringContaining('must be at most 24 in; it is 40 in.')]);
  });

  it('is refused where a mesh just under the top would stick out of it', () => {
    const made = insteadJob(job, counter, { thicknessIn: 1.04, profile: 'eased' });
    expect(made).toMatchObject({ ok: false, sentences: [expect.stringContaining('stick out of the top')] });
  });
});

describe('two versions side by side', () => {
  const version = (choices: Choices, ratio: number | null) => {
    const piece = insteadOf(ledge, choices);
    const verdict = { level: 'holds' as const, words: 'Holds', why: '', flags: [] };
    const result = ratio === null ? null : { checks: [sampleCheck({ ratio })], verdict };
    return { piece, facts: pieceFacts(piece, 145), result };
  };

  it('name what differs', () => {
    const rows = compareRows(
      version({}, 0.8),
      version({ thicknessIn: 2, colour: { pigment: 'red oxide', pigmentRatio: 0.035 } }, 0.55),
      'imperial',
    );
    const different = rows.filter(({ differs }) => differs);
    expect(different.map(({ label, drawn, instead }) => [label, drawn, instead])).toEqual([
      ['Thickness', '1-1/2 in', '2 in'],
      ['Pigment', 'none', 'red oxide, 3.5 % of the cement'],
      // 60 x 16 in at 145 pcf: 120.8 lb and 161.1 lb
      ['Weight', '121 lb', '161 lb'],
      ['Worst check', 'Bending, on concrete alone 0.80', 'Bending, on concrete alone 0.55'],
    ]);
  });

  it('say that an answer is not there yet', () => {
    const rows = compareRows(version({}, 0.8), version({ thicknessIn: 2 }, null), 'imperial');
    expect(rows.at(-1)!.instead).toBe('not worked out yet');
  });

  it('cost what their slabs weigh more, with every copy', () => {
    const [drawn, thicker] = [version({}, null), version({ thicknessIn: 2 }, null)];
    expect(weightDifference(drawn, thicker, 'imperial')).toBe('40.3 lb heavier');
    const three = { ...thicker, piece: { ...thicker.piece, copies: 3 } };
    expect(weightDifference(drawn, three, 'imperial')).toBe('121 lb heavier, all 3 together');
  });

  it('say which of them is still being worked out', () => {
    const fine = { quality: 'fine' as const, isStale: false };
    expect(versionWords('checking', fine)).toBe('Checking the other version.');
    expect(versionWords('answered', fine)).toBe('');
    expect(versionWords('answered', { ...fine, isStale: true })).toContain('as drawn is still');
  });
});

describe('sections through the edge', () => {
  const box = { widthPx: 100, heightPx: 50 };

  it('are drawn to one scale with their soffits level', () => {
    const square = insteadOf(ledge, { profile: 'square' });
    // 3 in is the tallest and 6 in the length shown: 100 / 6 px an inch
    const [thin, thick] = sectionDrawings([square, { ...square, thicknessIn: 3 }], box);
    expect(thin!.ink).toBe('M0 50L100 50L100 25L0 25');
    expect(thick!.ink).toBe('M0 50L100 50L100 0L0 0');
  });

  it('close the concrete where the slab runs on, but not its skin', () => {
    const [drawing] = sectionDrawings([ledge], box);
    expect(drawing!.fill).toBe(`${drawing!.ink}Z`);
  });

  it('are through the longest free edge, and none where no edge is free', () => {
    // the front edge of the counter, 96 in long, has a profile of its own
    expect(shownEdge(counter)).toMatchObject({ profile: { kind: 'own' } });
    const walled = { ...ledge, edges: ledge.corners.map(() => ({ kind: 'wall' as const, gapIn: 0.125 })) };
    expect(sectionDrawings([walled], box)).toEqual([null]);
  });
});
