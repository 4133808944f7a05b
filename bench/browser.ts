import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium } from '@playwright/test';
import { build } from 'esbuild';
import { buildScreensWhenStale } from '#cli/buildScreens.ts';
import { localToday } from '#cli/localToday.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { openOneClub } from '#server/oneClub.ts';
import { serve } from '#server/serve.ts';
import playwrightConfig from '../playwright.config.ts';

const SLOWER = 4;
const FRAMES = 300;

/** What the browser does on the demo club: the first page on a processor four times slower, and one frame of a drag. */
export async function run(): Promise<void> {
  await buildScreensWhenStale(console.log);
  const folder = mkdtempSync(join(tmpdir(), 'rackwright-bench-'));
  const store = await openOneClub(join(folder, 'club.sqlite'), { name: 'the bench' });
  await store.importRecords(millraceClub(localToday()));
  const { url, close } = await serve({ store, port: 0 });
  const browser = await chromium.launch(playwrightConfig.use!.launchOptions);
  try {
    await firstPage(browser, url);
    await dragFrame(browser, url);
  } finally {
    await browser.close();
    await close();
    await store.close();
    rmSync(folder, { recursive: true });
  }
}

async function firstPage(browser: Browser, url: string): Promise<void> {
  const page = await browser.newPage({ viewport: { width: 1024, height: 768 } });
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  await page.goto(url);
  await page.getByRole('heading', { level: 1 }).waitFor();
  const { readyMs, scriptBytes } = await page.evaluate(() => ({
    readyMs: performance.now(),
    scriptBytes: performance
      .getEntriesByType('resource')
      .filter((entry) => entry.name.endsWith('.js'))
      .reduce((sum, entry) => sum + (entry as PerformanceResourceTiming).encodedBodySize, 0),
  }));
  console.log(
    `first page: ${(scriptBytes / 1000).toFixed(0)} kB of compressed script (goal < 300), its heading shown after ` +
      `${(readyMs / 1000).toFixed(2)} s on a processor slowed ${SLOWER} times (goal <= 1.5)`,
  );
  await page.close();
}

/** The work of one frame while the bar is dragged, from the records to the picture's numbers, in the browser itself. */
async function dragFrame(browser: Browser, url: string): Promise<void> {
  const { outputFiles } = await build({
    stdin: {
      contents: `
        import { trialResult } from '#web/lifters/trial/trialResult.ts';
        globalThis.timeFrames = (club, trial, today, frames) => {
          const lasting = [];
          for (let i = 0; i < frames; i++) {
            const from = performance.now();
            trialResult(club, { ...trial, barKg: 40 + (i % 100) / 2 }, 'bench', today);
            lasting.push(performance.now() - from);
          }
          return lasting;
        };`,
      resolveDir: process.cwd(),
      loader: 'ts',
    },
    bundle: true,
    write: false,
    format: 'iife',
  });
  const page = await browser.newPage({ bypassCSP: true });
  await page.goto(url);
  await page.addScriptTag({ content: outputFiles[0]!.text });
  const lastingMs = await page.evaluate(async (frames) => {
    const { records } = await (await fetch('/api/club')).json();
    const hookup = records.hookup.find((row: { way: string }) => row.way === 'doubled');
    const trial = {
      lifterId: records.best.find((row: { lift: string }) => row.lift === 'squat').lifterId,
      lift: 'squat',
      rackId: hookup.rackId,
      start: { way: 'free', heightM: null },
      bands: records.bandPair
        .slice(0, 2)
        .map((pair: { id: string }) => ({ bandPairId: pair.id, hookupId: hookup.id })),
      chains: [],
    };
    const { timeFrames } = globalThis as unknown as {
      timeFrames(club: unknown, trial: unknown, today: string, frames: number): number[];
    };
    return timeFrames(records, trial, new Date().toISOString().slice(0, 10), frames);
  }, FRAMES);
  const sorted = lastingMs.toSorted((a, b) => a - b);
  const at = (share: number) => `${sorted[Math.floor(share * (FRAMES - 1))]!.toFixed(2)} ms`;
  console.log(
    `one frame of a drag with two pairs of bands: median ${at(0.5)}, 95 % under ${at(0.95)}, the first one ${lastingMs[0]!.toFixed(1)} ms (goal < 4)`,
  );
  await page.close();
}
