import { expect } from '@playwright/test';
import type { Lifter } from '#contract/records/lifters.ts';
import type { Method } from '#contract/records/method.ts';
import { paperFaults } from './paperFaults.ts';
import { test } from './walk.ts';

/** As long a name as a meet takes, 80 letters. */
const longest = (last: string) =>
  `${'Invitational of the Whole County at the Lower Mill Race Weir and its Bridges '.slice(0, 79 - last.length).trim()} ${last}`;

test('a year with two meets and a lifter of the longest names and eight near weeks: nothing is cut or covered on A4 or Letter', async ({
  page,
  address,
}) => {
  const headers = { origin: address };
  const { records } = await (await page.request.get('/api/club')).json();
  const { methodDocument } = records.method.find(
    ({ id }: { id: string }) => id === 'method-equipped-with-bands',
  );
  const phases = methodDocument.phases.map((phase: Method['phases'][number]) => ({
    ...phase,
    days: phase.days.map((day) => ({
      ...day,
      groups: day.groups.map((group) => ({
        ...group,
        title: `${group.title} ${longest('')}`.slice(0, 60).trim(),
      })),
    })),
  }));
  const bastien = records.lifter.find(({ id }: Lifter) => id === 'lifter-bastien');
  const renamed = await page.request.put('/api/records/lifter/lifter-bastien', {
    headers,
    data: { ...bastien, name: longest('Corvellou') },
  });
  expect(renamed.ok()).toBe(true);
  const today = Date.now();
  const inDays = (days: number) => new Date(today + days * 86_400_000).toISOString().slice(0, 10);
  const data = {
    title: longest('season'),
    fromOn: inDays(-28),
    method: {
      document: { ...methodDocument, id: 'long', title: 'Equipped, eight near weeks', nearWeeks: 8, phases },
    },
    newMeets: [
      { title: longest('spring'), date: inDays(166) },
      { title: longest('autumn'), date: inDays(334) },
    ],
    lifterIds: records.lifter.filter(({ leftOn }: Lifter) => leftOn === null).map(({ id }: Lifter) => id),
  };
  const { seasonId } = await (await page.request.post('/api/seasons', { headers, data })).json();
  // Working all near days out takes a minute; that one is trained already is said on as many lines.
  await page.route(/\/api\/seasons\/.*\/days\//, (route) => route.fulfill({ json: null }));
  for (const paper of ['a4', 'letter'])
    for (const lifter of ['', '&lifter=lifter-emre']) {
      await page.emulateMedia({ media: 'screen' });
      await page.goto(`/season/${seasonId}/paper?paper=${paper}${lifter}`);
      const papers = page.locator('.paper');
      await papers.first().waitFor();
      await page.evaluate(() => document.fonts.ready);
      await page.emulateMedia({ media: 'print' });
      const faults = async () => (await papers.evaluateAll(paperFaults)).faults;
      await expect.poll(faults, { message: `${paper}${lifter}` }).toEqual([]);
      if (lifter === '') continue;
      await expect(page.getByText('Working out bar and bands.')).toHaveCount(0);
      await expect.poll(faults, { message: `${paper}, near days there` }).toEqual([]);
      for (const name of ['Season of Emre Karataylı', 'Near days of Emre Karataylı'])
        await expect(page.getByRole('region', { name: `${name}, page 2` })).toBeVisible();
      // No week is lost between two pages.
      await expect(page.locator('.season-paper-phase')).toHaveCount(52);
    }
});
