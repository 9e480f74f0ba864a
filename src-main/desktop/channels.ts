/** Names that the preload and the shell share. It imports nothing, since the preload is one file. */

/** The one channel on which the page asks. */
export const ASK_CHANNEL = 'ledgewright:ask';
/** The one channel on which the page is told. */
export const EVENT_CHANNEL = 'ledgewright:event';
