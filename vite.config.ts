import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** The screens are built from web/ into dist/web; while one works on them, the club's server answers /api. */
export default defineConfig({
  root: 'web',
  base: '/',
  plugins: [react()],
  build: {
    outDir: '../dist/web',
    emptyOutDir: true,
    // The pages are served under a strict policy: everything stays a file of its own.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  server: { proxy: { '/api': process.env['RACKWRIGHT_SERVER'] ?? 'http://127.0.0.1:4747' } },
});
