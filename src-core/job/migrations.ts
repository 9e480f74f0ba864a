/** Steps that bring an older job file to the version that this tool reads. Each is pure and touches only what changed. */
import { memberOf } from './field-words';
import { JOB_VERSION } from './job';

export interface Migration {
  /** Version that it takes, one below the version that it gives. */
  readonly from: number;
  readonly name: string;
  readonly migrate: (file: Readonly<Record<string, unknown>>) => Record<string, unknown>;
}

/** In order, one a version, without gaps. */
export const MIGRATIONS: readonly Migration[] = [
  {
    from: 0,
    name: 'thickness carries its unit',
    migrate: (file) => ({ ...file, version: 1, pieces: mapList(file.pieces, nameThicknessUnit) }),
  },
];

/** Brings a file of version `from` to the newest version, or returns null where no step starts there. */
export function migrateJob(
  file: Readonly<Record<string, unknown>>,
  from: number,
): Record<string, unknown> | null {
  let migrated: Record<string, unknown> = { ...file };
  for (let version = from; version < JOB_VERSION; version++) {
    const step = MIGRATIONS.find((migration) => migration.from === version);
    if (step === undefined) return null;
    migrated = step.migrate(migrated);
  }
  return migrated;
}

/** Version 0, the draft format, wrote `thickness` in inches; version 1 writes `thicknessIn`. */
function nameThicknessUnit(piece: unknown): unknown {
  if (memberOf(piece, 'thickness') === undefined || memberOf(piece, 'thicknessIn') !== undefined)
    return piece;
  const { thickness, ...rest } = piece as Readonly<Record<string, unknown>>;
  return { ...rest, thicknessIn: thickness };
}

function mapList(list: unknown, change: (item: unknown) => unknown): unknown {
  return Array.isArray(list) ? list.map(change) : list;
}
