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
  // What was not saved yet is saved on leaving, and may come a moment after the page is back.
  await page.reload();
  await page.getByRole('button', { name: 'Who is here' }).click();
  await expect(list.getByRole('heading')).toHaveText('7 here, 1 away');
  await list.getByRole('checkbox', { name: 'Lars Østermark' }).check();
  // His box is 38.5 cm where the group's is 36: the place was kept.
  await expect(seatOf(page, 'Lars Østermark')).toContainText('box 38.5 cm, own start');

  await list.getByRole('textbox', { name: 'Find by name or label' }).fill('late');
  await expect(list.getByRole('checkbox')).toHaveCount(6);
  await list.getByRole('button', { name: 'All 6 found' }).click();
  await expect(list.getByRole('heading')).toHaveText('14 here');
  await page.getByRole('button', { name: 'Undo' }).last().click();
  await expect(list.getByRole('heading')).toHaveText('8 here');

  // A label narrows the list and the racks, in the address, and says whom it leaves out.
  await list.getByRole('textbox', { name: 'Find by name or label' }).fill('');
  await list.getByRole('combobox', { name: /^Show/ }).selectOption('late crew');
  await list.getByRole('button', { name: 'All 6 found' }).click();
  await expect(list.getByRole('heading')).toHaveText('14 here');
  await expect(page.getByText('Only late crew: 6 of 14 shown.')).toBeVisible();
  await expect(page.locator('.lifter-name')).toHaveCount(6);
  await page.reload();
  await expect(page.locator('.lifter-name')).toHaveCount(6);
  await page.getByRole('button', { name: 'Show everybody' }).click();
  await expect(page.locator('.lifter-name')).toHaveCount(14);
  for (const light of ['day', 'night']) {
    await page.getByRole('radio', { name: light, exact: true }).check();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  }
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

test('a worn pair goes out of service from the day: what changed is named, and what it would come to is seen before it is done', async ({
  page,
}) => {
  await page.goto('/day/day-speed-squat');
  const bands = page.getByRole('button', { name: /^Bands of Emre/ });
  await expect(bands).toBeVisible({ timeout: 60_000 });
  const pair = /22-[AB]|29-[AB]|13-[AB]/.exec((await bands.textContent())!)![0];
  await page.getByRole('button', { name: 'Show last time' }).click();
  await expect(seatOf(page, 'Emre Karataylı')).toContainText('Last time:');
  expect(new URL(page.url()).searchParams.get('beside')).toBe('lastTime');

  await bands.click();
  await page.getByRole('button', { name: `Take ${pair} out of service` }).click();
  await expect(page.getByText(`Band pair "${pair}" is out of service.`)).toBeVisible();
  await expect(seatOf(page, 'Emre Karataylı')).toContainText(`${pair} is out of service: do not hang it.`);
  await page.getByRole('button', { name: 'See what it would come to' }).click();
  const outlook = page.getByText(/^Worked out again: .*Emre Karataylı: /);
  await expect(outlook).toBeVisible({ timeout: 60_000 });
  // Nothing was done yet.
  await expect(page.getByText('Number 1 of this day')).toBeVisible();
  for (const light of ['day', 'night']) {
    await page.getByRole('radio', { name: light, exact: true }).check();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  }
  const foretold = (await outlook.textContent())!.replace('Worked out again: ', '');
  await page.getByRole('button', { name: 'Work the loads out again' }).click();
  await expect(page.getByText('Number 2 of this day')).toBeVisible({ timeout: 60_000 });
  await expect(bands).not.toContainText(pair);
  await page.getByLabel('Look at number').selectOption('1');
  await expect(page.getByText(/^Number 2 compared with it: /)).toHaveText(
    `Number 2 compared with it: ${foretold}`,
  );
});

test('a box turned in the picture is only tried: it is there after a look elsewhere, let go leaves no trace, kept it can be undone', async ({
  page,
}) => {
  await page.goto('/day/day-speed-squat');
  const ilse = seatOf(page, 'Ilse Vandermolen');
  await expect(ilse).toContainText('m/s', { timeout: 60_000 });
  await ilse.getByRole('button', { expanded: false }).first().click();
  await page.getByRole('slider', { name: 'Box of Ilse Vandermolen' }).press('ArrowUp');
  await expect(page.getByText(/^Tried: box /)).toBeVisible();
  await expect(ilse).toContainText('box 33 cm');
  await expect(ilse).toContainText('tried, not kept');

  await page.getByRole('link', { name: 'Lifters', exact: true }).click();
  await page.goBack();
  await expect(ilse).toContainText('tried, not kept');
  await ilse.getByRole('button', { expanded: false }).first().click();
  await expect(page.getByText(/^Tried: box /)).toBeVisible();
  for (const light of ['day', 'night']) {
    await page.getByRole('radio', { name: light, exact: true }).check();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  }
  await page.getByRole('button', { name: '            Put it back' }).click();
  await expect(ilse).not.toContainText('tried, not kept');

  await page.getByRole('slider', { name: 'Box of Ilse Vandermolen' }).press('ArrowUp');
  await page.getByRole('button', { name: 'Keep it and work out the rest' }).click();
  await expect(page.getByText('Number 2 of this day')).toBeVisible({ timeout: 60_000 });
  await expect(ilse).not.toContainText('box 33 cm');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(ilse).toContainText('box 33 cm');
});

function seatOf(page: Page, name: string) {
  return page.getByRole('row').filter({ has: page.getByRole('rowheader', { name }) });
}
