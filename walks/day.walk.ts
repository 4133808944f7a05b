import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Locator, type Page } from '@playwright/test';
import { test } from './walk.ts';

/** Working a day out may take as long as the solver is given; a walk waits for it. */
const solved = { timeout: 60_000 };
/** So does the whole club's log. */
const workedOut = { timeout: 120_000 };

test("tomorrow's speed day is worked out, a bar set by hand stays, and the sheets print one page a rack", async ({
  page,
}) => {
  await openSpeedDay(page);
  await expect(rowOf(page, 'Lars Østermark')).toContainText('m/s', solved);

  // Every lifter has a load at lockout that is more than the bar, for every bar carries bands in this demo day.
  await rowOf(page, 'Lars Østermark').getByRole('button', { expanded: false }).first().click();
  const bar = page.getByLabel('Bar, discs, collars', { exact: true });
  await bar.fill('100');
  await page.getByRole('button', { name: 'Keep it and work out the rest' }).click();
  await expect(rowOf(page, 'Lars Østermark')).toContainText("coach's own", solved);
  await expect(page.getByText('Number 2 of this day')).toBeVisible(solved);
  await expectOwnBar(page, 100);

  await page.getByRole('button', { name: 'Work the loads out again' }).click();
  await expect(page.getByText('Number 3 of this day')).toBeVisible(solved);
  await expectOwnBar(page, 100);

  await page.reload();
  await expectOwnBar(page, 100);

  await page.getByRole('link', { name: 'Rack sheets' }).click();
  const sheets = page.getByRole('region', { name: /^Sheet of / });
  await expect(sheets).toHaveCount(2);
  await expect(sheets.filter({ hasText: 'Lars Østermark' })).toContainText('set by the coach');
  await expect(sheets.filter({ hasText: 'Lars Østermark' })).toContainText(
    /→\s[\d.]+\sm\/s; \d+\ss a set; all reps .+\d\s%.*; resting 0:30, last rep \d/,
  );
  for (const paper of ['A4', 'Letter']) {
    await page.getByRole('radio', { name: paper, exact: true }).check();
    expect(pagesOf(await page.pdf({ preferCSSPageSize: true }))).toBe(2);
  }
});

test('eight lifters with bar and true loads stand on the first screen of a laptop, the first one on that of a phone', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1440, height: 900 });
  await openSpeedDay(page);
  await expect(rowOf(page, 'Odhrán')).toContainText('m/s', solved);
  const rows = page.getByRole('row').filter({ has: page.getByRole('rowheader') });
  await expect(rows).toHaveCount(8);
  // The offer of the logs takes room above the lifters, and so do two notes that are not on the papers yet.
  await expect(page.getByRole('button', { name: 'Give speeds and chances by the log' })).toBeVisible(
    workedOut,
  );
  for (const name of ['Ilse', 'Emre']) {
    await page.getByRole('button', { name: new RegExp(`^\\d ${name}`) }).click();
    await page.getByLabel('Note for the sheet').fill('Stop at the first pain');
    await page.keyboard.press('Escape');
  }
  await expect(page.getByText('The note for Emre Karataylı was changed.')).toBeVisible();
  expect(await lowestOf(rows)).toBeLessThanOrEqual(900);
  for (const light of ['day', 'night']) {
    await page.getByRole('radio', { name: light, exact: true }).check();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  }
  await page.setViewportSize({ width: 1024, height: 768 });
  const bands = page.getByRole('columnheader', { name: 'Bands' }).first();
  const asBefore = await bands.boundingBox();
  await page.getByRole('button', { name: /^\d Emre/ }).click();
  await expect(page.getByLabel('Note for the sheet')).toBeVisible();
  expect(await bands.boundingBox()).toEqual(asBefore);
  await page.keyboard.press('Escape');
  await page.setViewportSize({ width: 390, height: 844 });
  const first = rows.first();
  for (const told of ['kg', 'At the bottom', 'At lockout'])
    expect(await lowestOf(first.getByText(told))).toBeLessThanOrEqual(844);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test('loads that were worked out for another rack are struck through, and one undo or working out again ends that', async ({
  page,
}) => {
  await openSpeedDay(page);
  const emre = rowOf(page, 'Emre');
  await expect(emre).toContainText('m/s', solved);
  await page.getByRole('button', { name: /^Move Emre/ }).press('ArrowRight');
  await expect(emre).toContainText('Worked out for North rack.');
  await expect(emre.locator('.load .numeral').first()).toHaveCSS('text-decoration-line', 'line-through');
  for (const light of ['day', 'night']) {
    await page.getByRole('radio', { name: light, exact: true }).check();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  }
  await page.getByRole('link', { name: 'Rack sheets' }).click();
  await page.getByRole('button', { name: 'Print', exact: true }).click();
  await expect(page.getByRole('alert')).toContainText('Work them out again first.');
  await expect(page.getByRole('button', { name: 'Print them, marked' })).toBeVisible();
  await page.goBack();
  // What the first move offered to undo may have gone by itself meanwhile; the move is made anew.
  await page.getByRole('button', { name: /^Move Emre/ }).press('ArrowLeft');
  await expect(emre).not.toContainText('Worked out for');
  await page.getByRole('button', { name: /^Move Emre/ }).press('ArrowRight');
  await expect(emre).toContainText('Worked out for North rack.');
  await page.getByRole('button', { name: 'Undo' }).last().click();
  await expect(emre).not.toContainText('Worked out for');
  await page.getByRole('button', { name: /^Move Emre/ }).press('ArrowRight');
  await page.getByRole('button', { name: 'Work the loads out again' }).click();
  await expect(page.getByText('Number 2 of this day')).toBeVisible(solved);
  await expect(emre).not.toContainText('Worked out for');
});

test('a day is copied a week on with five points more, and its title counts on', async ({ page }) => {
  await openSpeedDay(page);
  await page.getByRole('button', { name: 'Date, title, copy' }).click();
  await page.getByLabel('More of the maximum').fill('5');
  await page.getByRole('button', { name: 'Copy a week on' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Speed squat, fourth wave');
  // The demo's day asks for 50 % on the bar and 75 % at lockout.
  await expect(page.getByText('Aim: 55 % on the bar alone; 80 % on everything, at lockout.')).toBeVisible();
  await expect(page.getByRole('row', { name: /Lars/ })).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test('a lifter changes place with the keyboard, and the order stays', async ({ page }) => {
  await openSpeedDay(page);
  const north = page.getByRole('table', { name: /North rack/ });
  const first = north.getByRole('row').nth(1);
  await expect(first).toContainText('Emre');
  await page.getByRole('button', { name: /^Move Emre/ }).press('ArrowDown');
  await expect(north.getByRole('row').nth(2)).toContainText('Emre');
  await page.reload();
  await expect(north.getByRole('row').nth(2)).toContainText('Emre');
});

test('a new day from a starting point teaches what comes next, and asks the server for nothing that is not there', async ({
  page,
}) => {
  const refused: string[] = [];
  page.on('response', (answer) => answer.status() >= 400 && refused.push(answer.url()));
  await page.goto('/day');
  await page.getByRole('link', { name: 'New day' }).click();
  await page.getByRole('radio', { name: /maximal effort/ }).check();
  await page.getByRole('button', { name: 'Begin this day' }).click();
  await expect(page.getByText('Put lifters on the racks below')).toBeVisible();
  await page.getByLabel('Put a lifter on North rack').selectOption({ label: 'Ilse Vandermolen' });
  await expect(page.getByRole('table', { name: /North rack/ })).toContainText('Ilse Vandermolen');
  await expect(page.getByRole('button', { name: 'Work the loads out' })).toBeEnabled();
  await page.reload();
  await expect(page.getByRole('table', { name: /North rack/ })).toContainText('Ilse Vandermolen');
  expect(refused).toEqual([]);
});

for (const light of ['day', 'night'] as const) {
  test(`nothing on the day screen is hidden from a screen reader by ${light}`, async ({ page }) => {
    await openSpeedDay(page);
    await page.getByRole('radio', { name: light, exact: true }).check();
    await expect(rowOf(page, 'Lars Østermark')).toContainText('m/s', solved);
    await page.getByRole('button', { name: 'Change the plan' }).click();
    await rowOf(page, 'Ilse Vandermolen').getByRole('button', { expanded: false }).first().click();
    await expect(page.getByText('Set by hand', { exact: true }).first()).toBeVisible();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  });
}

async function openSpeedDay(page: Page): Promise<void> {
  await page.goto('/day');
  await page.getByRole('row', { name: /Speed squat/ }).click();
  await expect(page.getByRole('heading', { name: 'Speed squat off a box' })).toBeVisible();
}

/** How far down the page the lowest of them reaches. */
async function lowestOf(found: Locator): Promise<number> {
  const boxes = await Promise.all((await found.all()).map((one) => one.boundingBox()));
  return Math.max(...boxes.flatMap((box) => (box ? box.y + box.height : [])));
}

function rowOf(page: Page, name: string) {
  return page.getByRole('row').filter({ has: page.getByRole('rowheader', { name: new RegExp(name) }) });
}

/** The bar is what the coach set, as near as the discs can load it. */
async function expectOwnBar(page: Page, barKg: number): Promise<void> {
  const row = rowOf(page, 'Lars Østermark');
  await expect(row).toContainText("coach's own");
  const label = await row.getByRole('button', { name: /^Bar of/ }).getAttribute('aria-label');
  const shownKg = Number(/: ([\d.]+) kg/.exec(label ?? '')?.[1]);
  expect(Math.abs(shownKg - barKg)).toBeLessThanOrEqual(0.5);
}

/** Pages in a PDF: its page objects. */
function pagesOf(pdf: Buffer): number {
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}
