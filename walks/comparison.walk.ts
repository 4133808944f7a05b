import { expect } from '@playwright/test';
import { leastReadPt } from '#web/print/letterSizes.ts';
import { eachSizeAndLight } from './eachSizeAndLight.ts';
import { paperFaults } from './paperFaults.ts';
import { test } from './walk.ts';

// Everybody here is made up.
const adults = ['Ana', 'Bo', 'Cid', 'Dora', 'Ema', 'Finn', 'Gus', 'Hedy'];

test.use({ startsWith: 'nothing' });

test('a comparison is told to be too small before anybody starts, drawn nevertheless, and one is taken out', async ({
  page,
  address,
}) => {
  const headers = { origin: address };
  const lifter = async (name: string, bornOn: string) =>
    (
      await page.request.post('/api/records/lifter', { headers, data: { name, bornOn, category: 'other' } })
    ).json();
  for (const name of adults) await lifter(name, '1990-06-01');
  const year = new Date().getUTCFullYear();
  await lifter('Young One', `${year - 16}-01-01`);

  await page.goto('/season');
  await page.getByRole('link', { name: 'Two ways compared' }).click();
  await expect(page.getByRole('heading', { name: 'No comparison is planned yet' })).toBeVisible();
  await page.getByRole('link', { name: 'Plan a comparison' }).click();
  await expect(page.getByText('Young One is not drawn: not of age on the first day.')).toBeVisible();
  await expect(page.getByLabel('Young One')).toHaveCount(0);
  await page.getByLabel('First way').fill('waves of three weeks');
  await page.getByLabel('Second way').fill('waves of four weeks');
  await page.getByLabel('Looked at').selectOption({ label: 'lifts at meets' });
  for (const name of adults) await page.getByLabel(name, { exact: true }).check();
  const seen = page.getByRole('region', { name: 'What could be seen' });
  await expect(seen.getByRole('status')).toContainText('This cannot be seen: with 8 lifters over 16 weeks');
  await expect(seen).toContainText('Anybody may say no, and leave at any time without a reason');
  await page.reload();
  await expect(page.getByLabel('Second way')).toHaveValue('waves of four weeks');
  await expect(seen.getByRole('status')).toContainText('with 8 lifters over 16 weeks');
  // While it is played through it can be stopped, and asked for again.
  await page.route('**/api/comparisons/outlook', () => {}, { times: 1 });
  const asked = page.waitForRequest('**/api/comparisons/outlook');
  await page.getByLabel('Lasts').fill('40');
  await asked;
  await seen.getByRole('button', { name: 'Stop' }).click();
  await expect(seen).toContainText('Stopped; what could be seen of this is not worked out.');
  await seen.getByRole('button', { name: 'Work it out after all' }).click();
  await expect(seen.getByRole('status')).toContainText('with 8 lifters over 40 weeks');
  await eachSizeAndLight(page);

  await page.setViewportSize({ width: 1440, height: 900 });
  await page.getByRole('button', { name: 'Draw who gets which' }).click();
  await expect(page.getByText('Title is needed.')).toBeVisible();
  await page.getByLabel('Title').fill('Three or four weeks');
  await page.getByRole('button', { name: 'Draw who gets which' }).click();
  await expect(page.getByRole('heading', { name: 'Three or four weeks', level: 1 })).toBeVisible();
  await expect(page.getByText(/^It begins on /)).toBeVisible();
  await expect(page.getByText(/^This cannot be seen: with 8 lifters over 40 weeks/)).toBeVisible();
  const table = page.getByRole('table', { name: 'Who trains by which' });
  for (const way of ['waves of three weeks', 'waves of four weeks'])
    await expect(table.getByRole('cell', { name: way })).toHaveCount(4);

  // By the keyboard alone, without a reason.
  const first = table.locator('tbody tr').first();
  const name = await first.getByRole('cell').nth(1).innerText();
  await first.focus();
  await page.keyboard.press('Enter');
  const form = page.getByRole('form', { name: `Take ${name} out` });
  await form.getByRole('button', { name: 'Take out' }).focus();
  await page.keyboard.press('Enter');
  await expect(first.getByRole('cell').last()).toContainText(/^from /);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(first.getByRole('cell').last()).toHaveText('');
  await eachSizeAndLight(page);

  await page.setViewportSize({ width: 1440, height: 900 });
  await page.getByRole('button', { name: 'Change the note' }).click();
  await page.getByRole('textbox', { name: 'Note' }).fill('Everybody was asked.');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Everybody was asked.')).toBeVisible();
  await page.getByRole('link', { name: 'All comparisons' }).click();
  await expect(page.getByRole('listitem')).toContainText('not begun');
});

test.describe('the invented club', () => {
  test.use({ startsWith: 'demo' });

  test('a comparison stands on one page of either paper, nothing cut or covered', async ({ page }) => {
    await page.goto('/comparison/comparison-waves');
    await page.getByRole('link', { name: 'On paper' }).click();
    for (const paper of ['A4', 'Letter']) {
      await page.emulateMedia({ media: 'screen' });
      await page.getByRole('radio', { name: paper }).check();
      const papers = page.locator('.paper');
      await expect(papers).toContainText([/This cannot be seen: with 8 lifters .* by seed 8:/], {
        timeout: 120_000,
      });
      await expect(papers).toContainText([/Maribel Ancajas \(taken out from .*Anybody may say no/]);
      await page.emulateMedia({ media: 'print' });
      const { faults, leastReadPt: least } = await papers.evaluateAll(paperFaults);
      // The letters of the picture lie on it.
      expect(faults.filter((fault) => !fault.includes('Gain up to'))).toEqual([]);
      expect(least).toBeGreaterThanOrEqual(leastReadPt - 0.01);
      const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
      expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    }
    await page.emulateMedia({ media: 'screen' });
    await eachSizeAndLight(page);
  });

  test('an address with a day that is none says so, and plans nothing', async ({ page }) => {
    await page.goto('/comparison/new?from=12026-01-01');
    const seen = page.getByRole('region', { name: 'What could be seen' });
    await expect(seen).toContainText('First day is "12026-01-01"; it must be no later than 31 Dec 2199.');
    await page.getByLabel('First day').fill('');
    await page.getByRole('button', { name: 'Draw who gets which' }).click();
    // At the field and beside what could be seen, and not a third time among what is wrong with the form.
    await expect(page.getByText('First day is needed.')).toHaveCount(2);
    await page.goto('/season/season-early/paper?lifter=nobody');
    await expect(page.locator('.paper').getByRole('heading', { name: 'Season' })).toBeVisible();
    await page.goto('/season/season-early/taken/99');
    await expect(page.getByText('This season has no plan 99.')).toBeVisible();
  });
});
