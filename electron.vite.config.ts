import { resolve } from 'node:path';
import { defineConfig } from 'electron-vite';

/** Where the desktop window's three parts will be built from; until the window exists `npm start` runs the load check instead. */
export default defineConfig({
  main: { build: { rollupOptions: { input: resolve('src-main/desktop/main.ts') } } },
  preload: {
    build: {
      rollupOptions: {
        input: resolve('src-main/desktop/preload.ts'),
        output: { format: 'cjs', entryFileNames: 'preload.cjs' },
      },
    },
  },
  renderer: { root: 'src-renderer', build: { rollupOptions: { input: resolve('src-renderer/index.html') } } },
});
