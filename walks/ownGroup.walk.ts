import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';
import { test } from './walk.ts';

/** Fifteen minutes at about four seconds for a click, a choice or a field, of which the thinking is the coach's own. Assumption. */
const MOST_ACTIONS = 225;

/** Invented: three in suits, three raw, one of them a minor. Squat, bench press and deadlift in kg, body mass last. */
const people = [
  ['Ada Brightwater', '165', '1998-03-04', 'women', 'multi-ply', 170, 95, 165, 68],
  ['Bram Oakes', '178', '1990-05-06', 'men', 'multi-ply', 280, 190, 260, 98],
  ['Cato Lindqvist', '172', '2012-02-03', 'men', 'raw', 120, 80, 150, 71],
  ['Dilys Fenn', '160', '1985-07-08', 'women', 'raw', 105, 62, 130, 61],
  ['Edda Marsh', '170', '1994-09-10', 'women', 'raw', 130, 75, 150, 80],
  ['Finn Calloway', '185', '1988-11-12', 'men', 'single-ply', 240, 150, 250, 118],
] as const;

test.use({ startsWith: 'nothing', forTelephones: true });

test('from an empty club to six lifters with a season, its next week on the Day screen, a sheet for the wall and a calendar', async ({
  page,
}) => {
  const hand = actionsOn(page);
  await page.goto('/season/new');
  // What is missing leads there.
  await expect(page.getByText(/Nobody lifts here yet\./)).toBeVisible();
  await hand.follow('Add lifters first');
  for (const [at, [name, stature, born, among, suit, ...kg]] of people.entries()) {
    if (at > 0) {
      await hand.follow('All lifters');
      await hand.follow('Add a lifter');
    }
    await hand.type({ Name: name, Stature: stature, 'Born on': born });
    await hand.choose({ 'Competes among': among, 'Usually lifts in': suit });
    await hand.press('Save');
    await hand.press('Write down a best');
    // The suit is the lifter's usual one, and after the squat comes the bench press.
    const form = page.getByRole('form', { name: 'Write down a best' });
    await expect(form.getByLabel('Lifted in')).toHaveValue(suit);
    for (const [lift, best] of kg.slice(0, 3).entries()) {
      await expect(form.getByLabel('Lift', { exact: true })).toHaveValue(
        ['squat', 'bench', 'deadlift'][lift]!,
      );
      await hand.type({ 'On the bar': String(best) });
      await hand.press(lift < 2 ? 'Save and add the next' : 'Save');
    }
    await expect(form).toBeHidden();
    await hand.press('Weigh in');
    await hand.type({ 'Body mass': String(kg[3]) });
    await hand.save();
  }

  await hand.follow('Season', 'Places');
  await hand.follow('Plan a season');
  const from = await page.getByLabel('First day').inputValue();
  const meet = new Date(Date.parse(from) + 89 * 86_400_000).toISOString().slice(0, 10);
  await hand.type({ Title: 'Winter', 'Meet, name': 'Harbour Open', 'Meet, day': meet });
  await hand.choose({ Method: 'Without bands (comes with the program)' });
  for (const [name] of people) await hand.tick(name);
  await hand.press('Plan this season');
  await expect(page.getByRole('heading', { name: 'Winter', level: 1 })).toBeVisible();

  // There is no rack yet: that is said, and leads to the racks.
  await expect(page.getByText(/^No rack of the club takes the squat/)).toHaveCount(1);
  await hand.follow('Racks and hookups');
  await hand.press('Add a rack');
  await hand.follow('Add a bar');
  await hand.press('Add a bar');
  await hand.type({ Label: 'Long bar', Mass: '20' });
  await hand.save();
  await hand.press('Add a disc');
  for (const [mass, pairs] of [
    ['1.25', '2'],
    ['2.5', '2'],
    ['5', '2'],
    ['10', '2'],
    ['15', '2'],
    ['20', '2'],
    ['25', '5'],
  ] as const) {
    await hand.type({ 'Mass on its face': mass, Pairs: pairs });
    await hand.press(mass === '25' ? 'Save' : 'Save and add the next', 'A new disc');
    await expect(page.getByRole('cell', { name: `${mass} kg`, exact: true })).toBeVisible();
  }
  await hand.follow('Racks', 'Gear');
  await hand.press('Add a rack');
  await hand.type({ Label: 'Rack 1' });
  await hand.save();
  await hand.follow('Points and hookups of Rack 1');
  await hand.press('Add a point');
  await hand.type({ Label: 'Base peg', 'Height above the floor': '12', Sideways: '10' });
  await hand.save();
  await hand.press('Add a hookup');
  await hand.save();
  for (const [label, width] of Object.entries({ 'No 1': '13', 'No 2': '29' })) {
    await hand.follow('Bands', 'Gear');
    await page.getByRole('link', { name: /pair/ }).first().click();
    await hand.type({ Label: label, Width: width, 'Rest length, band a': '104' });
    await hand.press('Go on to the scale');
    await expect(page.getByRole('heading', { level: 1, name: new RegExp(label) })).toBeVisible();
  }

  await hand.follow('Season', 'Places');
  await expect(page.getByText(/^No rack of the club takes/)).toHaveCount(0);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await hand.follow('Take it');
  await hand.press('Take this plan');
  await hand.follow('Plan');
  const picture = page.getByRole('slider', { name: 'Weeks of the season, lifter by lifter' });
  await picture.focus();
  await page.keyboard.press('Enter');
  await hand.press('Put this week on the Day screen');
  const made = page.getByRole('region', { name: 'On the Day screen' });
  await made.getByRole('link').first().click();
  await hand.press('Work the loads out');
  await expect(page.getByText(/^Number 1 of this day/)).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await hand.follow('Rack sheets');
  for (const [name] of people) await expect(page.getByText(name).first()).toBeVisible();

  await hand.follow('Season', 'Places');
  await hand.follow('In your calendar');
  const url = await page.locator('#calendar code').first().textContent();
  const calendar = await (await page.request.get(url!)).text();
  expect(calendar.match(/^BEGIN:VEVENT/gm)!.length).toBeGreaterThan(1);
  expect(calendar).toContain('Harbour Open');
  expect(hand.count(), 'so many clicks, choices and fields').toBeLessThan(MOST_ACTIONS);
  test.info().annotations.push({ type: 'actions', description: String(hand.count()) });
});

/** What a person does at a page, by the words on it; counted. */
function actionsOn(page: Page) {
  let count = 0;
  const label = (word: string) => page.getByLabel(word, { exact: true });
  return {
    count: () => count,
    async follow(word: string, within?: string) {
      count += 1;
      const place = within === undefined ? page : page.getByRole('navigation', { name: within });
      await place.getByRole('link', { name: word, exact: true }).first().click();
    },
    async press(word: string, form?: string) {
      count += 1;
      const place = form === undefined ? page : page.getByRole('form', { name: form });
      await place.getByRole('button', { name: word, exact: true }).click();
    },
    /** The form is gone once what it holds is kept. */
    async save() {
      count += 1;
      await page.getByRole('button', { name: 'Save', exact: true }).click();
      await expect(page.getByRole('form')).toBeHidden();
    },
    async tick(word: string) {
      count += 1;
      await label(word).check();
    },
    async type(fields: Record<string, string>) {
      for (const [word, value] of Object.entries(fields)) {
        count += 1;
        await label(word).fill(value);
      }
    },
    async choose(fields: Record<string, string>) {
      for (const [word, value] of Object.entries(fields)) {
        count += 1;
        await label(word).selectOption({ label: value });
      }
    },
  };
}
