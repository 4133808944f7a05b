import { AxeBuilder } from '@axe-core/playwright';
import { expect } from '@playwright/test';
import { test } from './walk.ts';

/** More pages than the six connections that a browser opens to one place over HTTP/1.1 (RFC 9112, 9.4, leaves it to them). */
const addresses = [
  '/day',
  '/day/new',
  '/lifters',
  '/gear',
  '/gear/height',
  '/gear/racks',
  '/gear/iron',
  '/gear/club',
];

test('any number of addresses typed one after another open, though each page listens for news', async ({
  page,
}) => {
  for (const address of addresses) {
    await page.goto(address);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  }
});

test('an address of a season that leads nowhere says so, and shows no plan in its place', async ({
  page,
}) => {
  await page.goto('/season/season-early/nothing');
  await expect(page.getByText('There is no such part of a season.')).toBeVisible();
  await expect(page.getByRole('slider')).toHaveCount(0);
  await page.goto('/season/season-early/lifter/lifter-emre/nothing');
  await expect(page.getByText('There is no such page; it may have been removed.')).toBeVisible();
});

test('units are chosen once, for this device: at the head of a wide screen, at the foot of a phone, and stay after a reload', async ({
  page,
}) => {
  const mass = page.getByRole('group', { name: 'Mass on this device' });
  await page.goto('/lifters');
  await expect(mass).toHaveCount(1);
  await mass.getByRole('radio', { name: 'lb' }).check();
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/day');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(mass).toHaveCount(1);
  await expect(mass.getByRole('radio', { name: 'lb' })).toBeChecked();
  // The club keeps its own.
  const club = await page.request.get('/api/records/club');
  expect(JSON.stringify(await club.json())).toContain('"massUnit":"kg"');
});

test('a name is found among many by its beginning, a crew by its label, and words, label and order stay in the address', async ({
  page,
}) => {
  await page.goto('/lifters');
  await page.getByLabel('Name, label or note').fill('ofo');
  const rows = page.getByRole('table', { name: 'Lifters' }).getByRole('row');
  await expect(rows).toHaveCount(2);
  await page.reload();
  await expect(rows).toHaveCount(2);
  await page.getByLabel('Name, label or note').fill('early');
  const early = await rows.count();
  expect(early).toBeGreaterThan(2);
  await page.getByLabel('Name, label or note').fill('');
  await page.getByLabel('Label', { exact: true }).selectOption('early crew');
  await expect(page).toHaveURL(/label=early/);
  await expect(rows).toHaveCount(early);
  await page.reload();
  await expect(rows).toHaveCount(early);
  await page.getByLabel('Label', { exact: true }).selectOption('everybody');
  await page.getByLabel('In order of').selectOption('body mass');
  const masses = async () =>
    (await rows.locator('td:nth-of-type(5)').allTextContents()).filter((text) => /\d/.test(text)).map(Number);
  await expect(page).toHaveURL(/by=mass/);
  expect(await masses()).toEqual((await masses()).toSorted((a, b) => b - a));
  expect((await masses()).length).toBeGreaterThan(10);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});
