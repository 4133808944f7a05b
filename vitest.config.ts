import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['{core,contract,reckon,store,server,cli,web,demo,studies}/**/*.test.{ts,tsx}'],
    setupFiles: ['./vitest.setup.ts'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
