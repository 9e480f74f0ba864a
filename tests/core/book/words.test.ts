import { describe, expect, test } from 'vitest';
import { namesWords } from '../../../src-core/book/names';
import { fromTo, placesOf } from '../../../src-core/book/place';
import { printClock, printOf } from '../../../src-core/book/print';
import { freshLines, isWorked } from '../../../src-core/book/worked-checks';
import { formula } from '../../../src-core/workings';
import { jobOf, rectangle } from '../../support/pieces';

describe('times of a pour', () => {
  test('read as hours and minutes', () => {
    expect([0, 7, 59.4, 59.6, 68, 600].map(printClock)).toEqual([
      '0:00',
      '0:07',
      '0:59',
      '1:00',
      '1:08',
      '10:00',
    ]);
  });
});

describe('days', () => {
  const job = (startsOn: string | null) =>
    jobOf({ corners: rectangle(40, 20), thicknessIn: 2 }, { site: { calendar: { startsOn } } });

  test('have their date and weekday where the job has a start', () => {
    // 1 March 2027 is a Monday (perpetual calendar); February 2027 has 28 days.
    expect(printOf(job('2027-02-26')).day(3)).toBe('day 3, Mon 2027-03-01');
    expect(printOf(job(null)).day(3)).toBe('day 3');
  });
});

describe('water', () => {
  test('is told in gallons or litres', () => {
    const imperial = jobOf({ corners: rectangle(40, 20), thicknessIn: 2 });
    // 1 US gal is 231 in3 and 3.785 L (NIST SP 811 B.8).
    expect(printOf(imperial).water(1.6176)).toBe('1.62 gal');
    expect(printOf({ ...imperial, shownIn: 'metric' }).water(1)).toBe('3.79 L');
  });
});

describe('places', () => {
  test('are measured from the left and the front of the piece, wherever it lies', () => {
    const corners = rectangle(40, 20).map(({ xIn, yIn }) => ({ xIn: xIn + 100, yIn: yIn - 30 }));
    const job = jobOf({ corners, thicknessIn: 2 });
    expect(placesOf(job, job.pieces[0]!)({ xIn: 112.5, yIn: -26 })).toEqual({
      fromLeft: '12-1/2 in',
      fromFront: '4 in',
    });
    expect([fromTo('3 in', '3 in'), fromTo('3 in', '9 in')]).toEqual(['3 in', '3 in to 9 in']);
  });
});

describe('names in a row', () => {
  test('are a dozen at the most, then a count', () => {
    const names = Array.from({ length: 14 }, (_, k) => `Cap ${k + 1}`);
    expect(namesWords(names.slice(0, 2))).toBe('Cap 1, Cap 2');
    expect(namesWords(names)).toMatch(/^Cap 1, .*Cap 12 and 2 more$/);
  });
});

describe('workings', () => {
  const double = formula({
    symbol: 'y',
    label: 'twice the number',
    formula: '2 * x',
    units: { x: 'in' },
    unit: 'in',
    source: 'arithmetic',
    compute: ({ x }: { readonly x: number }) => 2 * x,
  });

  test('leave out a check that holds under a tenth of its limit, never one that fails', () => {
    expect(isWorked({ ratio: 0.0999, level: 'holds' })).toBe(false);
    expect(isWorked({ ratio: 0.1, level: 'holds' })).toBe(true);
    expect(isWorked({ ratio: 0, level: 'engineer' })).toBe(true);
    expect(isWorked({ ratio: 0.05, level: 'steel' })).toBe(false);
  });

  test('show a line once, and again with other numbers', () => {
    const fresh = freshLines();
    const [one, other] = [double({ x: 1 }).line, double({ x: 2 }).line];
    expect(fresh([one, other, one])).toEqual([one, other]);
    expect(fresh([one])).toEqual([]);
  });
});
