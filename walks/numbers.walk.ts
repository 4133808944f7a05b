import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { test } from './walk.ts';

/** Working a day or a club's logs out may take as long as a busy machine needs; a walk waits for it. */
const workedOut = { timeout: 120_000 };

test('a number stays as it was printed when the logs are worked out; speeds by them are a tap away, under another number', async ({
  page,
  address,
}) => {
  test.setTimeout(240_000);
  const dayId = 'day-speed-squat';
  const headers = { origin: address };
  // Asked at once after the start: the logs of two years are still being read.
  const solve = await page.request.post(`/api/days/${dayId}/solve`, { headers });
  const first = await solve.json();
  expect(first.document.awaited.length).toBeGreaterThan(0);

  await page.goto(`/day/${dayId}`);
  await expect(page.getByText(standing(first))).toBeVisible(workedOut);
  const before = await figures(page);
  const offer = page.getByRole('button', { name: 'Give speeds and chances by the log' });
  await expect(offer).toBeVisible(workedOut);
  expect(await figures(page)).toEqual(before);
  for (const light of ['day', 'night']) {
    await page.getByRole('radio', { name: light, exact: true }).check();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  }
  await page.goto(`/day/${dayId}/sheet`);
  await expect(page.getByText(standing(first)).first()).toBeVisible();
  await page.goto(`/day/${dayId}`);

  await offer.click();
  await expect(page.getByText('Number 3 of this day')).toContainText('same bars as number 2', workedOut);
  const second = await (await page.request.get(`/api/days/${dayId}/prescription`)).json();
  expect(second.fingerprint).not.toBe(first.fingerprint);
  await expect(page.getByText(standing(second))).toBeVisible();
  expect(await figures(page)).not.toEqual(before);
  await expect(offer).toBeHidden();
  await page.getByLabel('Look at number').selectOption(String(first.number));
  await expect(page.getByText(standing(first))).toBeVisible();
  expect(await figures(page)).toEqual(before);

  // A number that somebody else has made meanwhile is named, and shown when the coach wants it.
  await page.getByLabel('Look at number').selectOption(String(second.number));
  const third = await (await page.request.post(`/api/days/${dayId}/solve`, { headers })).json();
  await expect(page.getByText('Number 4 of this day has since been made on another screen.')).toBeVisible(
    workedOut,
  );
  await expect(page.getByText(standing(second))).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.getByRole('button', { name: `Show number ${third.number}` }).click();
  await expect(page.getByText(standing(third))).toBeVisible();

  await page.goto(`/day/${dayId}/cards`);
  const cards = page.getByRole('region', { name: /^Card of / });
  await expect(cards.first()).toContainText(`fingerprint ${third.fingerprint}`);
});

function standing({ number, fingerprint }: { number: number; fingerprint: string }): RegExp {
  return new RegExp(`Number ${number} of this day, at .+, fingerprint ${fingerprint}`);
}

/** All that the rows say of the lifters. */
function figures(page: Page): Promise<string[]> {
  return page
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader') })
    .allTextContents();
}
