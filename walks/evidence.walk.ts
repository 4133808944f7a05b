import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { test } from './walk.ts';

const LIFTERS = ['Ana', 'Bo', 'Cy', 'Di'];
const MEETS = 5;
/** A busy machine may take long to weigh two years of a club for the first time. */
const weighed = { timeout: 45_000 };
/** What each gym gain of the made-up log brings to the platform. */
const CARRY_OVER = 0.5;

test.beforeEach(() => test.setTimeout(120_000));

test.describe('a club of its own', () => {
  test.use({ startsWith: 'nothing' });

  test('an empty log teaches how to begin', async ({ page }) => {
    await page.goto('/evidence');
    await expect(page.getByRole('heading', { name: 'Nothing to compare yet' })).toBeVisible();
    await expect(page.getByText('only a gain at the same setup can be counted')).toBeVisible();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    await page.getByRole('link', { name: 'To the days' }).click();
    await expect(page).toHaveURL(/\/day$/);
  });

  test('a log in which half of each gym gain reached the platform says so, for the club and a lifter, in kg and lb', async ({
    page,
    address,
  }) => {
    await logHalfCarried(page, address);
    await page.goto('/evidence');
    const gained = page.getByRole('region', { name: 'How much of a gym gain reaches the platform?' });
    await expect(gained.getByText(/^10.kg gained .* about 5\.\d.kg on the platform/)).toBeVisible(weighed);
    await expect(gained.getByRole('img', { name: /The whole club: 5\.\d/ })).toBeVisible();
    await expect(gained.getByRole('row', { name: /^Cy/ })).toBeVisible();
    await expect(gained.getByText('Regression to the mean')).toBeVisible();

    await page.getByRole('radio', { name: 'lb', exact: true }).last().check();
    await expect(gained.getByText(/^10.lb gained/)).toBeVisible();
    await page.getByLabel('Answers for').selectOption('Cy');
    await expect(page.getByRole('heading', { name: 'Evidence for Cy' })).toBeVisible();
    await expect(gained.getByText(/^Cy: 10.lb gained/)).toBeVisible();
    await expect(gained.getByRole('row', { name: /^Bo/ })).toBeHidden();

    const equipped = page.getByRole('region', { name: 'Is it different in equipment?' });
    await expect(equipped.getByText(/Too little to say/)).toBeVisible();
    await page.reload();
    await expect(page.getByRole('heading', { name: 'Evidence for Cy' })).toBeVisible();
  });
});

for (const light of ['day', 'night'] as const) {
  test(`nothing on the page is hidden from a screen reader by ${light}`, async ({ page }) => {
    await page.goto('/evidence');
    await page.getByRole('radio', { name: light, exact: true }).check();
    await expect(page.locator('summary').first()).toBeVisible(weighed);
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  });
}

test('those with a label answer alone, in the address, and the way back is beside it', async ({ page }) => {
  await page.goto('/evidence');
  await page.getByLabel('By those with the label').selectOption('early crew', weighed);
  await expect(page.getByRole('heading', { name: 'Evidence for early crew' })).toBeVisible();
  await expect(page).toHaveURL(/label=early\+crew/);
  const boxes = page.getByRole('table', { name: 'What is a centimetre of box worth?' });
  await expect(boxes.getByRole('row', { name: /^All of early crew/ })).toBeVisible(weighed);
  await expect(page.getByText('The whole club', { exact: true })).toHaveCount(0);
  await page.getByLabel('By those with the label').selectOption('everybody');
  await expect(page.getByRole('heading', { name: 'Evidence', exact: true })).toBeVisible();
  await expect(boxes.getByRole('row', { name: /^The whole club/ })).toBeVisible(weighed);
});

test('what all lifters share is said once, without a row each', async ({ page }) => {
  await page.goto('/evidence');
  await expect(page.getByText(/^All \d+ lifters share the club's number/)).toBeVisible(weighed);
  const table = page.getByRole('table', { name: 'What is a centimetre of box worth?' });
  await expect(table.getByRole('row')).toHaveCount(2);
});

test('the page fits a phone', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/evidence');
  await expect(page.locator('summary').first()).toBeVisible(weighed);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
});

/** Two gym singles and a meet every sixteen weeks, gains of 2 to 12 kg in turn. */
async function logHalfCarried(page: Page, address: string): Promise<void> {
  const headers = { origin: address };
  const sets = [];
  for (const [i, name] of LIFTERS.entries()) {
    const data = { name, category: 'other', statureM: 1.75 };
    const made = await (await page.request.post('/api/records/lifter', { data, headers })).json();
    let [gymKg, meetKg] = [150 + 10 * i, 200 + 10 * i];
    for (let meet = 0; meet < MEETS; meet++) {
      const gainKg = meet === 0 ? 0 : 2 + ((5 * meet + 3 * i) % 11);
      gymKg += gainKg;
      meetKg += CARRY_OVER * gainKg + ((meet + i) % 2 === 0 ? 0.2 : -0.2);
      const setOf = (daysBefore: number, barKg: number, way: 'box' | 'free') => ({
        lifterId: made.record.id,
        lift: 'squat',
        setup: { start: { way, heightM: way === 'box' ? 0.36 : null }, barKg },
        doneOn: new Date(Date.UTC(2024, 0, 20 + 112 * meet - daysBefore)).toISOString().slice(0, 10),
        reps: 1,
        made: 1,
        platform: way === 'free',
        repsInReserve: way === 'box' ? 0 : null,
      });
      sets.push(setOf(21, gymKg, 'box'), setOf(14, gymKg, 'box'), setOf(0, meetKg, 'free'));
    }
  }
  const logged = await page.request.post('/api/sets', { data: { sets }, headers });
  expect(logged.status()).toBe(201);
}
