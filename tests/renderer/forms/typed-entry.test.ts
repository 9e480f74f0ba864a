import { describe, expect, it } from 'vitest';
import { lengthWriting } from '../../../src-renderer/forms/fields/length-writing';
import { orNone } from '../../../src-renderer/forms/fields/optional-writing';
import { shows, stepped, taken, typed } from '../../../src-renderer/forms/fields/typed-entry';

const INCHES = lengthWriting({ system: 'imperial' });
const MILLIMETRES = lengthWriting({ system: 'metric' });

/** A drawing that takes any length, and remembers it. */
function drawing(refusal: string | null = null) {
  const taken: (number | null)[] = [];
  const commit = (value: number | null) => {
    if (refusal === null) taken.push(value);
    return refusal;
  };
  return { taken, commit };
}

describe('a length being typed', () => {
  it.each([
    ['25-1/2', 25.5],
    [`2' 1 1/2"`, 25.5],
    ['648 mm', 648 / 25.4],
    ['64.8cm', 648 / 25.4],
    ['=24+1.5', 25.5],
  ])('takes %s as %d in', (text, valueIn) => {
    const { taken: into, commit } = drawing();
    const after = taken(typed(shows(20), text), INCHES, commit);
    expect(into).toHaveLength(1);
    expect(into[0]).toBeCloseTo(valueIn, 9);
    expect(after).toEqual(shows(into[0]));
  });

  it('reads a bare 648 as millimetres in a metric job', () => {
    const { taken: into, commit } = drawing();
    taken(typed(shows(20), '648'), MILLIMETRES, commit);
    expect(into[0]).toBeCloseTo(648 / 25.4, 9);
  });

  it('keeps nonsense as it was typed, says why, and leaves the drawing alone', () => {
    const { taken: into, commit } = drawing();
    const after = taken(typed(shows(20), '25 elbows'), INCHES, commit);
    expect(into).toEqual([]);
    expect(after.text).toBe('25 elbows');
    expect(after.sentence).toContain('elbows');
  });

  it('keeps a length that the job refuses, with the sentence of the job', () => {
    const { taken: into, commit } = drawing('The outline crosses itself.');
    const after = taken(typed(shows(20), '30'), INCHES, commit);
    expect(into).toEqual([]);
    expect(after).toEqual({ over: 20, text: '30', sentence: 'The outline crosses itself.' });
  });

  it('takes the complaint back while the text is mended', () => {
    const refused = taken(typed(shows(20), '30'), INCHES, () => 'No.');
    expect(typed(refused, '29').sentence).toBeNull();
  });

  it('does not round 9 1/3 in when only looked at and left', () => {
    const { taken: into, commit } = drawing();
    const value = 28 / 3;
    taken(typed(shows(value), INCHES.print(value)), INCHES, commit);
    expect(into).toEqual([]);
  });

  it('steps an eighth up and down', () => {
    const { taken: into, commit } = drawing();
    stepped(shows(25.5), INCHES, 1, commit);
    stepped(shows(25.5), INCHES, -1, commit);
    expect(into).toEqual([25.625, 25.375]);
  });

  it('steps 1 mm in a metric job', () => {
    const { taken: into, commit } = drawing();
    stepped(shows(100 / 25.4), MILLIMETRES, 1, commit);
    expect(into[0]).toBeCloseTo(101 / 25.4, 8);
  });

  it('steps from what is typed, and complains of what cannot be read', () => {
    const { taken: into, commit } = drawing();
    stepped(typed(shows(20), '30'), INCHES, 1, commit);
    expect(into).toEqual([30.125]);
    expect(stepped(typed(shows(20), 'x'), INCHES, 1, commit).sentence).not.toBeNull();
  });

  it('stops stepping at its least length', () => {
    const { taken: into, commit } = drawing();
    stepped(shows(0.25), lengthWriting({ system: 'imperial', minIn: 0.25 }), -1, commit);
    expect(into).toEqual([]);
  });

  it('may be emptied where there may be none, and nowhere else', () => {
    const { taken: into, commit } = drawing();
    taken(typed(shows<number | null>(3), ' '), orNone(INCHES), commit);
    expect(into).toEqual([null]);
    expect(taken(typed(shows(3), ' '), INCHES, commit).sentence).not.toBeNull();
  });
});
