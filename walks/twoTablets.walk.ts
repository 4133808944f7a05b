import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { test } from './walk.ts';

test('two tablets that change the same are asked, and what only one of them changed is kept', async ({
  page,
  context,
}) => {
  const other = await context.newPage();
  for (const tablet of [page, other]) await tablet.goto('/gear/club');
  const heading = (club: string) => page.locator('.shell-club').getByText(club);

  await name(page).fill('Weir Street');
  await save(page);
  await expect(heading('Weir Street')).toBeVisible();
  // Typed before the other name came, and still there.
  await clock(other).selectOption('Europe/London');
  await save(other);
  await expect(clock(other)).toHaveValue('Europe/London');
  await expect(name(other)).toHaveValue('Weir Street');
  await expect(other.getByRole('dialog')).toHaveCount(0);

  await name(other).fill('Lower Weir');
  await name(page).fill('Upper Weir');
  await save(page);
  await expect(heading('Upper Weir')).toBeVisible();
  await save(other);
  const question = other.getByRole('dialog', { name: 'Both of you changed this' });
  await expect(question).toContainText('The coach at this computer changed');
  await expect(question.getByRole('row', { name: 'name Upper Weir Lower Weir' })).toBeVisible();
  expect((await new AxeBuilder({ page: other }).analyze()).violations).toEqual([]);
  await question.getByRole('button', { name: 'Back to what I typed' }).click();
  await expect(name(other)).toHaveValue('Lower Weir');
  await save(other);
  await question.getByRole('button', { name: 'Put mine' }).click();
  await expect(question).toHaveCount(0);
  await expect(heading('Lower Weir')).toBeVisible();

  await name(other).fill('Weir Lane');
  await name(page).fill('Mill Lane');
  await save(page);
  await expect(heading('Mill Lane')).toBeVisible();
  await save(other);
  await question.getByRole('button', { name: 'Keep theirs' }).click();
  await expect(name(other)).toHaveValue('Mill Lane');
});

test('what another saves while a page opens is not missed', async ({ page, context }) => {
  let listen: (() => void) | undefined;
  const saved = new Promise<void>((resolve) => {
    listen = resolve;
  });
  await page.route('**/api/events*', async (route) => {
    await saved;
    await route.continue();
  });
  await page.goto('/gear/club');
  await expect(name(page)).toBeVisible();
  const other = await context.newPage();
  await other.goto('/gear/club');
  await name(other).fill('Weir Street');
  await save(other);
  await expect(other.locator('.shell-club')).toContainText('Weir Street');
  listen?.();
  await expect(page.locator('.shell-club')).toContainText('Weir Street');
});

const name = (tablet: Page) => tablet.getByLabel('Name', { exact: true });
const clock = (tablet: Page) => tablet.getByLabel('Time zone', { exact: true });
const save = (tablet: Page) => tablet.getByRole('button', { name: 'Save', exact: true }).click();
