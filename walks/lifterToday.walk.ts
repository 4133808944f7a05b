import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { test } from './walk.ts';

const weighed = { timeout: 60_000 };
const parts = [
  'Today',
  'Over the weeks',
  'Try a setup',
  'Strength',
  'Any setup',
  'Next meet',
  'Into the meet',
  'Bests',
  'Learned',
  'Work capacity',
  'Heights',
  'Body mass',
  'Season',
  'Restrictions',
];

test('maximum, last sessions and the last time in each setup stand on the first page, a line each', async ({
  page,
}) => {
  const lifterId = await joins(page);
  const squat = (doneOn: string, barKg: number, more: object) => ({
    lifterId,
    doneOn,
    lift: 'squat',
    setup: { start: { way: 'box', heightM: 0.33 }, barKg },
    ...more,
  });
  const double = { reps: 2, made: 2, meanSpeedsMps: [0.9, 0.8] };
  const free = { lift: 'deadlift', setup: { start: { way: 'free', heightM: null }, barKg: 180 } };
  const sets = [
    ...Array.from({ length: 8 }, () => squat('2026-03-02', 70, double)),
    squat('2026-03-09', 80, { reps: 1, made: 1 }),
    squat('2026-03-09', 90, { reps: 1, made: 1 }),
    squat('2026-03-11', 180, { ...free, reps: 3, made: 2 }),
  ];
  expect((await page.request.post('/api/sets', { data: { sets } })).status()).toBe(201);
  await page.goto(`/lifters/${lifterId}`);
  const sessions = page.getByRole('table', { name: 'Last sessions' }).getByRole('row');
  await expect(sessions).toHaveCount(4);
  await expect(sessions.nth(1)).toContainText('180 kg, 2 of 3 reps');
  await expect(sessions.nth(2)).toContainText('singles at 80, 90 kg');
  await expect(sessions.nth(3)).toContainText('8 × 2 at 70 kg');
  // The mean of 0.9 and 0.8.
  await expect(sessions.nth(3)).toContainText('0.85 m/s');
  const times = page.getByRole('table', { name: 'Last time in each setup' }).getByRole('row');
  await expect(times).toHaveCount(3);
  await expect(times.nth(2)).toContainText('9 Mar 2026');
  const maxima = page.getByRole('table', { name: "Today's maximum" });
  await expect(maxima.getByRole('row', { name: /^squat/ })).toContainText(/\d+ to \d+.*\d+ to \d+/, weighed);
});

test('the maxima and last sessions of a lifter are on the first screen of a laptop, and the maxima on that of a phone', async ({
  page,
}) => {
  for (const [width, height, table] of [
    [1440, 900, 'Last sessions'],
    [390, 844, "Today's maximum"],
  ] as const) {
    await page.setViewportSize({ width, height });
    await page.goto('/lifters/lifter-ilse');
    const line = page.getByRole('table', { name: table }).getByRole('row').nth(3);
    await expect(line).toBeVisible();
    const { y, height: tall } = (await line.boundingBox())!;
    expect(y + tall).toBeLessThanOrEqual(height);
  }
});

for (const light of ['day', 'night'] as const) {
  for (const [half, some] of [
    ['first', parts.slice(0, 7)],
    ['second', parts.slice(7)],
  ] as const) {
    test(`the ${half} half of the parts is one tap away on a phone, outlives a reload, fits the screen and is silent, by ${light}`, async ({
      page,
    }) => {
      const said: string[] = [];
      page.on('console', (message) => said.push(message.text()));
      page.on('pageerror', (error) => said.push(error.message));
      await page.setViewportSize({ width: 390, height: 844 });
      await page.goto('/lifters/lifter-ilse');
      await page.getByRole('radio', { name: light, exact: true }).check();
      const links = page.getByRole('navigation', { name: 'Of this lifter' }).getByRole('link');
      await expect(page.getByText(/Working out from the log/)).toHaveCount(0, weighed);
      await expect(links).toHaveText(parts);
      for (const part of some) {
        await links.filter({ hasText: part }).click();
        await expect(links.and(page.locator('[aria-current=page]'))).toHaveText(part);
        const heading = (await page.locator('main h2').first().textContent())!;
        await page.reload();
        await expect(page.locator('main h2').first()).toHaveText(heading, weighed);
        await expect(page.locator('[aria-busy=true]')).toHaveCount(0, weighed);
        expect(await page.evaluate(() => document.documentElement.scrollWidth), part).toBe(390);
        await page.keyboard.press('End');
        await expect(links.filter({ hasText: part })).toBeInViewport();
        expect((await new AxeBuilder({ page }).analyze()).violations, part).toEqual([]);
      }
      expect(said).toEqual([]);
    });
  }
}

async function joins(page: Page): Promise<string> {
  const joined = await page.request.post('/api/records/lifter', {
    data: { name: 'Newly Joined', category: 'men', statureM: 1.8 },
  });
  return (await joined.json()).record.id;
}
