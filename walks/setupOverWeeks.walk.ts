import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { test } from './walk.ts';

const weighed = { timeout: 60_000 };
const today = Date.now();
const daysAgo = (days: number) => new Date(today - days * 86_400_000).toISOString().slice(0, 10);

for (const light of ['day', 'night'] as const) {
  test(`a setup is followed over the weeks from the line of the log and from the lifter's page, by ${light}`, async ({
    page,
  }) => {
    const said: string[] = [];
    page.on('console', (message) => said.push(message.text()));
    page.on('pageerror', (error) => said.push(error.message));
    const lifterId = await joins(page);
    await page.setViewportSize({ width: 390, height: 844 });
    await page.goto(`/log?lifter=${lifterId}`);
    await page.getByRole('radio', { name: light, exact: true }).check();
    // The newest day, which is open, was another setup's.
    await page.locator('.log-date').nth(1).click();
    await page.getByRole('link', { name: /box 33 cm/ }).click();
    await expect(page).toHaveURL(/\/weeks\?set=/);
    const days = page.getByRole('table', { name: 'This setup over the weeks' }).getByRole('row');
    await expect(days).toHaveCount(4);
    await expect(days.nth(1)).toContainText('3 × 2 at 90 kg');
    // The mean of 0.7 and 0.6.
    await expect(days.nth(1)).toContainText('0.65 m/s');
    await expect(days.nth(3)).toContainText('100 kg, missed');
    await expect(days.nth(1)).toContainText(/about \d+ kg/, weighed);
    await expect(page.getByRole('img', { name: /^Heaviest bar, kg; a ring was missed/ })).toBeVisible();
    await expect(page.getByRole('img', { name: /^Mean speed of that bar/ })).toBeVisible();
    await expect(page.getByText('heaviest bar in this setup today')).toBeVisible();

    await page.getByLabel('Setup', { exact: true }).selectOption({ label: 'squat, free' });
    await expect(days).toHaveCount(2);
    await page.reload();
    await expect(days).toHaveCount(2);
    await expect(page.getByLabel('Setup', { exact: true }).locator('option:checked')).toHaveText(
      'squat, free',
    );

    await page
      .getByRole('navigation', { name: 'Of this lifter' })
      .getByRole('link', { name: 'Today' })
      .click();
    await page
      .getByRole('table', { name: 'Last time in each setup' })
      .getByRole('link', { name: /box 33 cm/ })
      .click();
    await expect(days).toHaveCount(4);
    await expect(days.nth(1)).toContainText(/about \d+ kg/, weighed);
    for (const width of [390, 1024, 1440]) {
      await page.setViewportSize({ width, height: 844 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    }
    expect(said).toEqual([]);
  });
}

test('pictures that have not yet followed a page that got narrower do not make it scroll', async ({
  page,
}) => {
  // No drawing learns a width but that of the wide page.
  await page.addInitScript(() => {
    const Real = window.ResizeObserver;
    window.ResizeObserver = class extends Real {
      constructor(told: ResizeObserverCallback) {
        super((entries, observer) => {
          if (innerWidth === 1440) told(entries, observer);
        });
      }
    };
  });
  await page.setViewportSize({ width: 1440, height: 844 });
  await page.goto(`/lifters/${await joins(page)}/weeks`);
  await page.getByLabel('Setup', { exact: true }).selectOption({ label: 'squat, box 33 cm' });
  const strength = page.getByRole('img', { name: /^Best set as straight weight, kg/ });
  await expect(strength).toBeVisible(weighed);
  await page.setViewportSize({ width: 1024, height: 844 });
  expect(await strength.evaluate((drawing) => drawing.getBoundingClientRect().right)).toBeGreaterThan(1024);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(1024);
});

/** Somebody new with a box squat on three days and a free one on a fourth. */
async function joins(page: Page): Promise<string> {
  const joined = await page.request.post('/api/records/lifter', {
    data: { name: 'Newly Joined', category: 'men', statureM: 1.8 },
  });
  const lifterId: string = (await joined.json()).record.id;
  const box = (days: number, barKg: number, more: object) => ({
    lifterId,
    doneOn: daysAgo(days),
    lift: 'squat',
    setup: { start: { way: 'box', heightM: 0.33 }, barKg },
    ...more,
  });
  const doubles = { reps: 2, made: 2, meanSpeedsMps: [0.7, 0.6] };
  const sets = [
    box(20, 100, { reps: 1, made: 0 }),
    box(13, 85, doubles),
    ...Array.from({ length: 3 }, () => box(6, 90, doubles)),
    box(4, 110, { setup: { start: { way: 'free', heightM: null }, barKg: 110 }, reps: 3, made: 3 }),
  ];
  expect((await page.request.post('/api/sets', { data: { sets } })).status()).toBe(201);
  return lifterId;
}
