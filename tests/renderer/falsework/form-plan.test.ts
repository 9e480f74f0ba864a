import { describe, expect, test } from 'vitest';
import { designFalsework } from '../../../src-core/falsework';
import { drawnKinds, formPlan, keyRows } from '../../../src-renderer/falsework/form-plan';
import { formJob } from '../../core/falsework/form-jobs';
import { EXAMPLE_DESIGNS, wallCounter } from './form-designs';

const { design, piece } = wallCounter();
const plan = formPlan(design, piece, 344)!;

describe('plan of a falsework', () => {
  test('fills its width but for 12 px at either side, and stands no higher than 300 px', () => {
    const xs = [...plan.slab.matchAll(/[ML]([\d.]+) /g)].map(([, x]) => Number(x));
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([12, 332]);
    expect(plan.heightPx).toBeCloseTo((25.5 / 72) * 320 + 24, 6);
    expect(formPlan(design, piece, 3000)!.heightPx).toBeCloseTo(300, 6);
  });

  test('has the front at the bottom and the ledger at the wall behind', () => {
    for (const { sticks, legs } of plan.sections) {
      const ledger = sticks.find(({ kind }) => kind === 'ledger')!;
      expect(ledger.from.y).toBeCloseTo(ledger.to.y, 6);
      for (const leg of legs) expect(leg.at.y).toBeGreaterThan(ledger.from.y);
    }
  });

  test('has sections A and B from the left, each with its legs numbered from its front left', () => {
    const [a, b] = plan.sections;
    expect([a!.letter, b!.letter]).toEqual(['A', 'B']);
    expect(a!.letterAt.x).toBeLessThan(b!.letterAt.x);
    expect(a!.legs.map(({ number }) => number)).toEqual(['A1', 'A2']);
    expect(a!.legs[0]!.at.x).toBeLessThan(a!.legs[1]!.at.x);
    expect(b!.legs[0]!.number).toBe('B1');
  });

  test('has a line for every stick of the framing', () => {
    for (const [i, { worked }] of design.sections.entries()) {
      const { joists, headers, lines } = worked.framing;
      const lying = lines.filter(({ kind }) => kind !== 'legs').length;
      expect(plan.sections[i]!.sticks).toHaveLength(joists.length + headers.length + lying);
    }
    expect(plan.sections.map(({ openings }) => openings.length)).toEqual([0, 1]);
  });

  test('keeps every line within the drawing', () => {
    for (const { sticks, legs } of plan.sections) {
      for (const { x, y } of [...sticks.flatMap(({ from, to }) => [from, to]), ...legs.map(({ at }) => at)]) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(plan.widthPx);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(plan.heightPx);
      }
    }
  });

  test('is none without a section or without a width', () => {
    expect(formPlan({ ...design, sections: [] }, piece, 344)).toBeNull();
    expect(formPlan(design, piece, 0)).toBeNull();
  });

  test('has a key of what it shows and of no more', () => {
    const lines = (kinds: Parameters<typeof keyRows>[0]) => keyRows(kinds).map(({ line }) => line);
    expect(lines(drawnKinds(plan))).toEqual(['leg', 'joist', 'stringer', 'ledger', 'slab']);
    const free = formJob(36, 24);
    const alone = formPlan(designFalsework(free, 'counter'), free.pieces[0]!, 344)!;
    expect(lines(drawnKinds(alone))).not.toContain('ledger');
    expect(keyRows(['joist', 'header'])[1]!.words).toBe('joist, trimmer, header');
  });
});

/** Box of a text of 12.5 px, 7.5 px a letter at the most. */
function boxOf(text: string, { x, y }: { x: number; y: number }, anchor: 'start' | 'middle' | 'end') {
  const wide = text.length * 7.5;
  const left = anchor === 'start' ? x : anchor === 'end' ? x - wide : x - wide / 2;
  return { left, right: left + wide, top: y - 6, bottom: y + 6 };
}

describe('numbers of the legs', () => {
  const drawn = EXAMPLE_DESIGNS.filter(({ design: each }) => each.sections.length > 0);

  test.each(drawn)('of $called do not lie on each other at 281 and at 344 px', (each) => {
    for (const widthPx of [281, 344]) {
      const boxes = formPlan(each.design, each.piece, widthPx)!.sections.flatMap(
        ({ letter, letterAt, legs }) => [
          boxOf(letter, letterAt, 'middle'),
          ...legs.map(({ number, label, anchor }) => boxOf(number, label, anchor)),
        ],
      );
      for (const [i, a] of boxes.entries()) {
        for (const b of boxes.slice(i + 1)) {
          const apart = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
          expect(apart, `${JSON.stringify(a)} and ${JSON.stringify(b)} at ${widthPx} px`).toBe(true);
        }
      }
    }
  });
});
