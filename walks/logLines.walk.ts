import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { longDate } from '#contract/words/dayWords.ts';
import { test } from './walk.ts';

const weighed = { timeout: 60_000 };

test('eight alike sets are one line with load and speeds; the bar is changed and one set struck from it', async ({
  page,
}) => {
  const doneOn = await freeDay(page);
  await logEight(page, doneOn);
  await page.goto(`/log?lifter=lifter-ilse&until=${doneOn}`);
  const day = page.getByRole('region', { name: longDate(doneOn) });
  // Not those of an opened line.
  const lines = day.locator('.log-lifter > ol > .set-line');
  await expect(lines).toHaveCount(1);
  const line = lines.first();
  await expect(line).toContainText('8 × 2 at 70 kg');
  // Straight weight weighs the same all the way up.
  await expect(line).toContainText(/70\s*kg bottom\s*70\s*kg lockout/);
  await expect(line).toContainText(/0\.85 m\/s, first 0\.90, expected \d\.\d\d/, weighed);
  await expect(line.locator('.speed-spark circle')).toHaveCount(16);

  await line.getByRole('button', { name: /^Change the bar of sets 1 to 8/ }).click();
  await line.getByLabel('On the bar').fill('72.5');
  await line.getByRole('button', { name: 'Save' }).click();
  const counted = lines.filter({ hasNotText: 'struck' });
  await expect(counted).toHaveCount(1);
  await expect(counted).toContainText('8 × 2 at 72.5 kg');
  await expect(counted.locator('.speed-spark circle')).toHaveCount(16);
  await page.getByRole('button', { name: 'Undo' }).click();
  // What was taken back stays readable, struck.
  await expect(counted).toContainText('8 × 2 at 70 kg');
  await expect(lines.filter({ hasText: 'struck' })).toContainText('8 × 2 at 72.5 kg');
  await expect(line.getByLabel('On the bar')).toHaveCount(0);

  await line.getByRole('button', { name: /one by one$/ }).click();
  await expect(line.getByRole('listitem')).toHaveCount(8);
  await line.getByRole('button', { name: /^Strike set 8/ }).click();
  await expect(counted).toContainText('7 × 2 at 70 kg');
  const struck = lines.filter({ has: page.getByRole('button', { name: /^Bring back set 8, 70 kg/ }) });
  await expect(struck).toContainText('struck');
  await struck.getByRole('button', { name: /^Bring back set 8/ }).click();
  await expect(counted).toContainText('8 × 2 at 70 kg');

  await counted.getByRole('button', { name: /^Strike sets 1 to 8/ }).click();
  await expect(counted).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(counted).toContainText('8 × 2 at 70 kg');
});

test('an opened day of the log and older days that were asked for outlive a reload', async ({ page }) => {
  await page.goto('/log?lifter=lifter-ilse');
  const days = page.locator('.log-date');
  await expect(days.first()).toHaveAttribute('aria-expanded', 'true');
  await days.nth(2).click();
  await expect(days.nth(2)).toHaveAttribute('aria-expanded', 'true');
  const before = await days.count();
  await page.getByRole('button', { name: /^Days before/ }).click();
  await expect.poll(() => days.count()).toBeGreaterThan(before);
  const shown = await days.count();
  await page.reload();
  await expect(days).toHaveCount(shown);
  await expect(days.nth(2)).toHaveAttribute('aria-expanded', 'true');
  await expect(days.nth(1)).toHaveAttribute('aria-expanded', 'false');
});

test('words of a note find its day and its sets alone, and stand in the address', async ({ page }) => {
  const [lifter] = (await (await page.request.get('/api/records/lifter')).json()).records;
  const set = {
    lifterId: lifter.id,
    lift: 'squat',
    setup: { start: { way: 'free' }, barKg: 60 },
    reps: 5,
    made: 5,
  };
  const logged = await page.request.post('/api/sets', {
    data: {
      sets: [
        { ...set, doneOn: '2026-01-05', note: 'Tested the new Platform shoes' },
        { ...set, doneOn: '2026-01-05' },
      ],
    },
  });
  expect(logged.status()).toBe(201);
  await page.goto('/log');
  await page.getByLabel('Words in the notes').fill('platform new');
  await expect(page.locator('.log-date')).toHaveCount(1);
  await expect(page.locator('.set-line')).toHaveCount(1);
  await expect(page.locator('.set-line')).toContainText('Tested the new Platform shoes');
  await page.reload();
  await expect(page.locator('.set-line')).toHaveCount(1);
  await page.getByLabel('Words in the notes').fill('platform old');
  await expect(page.getByText('No such set.')).toBeVisible();
});

for (const light of ['day', 'night'] as const) {
  test(`the log fits its screen, says nothing to the console and hides nothing from a screen reader, by ${light}`, async ({
    page,
  }) => {
    const said: string[] = [];
    page.on('console', (message) => said.push(message.text()));
    page.on('pageerror', (error) => said.push(error.message));
    for (const width of [1440, 1024, 390]) {
      await page.setViewportSize({ width, height: 844 });
      await page.goto('/log');
      await page.getByRole('radio', { name: light, exact: true }).check();
      await expect(page.getByText(/, expected \d\.\d\d/).first()).toBeVisible(weighed);
      await page
        .getByRole('button', { name: /one by one$/ })
        .first()
        .click();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      const touching = await page.locator('.set-line').evaluateAll((lines) =>
        lines.flatMap((line) => {
          const cells = [...line.children].map((cell) => cell.getBoundingClientRect());
          return cells.flatMap((a, i) =>
            cells
              .slice(i + 1)
              .filter(
                (b) =>
                  a.left + 1 < b.right &&
                  b.left + 1 < a.right &&
                  a.top + 1 < b.bottom &&
                  b.top + 1 < a.bottom,
              )
              .map(() => line.textContent),
          );
        }),
      );
      expect(touching).toEqual([]);
      expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    }
    expect(said).toEqual([]);
  });
}

/** A day in March on which the demo, whose log ends with today, has nothing of hers. */
async function freeDay(page: Page): Promise<string> {
  const march = Array.from({ length: 31 }, (_, i) => `2026-03-${String(i + 1).padStart(2, '0')}`);
  const { sets } = await (
    await page.request.get(`/api/sets?lifterId=lifter-ilse&from=${march[0]}&to=${march.at(-1)}`)
  ).json();
  const done = new Set(sets.map((set: { doneOn: string }) => set.doneOn));
  return march.find((day) => !done.has(day))!;
}

async function logEight(page: Page, doneOn: string): Promise<void> {
  const sets = Array.from({ length: 8 }, () => ({
    lifterId: 'lifter-ilse',
    doneOn,
    lift: 'squat',
    setup: { start: { way: 'box', heightM: 0.33 }, barKg: 70 },
    reps: 2,
    made: 2,
    meanSpeedsMps: [0.9, 0.8],
  }));
  expect((await page.request.post('/api/sets', { data: { sets } })).status()).toBe(201);
}
