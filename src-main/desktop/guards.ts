/** What a page may not do in this window, whatever its content policy lets through. */
import type { Session, WebContents } from 'electron';
import { isOwnAddress } from './scheme';

/** Keeps every page in the app where it is: it opens no window, goes to no other address and embeds no guest. */
export function guardContents(contents: WebContents): void {
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  // Told of the top frame and of frames within, for links and scripts alike.
  contents.on('will-frame-navigate', (event) => {
    if (!isOwnAddress(event.url)) event.preventDefault();
  });
  contents.on('will-attach-webview', (event) => event.preventDefault());
}

/** Grants no permission: the window needs no camera, place, device or notice. Without these handlers all would be granted. */
export function denyPermissions(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, decide) => decide(false));
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
}
