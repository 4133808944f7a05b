import { readFile } from 'node:fs/promises';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { readCalendar } from '#contract/tests/readCalendar.ts';
import { test } from './walk.ts';

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

test('the days are downloaded as a calendar, at the hour that the coach says, with names once they are wanted', async ({
  page,
}) => {
  await page.goto('/day');
  await page.getByRole('link', { name: 'In your calendar' }).click();
  const calendar = page.locator('#calendar');
  await expect(calendar).toBeInViewport();
  await expect(calendar.getByText('rackwright serve --calendar-on lan')).toBeVisible();
  await noViolations(page);
  await noWiderThanScreen(page);
  const download = async () => {
    const coming = page.waitForEvent('download');
    await calendar.getByRole('link', { name: 'Download the calendar file' }).click();
    const file = await coming;
    expect(file.suggestedFilename()).toBe('calendar.ics');
    const { events } = readCalendar(await readFile(await file.path(), 'utf8'));
    const meets = events.filter(({ uid }) => uid.startsWith('meet.'));
    return { days: events.filter((event) => !meets.includes(event)), meets };
  };
  // Demo days lie at 18:30 where nobody says another hour.
  const { days: before, meets } = await download();
  expect(before.length).toBeGreaterThan(1);
  for (const event of before) expect(event.wallTime).toContain('T18:30:00');
  expect(meets.map(({ title }) => title)).toContain('Tollbridge Open');
  for (const { start } of meets) expect(start).toMatch(/^\d{4}-\d{2}-\d{2}$/);
  expect(before.map(({ description }) => description).join()).not.toContain('With ');

  await page.getByLabel('Training usually begins at').fill('06:15');
  await page.getByLabel('The calendar says by first names who trains').check();
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(calendar.getByText('who is there by first name')).toBeVisible();
  const { days: after } = await download();
  expect(after.map(({ uid }) => uid)).toEqual(before.map(({ uid }) => uid));
  for (const [i, event] of after.entries()) {
    expect(event.wallTime).toContain('T06:15:00');
    expect(event.sequence).toBeGreaterThan(before[i]!.sequence);
  }
  expect(after.map(({ description }) => description).join()).toContain('With ');

  const whose = calendar.getByLabel('Whose days');
  const lifter = await whose.locator('option').nth(1).textContent();
  await whose.selectOption({ label: lifter! });
  const first = lifter!.split(' ')[0]!;
  for (const { description } of (await download()).days) expect(description).toContain(first);
});

test.describe('where the program lets telephones read', () => {
  test.use({ forTelephones: true });

  test('an address is shown, read by a telephone, and leads to nothing once there is a new one', async ({
    page,
    playwright,
  }) => {
    await page.goto('/gear/club#calendar');
    const calendar = page.locator('#calendar');
    const address = calendar.locator('code').first();
    await expect(address).toHaveText(/^http:\/\/127\.0\.0\.1:\d+\/[\w-]{43}\/calendar\.ics$/);
    const ofClub = (await address.textContent())!;
    const telephone = await playwright.request.newContext();
    const read = async (url: string) => (await telephone.get(url)).status();
    expect(await read(ofClub)).toBe(200);
    await calendar.getByLabel('Whose days').selectOption({ index: 1 });
    await expect(address).not.toHaveText(ofClub);
    expect(await read((await address.textContent())!)).toBe(200);
    await calendar.getByRole('button', { name: 'Make new addresses' }).click();
    await expect(calendar.getByText('must be told their new address')).toBeVisible();
    await noViolations(page);
    await noWiderThanScreen(page);
    await calendar.getByRole('button', { name: 'Make new ones' }).click();
    await expect(page.getByText('those given out before lead to nothing')).toBeVisible();
    await calendar.getByLabel('Whose days').selectOption({ index: 0 });
    expect(await read(ofClub)).toBe(404);
    expect(await read((await address.textContent())!)).toBe(200);
    await telephone.dispose();
  });
});
