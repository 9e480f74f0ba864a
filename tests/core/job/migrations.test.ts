import { describe, expect, test } from 'vitest';
import { JOB_VERSION, MIGRATIONS, readJob } from '../../../src-core/job';
import { smallJob } from '../../support/small-job';

describe('migrations', () => {
  test('lead from version 0 to the newest without a gap', () => {
    expect(MIGRATIONS.map(({ from }) => from)).toEqual(Array.from({ length: JOB_VERSION }, (_, i) => i));
  });

  test('version 0 writes thickness without its unit; version 1 writes thicknessIn', () => {
    const before = {
      format: 'ledgewright-job',
      version: 0,
      pieces: [{ id: 'cap', thickness: 1.5, note: 'kept' }, { id: 'odd', thicknessIn: 2 }, 7],
    };
    const copy = structuredClone(before);
    expect(MIGRATIONS[0]!.migrate(before)).toEqual({
      format: 'ledgewright-job',
      version: 1,
      pieces: [{ id: 'cap', thicknessIn: 1.5, note: 'kept' }, { id: 'odd', thicknessIn: 2 }, 7],
    });
    expect(before).toEqual(copy);
  });

  test('a whole job of version 0 is read as its twin of version 1 is, and says where it came from', () => {
    const newest = smallJob();
    const pieces = newest.pieces.map(({ thicknessIn, ...rest }) => ({ ...rest, thickness: thicknessIn }));
    const old = { ...newest, version: 0, pieces };
    const reading = readJob(old);
    const twin = readJob(newest);
    if (!reading.ok || !twin.ok) throw new Error('both are sound');
    expect(reading.migratedFrom).toBe(0);
    expect(reading.job).toEqual(twin.job);
  });

  test('a piece with both names keeps both, and the old one is unknown', () => {
    const old = { ...smallJob(), version: 0 };
    old.pieces[0]!.thickness = 3;
    const reading = readJob(old);
    expect(reading).toMatchObject({
      ok: false,
      problems: [{ code: 'unknown-field', path: 'pieces[0].thickness' }],
    });
  });
});
