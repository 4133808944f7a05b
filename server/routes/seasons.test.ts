import { expect, test } from 'vitest';
import type { SeasonOffer, TakenSeason } from '#contract/season/seasonOffer.ts';
import { sentOffer, sentTaken } from '#contract/season/sentSeason.ts';
import { weeksInPlans } from '#contract/season/sentWeeks.ts';
import type { WeekTaking } from '#contract/season/weekTaking.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { testApp } from '#server/tests/testApp.ts';

const today = new Date().toISOString().slice(0, 10);

const groupsOf = (of: WeekTaking) => of.days.map((day) => day.groups);

/** The invented club with nothing taken yet, as it would be today. */
async function club() {
  const app = await testApp(millraceClub(today));
  const offer = async (): Promise<SeasonOffer> => {
    const { status, json } = await app.ask('GET', '/api/seasons/season-early/plan');
    expect(status).toBe(200);
    const { plan, ...beside } = sentOffer.parse(json);
    return { ...beside, plan: weeksInPlans(plan) };
  };
  const take = (body: object = {}) => app.ask('POST', '/api/seasons/season-early/taken', body);
  const taken = async (number: number): Promise<TakenSeason> => {
    const { json } = await app.ask('GET', `/api/seasons/season-early/taken/${number}`);
    const { plan, ...head } = sentTaken.parse(json);
    return { ...head, plan: plan && weeksInPlans(plan) };
  };
  return { ...app, offer, take, taken };
}

test('a plan is taken as it is seen, and from then on told with what differs and why', async () => {
  const { store, offer, take, taken } = await club();
  const first = await offer();
  expect(first).toMatchObject({ taken: [], differences: [] });
  expect(await take()).toMatchObject({ status: 201, json: { number: 1, takenBy: store.who.name } });
  expect((await taken(1)).plan).toEqual(first.plan);
  expect((await offer()).differences).toEqual([]);

  const meet = (await store.get('meet', 'meet-tollbridge'))!;
  const date = new Date(Date.parse(meet.date) + 14 * 86_400_000).toISOString().slice(0, 10);
  await store.change('meet', meet.id, { found: { date: meet.date }, wanted: { date } });
  const { differences } = await offer();
  // Lars and Maribel lift elsewhere.
  expect(differences).toHaveLength(6);
  for (const { why } of differences)
    expect(why).toEqual([{ code: 'meetMoved', title: meet.title, before: meet.date, now: date }]);
});

test('an earlier plan stays as it was, and is taken again under the next number', async () => {
  const { store, offer, take, taken } = await club();
  await take();
  const first = await taken(1);
  await store.remove('plannedByHand', 'by-hand-short-of-racks');
  expect(await take()).toMatchObject({ status: 201, json: { number: 2 } });
  expect((await taken(2)).plan).not.toEqual(first.plan);
  expect(await take({ again: 1 })).toMatchObject({ status: 201, json: { number: 3 } });
  expect((await taken(3)).plan).toEqual(first.plan);
  expect((await taken(1)).plan).toEqual(first.plan);
  const { taken: heads, differences } = await offer();
  expect(heads.map(({ number }) => number)).toEqual([1, 2, 3]);
  expect(differences.flatMap(({ why }) => why.map(({ code }) => code))).toContain('byHand');
});

test('a week goes to the training days as one change, which one undo takes back', async () => {
  const { ask, store, offer } = await club();
  const { weeks } = (await offer()).plan.plans[0]!;
  const { monday } = weeks.find((week) => week.monday > today)!;
  const path = `/api/seasons/season-early/weeks/${monday}`;
  const before = await store.list('day');
  const offered = (await ask('GET', path)).json;
  expect(await store.list('day')).toEqual(before);
  const { status, json } = await ask('POST', path);
  expect(status).toBe(200);
  expect(json.days.length).toBeGreaterThan(2);
  expect(groupsOf(json)).toEqual(groupsOf(offered));
  const days = await store.list('day');
  for (const { dayId } of json.days) expect(days.map(({ id }) => id)).toContain(dayId);
  await store.undo(json.seq);
  expect(await store.list('day')).toEqual(before);
  expect(await ask('POST', '/api/seasons/season-early/weeks/2026-12-01')).toMatchObject({ status: 400 });
});

test('what is not there is refused, and nothing is taken', async () => {
  const { ask, take, offer } = await club();
  expect(await ask('GET', '/api/seasons/none/plan')).toMatchObject({ status: 404 });
  expect(await ask('POST', '/api/seasons/none/taken', {})).toMatchObject({ status: 404 });
  expect(await take({ again: 7 })).toMatchObject({
    status: 404,
    json: { error: { field: 'number', message: 'This season has no plan number 7.' } },
  });
  expect(await take({ again: 'one' })).toMatchObject({ status: 400 });
  expect((await offer()).taken).toEqual([]);
});
