import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { test } from './walk.ts';

/** Controls of which any part that can be seen lies under something that is no part of them: nothing may. */
async function covered(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const controls = document.querySelectorAll<HTMLElement>('main :is(button, a, input, select, summary)');
    const strip = document.querySelector('.toast')!.parentElement!.getBoundingClientRect();
    return [...controls].flatMap((control) => {
      const box = control.getBoundingClientRect();
      const seenTo = Math.min(
        box.bottom,
        document.body.getBoundingClientRect().top + document.body.clientHeight,
      );
      const isUnder = box.width > 0 && box.top < seenTo && seenTo > strip.top + 0.5;
      const at = document.elementFromPoint(
        box.x + box.width / 2,
        Math.min(box.bottom, window.innerHeight) - 2,
      );
      const isHidden =
        at !== null && at.closest('.toast-place') !== null && box.top < strip.top - 2 && isUnder;
      return isUnder || isHidden ? [control.outerHTML.slice(0, 80)] : [];
    });
  });
}

for (const [width, height] of [
  [1440, 900],
  [390, 844],
] as const) {
  test.describe(`${width} wide`, () => {
    test.use({ viewport: { width, height } });

    test('what was done is told below the page, over none of its controls, and the page stays where it was', async ({
      page,
    }) => {
      for (const place of ['/gear', '/gear/racks', '/lifters', '/log', '/evidence', '/day']) {
        await page.goto('/gear/boxes');
        await page.getByRole('button', { name: 'Add a box or mat' }).click();
        await page.getByLabel('Label', { exact: true }).fill(`Toast ${place}`);
        await page.getByLabel('Height').fill('33');
        await page.getByRole('button', { name: 'Save', exact: true }).click();
        await expect(page.getByText(`Added box or mat Toast ${place}.`)).toBeVisible();
        const link = { '/gear': 'Bands', '/gear/racks': 'Racks' }[place];
        if (link) await page.getByRole('link', { name: link, exact: true }).click();
        else
          await page
            .getByRole('link', { name: new RegExp(`^${place.slice(1)}`, 'i') })
            .first()
            .click();
        await page.getByRole('button', { name: 'Undo' }).hover();
        await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
        expect(await covered(page)).toEqual([]);
        await page.mouse.move(10, 200);
        await page.mouse.wheel(0, 4000);
        expect(await covered(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      }
    });
  });
}

test('a form asks only for what matters, is called by the rest of its fields, and stays for the next', async ({
  page,
}) => {
  const { records } = await (await page.request.get('/api/club')).json();
  await page.goto(`/gear/racks/${records.rack[0].id}`);
  await page.getByRole('button', { name: 'Add a hookup' }).click();
  const hookup = page.getByRole('form', { name: 'A new hookup' });
  await expect(hookup.getByLabel('Loop used up by the choke')).toHaveCount(0);
  await hookup.getByLabel('How the loop runs').selectOption('choked');
  await expect(hookup.getByLabel('Label')).toHaveValue(/, choked$/);
  await hookup.getByLabel('Loop used up by the choke').fill('12');
  await hookup.getByLabel('How the loop runs').selectOption('doubled');
  await expect(hookup.getByLabel('Loop used up by the choke')).toHaveCount(0);
  await hookup.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(hookup).toHaveCount(0);

  await page.goto('/gear/iron');
  await page.getByRole('button', { name: 'Add a disc' }).click();
  const disc = page.getByRole('form', { name: 'A new disc' });
  for (const kg of ['1.1', '1.2']) {
    await disc.getByLabel('Mass on its face').fill(kg);
    await disc.getByRole('button', { name: 'Save and add the next' }).click();
    await expect(page.getByText(`Added disc of ${kg} kg.`)).toBeVisible();
    await expect(disc.getByLabel('Mass on its face')).toHaveValue('');
    await expect(disc.getByLabel('Mass on its face')).toBeFocused();
  }
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test("a box is chosen from the club's boxes where heights are measured, and another height can still be typed", async ({
  page,
}) => {
  const { records } = await (await page.request.get('/api/club')).json();
  const box = records.box.find(({ sort }: { sort: string }) => sort === 'box');
  await page.goto(`/lifters/${records.lifter[0].id}/heights`);
  await page.getByRole('button', { name: 'Add heights' }).click();
  const form = page.getByRole('form', { name: 'Measure heights' });
  await form.getByLabel('Start').selectOption('box');
  await form.getByLabel('Box', { exact: true }).selectOption(String(Math.round(1000 * box.heightM)));
  await expect(form.getByLabel('Box height')).toHaveCount(0);
  await form.getByLabel('Box', { exact: true }).selectOption("another height, not the club's boxes");
  await form.getByLabel('Box height').fill('37.3');
  await form.getByLabel('Bottom').fill('71');
  await form.getByLabel('Lockout').fill('140');
  await form.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByRole('table', { name: 'Bar heights' })).toContainText('37.3');
});

test('labels are typed or tapped among those of the club, found in lists, and a long list of pairs and days is looked through', async ({
  page,
}) => {
  await page.goto('/lifters/new');
  await page.getByLabel('Name').fill('Newcomer Fell');
  await page.getByLabel('Competes among').selectOption('women');
  await page.getByRole('button', { name: 'early crew' }).click();
  await page.getByLabel('Labels', { exact: true }).fill('early crew, first year');
  await expect(page.getByRole('button', { name: 'early crew', pressed: true })).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Newcomer Fell' })).toBeVisible();
  await page.goto('/lifters?find=fir+fell');
  const lifters = page.getByRole('table', { name: 'Lifters' }).getByRole('row');
  await expect(lifters).toHaveCount(2);
  await expect(lifters.last()).toContainText('early crew, first year');

  const { records } = await (await page.request.get('/api/club')).json();
  const { id: _id, ...pair } = records.bandPair[0];
  const [{ id: _day, ...day }] = records.day;
  for (const n of [1, 2, 3, 4, 5, 6, 7, 8, 9]) {
    await page.request.post('/api/records/bandPair', {
      data: { ...pair, label: `Spare ${n}`, note: 'shed' },
    });
    const dated = { ...day, date: `2026-01-0${n}`, title: `Wave ${n}`, note: n === 4 ? 'Chains away' : '' };
    await page.request.post('/api/records/day', { data: dated });
  }
  await page.goto('/gear');
  const pairs = page.getByRole('table', { name: 'Band pairs' }).locator('tbody tr');
  await page.getByLabel('Label, width or note').fill('shed');
  await expect(pairs).toHaveCount(9);
  await page.getByLabel('In order of').selectOption('label');
  await page.reload();
  await expect(pairs).toHaveCount(9);
  await expect(pairs.first()).toContainText('Spare 1');
  await page.goto('/day');
  await page.getByLabel('Title, note, work or date').fill('chains');
  await expect(page.getByRole('table', { name: 'Days gone by' }).locator('tbody tr')).toHaveCount(1);
  await expect(page).toHaveURL(/find=chains/);
});
