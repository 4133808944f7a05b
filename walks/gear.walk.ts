import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { test } from './walk.ts';

const STANDARD_GRAVITY_MPS2 = 9.80665; // CGPM 1901
const INCH_M = 0.0254; // NIST SP 811 (2008), exact
const LB_KG = 0.45359237; // the same

/**
 * A loop that follows Mooney 1940 (J Appl Phys 11:582-592): F = 2 (lambda - lambda^-2) (C1 + C2 / lambda). C1 and C2 are
 * invented, near those of a 29 mm band.
 */
const REST_M = 1.04;
function loopN(lengthM: number): number {
  const lambda = lengthM / REST_M;
  return 2 * (lambda - lambda ** -2) * (18 + 24 / lambda);
}
const kg = (lengthM: number) => loopN(lengthM) / STANDARD_GRAVITY_MPS2;

/** The same loop read at five lengths, each typed as somebody else would. */
const readings: [string, string][] = [
  ['125', kg(1.25).toFixed(2)],
  ['1.55 m', `${kg(1.55).toFixed(2)} kg`],
  ['75 in', `${(kg(75 * INCH_M) / LB_KG).toFixed(1)} lb`],
  ['230 cm', `${loopN(2.3).toFixed(0)} N`],
  ['265', kg(2.65).toFixed(2)],
];

async function addPair(page: Page): Promise<void> {
  await page.goto('/gear');
  await page.getByRole('link', { name: 'Add a pair' }).click();
  await page.getByRole('button', { name: 'Go on to the scale' }).click();
  await expect(page.getByText('Label is needed.')).toBeVisible();
  await page.getByLabel('Label').fill('Walk 29');
  await page.getByLabel('Width').fill('29');
  await page.getByLabel('Rest length, band a').fill('1.04 m');
  await page.getByRole('button', { name: 'Go on to the scale' }).click();
  await expect(page.getByRole('heading', { level: 1, name: /Walk 29/ })).toBeVisible();
}

/** Keyboard alone: length, Enter, scale, Enter, and the field for the next length has the focus again. */
async function typeReading(page: Page, length: string, scale: string): Promise<void> {
  await page.getByLabel('Loop length').focus();
  await page.keyboard.type(length);
  await page.keyboard.press('Enter');
  await expect(page.getByLabel('Scale shows')).toBeFocused();
  await page.keyboard.type(scale);
  await page.keyboard.press('Enter');
}

function barsCsv(text: string) {
  return { name: 'bars.csv', mimeType: 'text/csv', buffer: Buffer.from(text) };
}

test('a pair hung from a scale gives at the bar what its rubber law says', async ({ page }) => {
  await addPair(page);
  for (const [index, [length, scale]] of readings.entries()) {
    await typeReading(page, length, scale);
    await expect(page.getByRole('table', { name: 'Readings of band a' }).locator('tbody tr')).toHaveCount(
      index + 1,
    );
    await expect(page.getByLabel('Loop length')).toBeFocused();
  }
  await expect(page.getByRole('img', { name: /Band a of Walk 29: .*read to 265 cm/ })).toBeVisible();
  await expect(page.getByText(/predicts a left-out reading/)).toBeVisible();

  const { records } = await (await page.request.get('/api/club')).json();
  const hookup = records.hookup.find((each: { way: string }) => each.way === 'doubled');
  const anchor = records.anchor.find((each: { id: string }) => each.id === hookup.anchorId);
  const rack = records.rack.find((each: { id: string }) => each.id === hookup.rackId);
  const heightM = 1.3;
  // Doubled: both folds of each loop run along the path l, so lambda = 2 l / L0, and each loop pulls twice.
  const pathM = Math.hypot(anchor.xM, anchor.yM, heightM - anchor.zM);
  const pairDownN = 2 * (2 * loopN(2 * pathM) * ((heightM - anchor.zM) / pathM));

  await page.getByLabel('Bar height', { exact: true }).fill(`${heightM} m`);
  const row = page
    .getByRole('table', { name: 'What the pair gives in each hookup' })
    .getByRole('row')
    .filter({ hasText: rack.label })
    .filter({ hasText: hookup.label });
  const given = Number((/([\d.]+)kg/.exec((await row.textContent()) ?? '') ?? [])[1]);
  // The club's local gravity differs from the standard by less than 0.3 % anywhere on earth.
  expect(Math.abs(given / (pairDownN / STANDARD_GRAVITY_MPS2) - 1)).toBeLessThan(0.02);
});

test('a wrong reading gets one sentence, a removed one comes back', async ({ page }) => {
  await addPair(page);
  const rows = page.getByRole('table', { name: 'Readings of band a' }).locator('tbody tr');
  await typeReading(page, '98', '12');
  await expect(page.getByRole('alert')).toHaveText(
    /^Loop length is 98 cm; it must be more than 104 cm, the rest length of band a of pair ".+"\.$/,
  );
  await expect(rows).toHaveCount(0);
  await page.getByLabel('Loop length').fill('160');
  await page.getByLabel('Scale shows').fill('12 stone');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('alert')).toContainText('the unit "stone"');
  await expect(rows).toHaveCount(0);

  await page.getByLabel('Scale shows').fill('12');
  await page.keyboard.press('Enter');
  await expect(rows).toHaveCount(1);
  await page.getByRole('button', { name: 'Remove the reading of 160 cm' }).click();
  await expect(rows).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(rows).toHaveCount(1);
});

test('a force that falls while the loop grows, or far below another day, is asked about, typed or in a file, and taken once the coach says so', async ({
  page,
}) => {
  await addPair(page);
  const rows = page.getByRole('table', { name: 'Readings of band a' }).locator('tbody tr');
  await typeReading(page, '160', '12');
  await expect(rows).toHaveCount(1);
  await typeReading(page, '180', '6');
  // 6 kg are half of 12 kg.
  await expect(page.getByRole('alert')).toContainText('50 % less force');
  await expect(rows).toHaveCount(1);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.getByRole('button', { name: 'It is right: keep it' }).click();
  await expect(rows).toHaveCount(2);
  await expect(page.getByRole('button', { name: 'Keep reading' })).toBeVisible();
  // Another day at 160 cm, 5.4 kg instead of 12.
  await page.getByLabel('Read on').fill('2026-01-05');
  await typeReading(page, '160', '5.4');
  await expect(page.getByRole('alert')).toContainText('55 % less force at 160 cm than on');
  await expect(rows).toHaveCount(2);

  await page.goto('/gear');
  await page.getByText('Readings as a spreadsheet file').click();
  const file =
    'band_pair_id,side,taken_on,length_m,force_N\nWalk 29,b,2026-01-05,1.6,120\nWalk 29,b,2026-01-05,1.8,60\n';
  await page
    .locator('details[open] input[type=file]')
    .setInputFiles({ name: 'odd.csv', mimeType: 'text/csv', buffer: Buffer.from(file) });
  const odd = page.getByRole('table', { name: 'What is odd in odd.csv' }).locator('tbody tr');
  await expect(odd).toHaveCount(1);
  await expect(odd.first()).toContainText('Band b of pair "Walk 29"');
  await page.getByRole('button', { name: 'They are right: take them' }).click();
  await expect(page.getByText('Imported 2 new from odd.csv.')).toBeVisible();
});

test('a spreadsheet with a wrong line is refused by line and column, and nothing of it is taken', async ({
  page,
}) => {
  await page.goto('/gear/iron');
  const bars = page.getByRole('table', { name: 'Bars', exact: true }).locator('tbody tr');
  await expect(bars).toHaveCount(3);
  await page.getByText('Bars as a spreadsheet file').click();
  const input = page.locator('details[open] input[type=file]');
  await input.setInputFiles(barsCsv('label,mass_kg\nGood bar,20\nBad bar,heavy\n'));
  const wrong = page.getByRole('table', { name: 'What is wrong in bars.csv' }).locator('tbody tr');
  await expect(wrong).toHaveCount(1);
  await expect(wrong.first()).toContainText('3');
  await expect(wrong.first()).toContainText('mass_kg');
  await expect(bars).toHaveCount(3);
  await input.setInputFiles(barsCsv('label,mass_kg\nGood bar,20\n'));
  await expect(page.getByText(/has no wrong line: 1 new. Nothing is imported yet\./)).toBeVisible();
  await page.getByRole('button', { name: 'Take them' }).click();
  await expect(bars).toHaveCount(4);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(bars).toHaveCount(3);
});

test('an archive is looked into before it may take the place of the club', async ({ page }) => {
  const text = await (await page.request.get('/api/archive')).text();
  await page.goto('/gear/club');
  const input = page.getByLabel('Look into an archive');
  await input.setInputFiles(archive(text.replace('"massKg":20.05', '"massKg":-1')));
  const wrong = page.getByRole('table', { name: 'What is wrong in club.json' }).locator('tbody tr');
  await expect(wrong).toHaveCount(1);
  await expect(wrong).toContainText('massKg');
  await expect(page.getByRole('button', { name: 'Replace everything' })).toBeHidden();
  await input.setInputFiles(archive(text));
  const holds = page.getByRole('table', { name: 'What club.json holds' });
  // The first file waits for the thread that reads files.
  await expect(holds.getByRole('row', { name: /^lifters 14 14$/ })).toBeVisible();
  await page.getByRole('button', { name: 'Replace everything' }).click();
  // Two years of sets are checked, written to the disk and read again: that is the machine's pace, not the screen's.
  await expect(page.getByText('The club now holds what was in club.json.')).toBeVisible({ timeout: 60_000 });
});

for (const light of ['light', 'dark'] as const) {
  test.describe(`by ${light}`, () => {
    test.use({ colorScheme: light });
    test(`every page of Gear can be used by everybody, ${light}`, async ({ page }) => {
      // Many pages, each looked through by a thorough reader, on a machine that may be busy.
      test.setTimeout(240_000);
      for (const path of [
        '/gear',
        '/gear/bands/new',
        '/gear/bands/band-29-a',
        '/gear/height',
        '/gear/racks/rack-north',
        '/gear/iron',
        '/gear/club',
      ]) {
        await page.goto(path);
        await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
        const { violations } = await new AxeBuilder({ page }).analyze();
        expect(
          violations.map(({ id, nodes }) => `${path} ${id}: ${nodes.map(({ html }) => html).join(' ')}`),
        ).toEqual([]);
      }
    });
  });
}

test.describe('a club that has nothing yet', () => {
  test.use({ startsWith: 'nothing' });
  test('is shown how the first band is added', async ({ page }) => {
    await page.goto('/gear');
    await expect(page.getByRole('heading', { name: /the first one comes from a scale/ })).toBeVisible();
    await page.getByRole('link', { name: 'Add the first pair' }).click();
    await expect(page.getByRole('heading', { name: 'A new pair of bands' })).toBeVisible();
  });
});

function archive(content: string) {
  return { name: 'club.json', mimeType: 'application/json', buffer: Buffer.from(content) };
}

test('of a spreadsheet in which thousands of lines are wrong the first are shown, and how many there are', async ({
  page,
}) => {
  await page.goto('/gear/iron');
  await page.getByText('Bars as a spreadsheet file').click();
  const lines = Array.from({ length: 3000 }, (_, i) => `Bar ${i},-1`);
  const file = {
    name: 'bars.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(['label,mass_kg', ...lines].join('\n')),
  };
  await page
    .locator('.csv-door')
    .filter({ hasText: 'Bars as' })
    .locator('input[type=file]')
    .setInputFiles(file);
  const wrong = page.getByRole('alert').filter({ hasText: 'Nothing from bars.csv was imported' });
  await expect(wrong).toContainText('3000 places of it are wrong');
  await expect(wrong.getByRole('row')).toHaveCount(1 + 50);
  await expect(wrong).toContainText('And 2950 more.');
});
