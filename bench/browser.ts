import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium } from '@playwright/test';
import { build } from 'esbuild';
import { buildScreensWhenStale } from '#cli/buildScreens.ts';
import { fillWithDemo } from '#cli/fillWithDemo.ts';
import { openOneClub } from '#server/oneClub.ts';
import playwrightConfig from '../playwright.config.ts';
import { untilWeighed } from './crowd/untilWeighed.ts';
import { watchedServer } from './crowd/watchedServer.ts';

const SLOWER = 4;
const OPENINGS = 7;
const LIFTERS = 8;
const FRAMES = 300;

/**
 * What the browser does on the demo club: the first page on a processor four times slower, and one frame of a drag. The server has a
 * process of its own, as with a coach, and has nothing left to work out.
 */
export async function run(): Promise<void> {
  await buildScreensWhenStale(console.log);
  const folder = mkdtempSync(join(tmpdir(), 'rackwright-bench-'));
  const path = join(folder, 'club.sqlite');
  const dayId = await demoClub(path);
  const { url, close } = await watchedServer(path);
  const browser = await chromium.launch(playwrightConfig.use!.launchOptions);
  try {
    await untilWeighed(url);
    await firstPage(browser, `${url}/day/${dayId}`);
    await dragFrame(browser, url);
  } finally {
    await browser.close();
    await close();
    rmSync(folder, { recursive: true });
  }
}

/** Writes the demo club and answers with its day of as many lifters as are looked for. */
async function demoClub(path: string): Promise<string> {
  const store = await openOneClub(path, { name: 'the bench' });
  try {
    await fillWithDemo(store);
    const days = await store.list('day');
    return days.find(({ groups }) => groups.some(({ places }) => places.length === LIFTERS))!.id;
  } finally {
    await store.close();
  }
}

/**
 * A day with all its loads, opened by a browser that has never seen the program. The clock tells only on a machine with nothing else to do;
 * the processor's time of the page, not slowed, says more where it has.
 */
async function firstPage(browser: Browser, address: string): Promise<void> {
  const slowed: number[] = [];
  const processorMs: number[] = [];
  let scriptBytes = 0;
  for (let i = 0; i < OPENINGS; i++) {
    const opened = await openDay(browser, address, SLOWER);
    slowed.push(opened.shownMs);
    scriptBytes = opened.scriptBytes;
    processorMs.push((await openDay(browser, address, 1)).processorMs);
  }
  console.log(
    `first page: ${(scriptBytes / 1000).toFixed(0)} kB of compressed script (goal < 300); the loads of ${LIFTERS} lifters shown after ` +
      `${(median(slowed) / 1000).toFixed(2)} s on a processor slowed ${SLOWER} times (goal <= 1), ` +
      `${median(processorMs).toFixed(0)} ms of processor, not slowed`,
  );
}

async function openDay(browser: Browser, address: string, slower: number) {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slower });
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  await page.addInitScript((lifters) => {
    const bars = document.getElementsByClassName('bar-mass');
    new MutationObserver(() => {
      if (bars.length >= lifters && performance.getEntriesByName('loads').length === 0)
        performance.mark('loads');
    }).observe(document, { subtree: true, childList: true });
  }, LIFTERS);
  await page.goto(address, { waitUntil: 'commit' });
  const { shownMs, scriptBytes } = await page
    .waitForFunction(() => {
      const [loads] = performance.getEntriesByName('loads');
      if (loads === undefined) return null;
      const scripts = performance.getEntriesByType('resource').filter(({ name }) => name.endsWith('.js'));
      const bytes = scripts.map((entry) => (entry as PerformanceResourceTiming).encodedBodySize);
      return { shownMs: loads.startTime, scriptBytes: bytes.reduce((sum, one) => sum + one, 0) };
    })
    .then((handle) => handle.jsonValue() as Promise<{ shownMs: number; scriptBytes: number }>);
  const { metrics } = await session.send('Performance.getMetrics');
  const taskS = metrics.find(({ name }) => name === 'TaskDuration')!.value;
  await context.close();
  return { shownMs, scriptBytes, processorMs: taskS * 1000 };
}

const median = (values: readonly number[]) => values.toSorted((a, b) => a - b)[values.length >> 1]!;

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
