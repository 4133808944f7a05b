import { expect } from '@playwright/test';
import { leastFinePt, leastReadPt } from '#web/print/letterSizes.ts';
import { paperFaults } from './paperFaults.ts';
import { test } from './walk.ts';

/** As long a name as the club takes, 80 letters, alike to the last word. */
const nameOf = (i: number) => {
  const last = `Invented${String.fromCharCode(65 + i)}`;
  return `${'Maximiliana-Katharina Featherstonehaugh-Cholmondeley of the Lower Mill Race Weir '.slice(0, 79 - last.length).trim()} ${last}`;
};

const days = [
  { many: null, long: false, pages: 2, cards: 8 },
  { many: 2, long: true, pages: 1, cards: 2 },
  { many: 8, long: true, pages: 3, cards: 8 },
  { many: 14, long: true, pages: 5, cards: 14 },
  { many: 14, long: false, pages: 3, cards: 14 },
];

for (const { many, long, pages: mostPages, cards } of days)
  test(`${many ? `${many} lifters with ${long ? 'the longest' : 'their own'} names on one rack` : 'the demo day'}: every letter of sheet and card is large enough, and nothing is cut or covered, names on the screen neither`, async ({
    page,
    address,
  }) => {
    const headers = { origin: address };
    const { records } = await (await page.request.get('/api/club')).json();
    const { id, ...day } = records.day.find((each: { id: string }) => each.id === 'day-speed-squat');
    const names: string[] = [];
    let dayId = id;
    if (many !== null) {
      const places = [];
      for (let i = 0; i < many; i += 1) {
        const { id: other, ...lifter } = records.lifter[i];
        const [place] = day.groups[0].places;
        if (!long) {
          places.push({ ...place, lifterId: other, rackId: 'rack-north' });
          continue;
        }
        names.push(nameOf(i));
        const data = { ...lifter, name: nameOf(i) };
        const { record } = await (await page.request.post('/api/records/lifter', { data, headers })).json();
        for (const { id: _, ...best } of records.best.filter(
          (b: { lifterId: string }) => b.lifterId === other,
        ))
          await page.request.post('/api/records/best', { data: { ...best, lifterId: record.id }, headers });
        places.push({ ...place, lifterId: record.id, rackId: 'rack-north' });
      }
      const data = { ...day, groups: [{ ...day.groups[0], places }] };
      dayId = (await (await page.request.post('/api/records/day', { data, headers })).json()).record.id;
    }
    expect((await page.request.post(`/api/days/${dayId}/solve`, { headers })).ok()).toBe(true);

    for (const width of long ? [1440, 1024, 390] : []) {
      await page.setViewportSize({ width, height: 900 });
      await page.goto(`/day/${dayId}`);
      const shown = page.locator('.lifter-name');
      await expect(shown).toHaveCount(cards);
      // A name wraps within its own cell, never over the bar beside it.
      const over = await shown.evaluateAll((all) =>
        all.filter((one) => {
          const letters = document.createRange();
          letters.selectNodeContents(one);
          return letters.getBoundingClientRect().right > one.closest('th')!.getBoundingClientRect().right;
        }),
      );
      expect(over).toHaveLength(0);
    }

    for (const paper of ['a4', 'letter'])
      for (const kind of ['sheet', 'cards', 'blank']) {
        await page.emulateMedia({ media: 'screen' });
        await page.goto(`/day/${dayId}/${kind}?paper=${paper}`);
        await page.locator('.paper').first().waitFor();
        await page.evaluate(() => document.fonts.ready);
        await page.emulateMedia({ media: 'print' });
        const papers = page.locator('.paper');
        if (kind === 'sheet') await expect.poll(() => papers.count()).toBeLessThanOrEqual(mostPages);
        const found = () => papers.evaluateAll(paperFaults);
        await expect.poll(async () => (await found()).faults, { message: `${kind}, ${paper}` }).toEqual([]);
        const sizes = await found();
        expect(sizes.leastReadPt).toBeGreaterThanOrEqual(leastReadPt - 0.01);
        expect(sizes.leastFinePt).toBeGreaterThanOrEqual(leastFinePt - 0.01);

        const text = (await papers.allTextContents()).join(' ');
        for (const name of names) expect(text).toContain(name);
        // What Chromium prints has as many pages as the screen shows.
        const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
        expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(await papers.count());

        if (kind === 'sheet') {
          const rows = await papers.evaluateAll((all) =>
            all.map((one) => one.querySelectorAll('.sheet-row').length),
          );
          expect(Math.max(...rows) - Math.min(...rows)).toBeLessThanOrEqual(1);
          expect(rows.reduce((sum, row) => sum + row, 0)).toBe(cards);
        } else if (kind === 'cards') {
          const first = page.locator('.card:has(.card-lead)');
          await expect(first).toHaveCount(cards);
          for (const card of await first.all()) await expect(card.locator('svg')).toHaveCount(2);
        }
      }
  });
