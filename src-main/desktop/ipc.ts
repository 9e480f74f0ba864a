/** The only place that listens to the page. One channel, one check of who asks, one dispatcher. */
import type { IpcMainInvokeEvent } from 'electron';
import { ipcMain } from 'electron';
import type { Host } from '../host/host';
import { ASK_CHANNEL } from './channels';
import { isOwnAddress } from './scheme';

/** Told of each request that was answered, so that the shell can follow along. */
export type OnAnswered = (name: string, reply: unknown) => void;

/** Answers the window's page and refuses every other sender. */
export function answerPage(host: Host, onAnswered: OnAnswered): void {
  ipcMain.handle(ASK_CHANNEL, async (event, name: unknown, request: unknown) => {
    if (!isOwnPage(event)) throw new Error('This page may not ask.');
    const answer = await host.answer(name, request);
    if (!answer.ok) throw new Error(answer.sentence);
    onAnswered(String(name), answer.reply);
    return answer.reply;
  });
}

/** Whether the sender is the top frame of a window and shows the app's own page. A frame that is gone is nobody. */
function isOwnPage({ senderFrame }: IpcMainInvokeEvent): boolean {
  return senderFrame !== null && senderFrame.parent === null && isOwnAddress(senderFrame.url);
}
