/** The two programs that reference and browser tests use where they are installed: CalculiX and Chromium. */
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { run } from './project.mjs';

/** Debian's package of each program. */
const PACKAGES = { ccx: 'calculix-ccx', chromium: 'chromium' };

/** Whether a program is on the path. */
export function isInstalled(program, path = process.env.PATH ?? '') {
  return path.split(delimiter).some((folder) => {
    try {
      accessSync(join(folder, program), constants.X_OK);
      return true;
    } catch {
      return false;
    }
  });
}

/** Installs what is missing where that needs nobody's leave: on Debian, as root. Never fails; says what is missing. */
export function installReferencePrograms() {
  const missing = Object.keys(PACKAGES).filter((program) => !isInstalled(program));
  if (missing.length > 0 && isDebianRoot()) {
    const names = missing.map((program) => PACKAGES[program]);
    console.log(`Installing ${names.join(' and ')} (apt-get)`);
    const quiet = { DEBIAN_FRONTEND: 'noninteractive' };
    run({ file: 'apt-get', args: ['-qq', 'update'] }, quiet);
    run({ file: 'apt-get', args: ['-qq', 'install', '-y', '--no-install-recommends', ...names] }, quiet);
  }
  if (!isInstalled('ccx')) {
    console.log('CalculiX (ccx) is not installed: the reference tests use recorded numbers.');
  }
}

function isDebianRoot() {
  return existsSync('/etc/debian_version') && process.getuid?.() === 0 && isInstalled('apt-get');
}
