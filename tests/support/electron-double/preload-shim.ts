/** Runs the built preload in the page, with `electron` as a sandboxed preload gets it. */

/** Name under which the page reaches the double. A page of Electron has no such thing; here tests use it to send as any frame. */
export const INVOKE = 'electronDoubleInvoke';
export const CHECK_PERMISSION = 'electronDoubleCheckPermission';

/**
 * The script that runs before the page's own. The double has one world, so it cannot show that contextIsolation keeps the page out of
 * the preload; that the shell asks for it is tested by what it hands to BrowserWindow.
 */
export function preloadScript(preload: string): string {
  return `(() => {
  const listeners = new Map();
  Object.defineProperty(window, 'electronDoubleDeliver', {
    value: (channel, args) => {
      for (const listener of listeners.get(channel) ?? []) listener({}, ...args);
    },
  });
  navigator.permissions.query = async ({ name }) => ({
    state: (await window.${CHECK_PERMISSION}(name)) ? 'granted' : 'denied',
  });
  // Electron runs a preload in the top frame alone unless it is told otherwise.
  if (window.top !== window) return;
  const ipcRenderer = {
    invoke: async (channel, ...args) => {
      const answer = await window.${INVOKE}(channel, args);
      if (answer.ok) return answer.value;
      throw new Error(\`Error invoking remote method '\${channel}': \${answer.message}\`);
    },
    on: (channel, listener) => {
      listeners.set(channel, [...(listeners.get(channel) ?? []), listener]);
    },
  };
  const contextBridge = {
    exposeInMainWorld: (name, api) => {
      Object.defineProperty(window, name, { value: Object.freeze(api), enumerable: true });
    },
  };
  const require = (name) => {
    if (name === 'electron') return { contextBridge, ipcRenderer };
    throw new Error(\`a sandboxed preload cannot require \${name}\`);
  };
  const module = { exports: {} };
  ((require, module, exports) => {
${preload}
  })(require, module, module.exports);
})();`;
}
