import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { test } from './walk.ts';

const MS_A_DAY = 86_400_000;
/** Nothing here hangs on today: all days are counted back from it. */
const daysAgo = (days: number) => new Date(Date.now() - days * MS_A_DAY).toISOString().slice(0, 10);

test.describe('a club of its own', () => {
  test.use({ startsWith: 'nothing' });

  test('the meet ahead and the meets behind are told, in both lights and on a phone', async ({
    page,
    address,
  }) => {
    const lifterId = await logOneMeet(page, address);
    await page.goto(`/lifters/${lifterId}/meet`);
    const ahead = page.getByRole('region', { name: 'At the next meet' });
    await expect(ahead.getByText(/^Squat on .*, raw: the best single/)).toBeVisible({ timeout: 90_000 });
    await expect(ahead.getByRole('img', { name: /^Chance that a bar is made/ })).toBeVisible();
    await expect(ahead.getByText(/^9\d %/).first()).toBeVisible();
    await expect(ahead.getByText('An estimate is not permission.')).toBeVisible();
    await expect(ahead.getByText(/^By the trade's rule.*: 158 kg, from 155 kg/)).toBeVisible();
    const before = await ahead.getByText(/the best single of the day/).textContent();
    await ahead.getByLabel('Equipment').selectOption('knee wraps');
    await expect(ahead.getByText(/^Squat on .*, knee wraps/)).toBeVisible();
    await page.reload();
    await expect(ahead.getByText(/^Squat on .*, knee wraps/)).toBeVisible({ timeout: 90_000 });
    await ahead.getByLabel('Equipment').selectOption('raw');
    await ahead.getByRole('radio', { name: '2 %' }).check();
    await expect(ahead.getByText('That is your assumption.')).toBeVisible();
    expect(await ahead.getByText(/the best single of the day/).textContent()).not.toBe(before);
    await ahead.getByLabel('Day of the meet').fill(daysAgo(40));
    await expect(ahead.getByRole('alert')).toContainText('allowed is today');

    await page.goto('/evidence');
    await page.getByRole('link', { name: 'Forecasts of past meets, beside what was lifted' }).click();
    await expect(page.getByRole('heading', { name: 'How often did the ranges hold?' })).toBeVisible({
      timeout: 120_000,
    });
    await expect(page.getByText(/^2 lifts at 2 meets/)).toBeVisible();
    await expect(page.getByText(/^Of 4 attempts 3 were made/)).toBeVisible();
    await page.getByText('The same as a table').click();
    await expect(
      page.getByRole('table', { name: 'Lifts, forecast and made' }).getByText('155.0').first(),
    ).toBeVisible();

    for (const light of ['day', 'night'] as const) {
      await page.getByRole('radio', { name: light, exact: true }).check();
      expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    }
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    await page.goto(`/lifters/${lifterId}/meet`);
    await expect(ahead.getByText('An estimate is not permission.')).toBeVisible({ timeout: 90_000 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    expect((await new AxeBuilder({ page }).include('.projection').analyze()).violations).toEqual([]);
  });

  test('without any meet the page says how to begin', async ({ page }) => {
    await page.goto('/evidence/backtest');
    await expect(page.getByRole('heading', { name: 'No meet to forecast yet' })).toBeVisible();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  });
});

/** One lifter, a meet long ago and one a month ago, a pin squat hard on two days before each and two days after. */
async function logOneMeet(page: Page, address: string): Promise<string> {
  const headers = { origin: address };
  const data = { name: 'Ana', category: 'other', statureM: 1.75 };
  const made = await (await page.request.post('/api/records/lifter', { data, headers })).json();
  const lifterId: string = made.record.id;
  const set = (days: number, barKg: number, more: object = {}) => ({
    lifterId,
    lift: 'squat',
    setup: { start: { way: 'free', heightM: null }, barKg },
    doneOn: daysAgo(days),
    reps: 1,
    made: 1,
    ...more,
  });
  const pins = (days: number, barKg: number) =>
    set(days, barKg, {
      setup: { start: { way: 'pins', heightM: 1.1 }, barKg },
      repsInReserve: 0,
    });
  const sets = [
    pins(150, 168),
    pins(145, 170),
    set(140, 150, { platform: true }),
    pins(60, 174),
    pins(50, 175),
    set(30, 150, { platform: true, order: 1 }),
    set(30, 155, { platform: true, order: 2 }),
    set(30, 160, { platform: true, order: 3, made: 0 }),
    pins(20, 176),
    pins(10, 178),
  ];
  const logged = await page.request.post('/api/sets', { data: { sets }, headers });
  expect(logged.status()).toBe(201);
  return lifterId;
}
