import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { leastFinePt, leastReadPt } from '#web/print/letterSizes.ts';
import { paperFaults } from './paperFaults.ts';
import { test } from './walk.ts';

const dayId = 'day-speed-squat';

async function solve(page: Page, address: string) {
  const answer = await page.request.post(`/api/days/${dayId}/solve`, { headers: { origin: address } });
  expect(answer.ok()).toBe(true);
}

test('a blank sheet has a line for each planned set, in lifting order, large enough to read and to write on', async ({
  page,
  address,
}) => {
  await solve(page, address);
  await page.goto(`/day/${dayId}`);
  await page.getByRole('link', { name: 'Blank sheets' }).click();
  const papers = page.locator('.paper');
  await expect(papers).toHaveCount(2);
  for (const paper of ['Letter', 'A4']) {
    await page.getByRole('radio', { name: paper, exact: true }).check();
    const found = () => papers.evaluateAll(paperFaults);
    await expect.poll(async () => (await found()).faults).toEqual([]);
    const sizes = await found();
    expect(sizes.leastReadPt).toBeGreaterThanOrEqual(leastReadPt - 0.01);
    expect(sizes.leastFinePt).toBeGreaterThanOrEqual(leastFinePt - 0.01);
    // A CSS millimetre is 96 / 25.4 pixels; exercise books are ruled at 9/32 of an inch.
    const lines = await papers
      .locator('tbody tr')
      .evaluateAll((all) => Math.min(...all.map((line) => line.getBoundingClientRect().height)));
    expect(lines / (96 / 25.4)).toBeGreaterThanOrEqual((9 / 32) * 25.4 - 0.1);
  }
  const printed = await papers.locator('caption b').allTextContents();
  await page.getByRole('link', { name: 'Type in what was written' }).click();
  await expect(page.getByRole('heading', { name: 'From the blank sheets' })).toBeVisible();
  const asked = page.locator('.paper-lifter');
  await expect(asked).toHaveCount(printed.length);
  for (const [at, name] of printed.entries()) await expect(asked.nth(at)).toHaveAccessibleName(name);
});

test('what was written on paper goes on record without a mouse: sets as planned, a miss, speeds, another bar', async ({
  page,
  address,
}) => {
  await solve(page, address);
  await page.goto(`/day/${dayId}/from-paper`);
  const lifter = page.locator('.paper-lifter').first();
  const name = (await lifter.getAttribute('aria-label'))!;
  const field = (word: string, set: number) =>
    lifter.getByLabel(`${word}, set ${set} of ${name}`, { exact: true });
  const focused = (word: string, set: number) => expect(field(word, set)).toBeFocused();
  for (const light of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme: light });
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  }
  const { keyboard } = page;
  await field('Speed', 1).focus();
  await keyboard.press('Enter');
  await focused('Speed', 2);
  // A miss is one key, a speed one field.
  await keyboard.press('x');
  await keyboard.type('0.71');
  await keyboard.press('Enter');
  await focused('Speed', 3);
  await expect(field('Reps made', 2)).toHaveValue('1');
  // What cannot be is told, and the focus stays.
  await keyboard.type('65');
  await keyboard.press('Enter');
  await expect(lifter).toContainText('Mean speed is 65 m/s; allowed is 0 to 5 m/s.');
  await focused('Speed', 3);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.keyboard.press('ControlOrMeta+a');
  await keyboard.type('0,65');
  await keyboard.press('Shift+Tab');
  await keyboard.press('Shift+Tab');
  await focused('Bar', 3);
  // Pounds that were written where kilograms stand are asked about once, with what may have been meant.
  await keyboard.type('240');
  await keyboard.press('Enter');
  await expect(lifter).toContainText('times the bar on the paper');
  await expect(lifter.getByRole('button', { name: /^Pounds\? 108\.86 kg/ })).toBeVisible();
  await focused('Bar', 3);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.keyboard.press('ControlOrMeta+a');
  await keyboard.type('100');
  await keyboard.press('Tab');
  await keyboard.press('Tab');
  await keyboard.press('Tab');
  await keyboard.type('left knee');
  await keyboard.press('Enter');

  // Nothing that was typed is lost by leaving.
  await page.reload();
  await expect(field('Speed', 3)).toHaveValue('0,65');
  await lifter.getByRole('button', { name: 'Save 3 sets' }).focus();
  await keyboard.press('Enter');
  await expect(page.getByText(`${name}: 3 sets, on record.`)).toBeVisible();
  await expect(lifter.getByText('✓ on record')).toHaveCount(3);
  await expect(lifter).toContainText('100 kg, 2 reps; mean speed 0.65 m/s; left knee');
  const second = page.locator('.paper-lifter').nth(1);
  await expect(second.locator('[data-field=speeds]').first()).toBeFocused();

  // The next lifter as planned, all at once; what is on record is not written again.
  const all = await second.locator('[data-field=speeds]:not([data-more])').count();
  await second.getByRole('button', { name: 'All as planned' }).focus();
  await keyboard.press('Enter');
  const saveAll = page.getByRole('button', { name: `Save all: ${all} sets` });
  await saveAll.focus();
  await keyboard.press('Enter');
  await expect(page.getByText(`${all} sets, on record.`)).toBeVisible();
  const { sets } = await (await page.request.get(`/api/sets?dayId=${dayId}`)).json();
  expect(sets).toHaveLength(3 + all);
  expect(sets.filter((set: { made: number; reps: number }) => set.made < set.reps)).toHaveLength(1);

  // Taken back in one step.
  await page.getByRole('button', { name: 'Undo' }).focus();
  await keyboard.press('Enter');
  await expect(second.getByText('✓ on record')).toHaveCount(0);
});

test('the paper may bear an earlier number: its own bars are typed back', async ({ page, address }) => {
  await solve(page, address);
  const bar = () => page.getByLabel(/^Bar, set 1 of/).first();
  await page.goto(`/day/${dayId}/from-paper`);
  const first = await bar().inputValue();
  const { records } = await (await page.request.get('/api/club')).json();
  const day = records.day.find(({ id }: { id: string }) => id === dayId);
  const [group] = day.groups;
  const blocks = group.blocks.map((block: object) => ({ ...block, shareOfAim: 0.5 }));
  const data = { ...day, groups: [{ ...group, blocks }, ...day.groups.slice(1)] };
  await page.request.put(`/api/records/day/${dayId}`, { data, headers: { origin: address } });
  await solve(page, address);
  await page.reload();
  await expect(bar()).not.toHaveValue(first);
  await page.getByLabel('Number on the sheet in your hand').selectOption('2');
  await expect(bar()).toHaveValue(first);
  await expect(page).toHaveURL(/number=2/);
});
