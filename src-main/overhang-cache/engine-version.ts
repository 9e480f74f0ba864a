/** Names the engine whose answers are kept, so that an answer of another is never shown. */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const CORE = fileURLToPath(new URL('../../src-core', import.meta.url));

/** The version, and a digest of the core's sources where they lie beside this file; a bundle has its version alone. */
export function engineVersion(version: string, core = CORE): string {
  if (!existsSync(core)) return version;
  const names = readdirSync(core, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.ts'),
  );
  const digest = createHash('sha256');
  for (const name of names.sort())
    digest
      .update(name)
      .update('\0')
      .update(readFileSync(join(core, name)));
  return `${version}+${digest.digest('hex').slice(0, 16)}`;
}
