import { EventEmitter, once } from 'node:events';
import { AxeBuilder } from '@axe-core/playwright';
import { expect } from '@playwright/test';
import { paperFaults } from './paperFaults.ts';
import { test } from './walk.ts';

/** As many steps as a group may have, three pairs on the bar, a minor, heights from stature, a pair never measured. */
test('a card with the most that can be said on it cuts no word off, on either paper', async ({
  page,
  address,
}) => {
  test.setTimeout(120_000);
  const headers = { origin: address };
  const { records } = await (await page.request.get('/api/club')).json();
  const { id: _, ...day } = records.day.find((each: { id: string }) => each.id === 'day-low-box');
  const [group] = day.groups;
  const hookup = records.hookup.find(
    (each: { rackId: string; way: string }) => each.rackId === 'rack-north' && each.way === 'doubled',
  );
  const bands = ['13-B', '102-A', '83-A'].map((label) => ({
    bandPairId: records.bandPair.find((pair: { label: string }) => pair.label === label).id,
    hookupId: hookup.id,
  }));
  const places = ['Nomvula Khanyase', 'Hana Morikubo'].map((name) => ({
    lifterId: records.lifter.find((lifter: { name: string }) => lifter.name === name).id,
    rackId: 'rack-north',
    start: null,
    byCoach: { barKg: 120, bands, chains: null },
  }));
  const blocks = Array.from({ length: 12 }, (_, step) => ({
    sets: step % 3 === 0 ? 3 : 1,
    reps: 3,
    restSeconds: 150,
    shareOfAim: 0.5 + 0.045 * step,
  }));
  const data = { ...day, date: '2031-03-04', groups: [{ ...group, places, blocks }] };
  const made = await (await page.request.post('/api/records/day', { data, headers })).json();
  const solve = await page.request.post(`/api/days/${made.record.id}/solve`, { headers });
  expect(solve.ok()).toBe(true);

  await page.goto(`/day/${made.record.id}/cards`);
  for (const paper of ['Letter', 'A4']) {
    await page.getByRole('radio', { name: paper, exact: true }).check();
    for (const place of ['Nomvula Khanyase', 'Hana Morikubo']) {
      const quarters = page.getByRole('region', { name: `Card of ${place}` });
      await expect.poll(() => quarters.count()).toBeGreaterThan(1);
      expect((await quarters.allTextContents()).join(' ')).toContain('Band pair 13-B was never measured');
      await expect(quarters.first().locator('svg')).toHaveCount(2);
      const cut = () =>
        quarters.evaluateAll((all) => Math.max(...all.map((e) => e.scrollHeight - e.clientHeight)));
      await expect.poll(cut).toBeLessThanOrEqual(0);
    }
  }
});

test('a rack sheet says all of a set that goes by its speed, on either paper', async ({ page, address }) => {
  const headers = { origin: address };
  const { records } = await (await page.request.get('/api/club')).json();
  const { id: _, ...day } = records.day.find((each: { id: string }) => each.id === 'day-speed-squat');
  const aim = { by: 'speed', fromMps: 0.6, toMps: 0.8, of: 'set' };
  const data = { ...day, groups: day.groups.map((group: object) => ({ ...group, aim })) };
  const made = await (await page.request.post('/api/records/day', { data, headers })).json();
  expect((await page.request.post(`/api/days/${made.record.id}/solve`, { headers })).ok()).toBe(true);

  await page.goto(`/day/${made.record.id}/sheet`);
  for (const paper of ['Letter', 'A4']) {
    await page.getByRole('radio', { name: paper, exact: true }).check();
    const steps = page.locator('.sheet-steps li');
    await expect(steps.nth(1)).toContainText('in the zone');
    const found = () => page.locator('.sheet').evaluateAll(paperFaults);
    await expect.poll(async () => (await found()).faults).toEqual([]);
  }
});

test("a coach's note of any length is read on every rack sheet, and cuts nothing off, on either paper", async ({
  page,
  address,
}) => {
  test.setTimeout(120_000);
  const headers = { origin: address };
  const { records } = await (await page.request.get('/api/club')).json();
  const { id: _, ...day } = records.day.find((each: { id: string }) => each.id === 'day-speed-squat');
  const made = await (await page.request.post('/api/records/day', { data: day, headers })).json();
  const notes = [
    'Doors close at nine.',
    'CLEAR THE NORTH RACK FIRST. '.repeat(20).trim(),
    'Every lifter helps to load the next bar and looks at the loops. '.repeat(31).trim(),
    'x'.repeat(2000),
  ];
  for (const note of notes) {
    const { record } = made;
    await page.request.put(`/api/records/day/${record.id}`, { data: { ...record, note }, headers });
    expect((await page.request.post(`/api/days/${record.id}/solve`, { headers })).ok()).toBe(true);
    await page.goto(`/day/${record.id}/sheet`);
    for (const paper of ['Letter', 'A4']) {
      await page.getByRole('radio', { name: paper, exact: true }).check();
      const sheets = page.locator('.sheet');
      for (const sheet of await sheets.all()) await expect(sheet).toContainText(note);
      const cut = () =>
        page
          .locator('.sheet, .sheet-rows, .sheet-note, .sheet-foot')
          .evaluateAll((all) =>
            Math.max(
              ...all.map((e) => Math.max(e.scrollHeight - e.clientHeight, e.scrollWidth - e.clientWidth)),
            ),
          );
      await expect.poll(cut).toBeLessThanOrEqual(1);
    }
  }
});

test('a note for one lifter is typed on the day, with a pause between words; the number goes on without it, and the next one has it on sheet, blank sheet and card', async ({
  page,
  address,
}) => {
  const headers = { origin: address };
  const solved = await page.request.post('/api/days/day-speed-squat/solve', { headers });
  const { number } = await solved.json();
  const name = 'Ilse Vandermolen';
  await page.goto('/day/day-speed-squat');
  await page.getByRole('button', { name: new RegExp(`^\\d ${name}`) }).click();
  const field = page.getByLabel('Note for the sheet');
  const kept = async () => {
    const { records } = await (await page.request.get('/api/club')).json();
    const day = records.day.find(({ id }: { id: string }) => id === 'day-speed-squat');
    return day.groups[0].places.map(({ note }: { note: string }) => note).filter(Boolean);
  };
  // The answer to the first save is late: who types on meanwhile loses nothing and is asked nothing.
  const typedOn = new EventEmitter();
  const late = once(typedOn, 'typed on');
  await page.route(
    '**/api/records/day/*',
    async (route) => {
      const response = await route.fetch();
      await late;
      await route.fulfill({ response });
    },
    { times: 1 },
  );
  // At once: typed letter by letter on a busy machine, the first save would have a part of the word.
  await field.fill('Stop ');
  await expect.poll(kept).toEqual(['Stop']);
  await field.pressSequentially('at the ');
  typedOn.emit('typed on');
  await field.pressSequentially('first pain');
  await expect.poll(kept).toEqual(['Stop at the first pain']);
  await expect(page.getByRole('dialog')).toHaveCount(0);
  // It changes no load: nothing is struck through, and what its number says stays.
  await expect(page.getByText('Changed since the loads were worked out')).toHaveCount(0);
  const offer = page.locator('.offer', { hasText: `The note for ${name} was changed.` });
  await expect(offer).toContainText(`number ${number} and the bars stay`);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    const { violations } = await new AxeBuilder({ page }).include('.solve-bar').analyze();
    expect(violations).toEqual([]);
  }
  const bars = () => page.locator('.bar-mass').allTextContents();
  const before = await bars();
  await page.goto('/day/day-speed-squat/sheet');
  const since = 'Since this was worked out: The note for Ilse Vandermolen was changed.';
  await expect(page.locator(`.sheet-row:has-text("${name}")`)).toContainText(since);
  await expect(page.getByText('Stop at the first pain')).toHaveCount(0);
  await expect(page.getByText('No longer valid')).toHaveCount(0);
  await page.goto('/day/day-speed-squat');
  await offer.getByRole('button', { name: 'Put it on the papers' }).click();
  await expect(page.getByText(`same bars as number ${number}`)).toBeVisible();
  await expect(offer).toHaveCount(0);
  expect(await bars()).toEqual(before);
  for (const [paper, whose] of [
    ['sheet', `.sheet-row:has-text("${name}")`],
    ['cards', `.card:has-text("${name}")`],
    ['blank', `.blank-lifter:has-text("${name}")`],
  ] as const) {
    await page.goto(`/day/day-speed-squat/${paper}`);
    await expect(page.getByText('Stop at the first pain')).toHaveCount(1);
    await expect(page.getByText('Since this was worked out')).toHaveCount(0);
    await expect(page.locator(whose).first()).toContainText('Stop at the first pain');
  }
});

test("a lifter's page on paper keeps its figures and shows nothing to press", async ({ page }) => {
  const pressed = {
    setup: ['Change', 'Beside another lifter', 'Hang chains'],
    heights: ['Add heights'],
    bests: ['Write down a best'],
    'body-mass': ['Weigh in'],
  };
  for (const [part, names] of Object.entries(pressed)) {
    await page.emulateMedia({ media: 'screen' });
    await page.goto(`/lifters/lifter-ilse/${part}`);
    for (const name of names) await expect(page.getByRole('button', { name }).first()).toBeVisible();
    await page.emulateMedia({ media: 'print' });
    for (const name of names) await expect(page.getByRole('button', { name })).toHaveCount(0);
    await expect(page.getByRole('navigation')).toHaveCount(0);
    const bar = page.getByLabel('On the bar', { exact: true });
    if (part === 'setup') await expect(bar).toBeVisible();
  }
  await page.emulateMedia({ media: 'screen' });
  await page.goto('/lifters/lifter-ilse/strength');
  const chosen = page.getByRole('radio', { name: 'squat' }).first().locator('..');
  const other = page.getByRole('radio', { name: 'deadlift' }).first().locator('..');
  await expect(other).toBeVisible({ timeout: 60_000 });
  await page.emulateMedia({ media: 'print' });
  await expect(chosen).toBeVisible();
  await expect(other).toBeHidden();
});

test('the Day screen itself, printed, gives each lifter a line of the table', async ({ page, address }) => {
  const solve = await page.request.post('/api/days/day-speed-squat/solve', { headers: { origin: address } });
  expect(solve.ok()).toBe(true);
  await page.goto('/day/day-speed-squat');
  await expect(page.locator('.allocation .at-bar').first()).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  // As wide as A4 between the margins that browsers leave, CSS Values and Units 4, 6.2: 190 mm at 96 px an inch.
  await page.setViewportSize({ width: 718, height: 1000 });
  const names = page.locator('.allocation .lifter-name');
  const lines = await names.evaluateAll((all) =>
    all.map(
      (one) => one.getBoundingClientRect().height / Number.parseFloat(getComputedStyle(one).lineHeight),
    ),
  );
  expect(lines.length).toBeGreaterThan(4);
  expect(Math.max(...lines)).toBeLessThan(3);
  await expect(page.getByRole('columnheader', { name: 'At lockout' }).first()).toBeVisible();
  await expect(page.getByRole('columnheader', { name: 'Log' })).toHaveCount(0);
});
