import { describe, expect, test } from 'vitest';
import { traceWord } from '../../../src-core/trace';

describe('a trace as one word', () => {
  test('names the piece alone, and an edge by the number that a person counts', () => {
    expect(traceWord({ pieceId: 'counter', part: { kind: 'piece' } })).toBe('counter');
    expect(traceWord({ pieceId: 'counter', part: { kind: 'edge', index: 0 } })).toBe('counter/edge/1');
    expect(traceWord({ pieceId: 'counter', part: { kind: 'cutout', id: 'sink' } })).toBe(
      'counter/cutout/sink',
    );
  });
});
