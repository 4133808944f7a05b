import { AxeBuilder } from '@axe-core/playwright';
import { expect } from '@playwright/test';
import { test } from './walk.ts';

const aDayMs = 86_400_000;

test('a clock that stands before the last change is told above every page until it is right', async ({
  page,
}) => {
  await page.clock.install();
  await page.clock.setFixedTime(Date.now() - aDayMs);
  await page.goto('/gear/club');
  const told = page.getByRole('alert').filter({ hasText: 'The clock of this computer says' });
  await expect(told).toContainText('set the clock right');
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.getByRole('link', { name: 'Log' }).first().click();
  await expect(told).toBeVisible();
  await page.clock.setFixedTime(Date.now());
  await page.clock.runFor(30_000);
  await expect(told).toHaveCount(0);
});
