import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { test } from './walk.ts';

test('who is here is ticked in one list: who goes keeps the place, and a crew comes by its label in one tap', async ({
  page,
}) => {
  await page.goto('/day/day-speed-squat');
  await page.getByRole('button', { name: 'Who is here' }).click();
  const list = page.getByRole('region', { name: /^Who is here/ });
  await expect(list.getByRole('heading')).toHaveText('8 here');

  await list.getByRole('checkbox', { name: 'Lars Østermark' }).uncheck();
  await expect(list.getByRole('heading')).toHaveText('7 here, 1 away');
  await expect(seatOf(page, 'Lars Østermark')).toHaveCount(0);
  await page.reload();
  await page.getByRole('button', { name: 'Who is here' }).click();
  await list.getByRole('checkbox', { name: 'Lars Østermark' }).check();
  // His box is 38.5 cm where the group's is 36: the place was kept.
  await expect(seatOf(page, 'Lars Østermark')).toContainText('box 38.5 cm, own start');

  await list.getByRole('textbox', { name: 'Find by name or label' }).fill('late');
  await expect(list.getByRole('checkbox')).toHaveCount(6);
  await list.getByRole('button', { name: 'All 6 found' }).click();
  await expect(list.getByRole('heading')).toHaveText('14 here');
  for (const light of ['day', 'night']) {
    await page.getByRole('radio', { name: light, exact: true }).check();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  }
  await page.getByRole('button', { name: 'Undo' }).last().click();
  await expect(list.getByRole('heading')).toHaveText('8 here');
});

test('work is kept under a name, another day begins from it, and everybody of last time comes in one tap', async ({
  page,
}) => {
  await page.goto('/day/day-speed-squat');
  await page.getByRole('button', { name: 'Change the plan' }).click();
  await page.getByRole('textbox', { name: 'Keep this work as' }).fill('Third wave, eight doubles');
  await page.getByRole('button', { name: 'Keep it for later' }).click();
  await expect(page.getByText('Added Third wave, eight doubles.')).toBeVisible();

  await page.goto('/day/new');
  await page.getByLabel('Date').fill('2031-03-04');
  await page.getByRole('radio', { name: /^Work that the club keeps/ }).check();
  await page.getByRole('combobox', { name: 'Kept work' }).selectOption('Third wave, eight doubles');
  await page.getByRole('button', { name: 'Begin this day' }).click();
  await expect(page.getByText('75 % on everything, at lockout. Sets × reps: 2 × 2 at 70 %')).toBeVisible();

  await page.getByRole('button', { name: 'Who is here' }).click();
  await page.getByRole('button', { name: /^Everybody of / }).click();
  // Eight lifted on the last speed day, each at the rack of then.
  await expect(page.getByRole('table', { name: /^North rack/ }).getByRole('rowheader')).toHaveCount(4);
  await expect(page.getByRole('table', { name: /^South rack/ }).getByRole('rowheader')).toHaveCount(4);
  await expect(page.getByRole('button', { name: /^Everybody of / })).toHaveCount(0);
});

function seatOf(page: Page, name: string) {
  return page.getByRole('row').filter({ has: page.getByRole('rowheader', { name }) });
}
