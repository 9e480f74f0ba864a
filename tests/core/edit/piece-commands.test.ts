import { describe, expect, test } from 'vitest';
import {
  addPiece,
  addStarter,
  drawPiece,
  duplicatePiece,
  movePiece,
  newId,
  removePiece,
  turnPiece,
} from '../../../src-core/edit';
import { done, exampleJob, pairs, pieceOf, refusal, sampleJob } from './editing';

const square = [
  { xIn: 0, yIn: 90 },
  { xIn: 20, yIn: 90 },
  { xIn: 20, yIn: 110 },
  { xIn: 0, yIn: 110 },
];

describe('ids', () => {
  test('are the stem where nothing has it, else the next free number', () => {
    const job = sampleJob();
    expect(newId(job, 'hob')).toBe('hob');
    expect(newId(job, 'sink')).toBe('sink-2');
    expect(newId(job, 'pier-left')).toBe('pier-left-2');
    expect(newId(exampleJob('hearth'), 'pier-1')).toBe('pier-3');
    expect(newId(job, 'Gas hob, 4 rings')).toBe('Gas-hob-4-rings');
    expect(newId(job, '!')).toBe('part');
  });
});

describe('a new piece', () => {
  test('takes an id and the first mix where its draft leaves them out', () => {
    const draft = { name: 'Shelf', use: 'other', corners: square, thicknessIn: 1 };
    const { job, madeId, title } = done(addPiece.perform(sampleJob(), { piece: draft }));
    expect([madeId, title, pieceOf(job, 'piece').mixId]).toEqual(['piece', 'Add piece', 'mix']);
  });

  test('with an id that is taken, or that is no piece, is refused', () => {
    const draft = { id: 'ledge', name: 'Shelf', use: 'other', corners: square, thicknessIn: 1 };
    expect(refusal(addPiece.perform(sampleJob(), { piece: draft })).code).toBe('id-repeated');
    expect(refusal(addPiece.perform(sampleJob(), { piece: null })).code).toBe('wrong-type');
    expect(refusal(addPiece.perform(sampleJob(), { piece: {} })).code).toBe('missing-field');
  });

  test('drawn corner by corner is a counter 1-1/2 in thick with nothing under it', () => {
    const { job, madeId } = done(drawPiece.perform(sampleJob(), { corners: square }));
    const piece = pieceOf(job, madeId!);
    expect(piece).toMatchObject({
      name: 'Piece',
      use: 'counter',
      thicknessIn: 1.5,
      supports: [],
      mixId: 'mix',
    });
    expect(madeId).toBe('counter-2');
    expect(refusal(drawPiece.perform(job, { corners: square.slice(0, 2) })).code).toBe('wrong-length');
  });

  test('from a starter lies with its front left corner where it is put, twice over', () => {
    const once = done(addStarter.perform(sampleJob(), { starterId: 'bench', at: { xIn: 200, yIn: 10 } }));
    const twice = done(addStarter.perform(once.job, { starterId: 'bench', at: { xIn: 200, yIn: 60 } }));
    expect([once.madeId, twice.madeId]).toEqual(['bench', 'bench-2']);
    expect(pieceOf(twice.job, 'bench-2').corners[0]).toMatchObject({ xIn: 200, yIn: 60 });
    expect(pieceOf(twice.job, 'bench')).toBe(pieceOf(once.job, 'bench'));
  });
});

describe('a piece taken out', () => {
  test('frees the edges that butted against it', () => {
    const { job } = done(removePiece.perform(sampleJob(), { pieceId: 'ledge' }));
    expect(pieceOf(job, 'counter').edges![3]).toMatchObject({ kind: 'free', profile: { kind: 'eased' } });
  });

  test('takes its falsework, its supports in the swap and steps that have nothing left to do along', () => {
    const { job, title } = done(removePiece.perform(sampleJob(), { pieceId: 'counter' }));
    expect(title).toBe('Remove piece');
    expect([job.pieces.map(({ id }) => id), job.falsework.sections, job.swap.steps]).toEqual([
      ['ledge'],
      [],
      [],
    ]);
  });

  test('in the Boathouse galley leaves the other pieces the same objects and the note of the last swap step', () => {
    const before = exampleJob('boathouse-galley');
    const { job } = done(removePiece.perform(before, { pieceId: 'serving-counter' }));
    expect(job.pieces[0]).toBe(before.pieces[1]);
    expect(job.swap.steps).toEqual([{ ...before.swap.steps[6]!, supportsOut: [] }]);
  });

  test('is refused for the last one, and for one that is not there', () => {
    const { job } = done(removePiece.perform(sampleJob(), { pieceId: 'counter' }));
    expect(refusal(removePiece.perform(job, { pieceId: 'ledge' })).sentence).toBe(
      '"Ledge" is the only piece; add another before it is taken out.',
    );
    expect(refusal(removePiece.perform(job, { pieceId: 'counter' })).sentence).toBe(
      'The job has no piece "counter".',
    );
  });
});

describe('a copy of a piece', () => {
  test('lies 12 in to the right with a name and ids of its own, and butts against nothing', () => {
    const before = sampleJob();
    const { job, madeId } = done(duplicatePiece.perform(before, { pieceId: 'counter' }));
    const copy = pieceOf(job, madeId!);
    expect([copy.id, copy.name, job.pieces[1]]).toEqual(['counter-2', 'Counter 2', copy]);
    expect(pairs(copy.corners)).toEqual([
      [108, 0],
      [204, 0],
      [204, 24],
      [108, 24],
    ]);
    expect(copy.supports.map(({ id }) => id)).toEqual(['pier-left-2', 'pier-right-2', 'leg-2']);
    expect(copy.cutouts.map(({ id }) => id)).toEqual(['sink-2', 'tap-2']);
    expect(copy.edges!.map(({ kind }) => kind)).toEqual(['free', 'free', 'wall', 'free']);
    expect(job.pieces[0]).toBe(before.pieces[0]);
    expect(job.falsework.sections.length).toBe(1);
  });
});

describe('a piece moved or turned', () => {
  test('takes openings, joints, steel, supports, loads and falsework 5 in to the right and 2 in back with it', () => {
    const before = sampleJob();
    const edited = done(movePiece.perform(before, { pieceId: 'counter', dxIn: 5, dyIn: 2 }));
    expect([edited.title, edited.mergeKey]).toEqual(['Move piece', 'move-piece:counter']);
    const counter = pieceOf(edited.job, 'counter');
    expect(pairs(counter.corners)).toEqual([
      [5, 2],
      [101, 2],
      [101, 26],
      [5, 26],
    ]);
    expect(counter.cutouts.map(({ shape }) => shape)).toMatchObject([
      { centre: { xIn: 53, yIn: 14 } },
      { centre: { xIn: 53, yIn: 23.5 } },
    ]);
    expect(counter.joints[0]).toMatchObject({ from: { xIn: 75, yIn: 2 }, to: { xIn: 75, yIn: 26 } });
    expect(counter.reinforcement[0]).toBe(before.pieces[0]!.reinforcement[0]);
    expect(counter.reinforcement[1]).toMatchObject({ corners: [{ xIn: 6, yIn: 3 }, {}, {}, {}] });
    expect(counter.supports).toMatchObject([
      { footprint: { centre: { xIn: 13, yIn: 14 } } },
      { footprint: { centre: { xIn: 93, yIn: 14 } } },
      { centre: { xIn: 53, yIn: 4 } },
    ]);
    expect(counter.loads.fixed[0]!.centre).toEqual({ xIn: 25, yIn: 14 });
    expect(pairs(edited.job.falsework.sections[0]!.corners)[2]).toEqual([101, 26]);
    expect(edited.job.pieces[1]).toBe(before.pieces[1]);
  });

  test('a ledge takes its wall and the roots of its arms with it', () => {
    const { job } = done(movePiece.perform(sampleJob(), { pieceId: 'ledge', dxIn: -1, dyIn: 10 }));
    expect(pieceOf(job, 'ledge').supports).toMatchObject([
      { from: { xIn: -1, yIn: 54 }, to: { xIn: 59, yIn: 54 } },
      {
        roots: [
          { xIn: 19, yIn: 56.75 },
          { xIn: 39, yIn: 56.75 },
        ],
      },
    ]);
  });

  test('moved a tenth of an inch ten times and back it is the very piece again, without dust in its numbers', () => {
    let job = sampleJob();
    const move = (dxIn: number) => {
      job = done(movePiece.perform(job, { pieceId: 'counter', dxIn, dyIn: 0 })).job;
    };
    for (let i = 0; i < 10; i++) move(0.1);
    expect(pieceOf(job, 'counter').corners[0]!.xIn).toBe(1);
    for (let i = 0; i < 10; i++) move(-0.1);
    expect(job).toEqual(sampleJob());
  });

  test('beyond 200 ft it is refused', () => {
    const problem = refusal(movePiece.perform(sampleJob(), { pieceId: 'ledge', dxIn: 2400, dyIn: 0 }));
    expect(problem.code).toBe('out-of-range');
  });

  test('a quarter turn swaps 60 x 16 in for 16 x 60 in about the same middle, and arms turn with it', () => {
    const { job, title } = done(turnPiece.perform(sampleJob(), { pieceId: 'ledge' }));
    const ledge = pieceOf(job, 'ledge');
    expect(title).toBe('Turn piece');
    expect(pairs(ledge.corners)).toEqual([
      [38, 18],
      [38, 78],
      [22, 78],
      [22, 18],
    ]);
    expect(ledge.supports[1]).toMatchObject({ directionDeg: 180 });
  });

  test.each(['counter', 'ledge'])('four quarter turns of the %s give the very same job', (pieceId) => {
    let job = sampleJob();
    for (let i = 0; i < 4; i++) job = done(turnPiece.perform(job, { pieceId })).job;
    expect(job).toEqual(sampleJob());
  });

  test('every piece of the Boathouse galley can be moved and turned', () => {
    for (const { id } of exampleJob('boathouse-galley').pieces) {
      const before = exampleJob('boathouse-galley');
      const turned = done(turnPiece.perform(before, { pieceId: id })).job;
      done(movePiece.perform(turned, { pieceId: id, dxIn: 33.3, dyIn: -7.7 }));
    }
  });
});
