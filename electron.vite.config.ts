import { resolve } from 'node:path';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'electron-vite';

/** The three parts of the window. The loopback host serves the same renderer, so one build is behind both. */
export default defineConfig({
  main: { build: { outDir: 'dist/main', rollupOptions: { input: resolve('src-main/desktop/main.ts') } } },
  preload: {
    build: {
      outDir: 'dist/preload',
      // A sandboxed preload may require nothing but electron, so all else is bundled into the one file.
      externalizeDeps: false,
      rollupOptions: {
        input: resolve('src-main/desktop/preload.ts'),
        output: { format: 'cjs', entryFileNames: 'preload.cjs' },
      },
    },
  },
  renderer: {
    root: 'src-renderer',
    base: './',
    plugins: [react()],
    worker: { format: 'es' },
    build: {
      outDir: resolve('dist/renderer'),
      emptyOutDir: true,
      // fonts stay files, so that the content policy needs no data: sources
      assetsInlineLimit: 0,
      rollupOptions: { input: resolve('src-renderer/index.html') },
    },
  },
});
