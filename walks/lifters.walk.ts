import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { test } from './walk.ts';

test('the same bar and bands are drawn and counted heavier for the taller of two lifters', async ({
  page,
}) => {
  await open(page, 'Ilse Vandermolen');
  const alone = await bandKg(page);
  await page.getByRole('button', { name: 'Beside another lifter' }).click();
  await page.getByLabel('Lifter', { exact: true }).selectOption({ label: 'Bastien Corvellou, 197 cm' });
  const [short, tall] = await bandKg(page);
  expect(short).toEqual(alone[0]);
  expect(tall!.lockout).toBeGreaterThan(short!.lockout);
  expect(tall!.bottom).toBeGreaterThan(short!.bottom);
  await expect(page.getByRole('img', { name: /^Ilse Vandermolen/ })).toBeVisible();
  await expect(page.getByRole('img', { name: /^Bastien Corvellou/ })).toBeVisible();
});

test('a bar typed in pounds or dragged moves picture and numbers at once, and leaves the bands alone', async ({
  page,
}) => {
  await open(page, 'Ilse Vandermolen');
  const [before] = await bandKg(page);
  await page.getByLabel('On the bar', { exact: true }).fill('132 lb');
  // 132 lb is 59.87 kg (NIST SP 811: 0.45359237 kg a pound).
  await expect(page.getByText(/^59\.9 bar/).first()).toBeVisible();
  await expect(page.getByRole('img', { name: /59\.9 kg/ })).toBeVisible();
  await page.getByLabel('On the bar, by dragging').fill('80');
  await expect(page.getByText(/^80 bar/).first()).toBeVisible();
  expect((await bandKg(page))[0]).toEqual(before);
});

test('a new lifter starts with estimated heights, and a tape replaces them', async ({ page }) => {
  await page.goto('/lifters/new');
  await page.getByLabel('Name').fill('Tall Newcomer');
  await page.getByLabel('Stature').fill('3 m');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Stature is 300 cm; allowed is 100 cm to 250 cm.')).toBeVisible();
  // 6 ft 5 in is 195.58 cm by the exact inch.
  await page.getByLabel('Stature').fill(`6'5"`);
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByRole('heading', { name: 'Tall Newcomer' })).toBeVisible();
  await expect(page.getByText('195.6').or(page.getByText('195.58')).first()).toBeVisible();

  const heights = page.getByRole('table', { name: 'Bar heights' });
  await expect(heights.getByRole('row', { name: /^squat/ })).toContainText('est.');
  await page.getByRole('button', { name: 'Add heights' }).click();
  await page.getByRole('textbox', { name: 'Bottom' }).fill('101');
  await page.getByRole('textbox', { name: 'Lockout' }).fill('99');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Lockout must be higher than bottom.')).toBeVisible();
  await page.getByRole('textbox', { name: 'Lockout' }).fill('166.5');
  await page.getByRole('button', { name: 'Save' }).click();
  const squat = heights.getByRole('row', { name: /^squat/ });
  await expect(squat).toContainText('101.0');
  await expect(squat).not.toContainText('est.');
  await expect(page.getByRole('img', { name: /^Tall Newcomer/ })).toHaveAccessibleName(
    /at lockout, 167 cm above the floor/,
  );
});

test('a removed best comes back with Undo', async ({ page }) => {
  await open(page, 'Ilse Vandermolen');
  const bests = page.getByRole('table', { name: 'Bests' });
  const newest = await bests.getByRole('row').nth(1).textContent();
  await bests.getByRole('row').nth(1).press('Enter');
  await page.getByRole('button', { name: 'Remove' }).click();
  await expect(bests.getByRole('row').nth(1)).not.toHaveText(newest!);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(bests.getByRole('row').nth(1)).toHaveText(newest!);
});

test('the list is walked by arrows and letters, Enter opens and Esc leaves', async ({ page }) => {
  await page.goto('/lifters');
  const rows = page.getByRole('table', { name: 'Lifters' }).getByRole('row');
  await rows.nth(1).focus();
  await page.keyboard.press('ArrowDown');
  await expect(rows.nth(2)).toBeFocused();
  await page.keyboard.type('il');
  await expect(rows.filter({ hasText: 'Ilse' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Ilse Vandermolen' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('heading', { name: 'Lifters' })).toBeVisible();
});

test('a minor is marked in the list and cautioned about on the page', async ({ page }) => {
  await page.goto('/lifters');
  await expect(page.getByRole('row', { name: /Hana/ })).toContainText('under 18');
  await page.getByRole('row', { name: /Hana/ }).click();
  await expect(page.getByText(/for a qualified coach to decide/)).toBeVisible();
});

for (const light of ['day', 'night'] as const) {
  test(`nothing on the lifters' pages is hidden from a screen reader by ${light}`, async ({ page }) => {
    await page.goto('/lifters');
    await page.getByRole('radio', { name: light, exact: true }).check();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    await open(page, 'Hana Morikubo');
    await page.getByRole('button', { name: 'Beside another lifter' }).click();
    await page.getByRole('button', { name: 'Write down a best' }).click();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  });
}

async function open(page: Page, name: string): Promise<void> {
  await page.goto('/lifters');
  await page.getByRole('row', { name: new RegExp(name) }).click();
  await expect(page.getByRole('heading', { name, exact: true })).toBeVisible();
}

/** What the bands add at both ends, trial by trial, as the page writes it: "77.5 bar + 8 band ± 1". */
async function bandKg(page: Page): Promise<{ bottom: number; lockout: number }[]> {
  const parts = page.getByText(/bar .*band/);
  await expect(parts.first()).toBeVisible();
  const numbers = (await parts.allTextContents()).map((text) => Number(/\+ (\d+) band/.exec(text)?.[1]));
  return Array.from({ length: numbers.length / 2 }, (_, i) => ({
    bottom: numbers[2 * i]!,
    lockout: numbers[2 * i + 1]!,
  }));
}
