import { expect, test } from 'vitest';
import type { ComparisonOutlook } from '#contract/comparison/comparisonOutlook.ts';
import type { ComparisonPlan } from '#contract/records/comparisonPlan.ts';
import { dateText } from '#contract/words/dateText.ts';
import { daysLater } from '#contract/words/dayWords.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';

// Everybody here is made up.

const today = new Date().toISOString().slice(0, 10);
const startsOn = daysLater(today, 7);
const small = smallClub();
const [somebody] = small.lifter;
const ids = Array.from({ length: 8 }, (_, i) => `adult-${i}`);
const lifter = [
  ...small.lifter,
  ...ids.map((id, i) => ({ ...somebody!, id, name: `Adult ${i}`, bornOn: '1990-06-01' })),
  { ...somebody!, id: 'minor', name: 'Young One', bornOn: daysLater(today, -17 * 365) },
];
const wish = {
  outcome: 'platform',
  lift: 'squat',
  ways: ['early', 'late'],
  startsOn,
  weeks: 12,
  lifterIds: [...ids, 'minor'],
};
const asked = { ...wish, title: 'Early or late', seed: 11 };
const club = async () => {
  const app = await testApp({ ...small, lifter });
  const records = async () => (await app.ask('GET', '/api/club')).json.records;
  return { ...app, records };
};

test('before the draw it is told what could be seen and who with whom, and neither who by which way nor is anything kept', async () => {
  const { ask, records } = await club();
  const before = await records();
  const { status, json } = await ask('POST', '/api/comparisons/outlook', wish);
  expect(status).toBe(200);
  const { pairs, notDrawn, sentences } = json as ComparisonOutlook;
  expect(pairs).toHaveLength(4);
  expect(notDrawn).toEqual([{ lifterId: 'minor', name: 'Young One', reason: 'minor' }]);
  expect(sentences[0]).toMatch(/^This cannot be seen/);
  expect(JSON.stringify(json)).not.toMatch(/"(way|drawn|seed)"/);
  expect(await records()).toEqual(before);
});

test('the draw is kept with its seed, which draws the same again, and one undo takes it back', async () => {
  const { ask, records } = await club();
  const before = await records();
  const drawn = await ask('POST', '/api/comparisons', asked);
  expect(drawn.status).toBe(201);
  const plan: ComparisonPlan = drawn.json.comparison.planDocument;
  const ways = plan.drawn.map(({ way }) => way);
  expect(plan.seed).toBe(11);
  expect(ways.filter((way) => way === 'early')).toHaveLength(4);
  expect((await records()).comparison).toContainEqual(drawn.json.comparison);
  const told = await ask('GET', `/api/comparisons/${drawn.json.comparison.id}`);
  expect(told.json).toMatchObject({ report: null, sentences: [`It begins on ${dateText(startsOn)}.`] });
  await ask('POST', `/api/undo/${drawn.json.seq}`);
  expect(await records()).toEqual(before);
  const again = await ask('POST', '/api/comparisons', asked);
  expect(again.json.comparison.planDocument.drawn).toEqual(plan.drawn);
});

test.each([
  ['a first day that has passed', { startsOn: '2020-01-06' }, 'startsOn', 400],
  ['a last day after the years of the club', { startsOn: '2199-12-01' }, 'startsOn', 400],
  ['somebody who is not there', { lifterIds: ['adult-1', 'nobody'] }, 'lifterIds[1]', 400],
  ['a setup without saying which', { outcome: 'setup' }, 'family', 400],
  ['one way twice', { ways: ['early', 'Early'] }, 'ways', 400],
  ['minors alone', { lifterIds: ['minor'] }, 'lifterIds', 409],
])('%s is refused, and nothing is drawn', async (_what, change, field, status) => {
  const { ask, records } = await club();
  const before = await records();
  const refused = await ask('POST', '/api/comparisons', { ...asked, ...change });
  expect(refused).toMatchObject({ status, json: { error: { field } } });
  expect(await records()).toEqual(before);
});

test('no file makes a minor of somebody drawn, nor draws one', async () => {
  const { ask } = await club();
  const { json } = await ask('POST', '/api/comparisons', asked);
  const born = await ask(
    'POST',
    '/api/records/lifter/csv',
    `id,born_on\nadult-1,${daysLater(today, -17 * 365)}\n`,
    'text/csv',
  );
  expect(born.status).toBe(400);
  expect(born.json.error.message).toContain('Adult 1 was drawn for the comparison "Early or late"');
  // The minor in the place of an adult.
  const { drawn, ...plan } = json.comparison.planDocument as ComparisonPlan;
  const other = drawn.map((one) => (one.lifterId === 'adult-1' ? { ...one, lifterId: 'minor' } : one));
  const document = JSON.stringify({ ...plan, drawn: other, notDrawn: [] }).replaceAll('"', '""');
  const file = `title,lift,drawn_on,plan_document\nOther,squat,${today},"${document}"\n`;
  const refused = await ask('POST', '/api/records/comparison/csv', file, 'text/csv');
  expect(refused.status).toBe(400);
  expect(refused.json.error.message).toMatch(/Young One cannot be drawn: 1[67] years old then/);
});
