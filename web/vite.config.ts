import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** The screens are built into web/dist; while one works on them, a running club server answers /api. */
export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  base: '/',
  plugins: [react()],
  // Tables are split in the browser too, which has no Buffer: the package brings a build with its own.
  resolve: { alias: { 'csv-parse/sync': 'csv-parse/browser/esm/sync' } },
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    // The pages are served under a strict policy: everything stays a file of its own.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // A slow tablet pays for each file it asks for: what the first page needs are two, what some pages share a few.
    rolldownOptions: {
      output: {
        // The browser compiles what the first page needs beside the thread that draws it, instead of function by function while it draws.
        postBanner: ({ name }) =>
          ['first', 'packages'].includes(name) ? '//# allFunctionsCalledOnLoad' : '',
        codeSplitting: {
          groups: [
            { name: 'packages', tags: ['$initial'], test: /node_modules/, priority: 3 },
            { name: 'first', tags: ['$initial'], priority: 2 },
            // What judges records stays together, and is read before whatever declares a shape with it.
            { name: 'judges', test: /node_modules\/zod\/|contract\/records\//, priority: 1 },
            { name: 'more', minShareCount: 2, entriesAware: true, entriesAwareMergeThreshold: 40_000 },
          ],
        },
      },
    },
  },
  // The server answers only pages of its own address, so the address is passed on as it is.
  server: {
    proxy: {
      // Not the modules of web/api, whose names have a dot.
      '^/api/[^.]*$': {
        target: process.env['RACKWRIGHT_SERVER'] ?? 'http://127.0.0.1:4747',
        changeOrigin: false,
      },
    },
  },
});
