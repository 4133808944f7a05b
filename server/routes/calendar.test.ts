import { expect, test } from 'vitest';
import { readCalendar } from '#contract/tests/readCalendar.ts';
import { testApp } from '#server/tests/testApp.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { smallClub } from '#store/tests/smallClub.ts';

/** The small club, its day in the year of its clock. */
async function calendarApp() {
  const { app, ask, store } = await testApp(smallClub());
  const year = (await store.today()).slice(0, 4);
  await changeDay(store, { date: `${year}-11-25` });
  const get = (path = '/api/calendar.ics', headers: Record<string, string> = {}) =>
    app.request(path, { headers });
  const events = async (path?: string) => readCalendar(await (await get(path)).text()).events;
  return { ask, store, get, events };
}

async function changeDay(store: ClubStore, fields: object) {
  const [day] = await store.list('day');
  const { id, ...rest } = day!;
  await store.update('day', id, { ...rest, ...fields });
}

test('the calendar is a file of its type, the same bytes as long as the club is the same', async () => {
  const { get, store } = await calendarApp();
  const first = await get();
  expect(first.headers.get('content-type')).toBe('text/calendar; charset=utf-8');
  const etag = first.headers.get('etag')!;
  const text = await first.text();
  expect((await get('/api/calendar.ics', { 'if-none-match': etag })).status).toBe(304);
  // Of what is in no calendar it knows nothing.
  await store.create('bar', { label: 'Another', massKg: 20 });
  await changeDay(store, {});
  expect(await (await get()).text()).toBe(text);
  await changeDay(store, { title: 'Another' });
  expect((await get('/api/calendar.ics', { 'if-none-match': etag })).status).toBe(200);
});

test('a changed day is the same event, later; a removed one is cancelled; undone it stands again', async () => {
  const { events, store } = await calendarApp();
  const [first] = await events();
  await changeDay(store, { title: 'Changed; moved' });
  const [changed] = await events();
  expect(changed).toMatchObject({ uid: first!.uid, title: 'Changed; moved', status: 'CONFIRMED' });
  const { seq } = await store.remove('day', 'day-1');
  const [removed] = await events();
  expect(removed).toMatchObject({ uid: first!.uid, status: 'CANCELLED', start: first!.start });
  await store.undo(seq);
  const [again] = await events();
  expect(again).toMatchObject({ uid: first!.uid, title: 'Changed; moved', status: 'CONFIRMED' });
  const all = [first!, changed!, removed!, again!];
  for (const [i, event] of all.slice(1).entries()) {
    expect(event.sequence).toBeGreaterThan(all[i]!.sequence);
    expect(event.changedAt >= all[i]!.changedAt).toBe(true);
  }
});

test('a day that another club takes the place of is cancelled where anybody ever changed it', async () => {
  const { events, store } = await calendarApp();
  await store.importRecords({ ...smallClub(), day: [] });
  expect(await events()).toMatchObject([
    { status: 'CANCELLED' },
    { title: 'Quarry Cup', status: 'CONFIRMED', start: '2027-02-06' },
  ]);
});

test("at the club's usual hour, in its zone, once it says one", async () => {
  const { events, store } = await calendarApp();
  expect((await events())[0]!.start).toMatch(/^\d{4}-11-25$/);
  const { id, ...club } = (await store.list('club'))[0]!;
  await store.update('club', id, { ...club, timeZone: 'America/Los_Angeles', trainingStartsAt: '18:30' });
  // Winter: eight hours behind UTC.
  expect((await events())[0]!.start).toMatch(/^\d{4}-11-26T02:30:00.000Z$/);
});

test('of one lifter: only the days and meets of that lifter; of a stranger: refused', async () => {
  const { events, store, ask } = await calendarApp();
  const { record } = await store.create('lifter', { name: 'Newly Come', category: 'other' });
  expect(await events(`/api/calendar.ics?lifterId=${record.id}`)).toEqual([]);
  expect(await events('/api/calendar.ics?lifterId=lifter-1')).toHaveLength(2);
  expect(await ask('GET', '/api/calendar.ics?lifterId=ida')).toMatchObject({ status: 404 });
});

test('where the program was not started for telephones there is no address, and none to renew', async () => {
  const { ask } = await calendarApp();
  expect(await ask('GET', '/api/calendar')).toMatchObject({ status: 200, json: { at: null, addresses: [] } });
  expect(await ask('POST', '/api/calendar/renew')).toMatchObject({
    status: 409,
    json: { error: { message: expect.stringMatching(/--calendar-on\.$/) } },
  });
});
