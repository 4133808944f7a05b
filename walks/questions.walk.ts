import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { test } from './walk.ts';

const KG_PER_LB = 0.45359237; // NIST SP 811 (2008), exact

async function bothLights(page: Page): Promise<void> {
  for (const light of ['day', 'night']) {
    await page.getByRole('radio', { name: light, exact: true }).check();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  }
}

async function newPair(page: Page): Promise<void> {
  await page.goto('/gear/bands/new');
  await page.getByLabel('Label').fill('Walk 41');
  await page.getByLabel('Width').fill('41');
  // Metres in a field of centimetres.
  await page.getByLabel('Rest length, band a').fill('1.04');
  await page.getByLabel('Width').focus();
  await page.getByRole('button', { name: 'Metres? 104 cm' }).click();
  await page.getByRole('button', { name: 'Go on to the scale' }).click();
  await expect(page.getByRole('heading', { level: 1, name: /Walk 41/ })).toBeVisible();
}

test('a reading of twice what the width pulls is asked about beside the field; what was meant is one tap, keeping it another', async ({
  page,
}) => {
  await newPair(page);
  const rows = page.getByRole('table', { name: 'Readings of band a' }).locator('tbody tr');
  await page.getByLabel('Loop length').fill('160');
  // Two strips of 41 x 4.5 mm of gum rubber at stretch 1.54 carry about 150 N (Treloar 1944): 15 kg, and 35 lb.
  await page.getByLabel('Scale shows').fill('35');
  await page.getByLabel('Read on').focus();
  const asked = page.getByRole('alert');
  await expect(asked).toContainText('what a band of this width usually pulls');
  await bothLights(page);
  await expect(asked.getByRole('button', { name: 'Both bands at once? 17.5 kg' })).toBeVisible();
  await asked.getByRole('button', { name: `Pounds? ${(35 * KG_PER_LB).toFixed(1)} kg` }).click();
  await expect(asked).toHaveCount(0);
  await expect(page.getByLabel('Scale shows')).toHaveValue((35 * KG_PER_LB).toFixed(1));
  await page.keyboard.press('Enter');
  await expect(rows).toHaveCount(1);

  await page.getByLabel('Loop length').fill('200');
  await page.getByLabel('Scale shows').fill('70');
  await page.keyboard.press('Enter');
  await expect(asked).toContainText('times what');
  await expect(rows).toHaveCount(1);
  await page.getByRole('button', { name: 'It is right: keep it' }).click();
  await expect(rows).toHaveCount(2);
});

test('a stature in metres, a body mass and a best in pounds are asked about; saved unseen they are asked about first, then kept', async ({
  page,
}) => {
  await page.goto('/lifters/new');
  await page.getByLabel('Name').fill('Newcomer Fell');
  await page.getByLabel('Stature').fill('1.80');
  await page.getByLabel('Name').focus();
  await expect(page.getByRole('alert').first()).toHaveText('Stature is 1.8 cm; allowed is 100 cm to 250 cm.');
  await page.getByRole('button', { name: 'Metres? 180 cm' }).click();
  await expect(page.getByLabel('Stature')).toHaveValue('180');

  const { records } = await (await page.request.get('/api/club')).json();
  const newest = records.bodyMass.toSorted((a: Weighing, b: Weighing) =>
    b.takenOn.localeCompare(a.takenOn),
  )[0];
  await page.goto(`/lifters/${newest.lifterId}/body-mass`);
  await page.getByRole('button', { name: 'Weigh in' }).click();
  const mass = page.getByRole('form', { name: 'Weigh in' });
  const lb = Math.round(newest.massKg / KG_PER_LB);
  await mass.getByLabel('Body mass').fill(String(lb));
  await mass.getByRole('button', { name: 'Save' }).click();
  await expect(mass.getByRole('alert')).toContainText('2.2 times the body mass weighed on');
  await bothLights(page);
  await mass.getByRole('button', { name: `Pounds? ${Number((lb * KG_PER_LB).toFixed(2))} kg` }).click();
  await mass.getByRole('button', { name: 'Save' }).click();
  await expect(mass).toHaveCount(0);

  await page.goto(`/lifters/${newest.lifterId}/bests`);
  await page.getByRole('button', { name: 'Write down a best' }).click();
  const best = page.getByRole('form', { name: 'Write down a best' });
  await best.getByLabel('On the bar').fill('900');
  await best.getByLabel('Done on').focus();
  await expect(best.getByRole('alert')).toContainText('times the heaviest squat on record');
  // The coach says so: it is kept.
  await best.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(best).toHaveCount(0);
});

interface Weighing {
  lifterId: string;
  takenOn: string;
  massKg: number;
}
