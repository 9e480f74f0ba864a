import { describe, expect, test } from 'vitest';
import { csvOf } from '../../../src-core/csv';
import { readCsv } from '../../support/read-csv';

describe('a table as comma-separated text', () => {
  test('the three worked lines of RFC 4180, section 2, come out as printed there', () => {
    const table = { columns: ['aaa', 'b"bb', 'ccc'], rows: [['zzz', 'y\r\nyy', 'x,xx']] };
    expect(csvOf(table)).toBe('aaa,"b""bb",ccc\r\nzzz,"y\r\nyy","x,xx"\r\n');
  });

  test('cells with quotes, commas and line breaks read back as they were', () => {
    const rows = [
      ['2 x 4, 8 ft', '1\' 2-1/2" long', 'first\nsecond'],
      ['', '"', ',,"\r\n'],
    ];
    const columns = ['Part', 'Length, cut', '"Note"'];
    expect(readCsv(csvOf({ columns, rows }))).toEqual([columns, ...rows]);
  });

  test('numbers are written with a point and no grouping: 12345.5, -0.25, 0 for minus zero; null is empty', () => {
    const text = csvOf({ columns: ['a', 'b', 'c', 'd'], rows: [[12345.5, -0.25, -0, null]] });
    expect(text).toBe('a,b,c,d\r\n12345.5,-0.25,0,\r\n');
  });

  test.each(['=SUM(A1:A9)', '+1 more', '-1/2 in', '@mix', ' =1+1', '\t=1+1', '-', '＝1'])(
    '"%s" gets an apostrophe, so that no spreadsheet runs it',
    (cell) => {
      expect(readCsv(csvOf({ columns: ['a'], rows: [[cell]] }))[1]).toEqual([`'${cell}`]);
    },
  );

  test.each(['-5', '+2.5', '-.25', '-1e-3', '1/2 in', "'=1", 'a=b', 'R-1'])('"%s" stays as it is', (cell) => {
    expect(readCsv(csvOf({ columns: ['a'], rows: [[cell]] }))[1]).toEqual([cell]);
  });

  test('a heading is guarded as well', () => {
    expect(csvOf({ columns: ['=a'], rows: [] })).toBe("'=a\r\n");
  });

  test('a line too short, and a number that is none, are faults of ours', () => {
    expect(() => csvOf({ columns: ['a', 'b'], rows: [['a']] })).toThrow('1 cells in a table of 2');
    expect(() => csvOf({ columns: ['a'], rows: [[Number.NaN]] })).toThrow('finite');
  });
});
