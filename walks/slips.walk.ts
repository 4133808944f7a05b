import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { test } from './walk.ts';

/** Exact: NIST SP 811. */
const KG_PER_LB = 0.45359237;
const name = 'Newcomer Fell';

/** Sixteen weeks of one day each; from the tenth to the twelfth pounds were written down under kg. */
const file = `date,lifter,lift,bar kg,reps\n${Array.from({ length: 16 }, (_, week) => {
  const day = new Date(Date.UTC(2026, 0, 6 + 7 * week)).toISOString().slice(0, 10);
  const written = (kg: number) => (week >= 9 && week < 12 ? Math.round(kg / KG_PER_LB) : kg);
  return [60, 80, 100].map((kg) => `${day},${name},squat,${written(kg)},5\n`).join('');
}).join('')}`;

const question = 'These 9 squats';
const like = 'from 10 Mar 2026 to 24 Mar 2026 look like pounds written down as kilograms.';

test('a file with weeks of pounds is asked about, and taken with the bars that were meant', async ({
  page,
}) => {
  await openFile(page);
  const asked = page.getByRole('region', { name: 'Sets that look slipped' });
  await expect(asked).toContainText(`${question} by ${name} ${like}`);
  await expect(asked).toContainText('Written down: 132 to 220 kg. Probably meant: 59.9 to 99.8 kg.');
  await asked.getByText('Bar by bar').click();
  await expect(asked.getByRole('row', { name: '220 kg 99.8 kg 3' })).toBeVisible();
  for (const light of ['day', 'night']) {
    await page.getByRole('radio', { name: light, exact: true }).check();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  }
  await asked.getByRole('radio', { name: 'leave out' }).check();
  await expect(page.getByRole('button', { name: 'Import 39 sets' })).toBeVisible();
  await asked.getByRole('radio', { name: 'as pounds' }).check();
  await page.getByRole('button', { name: 'Import 48 sets' }).click();
  await expect(page.getByText('Imported 48 sets from weeks.csv.')).toBeVisible();
  await chooseFile(page);
  await expect(page.getByText('0 new sets, 48 in the log already')).toBeVisible();
});

test("taken as written they are named on the lifter's page, put right at one tap, and back by one undo", async ({
  page,
}) => {
  await openFile(page);
  await page.getByRole('button', { name: 'Import 48 sets' }).click();
  await expect(page.getByText('Imported 48 sets from weeks.csv.')).toBeVisible();
  await page.getByRole('link', { name: 'Lifters', exact: true }).click();
  await page.getByText(name).click();
  // The whole club's estimates are under way; this lifter's is worked out first.
  await expect(page.getByText('9 sets of the squat look as if written down in another unit')).toBeVisible({
    timeout: 60_000,
  });
  await page.getByRole('link', { name: 'look at them' }).click();
  const named = page.getByRole('region', { name: 'Sets that look slipped' });
  await expect(named).toContainText(`${question} ${like}`, { timeout: 60_000 });
  for (const light of ['day', 'night']) {
    await page.getByRole('radio', { name: light, exact: true }).check();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  }
  await named.getByRole('button', { name: 'Turn pounds into kilograms in 9 sets' }).click();
  await expect(named).toBeHidden();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(named).toContainText(question, { timeout: 60_000 });
  await named.getByRole('button', { name: 'They are right' }).click();
  await expect(named).toBeHidden();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(named).toContainText(question, { timeout: 60_000 });
  await named.getByRole('button', { name: 'Strike them' }).click();
  await expect(named).toBeHidden();
});

async function openFile(page: Page): Promise<void> {
  const added = await page.request.post('/api/records/lifter', {
    data: { name, bornOn: null, category: 'men', statureM: 1.78, equipment: 'raw', leftOn: null, note: '' },
  });
  expect(added.status()).toBe(201);
  await page.goto('/log/file');
  await chooseFile(page);
  // The thread that reads files begins with the first one.
  await expect(page.getByText('48 lines')).toBeVisible();
}

async function chooseFile(page: Page): Promise<void> {
  await page.getByLabel(/Choose a file|Read another file/).setInputFiles({
    name: 'weeks.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(file),
  });
}
