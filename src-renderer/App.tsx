import { useEffect } from 'react';
import { I18nProvider } from 'react-aria-components';
import { Shell } from './frame/Shell';
import type { BegunWindow } from './state/begin-window';
import { startDayLoop } from './state/day-loop';
import { startKeepingDrafts } from './state/draft-keeper';
import { StoreProvider } from './state/store-context';
import { startVerdictLoop } from './state/verdict-loop';
import { listenForKeys, windowCommands } from './state/window-commands';
import { startWorksLoop } from './state/works-loop';

/** The window: one job, two views of it, and the verdict beside them. */
export function App({ host, about, store, files }: BegunWindow) {
  const theme = store(({ theme: chosen }) => chosen);
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
  }, [theme]);

  useEffect(() => startVerdictLoop(store), [store]);
  useEffect(() => startDayLoop(store), [store]);
  useEffect(() => startWorksLoop(store), [store]);
  useEffect(
    () => startKeepingDrafts(store, host, (sentence) => store.getState().say({ tone: 'trouble', sentence })),
    [store, host],
  );
  useEffect(() => {
    const commands = windowCommands(store, files);
    const stopKeys = listenForKeys(commands, about.platform === 'mac', () => store.getState().sheet !== null);
    const stopEvents = host.listen((event) => {
      if (event.kind === 'menu') commands[event.command]?.();
      else void files.openPath(event.path);
    });
    return () => {
      stopKeys();
      stopEvents();
    };
  }, [store, files, host, about]);

  return (
    <StoreProvider value={store}>
      <I18nProvider locale="en-US">
        <Shell host={host} about={about} files={files} />
      </I18nProvider>
    </StoreProvider>
  );
}
