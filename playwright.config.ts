import { defineConfig } from '@playwright/test';

/** Walks drive the Chromium that the machine has; each walk starts a server of its own (walks/walk.ts). */
export default defineConfig({
  testDir: 'walks',
  testMatch: '*.walk.ts',
  fullyParallel: true,
  workers: 2,
  timeout: 180_000,
  // A busy machine answers late; that is no fault of what is walked.
  expect: { timeout: 30_000 },
  outputDir: '.cache/walks',
  use: {
    trace: 'retain-on-failure',
    launchOptions: {
      executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
});
