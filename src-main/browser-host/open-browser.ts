/** Opens an address in the person's browser where the system has a way to. */
import { spawn } from 'node:child_process';

/** Longer than any opener takes to fail; some stay for as long as the browser does. */
const FAILS_WITHIN_MS = 3000;

/** The system's own opener. On Windows the address is an argument of a program, never a line for a shell. */
export function openerFor(
  platform: string,
  address: string,
): { readonly file: string; readonly args: string[] } {
  if (platform === 'darwin') return { file: 'open', args: [address] };
  if (platform === 'win32') return { file: 'rundll32', args: ['url.dll,FileProtocolHandler', address] };
  return { file: 'xdg-open', args: [address] };
}

/** Whether the opener started and did not fail at once. */
export function openBrowser(address: string, platform: string = process.platform): Promise<boolean> {
  const { file, args } = openerFor(platform, address);
  return new Promise((resolve) => {
    const opener = spawn(file, args, { stdio: 'ignore', detached: true });
    const patience = setTimeout(() => resolve(true), FAILS_WITHIN_MS);
    const end = (isOpen: boolean) => {
      clearTimeout(patience);
      resolve(isOpen);
    };
    opener.on('error', () => end(false));
    opener.on('exit', (code) => end(code === 0));
    opener.unref();
  });
}
