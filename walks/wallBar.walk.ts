import { expect } from '@playwright/test';
import { paperFaults } from './paperFaults.ts';
import { test } from './walk.ts';

/** "20 + 2 × 15 + 2.5" in kg. */
function bySum(discs: string): number {
  return discs
    .replaceAll(/\s/g, '')
    .split('+')
    .map((kind) => kind.split('×').map(Number))
    .reduce((sum, [first, second]) => sum + first! * (second ?? 1), 0);
}

test("a bar is called by its discs' faces, on the wall and on the day, and goes on record as it weighs", async ({
  page,
  address,
}) => {
  await page.goto('/gear/club');
  await page.getByLabel('Bar and collars, to the nearest').fill('0.5');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Changed the settings.')).toBeVisible();
  const headers = { origin: address };
  const solved = await page.request.post('/api/days/day-speed-squat/solve', { headers });
  const { document: plan } = await solved.json();

  await page.goto('/day/day-speed-squat/sheet');
  const sheet = page.getByRole('region', { name: 'Sheet of North rack' });
  await expect(sheet.locator('.sheet-row').nth(2)).toBeVisible();
  const rows = await sheet.locator('.sheet-row').all();
  for (const row of rows) {
    const figure = Number.parseFloat((await row.locator('.sheet-bar').textContent())!);
    const discs = bySum((await row.locator('.sheet-discs').textContent())!);
    // The squat bar of 25 kg and screw collars of 5 kg the pair; they weigh 80 g more.
    expect(figure).toBeCloseTo(30 + 2 * discs, 6);
  }
  const found = () => page.locator('.sheet').evaluateAll(paperFaults);
  await expect.poll(async () => (await found()).faults).toEqual([]);
  await expect(sheet).toContainText(/counts as \d+\.\d.kg/);

  // Day and log panel say the same, and the set that is logged has the mass of the plan.
  const first = plan.groups[0].places.find(
    ({ turn, rackId }: { turn: number; rackId: string }) => turn === 1 && rackId === 'rack-north',
  );
  const bar = await rows[0]!.locator('.sheet-bar').textContent();
  await page.goto('/day/day-speed-squat');
  await expect(
    page.getByRole('button', { name: `Bar of ${first.name}: ${bar!.replace('kg', ' kg')}` }),
  ).toBeVisible();
  await page.getByRole('button', { name: `Log sets of ${first.name}` }).click();
  const panel = page.getByRole('region', { name: `Sets of ${first.name}` });
  await expect(panel).toContainText('goes on record as');
  await panel.getByRole('button', { name: /^Made all/ }).click();
  await expect(panel.getByRole('button', { name: 'Set 1: made' })).toBeVisible();
  const { sets } = await (await page.request.get('/api/sets?dayId=day-speed-squat')).json();
  expect(sets[0].setup.barKg).toBe(first.solved.blocks[0].barKg);
});
