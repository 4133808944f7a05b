/**
 * All screens of the invented club in three sizes, by day and by night, into shots/ to be looked at.
 * `npm run shots -- lifters` takes only those whose name holds the word; `npm run shots -- readme` takes the two pictures of the
 * README instead, into docs/pictures/.
 */
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';
import { chromiumMissing, findChromium } from './chromium.mjs';

const sizes = {
  desk: { width: 1440, height: 900, touch: false },
  tablet: { width: 1024, height: 768, touch: true },
  phone: { width: 390, height: 844, touch: true },
};
const lights = { day: 'light', night: 'dark' };
const flags = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

process.chdir(dirname(dirname(fileURLToPath(import.meta.url))));
const word = process.argv[2] ?? '';
const executablePath = findChromium();
if (!executablePath) {
  console.error(chromiumMissing);
  process.exit(1);
}
mkdirSync('shots', { recursive: true });
const house = mkdtempSync(join(tmpdir(), 'rackwright-shots-'));
const server = spawn(
  process.execPath,
  ['cli/rackwright.js', 'serve', '--demo', '--club', join(house, 'club.sqlite'), '--port', '0'],
  { stdio: ['ignore', 'pipe', 'inherit'] },
);
const browser = await chromium.launch({ executablePath, args: flags });
try {
  const url = await address();
  const { records } = await (await fetch(`${url}/api/club`)).json();
  if (word === 'readme') await takeForReadme(url);
  else
    for (const [name, path] of Object.entries(places(records)))
      if (name.includes(word)) await take(url, name, path);
} finally {
  await browser.close();
  server.kill();
  rmSync(house, { recursive: true, force: true });
}

/** The screens, each with a member of the club where it shows one. */
function places({ lifter, day, bandPair, season, seasonEntry, comparison }) {
  const newestDay = day.toSorted((a, b) => b.date.localeCompare(a.date))[0];
  const byStature = lifter.filter((l) => l.statureM).toSorted((a, b) => a.statureM - b.statureM);
  return {
    'day-list': '/day',
    ...(newestDay && { 'day-one': `/day/${newestDay.id}` }),
    'lifters-list': '/lifters',
    'lifters-new': '/lifters/new',
    ...(byStature[0] && { 'lifters-one': `/lifters/${byStature[0].id}` }),
    ...(byStature[0] &&
      Object.fromEntries(
        ['setup', 'strength', 'any-setup', 'meet', 'bests', 'learned', 'heights'].map((part) => [
          `lifters-one-${part}`,
          `/lifters/${byStature[0].id}/${part}`,
        ]),
      )),
    season: '/season',
    'season-new': '/season/new',
    'season-methods': '/season/methods',
    ...(season[0] && {
      'season-changes': `/season/${season[0].id}/taken`,
      'season-who': `/season/${season[0].id}/who`,
      'season-paper': `/season/${season[0].id}/paper`,
    }),
    ...(seasonEntry[0] && {
      'season-lifter': `/season/${seasonEntry[0].seasonId}/lifter/${seasonEntry[0].lifterId}`,
    }),
    comparisons: '/comparison',
    'comparison-new': `/comparison/new?who=${lifter.map(({ id }) => id).join(',')}`,
    ...(comparison[0] && { 'comparison-one': `/comparison/${comparison[0].id}` }),
    gear: '/gear',
    'gear-club': '/gear/club',
    evidence: '/evidence',
    ...(bandPair[0] && { 'gear-band': `/gear/bands/${bandPair[0].id}` }),
  };
}

async function take(url, name, path) {
  for (const [size, { width, height, touch }] of Object.entries(sizes)) {
    for (const [light, colorScheme] of Object.entries(lights)) {
      const context = await browser.newContext({
        viewport: { width, height },
        colorScheme,
        hasTouch: touch,
        isMobile: touch,
        reducedMotion: 'reduce',
      });
      const page = await context.newPage();
      page.on('pageerror', (error) => console.error(`${name} ${size}: ${error.message}`));
      await page.goto(`${url}${path}`);
      await page.waitForSelector('main h1, main h2');
      await page.evaluate(() => document.fonts.ready);
      await page.waitForFunction(() => document.querySelector('[aria-busy="true"]') === null);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      if (wide > 0) console.error(`${name} ${size}: ${wide} px wider than the screen`);
      await page.screenshot({ path: `shots/${name}-${size}-${light}.png`, fullPage: true });
      await context.close();
    }
  }
  console.log(`shots/${name}-*.png`);
}

/** The load picture of two lifters under the same bands, and a rack sheet small enough to load at once, each in a file of its own. */
async function takeForReadme(url) {
  const day = `${url}/api/days/day-speed-squat/solve`;
  await fetch(day, { method: 'POST', headers: { origin: url } });
  await picture('load-picture', `${url}/lifters/lifter-ilse/setup`, '.trial-picture', 1, (page) =>
    page.getByRole('button', { name: 'Beside another lifter' }).click(),
  );
  await picture('rack-sheet', `${url}/day/day-speed-squat/sheet?paper=a4`, '.paper', 0.75);
}

/** One part of a page with a little room around it, at so many pixels to the CSS pixel. */
async function picture(name, address, selector, deviceScaleFactor, before = async () => {}) {
  const viewport = { width: 1180, height: 1400 };
  const page = await browser.newPage({ viewport, deviceScaleFactor, reducedMotion: 'reduce' });
  await page.goto(address);
  await before(page);
  const part = page.locator(selector).first();
  await part.waitFor();
  await page.evaluate(() => document.fonts.ready);
  await page.waitForFunction(() => document.querySelector('[aria-busy="true"]') === null);
  await part.scrollIntoViewIfNeeded();
  const { x, y, width, height } = await part.boundingBox();
  const room = 12;
  const clip = { x: x - room, y: y - room, width: width + 2 * room, height: height + 2 * room };
  await page.screenshot({ path: `docs/pictures/${name}.png`, clip });
  await page.close();
  console.log(`docs/pictures/${name}.png`);
}

/** The address that the server prints when it is up. */
function address() {
  return new Promise((resolve, reject) => {
    let said = '';
    server.stdout.on('data', (chunk) => {
      said += chunk;
      const [url] = /http:\/\/[\d.:]+/.exec(said) ?? [];
      if (url) resolve(url);
    });
    server.on('exit', () => reject(new Error('The server ended before it was up.')));
  });
}
