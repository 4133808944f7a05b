import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { test } from './walk.ts';

test('every set is walked by keys in the picture of strength, and a setup that was asked for stays asked for', async ({
  page,
}) => {
  const lifterId = await joins(page);
  const today = Date.now();
  const daysAgo = (days: number) => new Date(today - days * 86_400_000).toISOString().slice(0, 10);
  const set = (days: number, barKg: number, reps: number, made: number) => ({
    lifterId,
    doneOn: daysAgo(days),
    lift: 'squat',
    setup: { start: { way: 'free', heightM: null }, barKg },
    reps,
    made,
  });
  const sets = [set(200, 140, 1, 1), set(30, 150, 3, 3), set(23, 160, 1, 1), set(16, 172.5, 1, 0)];
  expect((await page.request.post('/api/sets', { data: { sets } })).status()).toBe(201);
  await page.goto(`/lifters/${lifterId}/strength`);

  // Made 160 kg, missed 172.5 kg: what is believed lies between, give or take a day's form.
  const maximum = page.locator('dl', { hasText: "today's maximum, raw" }).locator('.numeral').first();
  await expect(maximum).toBeVisible();
  const kg = Number.parseFloat((await maximum.textContent()) ?? '');
  expect(kg).toBeGreaterThan(150);
  expect(kg).toBeLessThan(182);

  const picture = page.getByRole('slider', { name: 'Sets in the picture' });
  await picture.focus();
  await page.keyboard.press('End');
  await expect(picture).toHaveAttribute('aria-valuetext', /172\.5 kg, missed, free\. Stands for less than/);
  await expect(page.getByText('172.5 kg, missed')).toBeVisible();
  await page.keyboard.press('ArrowLeft');
  await expect(picture).toHaveAttribute('aria-valuetext', /160 kg, a single/);
  await expect(picture).toHaveAttribute('aria-valuemax', '4');
  await page.getByRole('radio', { name: '12 weeks' }).check();
  await expect(picture).toHaveAttribute('aria-valuemax', '3');
  await page.getByText('The same as tables').click();
  await expect(page.getByRole('table', { name: 'Sets in the picture' }).getByRole('row')).toHaveCount(4);

  await turnTo(page, 'Any setup');
  const setups = page.getByRole('table', { name: 'Maximum for any setup' });
  await expect(setups.getByRole('row', { name: /^free/ })).toContainText(/\d+\s*kg/);
  await page.getByRole('button', { name: 'Add a setup' }).click();
  const form = page.locator('form', { hasText: 'Another setup' });
  await form.getByLabel('Start', { exact: true }).selectOption('pins');
  await form.getByLabel('Bar on pins at').fill('130 cm');
  await form.getByRole('button', { name: 'Save' }).click();
  await expect(setups.getByRole('row', { name: /^pins 130 cm/ })).toContainText(/\d+ to \d+/);
  await page.reload();
  await expect(setups.getByRole('row', { name: /^pins 130 cm/ })).toBeVisible();
  await setups.getByRole('button', { name: 'Take off pins 130 cm' }).click();
  await expect(setups.getByRole('row', { name: /^pins 130 cm/ })).toHaveCount(0);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test('work capacity over the season is a picture and a table, twelve weeks at a time', async ({ page }) => {
  const lifterId = await joins(page);
  const today = Date.now();
  const daysAgo = (days: number) => new Date(today - days * 86_400_000).toISOString().slice(0, 10);
  const set = (days: number, barKg: number, reps: number, made: number, repsInReserve: number | null) => ({
    lifterId,
    doneOn: daysAgo(days),
    lift: 'squat',
    setup: { start: { way: 'free', heightM: null }, barKg },
    reps,
    made,
    repsInReserve,
  });
  const weeks = Array.from({ length: 24 }, (_, week) => 7 * week + 1);
  const sets = weeks.flatMap((days) => [
    set(days, 155, 1, 1, null),
    set(days, 165, 1, 0, null),
    set(days, 127.5, 6, 6, 1),
  ]);
  expect((await page.request.post('/api/sets', { data: { sets } })).status()).toBe(201);
  await page.goto(`/lifters/${lifterId}/work-capacity`);
  const picture = page.getByRole('img', { name: /^Reps of Newly Joined at 80 % of the maximum, squat/ });
  await expect(picture).toBeVisible();
  // Every week the same: nobody can say that it changed.
  await expect(page.getByText(/The log cannot tell whether work capacity rose or fell/)).toBeVisible();
  await page.getByRole('radio', { name: '90 %' }).check();
  await page.reload();
  await expect(page.getByRole('img', { name: /^Reps of Newly Joined at 90 %/ })).toBeVisible();
  await page.getByText('The same as a table').click();
  const table = page.getByRole('table', { name: 'Work capacity over the season' });
  await expect(table.getByRole('row')).toHaveCount(3);
  await expect(table.getByRole('row').nth(1)).toContainText('12');
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test('while strength is worked out the page stands with its sessions, and fills in a lift at a time', async ({
  page,
}) => {
  const waiting = new Map<string, () => void>();
  await page.route('**/api/estimates?*', async (route) => {
    const lift = new URL(route.request().url()).searchParams.get('lift') ?? '';
    await new Promise<void>((resolve) => waiting.set(lift, resolve));
    await route.continue();
  });
  await page.route('**/api/estimates/capacity?*', async (route) => {
    await new Promise<void>((resolve) => waiting.set('season', resolve));
    await route.continue();
  });
  await page.goto('/lifters/lifter-bastien');
  await expect(page.getByRole('table', { name: 'Last sessions' })).toBeVisible();
  await turnTo(page, 'Strength');
  await expect(page.getByRole('table', { name: 'What this lifter can do' })).toBeVisible();
  const line = page.getByText(/Working out from the log: (?!work capacity)/);
  const season = page.getByText(/Working out from the log: work capacity/);
  await expect(line).toHaveText(/squat, bench press, deadlift$/);
  waiting.get('squat')?.();
  await expect(page.getByText(/^Rests on \d+ sets/)).toBeVisible();
  await expect(line).toHaveText(/: bench press, deadlift$/);
  await turnTo(page, 'Work capacity');
  await expect(season).toBeVisible();
  waiting.get('season')?.();
  await expect(season).toHaveCount(0);
  for (const release of waiting.values()) release();
  await expect(line).toHaveCount(0);
  await turnTo(page, 'Any setup');
  await expect(page.getByRole('button', { name: 'Add a setup' })).toBeInViewport();
});

/** Somebody new of whom the club knows nothing but the stature. */
async function joins(page: Page): Promise<string> {
  const joined = await page.request.post('/api/records/lifter', {
    data: { name: 'Newly Joined', category: 'men', statureM: 1.8 },
  });
  return (await joined.json()).record.id;
}

async function turnTo(page: Page, part: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Of this lifter' }).getByRole('link', { name: part }).click();
}
