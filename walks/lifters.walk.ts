import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Locator, type Page } from '@playwright/test';
import { test } from './walk.ts';

test('the same bar and bands are drawn and counted heavier for the taller of two lifters', async ({
  page,
}) => {
  await open(page, 'Ilse Vandermolen', 'Try a setup');
  const alone = await bandKg(page);
  await page.getByRole('button', { name: 'Beside another lifter' }).click();
  await page.getByLabel('Lifter', { exact: true }).selectOption({ label: 'Bastien Corvellou, 197 cm' });
  const [short, tall] = await bandKg(page);
  expect(short).toEqual(alone[0]);
  expect(tall!.lockout).toBeGreaterThan(short!.lockout);
  expect(tall!.bottom).toBeGreaterThan(short!.bottom);
  await expect(page.getByRole('img', { name: /^Ilse Vandermolen/ })).toBeVisible();
  await expect(page.getByRole('img', { name: /^Bastien Corvellou/ })).toBeVisible();
  // Both stand in the address: they outlive a reload, and can be sent on.
  await expect(page).toHaveURL(/try=.*bastien/);
  await page.reload();
  await expect(page.getByRole('img', { name: /^Bastien Corvellou/ })).toBeVisible();
  expect(await bandKg(page)).toEqual([short, tall]);
});

test('a bar typed in pounds or dragged moves picture and numbers at once, and leaves the bands alone', async ({
  page,
}) => {
  await open(page, 'Ilse Vandermolen', 'Try a setup');
  const [before] = await bandKg(page);
  await page.getByLabel('On the bar', { exact: true }).fill('132 lb');
  // 132 lb is 59.87 kg (NIST SP 811: 0.45359237 kg a pound).
  await expect(page.getByText(/^59\.9 bar/).first()).toBeVisible();
  await expect(page.getByRole('img', { name: /59\.9 kg/ })).toBeVisible();
  await page.getByLabel('On the bar, by dragging').fill('80');
  await expect(page.getByText(/^80 bar/).first()).toBeVisible();
  expect((await bandKg(page))[0]).toEqual(before);
});

test('bar and box are moved in the picture itself, by pointer and by keys', async ({ page }) => {
  await open(page, 'Ilse Vandermolen', 'Try a setup');
  const field = page.getByLabel('On the bar', { exact: true });
  const barKg = async () => Number(await field.inputValue());
  const lockoutKg = async () =>
    Number.parseFloat((await page.locator('.trial-numbers dd .numeral').nth(1).textContent()) ?? '');
  const [before, lockoutBefore] = [await barKg(), await lockoutKg()];
  const bar = page.getByRole('slider', { name: 'Bar of Ilse Vandermolen' });
  await dragBy(page, bar, 100, 0);
  const dragged = await barKg();
  expect(dragged).toBeGreaterThan(before + 10);
  // Bar and lockout both grow by what was put on: the bands hang as before. Both are rounded to a kilogram.
  expect(Math.abs((await lockoutKg()) - lockoutBefore - (dragged - before))).toBeLessThanOrEqual(1);
  await dragBy(page, bar, -60, 0);
  expect(await barKg()).toBeLessThan(dragged);

  const now = await barKg();
  await bar.focus();
  await page.keyboard.press('ArrowRight');
  expect(await barKg()).toBe(now + 0.5);
  await page.keyboard.press('PageDown');
  expect(await barKg()).toBe(now - 4.5);
  await expect(bar).toHaveAttribute('aria-valuetext', `${now - 4.5} kg`);

  await page.getByLabel('Start', { exact: true }).selectOption('box');
  const box = page.getByRole('slider', { name: 'Box of Ilse Vandermolen' });
  const boxField = page.getByLabel('Box height', { exact: true });
  await dragBy(page, box, 0, -30);
  const high = Number(await boxField.inputValue());
  expect(high).toBeGreaterThan(36);
  await box.focus();
  await page.keyboard.press('ArrowDown');
  expect(Number(await boxField.inputValue())).toBeCloseTo(high - 0.5, 6);
});

for (const [width, height] of [
  [390, 844],
  [1024, 768],
  [1440, 900],
] as const) {
  test(`no two letters of the picture touch and none is cut, ${width} px wide`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await open(page, 'Ilse Vandermolen', 'Try a setup');
    for (const beside of [false, true]) {
      if (beside) await page.getByRole('button', { name: 'Beside another lifter' }).click();
      for (const lift of ['squat', 'bench', 'deadlift'])
        for (const bar of ['20 kg', '999 lb']) {
          await page.getByLabel('Lift', { exact: true }).first().selectOption(lift);
          await page.getByLabel('On the bar', { exact: true }).first().fill(bar);
          expect(await faultyLetters(page)).toEqual([]);
        }
    }
  });
}

test('a new lifter starts with estimated heights, and a tape replaces them', async ({ page }) => {
  await page.goto('/lifters/new');
  await page.getByLabel('Name').fill('Tall Newcomer');
  await page.getByLabel('Stature').fill('3 m');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Stature is 300 cm; allowed is 100 cm to 250 cm.')).toBeVisible();
  // 6 ft 5 in is 195.58 cm by the exact inch.
  await page.getByLabel('Stature').fill(`6'5"`);
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Competes among: choose one.')).toBeVisible();
  await page.getByLabel('Competes among').selectOption('men');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByRole('heading', { name: 'Tall Newcomer' })).toBeVisible();
  await expect(page.getByText(/195\.(6|58) cm/).first()).toBeVisible();

  const heights = page.getByRole('table', { name: 'Bar heights' });
  await expect(heights.getByRole('row', { name: /^squat/ })).toContainText('est.');
  await page.getByRole('button', { name: 'Add heights' }).click();
  await page.getByRole('textbox', { name: 'Bottom' }).fill('101');
  await page.getByRole('textbox', { name: 'Lockout' }).fill('99');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Lockout is 99 cm; it must be higher than the bottom.')).toBeVisible();
  await page.getByRole('textbox', { name: 'Lockout' }).fill('166.5');
  await page.getByRole('textbox', { name: 'Bar in front' }).fill('-50');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Bar in front is -50 cm; allowed is -40 cm to 40 cm.')).toBeVisible();
  await page.getByRole('textbox', { name: 'Bar in front' }).fill('-2 in');
  await page.getByRole('button', { name: 'Save' }).click();
  const squat = heights.getByRole('row', { name: /^squat/ });
  await expect(squat).toContainText('101.0');
  await expect(squat).not.toContainText('est.');
  // 2 in is 5.08 cm by the exact inch.
  await expect(squat).toContainText('−5.1');
  await turnTo(page, 'Try a setup');
  await expect(page.getByRole('img', { name: /^Tall Newcomer/ })).toHaveAccessibleName(
    /at lockout, 166\.5 cm above the floor/,
  );
});

test('what was done or weighed was not so tomorrow', async ({ page }) => {
  await open(page, 'Ilse Vandermolen', 'Body mass');
  await page.getByRole('button', { name: 'Weigh in' }).click();
  await page.getByLabel('Body mass', { exact: true }).fill('52');
  await page.getByLabel('Weighed on').fill('2999-01-01');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(
    page.getByText(/^Weighed on is 1 Jan 2999; it must be no later than today, \d+ \w+ \d{4}\.$/),
  ).toBeVisible();
});

test('a removed best comes back with Undo', async ({ page }) => {
  await open(page, 'Ilse Vandermolen', 'Bests');
  await page.getByRole('radio', { name: 'written down' }).check();
  const bests = page.getByRole('table', { name: 'Bests' });
  const newest = await bests.getByRole('row').nth(1).textContent();
  await bests.getByRole('row').nth(1).press('Enter');
  await page.getByRole('button', { name: 'Remove' }).click();
  await expect(bests.getByRole('row').nth(1)).not.toHaveText(newest!);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(bests.getByRole('row').nth(1)).toHaveText(newest!);
});

test('a heavier single on the same box takes the record and names the one before; another box has its own', async ({
  page,
}) => {
  const lifterId = await joins(page);
  const single = (doneOn: string, heightM: number, barKg: number) => ({
    lifterId,
    doneOn,
    lift: 'squat',
    setup: { start: { way: 'box', heightM }, barKg },
    reps: 1,
    made: 1,
  });
  const sets = [
    single('2025-03-01', 0.415, 90),
    single('2025-04-01', 0.415, 92.5),
    single('2025-05-01', 0.425, 91),
  ];
  const logged = await page.request.post('/api/sets', { data: { sets } });
  expect(logged.status()).toBe(201);
  await page.goto(`/lifters/${lifterId}/bests`);
  const records = page.getByRole('table', { name: 'Records by setup' });
  const row = records.getByRole('row', { name: /box 41\.5 cm/ });
  await expect(row).toContainText('92.5 kg');
  await expect(row).toContainText('90 kg, 1 Mar 2025');
  await expect(records.getByRole('row', { name: /box 42\.5 cm/ })).toContainText('the first');

  await row.press('Enter');
  const nearest = page.getByRole('table', { name: /^Nearest to squat, box 41\.5 cm/ });
  // The opened record itself stands first, then the box that is one centimetre higher.
  await expect(nearest.getByRole('row').nth(1)).toContainText('box 41.5 cm');
  await expect(nearest.getByRole('row').nth(2)).toContainText('box 42.5 cm');
  await page.getByRole('link', { name: 'This setup over the weeks' }).click();
  await expect(page.getByLabel('Setup', { exact: true }).locator('option:checked')).toHaveText(
    'squat, box 41.5 cm',
  );
});

test('the list is walked by arrows and letters, Enter opens and Esc leaves', async ({ page }) => {
  await page.goto('/lifters');
  const rows = page.getByRole('table', { name: 'Lifters' }).getByRole('row');
  await rows.nth(1).focus();
  await page.keyboard.press('ArrowDown');
  await expect(rows.nth(2)).toBeFocused();
  await page.keyboard.type('il');
  await expect(rows.filter({ hasText: 'Ilse' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Ilse Vandermolen' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('heading', { name: 'Lifters' })).toBeVisible();
});

test('a minor is marked in the list and cautioned about on the page', async ({ page }) => {
  await page.goto('/lifters');
  await expect(page.getByRole('row', { name: /Hana/ })).toContainText('under 18');
  await page.getByRole('row', { name: /Hana/ }).click();
  await expect(page.getByText(/for a qualified coach to decide/).first()).toBeVisible();
});

for (const light of ['day', 'night'] as const) {
  test(`nothing on the lifters' pages is hidden from a screen reader by ${light}`, async ({ page }) => {
    await page.goto('/lifters');
    await page.getByRole('radio', { name: light, exact: true }).check();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    await open(page, 'Hana Morikubo', 'Try a setup');
    await page.getByRole('button', { name: 'Beside another lifter' }).click();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    await turnTo(page, 'Bests');
    await page.getByRole('button', { name: 'Write down a best' }).click();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  });
}

/** Somebody new of whom the club knows nothing but the stature. */
async function joins(page: Page): Promise<string> {
  const joined = await page.request.post('/api/records/lifter', {
    data: { name: 'Newly Joined', category: 'men', statureM: 1.8 },
  });
  return (await joined.json()).record.id;
}

/** Opens a lifter's page by the list, and the part that is asked for by its link. */
async function open(page: Page, name: string, part: string): Promise<void> {
  await page.goto('/lifters');
  await page.getByRole('row', { name: new RegExp(name) }).click();
  await expect(page.getByRole('heading', { name, exact: true })).toBeVisible();
  await turnTo(page, part);
}

async function turnTo(page: Page, part: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Of this lifter' }).getByRole('link', { name: part }).click();
}

/** What the bands add at both ends, trial by trial, as the page writes it: "77.5 bar + 8 band ± 1". */
async function bandKg(page: Page): Promise<{ bottom: number; lockout: number }[]> {
  const parts = page.getByText(/bar .*band/);
  await expect(parts.first()).toBeVisible();
  const numbers = (await parts.allTextContents()).map((text) => Number(/\+ (\d+) band/.exec(text)?.[1]));
  return Array.from({ length: numbers.length / 2 }, (_, i) => ({
    bottom: numbers[2 * i]!,
    lockout: numbers[2 * i + 1]!,
  }));
}

async function dragBy(page: Page, grip: Locator, dx: number, dy: number): Promise<void> {
  await grip.scrollIntoViewIfNeeded();
  const { x, y, width, height } = (await grip.boundingBox())!;
  expect(Math.min(width, height)).toBeGreaterThanOrEqual(48);
  await page.mouse.move(x + width / 2, y + height / 2);
  await page.mouse.down();
  await page.mouse.move(x + width / 2 + dx, y + height / 2 + dy, { steps: 10 });
  await page.mouse.up();
}

/** Texts of the pictures that overlap another one or leave their drawing, by the browser's own measure of the letters. */
function faultyLetters(page: Page): Promise<string[]> {
  return page.locator('.trial-picture svg').evaluateAll((drawings) =>
    drawings.flatMap((svg) => {
      const frame = svg.getBoundingClientRect();
      // A line box is higher than its figures: 0.72 em stand above the baseline and at most 0.2 em below.
      const texts = [...svg.querySelectorAll('text')].map((text) => {
        const { left, right } = text.getBoundingClientRect();
        const em = Number.parseFloat(getComputedStyle(text).fontSize);
        const base = frame.top + Number(text.getAttribute('y'));
        return { word: text.textContent, left, right, top: base - 0.72 * em, bottom: base + 0.2 * em };
      });
      return texts.flatMap((a, i) => {
        const cut =
          a.left < frame.left || a.right > frame.right || a.top < frame.top || a.bottom > frame.bottom;
        const touched = texts
          .slice(i + 1)
          .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom);
        return [...(cut ? [`${a.word} is cut`] : []), ...touched.map((b) => `${a.word} on ${b.word}`)];
      });
    }),
  );
}
