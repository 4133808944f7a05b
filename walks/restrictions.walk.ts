import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { test } from './walk.ts';

const solved = { timeout: 60_000 };

test("a restriction is entered on the lifter's page, holds on the day and its sheet, and is over at one tap", async ({
  page,
}) => {
  await openLifter(page, 'Ilse Vandermolen');
  await page.getByRole('link', { name: 'Restrictions' }).click();
  await page.getByRole('button', { name: 'Restrict this lifter' }).click();
  const form = page.getByRole('form', { name: 'Restrict this lifter' });
  await form.getByRole('button', { name: 'Save' }).click();
  // No field of a share is there yet that could be named.
  await expect(form).toContainText(
    'The restriction is empty; say how deep this lifter may go, or how much the load may be.',
  );
  // Tomorrow's day sits her on a box of 33 cm; an inch is 2.54 cm by definition.
  const deepest = form.getByLabel('No deeper than on a box of');
  await deepest.selectOption({ label: "another height, not the club's boxes" });
  await form.getByLabel('Height of that box').fill('15 in');
  await form.getByLabel('From').fill('2026-01-02');
  await form.getByLabel('Note').fill('Hip.');
  for (const light of ['day', 'night']) {
    await page.getByRole('radio', { name: light, exact: true }).check();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  }
  await form.getByRole('button', { name: 'Save' }).click();
  const section = page.locator('#restrictions');
  await expect(section).toContainText(
    'Squat. Restricted until further notice: no deeper than on a box of 38.1 cm.',
  );
  await expect(page.getByText('Days give this lifter less in the squat')).toBeVisible();

  await page.getByRole('link', { name: 'Day', exact: true }).click();
  await page.getByRole('row', { name: /Speed squat/ }).click();
  await page.getByRole('button', { name: 'Work the loads out again' }).click();
  await expect(
    page.getByText(/Restricted until further notice.*Give this lifter a box of at least 38\.1 cm/),
  ).toBeVisible(solved);
  await page.getByRole('link', { name: 'Rack sheets' }).click();
  // Maribel is held back in the demo itself: to a box as high as the one she has, and to a load at lockout.
  const south = page.getByRole('region', { name: /^Sheet of / }).filter({ hasText: 'Maribel' });
  await expect(south).toContainText(
    /Maribel: Restricted until .* at lockout at most 90 % of the maximum \(\d+/,
  );
  await expect(south).not.toContainText('physiotherapist');

  await openLifter(page, 'Ilse Vandermolen');
  await page.getByRole('link', { name: 'See the restriction.' }).click();
  await section.getByRole('button', { name: 'It is over' }).click();
  await expect(section).toContainText('Over; it began');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(section.getByRole('button', { name: 'It is over' })).toBeVisible();
});

async function openLifter(page: Page, name: string): Promise<void> {
  await page.goto('/lifters');
  await page.getByText(name).click();
  await expect(page.getByRole('heading', { name, level: 1 })).toBeVisible();
}
