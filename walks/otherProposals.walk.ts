import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { test } from './walk.ts';

/** Working a day out may take as long as the solver is given; a walk waits for it. */
const solved = { timeout: 60_000 };

test('another proposal is opened, read, taken with one tap, and one undo brings the first one back', async ({
  page,
}) => {
  const others = await openOthers(page);
  const before = await onBar(page);
  const first = others.getByRole('listitem').first();
  await expect(first).toContainText(/(aim|points|closer).*\./);
  await expect(first).toContainText(/\(aim \d+\).*of strength at the bottom, \d+ % at lockout/);
  const barKg = Number(/^[\d.]+/.exec((await first.textContent()) ?? '')?.[0]);

  await first.getByRole('button', { name: /^Take / }).click();
  await expect(page.getByText('Number 2 of this day')).toBeVisible(solved);
  await expect(row(page)).toContainText("coach's own");
  expect((await onBar(page)).bar).toContain(`${barKg} kg`);
  // What was there before is among the proposals now.
  await expect(others.getByRole('button', { name: new RegExp(before.bands) })).toBeVisible();

  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(page.getByText('Number 3 of this day')).toBeVisible(solved);
  await expect(row(page)).not.toContainText("coach's own");
  expect(await onBar(page)).toEqual(before);
});

for (const light of ['day', 'night'] as const) {
  test(`no other proposal is hidden from a screen reader by ${light}`, async ({ page }) => {
    await page.goto('/day');
    await page.getByRole('radio', { name: light, exact: true }).check();
    await openOthers(page);
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  });
}

/** Works the speed day out and opens what else would do for one lifter. */
async function openOthers(page: Page) {
  await page.goto('/day');
  await page.getByRole('row', { name: /Speed squat/ }).click();
  await expect(row(page)).toContainText('m/s', solved);
  await row(page).getByRole('button', { expanded: false }).first().click();
  const others = page.getByRole('list', { name: 'Other proposals for Lars Østermark' });
  await expect(others).toBeHidden();
  await page.getByText(/other proposals? for Lars|Another proposal for Lars/).click();
  await expect(others).toBeVisible();
  return others;
}

function row(page: Page) {
  return page.getByRole('row').filter({ has: page.getByRole('rowheader', { name: /Lars Østermark/ }) });
}

/** What the row says is on the bar. */
async function onBar(page: Page): Promise<{ bar: string; bands: string }> {
  const label = async (name: RegExp) =>
    (await row(page).getByRole('button', { name }).getAttribute('aria-label')) ?? '';
  const bands = /: (.+)\. Change/.exec(await label(/^Bands of/))?.[1] ?? '';
  return { bar: await label(/^Bar of/), bands };
}
