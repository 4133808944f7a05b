import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { test } from './walk.ts';

/** Working a day out may take as long as the solver is given; a walk waits for it. */
const solved = { timeout: 60_000 };

/** No set of a prescription may need more. */
const mostTaps = 3;

const lifter = 'Lars Østermark';

test('a set of the day is on record in three taps, stands in the log, and is struck there', async ({
  page,
}) => {
  await openSolvedDay(page);
  const taps = await countTaps(page);
  await page.getByRole('button', { name: `Log sets of ${lifter}` }).click();
  const panel = page.getByRole('region', { name: `Sets of ${lifter}` });
  await panel.getByRole('button', { name: 'Set 3: not done yet' }).click();
  const bar = await panel.locator('.set-lead').textContent();
  await panel.getByRole('button', { name: /^Made all/ }).click();
  await expect(panel.getByRole('button', { name: 'Set 3: made' })).toBeVisible();
  expect(await taps()).toBeLessThanOrEqual(mostTaps);

  // The next one waits with everything filled in; a miss is one tap more, which says where it stopped.
  await expect(panel).toContainText('Set 1 of');
  await panel.getByRole('button', { name: 'Made 1', exact: true }).click();
  await panel.getByRole('button', { name: 'near lockout' }).click();
  await panel.getByRole('button', { name: 'Set 1: 1 of 2' }).click();
  await expect(panel).toContainText(/stopped \d\d % of the way up/);

  // A mistake is corrected where it was made; the log keeps one set that counts.
  await panel.getByRole('button', { name: 'Change it, or add to it' }).click();
  await panel.getByLabel('Reps made').fill('2');
  await panel.getByRole('button', { name: 'Save' }).click();
  await expect(panel.getByRole('button', { name: 'Set 1: made' })).toBeVisible();

  // A miss is on record even where the panel is closed, or another set picked, before it is said where it stopped.
  for (const [number, leave] of [
    [2, 'Close'],
    [4, 'Set 5: not done yet'],
  ] as const) {
    await panel.getByRole('button', { name: `Set ${number}: not done yet` }).click();
    await panel.getByRole('button', { name: 'Made 1', exact: true }).click();
    await panel.getByRole('button', { name: leave }).click();
    if (leave === 'Close') await page.getByRole('button', { name: `Log sets of ${lifter}` }).click();
    await expect(panel.getByRole('button', { name: `Set ${number}: 1 of 2` })).toBeVisible();
  }
  await expect(panel).toContainText('Set 5 of');

  await page.getByRole('link', { name: 'Log', exact: true }).click();
  const third = page.getByRole('listitem').filter({ hasText: bar!.replace(/\s*kg.*/, ' kg, 2 reps') });
  await expect(third).toHaveCount(1);
  await expect(third).toContainText('by number 1 of the day');
  await third.getByRole('button', { name: /^Strike/ }).click();
  await expect(third).toContainText('struck');
  await page.reload();
  await expect(third).toContainText('struck');
  await third.getByRole('button', { name: /^Bring back/ }).click();
  await expect(third).not.toContainText('struck');
});

test('a speed typed beside the tap is on record with the set, and one that cannot be is asked about first', async ({
  page,
}) => {
  await openSolvedDay(page);
  await page.getByRole('button', { name: `Log sets of ${lifter}` }).click();
  const panel = page.getByRole('region', { name: `Sets of ${lifter}` });
  const speed = panel.getByLabel('Mean speed, m/s, if measured');
  await panel.getByRole('button', { name: 'Set 3: not done yet' }).click();
  await speed.fill('52');
  await panel.getByRole('button', { name: /^Made all/ }).click();
  await expect(panel).toContainText('Mean speed is 52 m/s; allowed is 0 to 5 m/s.');
  await speed.fill('0,52; 0,49');
  await panel.getByRole('button', { name: /^Made all/ }).click();
  await panel.getByRole('button', { name: 'Set 3: made' }).click();
  await expect(panel).toContainText('mean speed 0.52, 0.49 m/s');
  await panel.getByRole('button', { name: 'Set 4: not done yet' }).click();
  await expect(speed).toHaveValue('');
});

test('the line that says what was written leaves the buttons of the next set free', async ({ page }) => {
  await page.setViewportSize({ width: 1024, height: 768 });
  await openSolvedDay(page);
  await page.getByRole('button', { name: `Log sets of ${lifter}` }).click();
  const panel = page.getByRole('region', { name: `Sets of ${lifter}` });
  await panel.getByRole('button', { name: /^Made all/ }).click();
  const written = (await page.getByText(/, on record\.$/).boundingBox())!;
  const next = (await panel.getByRole('button', { name: /^Made all/ }).boundingBox())!;
  expect(next.y + next.height).toBeLessThan(written.y);
});

test('a set entered in pounds is undone from the line that says so', async ({ page }) => {
  await openSolvedDay(page);
  await page.getByRole('radio', { name: 'lb', exact: true }).last().check();
  await page.getByRole('button', { name: `Log sets of ${lifter}` }).click();
  const panel = page.getByRole('region', { name: `Sets of ${lifter}` });
  await panel.getByRole('button', { name: 'Something else to write down' }).click();
  await panel.getByLabel('On the bar').fill('225');
  await panel.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText(`${lifter}: 225 lb, 2 reps, on record.`)).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(panel.getByRole('button', { name: 'Set 1: not done yet' })).toBeVisible();
});

test('two kinds of chain on one bar are hung, counted, taken off, and told in the log', async ({ page }) => {
  const thin = { massPerMetreKg: 2.2, lengthM: 1.8, attachBelowBarM: 0.25, note: '' };
  const made = await page.request.post('/api/records/chainPair', {
    data: { ...thin, label: '10 mm', pairs: 3 },
  });
  expect(made.status()).toBe(201);
  await page.goto('/log/new');
  await page.getByLabel('Lifter').selectOption({ label: lifter });
  await page.getByLabel('On the bar').fill('120');
  await page.getByLabel('Rack', { exact: true }).selectOption({ label: 'North rack' });
  await page.getByRole('button', { name: 'Hang chains' }).click();
  await page.getByLabel('Chains', { exact: true }).selectOption({ label: '2 pairs of 10 mm' });
  await page.getByRole('button', { name: 'Hang another kind of chain' }).click();
  await expect(page.getByLabel('Chains 2', { exact: true }).locator('option:checked')).toHaveText(
    'a pair of 13 mm',
  );
  await expect(page.getByRole('button', { name: 'Hang another kind of chain' })).toBeHidden();
  await page.getByRole('button', { name: 'Save' }).click();
  // The next set begins as this one was: one kind comes off.
  await expect(page.getByText('on record')).toBeVisible();
  await page.getByRole('button', { name: 'Take chains 1 off' }).click();
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByLabel('Chains', { exact: true }).locator('option:checked')).toHaveText(
    'a pair of 13 mm',
  );
  await page.getByRole('link', { name: 'The log', exact: true }).click();
  const lines = page.getByRole('listitem').filter({ hasText: '120 kg' });
  await expect(lines.filter({ hasText: '2 pairs of 10 mm, a pair of 13 mm' })).toHaveCount(1);
  await expect(lines.filter({ hasNotText: '10 mm' })).toHaveCount(1);
});

test("a club's own file is matched, looked at and taken once", async ({ page }) => {
  await page.goto('/log/file');
  await page.getByLabel('Choose a file').setInputFiles({
    name: 'winter.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(ownFile),
  });
  // The first file waits for the thread that reads files.
  await expect(page.getByRole('heading', { name: 'Nothing can be imported yet' })).toBeVisible();
  await page.getByLabel('Weight on the bar', { exact: true }).selectOption('Iron lb');
  await expect(page.getByText('2 new sets')).toBeVisible();
  await expect(page.getByText('From 3 Feb 2026 to 23 Feb 2026.')).toBeVisible();
  await expect(page.getByText('One column of the file is not taken: Weather.')).toBeVisible();
  await page.getByRole('button', { name: 'Import 2 sets' }).click();
  await expect(page.getByText('Imported 2 sets from winter.csv.')).toBeVisible();

  await page.getByRole('link', { name: 'The log', exact: true }).click();
  await page.getByLabel('Up to').fill('2026-02-28');
  await page.getByRole('button', { name: /23 February 2026/ }).click();
  await expect(page.getByRole('listitem').filter({ hasText: '102.1 kg, 2 of 3 reps' })).toBeVisible();

  await page.goto('/log/file');
  await page.getByLabel('Choose a file').setInputFiles({
    name: 'winter.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(ownFile.replace('Iron lb', 'weight lb')),
  });
  await expect(page.getByText('0 new sets, 2 in the log already')).toBeVisible();
  await expect(page.getByRole('heading', { name: 'There is nothing new in it' })).toBeVisible();
  await page.getByLabel('Read another file').setInputFiles({
    name: 'winter.xlsx',
    mimeType: 'text/csv',
    buffer: Buffer.from('PK\u0003\u0004'),
  });
  await expect(page.getByText('save it there as CSV')).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Which column is what' })).toBeHidden();
});

for (const light of ['day', 'night'] as const) {
  test(`nothing of logging is hidden from a screen reader by ${light}`, async ({ page }) => {
    await openSolvedDay(page);
    await page.getByRole('radio', { name: light, exact: true }).check();
    await page.getByRole('button', { name: `Log sets of ${lifter}` }).click();
    const panel = page.getByRole('region', { name: `Sets of ${lifter}` });
    await panel.getByRole('button', { name: 'Made none' }).click();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    await panel.getByRole('button', { name: 'nobody saw' }).click();
    await panel.getByRole('button', { name: 'Set 1: missed' }).click();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    await panel.getByRole('button', { name: 'Where did the miss stop, and more' }).click();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    await page.getByRole('link', { name: 'Log', exact: true }).click();
    await expect(page.getByRole('listitem').filter({ hasText: 'missed' })).toBeVisible();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    for (const path of ['/log/new', '/log/file']) {
      await page.goto(path);
      await expect(page.getByRole('main').getByRole('heading').first()).toBeVisible(solved);
      expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    }
  });
}

/** Dates day first, weight in lb, names of its own; one column that says nothing to us. 225 lb is 102.06 kg. */
const ownFile = `When,Who,Exercise,Iron lb,Reps,Done,Weather
03/02/2026,${lifter},squat,225,3,3,rain
23/02/2026,${lifter},squat,225,3,2,frost
`;

async function openSolvedDay(page: Page): Promise<void> {
  await page.goto('/day');
  await page.getByRole('row', { name: /Speed squat/ }).click();
  await expect(page.getByRole('button', { name: `Log sets of ${lifter}` })).toBeVisible(solved);
}

/** Counts every click that the page sees from now on. */
async function countTaps(page: Page): Promise<() => Promise<number>> {
  await page.evaluate(() => {
    document.documentElement.dataset['taps'] = '0';
    document.addEventListener(
      'click',
      () => {
        const taps = Number(document.documentElement.dataset['taps']);
        document.documentElement.dataset['taps'] = String(taps + 1);
      },
      true,
    );
  });
  return () => page.evaluate(() => Number(document.documentElement.dataset['taps']));
}
