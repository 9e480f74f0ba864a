/** The page's only door to the shell: one way to ask, one way to listen. It decides nothing; the shell takes nothing on trust. */
import type { IpcRendererEvent } from 'electron';
import { contextBridge, ipcRenderer } from 'electron';
import { ASK_CHANNEL, EVENT_CHANNEL } from './channels';

type Listener = (event: unknown) => void;

const listeners = new Set<Listener>();
/** Told before the page listened, such as the file that the window was started with. */
const waiting: unknown[] = [];

ipcRenderer.on(EVENT_CHANNEL, (_event: IpcRendererEvent, told: unknown) => {
  if (listeners.size === 0) waiting.push(told);
  for (const listener of listeners) listener(told);
});

contextBridge.exposeInMainWorld('ledgewright', {
  ask: (name: string, request: unknown): Promise<unknown> => ipcRenderer.invoke(ASK_CHANNEL, name, request),
  listen: (onEvent: Listener): (() => void) => {
    // A function of the page arrives as a new stand-in at each call, so this one is what is taken out again.
    const listener: Listener = (told) => onEvent(told);
    listeners.add(listener);
    for (const told of waiting.splice(0)) listener(told);
    return () => {
      listeners.delete(listener);
    };
  },
});
