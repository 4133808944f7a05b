import { readFile } from 'node:fs/promises';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { test } from './walk.ts';

async function addBar(page: Page, label: string): Promise<void> {
  const added = await page.request.post('/api/records/bar', { data: { label, massKg: 20 } });
  expect(added.status()).toBe(201);
}

async function labels(page: Page): Promise<string[]> {
  const { records } = await (await page.request.get('/api/records/bar')).json();
  return records.map(({ label }: { label: string }) => label);
}

async function noViolations(page: Page): Promise<void> {
  for (const light of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme: light });
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  }
}

async function noWiderThanScreen(page: Page): Promise<void> {
  for (const width of [1440, 1024, 390]) {
    await page.setViewportSize({ width, height: 800 });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(wide, `at ${width} px`).toBeLessThanOrEqual(0);
  }
  await page.setViewportSize({ width: 1280, height: 800 });
}

test('a snapshot is taken, looked into and restored; what it replaces is in the list, downloaded, and removed after a question', async ({
  page,
}) => {
  await page.goto('/gear/club');
  const copies = page.getByRole('table', { name: 'Copies of the club' });
  // The program takes the first itself.
  await expect(copies.getByRole('row')).toHaveCount(2);
  await addBar(page, 'After the snapshot');
  await copies.getByRole('button', { name: /^Look into the snapshot of / }).click();
  await expect(page.getByText(/Everything that .* holds now would be replaced/)).toBeVisible();
  await noViolations(page);
  await noWiderThanScreen(page);
  await page.getByRole('button', { name: 'Restore this copy' }).click();
  await expect(page.getByText(/The club now holds what was in the snapshot of/)).toBeVisible();
  expect(await labels(page)).not.toContain('After the snapshot');

  await expect(copies.getByText('until it was replaced')).toBeVisible();
  const download = page.waitForEvent('download');
  await copies.getByRole('link', { name: /^Download the club until / }).click();
  const archive = JSON.parse(await readFile(await (await download).path(), 'utf8'));
  expect(JSON.stringify(archive.records.bar)).toContain('After the snapshot');
  await copies.getByRole('button', { name: /^Look into the club until / }).click();
  await page.getByRole('button', { name: 'Restore this copy' }).click();
  await expect.poll(() => labels(page)).toContain('After the snapshot');
  await page.getByRole('button', { name: 'Take a snapshot now' }).click();
  await expect(page.getByText('A snapshot of the club was taken and checked.')).toBeVisible();
  const rows = await copies.getByRole('row').count();
  await copies
    .getByRole('button', { name: /^Remove the snapshot of / })
    .first()
    .click();
  await noViolations(page);
  await page.getByRole('button', { name: 'Keep it' }).click();
  await expect(copies.getByRole('row')).toHaveCount(rows);
  await copies
    .getByRole('button', { name: /^Remove the snapshot of / })
    .first()
    .click();
  await page.getByRole('button', { name: 'Remove it', exact: true }).click();
  await expect(copies.getByRole('row')).toHaveCount(rows - 1);
});

test('what was done is undone one after the other, named beforehand, and done again; what cannot be says why', async ({
  page,
}) => {
  await addBar(page, 'First');
  await addBar(page, 'Second');
  await page.goto('/gear/done');
  const next = page.getByRole('region', { name: 'Undo' });
  await expect(next).toContainText('Added the bar "Second".');
  await expect(next).toContainText('the coach at this computer');
  await noViolations(page);
  await noWiderThanScreen(page);
  await next.getByRole('button', { name: 'Undo' }).click();
  await expect(next).toContainText('Added the bar "First".');
  await next.getByRole('button', { name: 'Undo' }).click();
  expect(await labels(page)).not.toContain('First');
  const lines = page.getByRole('list', { name: 'Changes, newest first' }).getByRole('listitem');
  await expect(lines.first()).toContainText('Taken back: added the bar "First".');
  // Before that the invented club was put in the place of an empty one.
  await expect(next.getByRole('button', { name: 'Undo' })).toBeDisabled();
  await expect(next).toContainText('replaced the whole club by another');
  await next.getByRole('button', { name: 'Do it again' }).click();
  await expect.poll(() => labels(page)).toContain('First');
  await next.getByRole('button', { name: 'Do it again' }).click();
  await expect.poll(() => labels(page)).toContain('Second');
  await expect(next.getByRole('button', { name: 'Do it again' })).toHaveCount(0);
  await noViolations(page);
});
