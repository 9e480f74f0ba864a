import { describe, expect, it } from 'vitest';
import { wholeFigures } from '../../../src-core/units';

const whole = (text: string) => wholeFigures(text).flatMap((run) => (run.isWhole ? [run.text] : []));

describe('figures that stay whole', () => {
  it.each([
    ['Loose on a 5-1/2 in wall with 11 in out, it turns over.', ['5-1/2 in', '11 in']],
    ['A gap of 1/2 in and a sag of 0.0552 in.', ['1/2 in', '0.0552 in']],
    [`It is 2' 1-1/2" long.`, [`2' 1-1/2"`]],
    ['It carries 132.6 lbf-in/in of 335.4 psi.', ['132.6 lbf-in/in', '335.4 psi']],
    ['1,500 lb on 2.3 sq ft at 68 °F, 35 % of the limit', ['1,500 lb', '2.3 sq ft', '68 °F', '35 %']],
    ['From -5 in to 432 mm, 28 days on.', ['-5 in', '432 mm', '28 days']],
  ])('keeps every figure of "%s" with its unit', (text, kept) => {
    expect(whole(text)).toEqual(kept);
  });

  it.each([
    'ACI 318-19 24.2.3.5',
    '4x4-W1.4 welded mesh',
    'Day 28 of 40, and 3 indoors',
    'The first day is 2027-04-30.',
    'Nothing to keep here.',
  ])('leaves "%s" to be broken as any text', (text) => {
    expect(wholeFigures(text)).toEqual([{ at: 0, text, isWhole: false }]);
  });

  it('changes no letter, and says where each run begins', () => {
    const text = '17-1/2 in deep and 96 in long, 1-1/2 in thick';
    const runs = wholeFigures(text);
    expect(runs.map((run) => run.text).join('')).toBe(text);
    for (const run of runs) expect(text.startsWith(run.text, run.at)).toBe(true);
    expect(wholeFigures('')).toEqual([]);
  });
});
