import { describe, expect, onTestFinished, test, vi } from 'vitest';
import { dayPlan } from '#contract/day/dayPlan.ts';
import { createApp } from '#server/app.ts';
import { runHere } from '#server/jobs/runHere.ts';
import { strengthEstimator } from '#server/strength/strengthEstimator.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';
import { wholeOf } from '#store/tests/wholeOf.ts';

describe('a training day', () => {
  test('is solved, kept, and read again as it was solved', async () => {
    const { ask, store } = await testApp(smallClub());
    const [day] = await store.list('day');
    const before = await ask('GET', `/api/days/${day!.id}/prescription`);
    expect(before).toEqual({ status: 200, json: null });
    const first = await ask('POST', `/api/days/${day!.id}/solve`);
    expect(first).toMatchObject({ status: 200, json: { dayId: day!.id, number: 1 } });
    expect(await ask('GET', `/api/days/${day!.id}/prescription`)).toEqual(first);
    const second = await ask('POST', `/api/days/${day!.id}/solve`);
    expect(second.json.number).toBe(2);
    expect(await ask('GET', `/api/days/${day!.id}/prescriptions/1`)).toEqual({
      ...first,
      json: kept(first.json),
    });
    expect(await ask('GET', `/api/days/${day!.id}/prescriptions/3`)).toMatchObject({ status: 404 });
    expect(second.json.document).toEqual(first.json.document);
    expect((await wholeOf(store)).prescriptions).toEqual([stored(first.json), stored(second.json)]);
    expect(second.json.fingerprint).toBe(first.json.fingerprint);
  });

  test('that is solved tells whoever listens for the news how far it is', async () => {
    const { store, folder } = await testApp(smallClub());
    const [day] = await store.list('day');
    const app = createApp({ store, webRoot: folder, run: runHere(store) });
    const events = (await app.request('/api/events')).body!.pipeThrough(new TextDecoderStream()).getReader();
    onTestFinished(() => events.cancel());
    await events.read();
    await app.request(`/api/days/${day!.id}/solve`, { method: 'POST' });
    let heard = '';
    while (!heard.includes('event: work')) heard += (await events.read()).value;
    const told = JSON.parse(/event: work\ndata: (.*)/.exec(heard)![1]!);
    expect(told).toMatchObject({ work: 'day', of: day!.id, total: expect.any(Number) });
  });

  test('that is stopped while it is solved gets no other number', async () => {
    const { store, folder } = await testApp(smallClub());
    const [day] = await store.list('day');
    const stopper = new AbortController();
    const here = runHere(store);
    const run: typeof here = (name, asked, how) => here(name, asked, how).finally(() => stopper.abort());
    const app = createApp({ store, webRoot: folder, run });
    const { signal } = stopper;
    const answer = await app.request(`/api/days/${day!.id}/solve`, { method: 'POST', signal });
    expect(answer.status).toBe(499);
    expect(await store.latestPrescription(day!.id)).toBeNull();
  });

  test('does not wait for a log that takes long to work out, and says whose', async () => {
    const { store, folder } = await testApp(smallClub());
    const estimator = strengthEstimator(store, never, { patienceMs: 0 });
    const app = createApp({ store, webRoot: folder, estimator });
    const [day] = await store.list('day');
    const everybody = new Set(day!.groups.flatMap(({ places }) => places.map(({ lifterId }) => lifterId)));
    const solved = await app.request(`/api/days/${day!.id}/solve`, { method: 'POST' });
    const { document } = await solved.json();
    expect(document.awaited).toEqual([...everybody]);
  });

  test('stays under its number as it was solved when the log is worked out; speeds and chances by it are offered as another', async () => {
    const { ask, store, folder } = await testApp(smallClub());
    const { id, ...day } = (await store.list('day'))[0]!;
    await store.update('day', id, { ...day, date: new Date().toISOString().slice(0, 10) });
    const retelling = async () => (await ask('GET', `/api/days/${id}/retelling`)).json;
    const take = (number: unknown) => ask('POST', `/api/days/${id}/retelling`, { number });
    expect(await retelling()).toEqual({ number: null, ...nothing });
    expect(await take(1)).toMatchObject({ status: 404, json: { error: { field: 'number' } } });
    const early = createApp({
      store,
      webRoot: folder,
      estimator: strengthEstimator(store, never, { patienceMs: 0 }),
    });
    const solved = await (await early.request(`/api/days/${id}/solve`, { method: 'POST' })).json();
    const tooEarly = await (await early.request(`/api/days/${id}/retelling`)).json();
    expect(tooEarly).toEqual({ number: 1, ...nothing, awaited: solved.document.awaited });

    // Now the log is there: whoever asks gets what was kept, and hears of whom more could be told.
    const read = async (number: number) => (await ask('GET', `/api/days/${id}/prescriptions/${number}`)).json;
    const last = async () => (await ask('GET', `/api/days/${id}/prescription`)).json;
    const { lifters } = await retelling();
    expect(await retelling()).toMatchObject({ number: 1, lifters, awaited: [] });
    expect(lifters.length).toBeGreaterThan(0);
    expect(await last()).toEqual(solved);

    expect(await take(0)).toMatchObject({ status: 400, json: { error: { field: 'number' } } });
    expect(await take(2)).toMatchObject({ status: 409, json: { error: { field: 'number' } } });
    const { status, json: told } = await take(1);
    expect({ status, number: told.number, retells: told.document.retells }).toEqual({
      status: 200,
      number: 2,
      retells: 1,
    });
    expect(told.fingerprint).not.toBe(solved.fingerprint);
    const [before, now] = [solved, told].map(({ document }) =>
      dayPlan.parse(document).groups.flatMap(({ places }) => places.flatMap((p) => p.solved?.blocks ?? [])),
    );
    expect(now!.map(({ barKg }) => barKg)).toEqual(before!.map(({ barKg }) => barKg));
    expect(new Set(before!.map(({ expected }) => expected?.goesBy))).not.toContain('log');
    expect(now!.map(({ expected }) => expected?.goesBy)).toContain('log');
    expect(await read(1)).toEqual(kept(solved));
    expect(await last()).toEqual(told);
    expect(await retelling()).toEqual({ number: 2, ...nothing });
    expect(await take(2)).toMatchObject({ status: 409 });
    expect(await take(1)).toMatchObject({ status: 409 });
    expect(await last()).toEqual(told);
  });

  test('says under its number what it said; a note that was changed is another number with the same bars, and no other loads', async () => {
    const { ask, store } = await testApp(smallClub());
    const { id, ...day } = (await store.list('day'))[0]!;
    const take = (number: number) => ask('POST', `/api/days/${id}/retelling`, { number, by: 'words' });
    const { json: solved } = await ask('POST', `/api/days/${id}/solve`);
    expect(await take(1)).toMatchObject({ status: 409 });
    const [group, ...others] = day.groups;
    const [first, ...rest] = group!.places;
    const noted = { ...group!, title: 'Renamed', places: [{ ...first!, note: 'Stop at pain' }, ...rest] };
    await store.update('day', id, { ...day, note: 'Doors close at nine', groups: [noted, ...others] });
    expect((await ask('GET', `/api/days/${id}/prescription`)).json).toEqual(solved);
    expect(await take(2)).toMatchObject({ status: 409, json: { error: { field: 'number' } } });
    const { json: told } = await take(1);
    expect(told).toMatchObject({ number: 2, document: { retells: 1 } });
    expect(told.document.words).toMatchObject({
      note: 'Doors close at nine',
      notes: [{ groupId: group!.id, lifterId: first!.lifterId, note: 'Stop at pain' }],
    });
    expect(told.document.groups[0].title).toBe('Renamed');
    const loads = ({ document }: typeof told) => dayPlan.parse(document).groups.map(({ places }) => places);
    expect(loads(told)).toEqual(loads(solved));
    expect(told.fingerprint).not.toBe(solved.fingerprint);
    expect((await ask('GET', `/api/days/${id}/prescriptions/1`)).json).toEqual(kept(solved));
    expect(await take(2)).toMatchObject({ status: 409 });
    // Loads that no longer hold are worked out again rather than told anew.
    await store.update('day', id, { ...day, oneSetPull: 1 - day.oneSetPull / 2 });
    const { json: last } = await ask('GET', `/api/days/${id}/prescription`);
    expect(last).toEqual({ ...told, basisNow: expect.any(String) });
    expect(last.basisNow).not.toBe(told.basisNow);
    expect(told.basisNow).toBe(told.document.basis);
    expect(await take(2)).toMatchObject({ status: 409 });
  });

  test('that is past is told no more of by the log, nor is one that was solved with the log at hand', async () => {
    const { ask, store, folder } = await testApp(smallClub());
    const [day] = await store.list('day');
    const { id, ...past } = day!;
    await store.update('day', id, { ...past, date: '2026-11-01' });
    const estimator = strengthEstimator(store, never, { patienceMs: 0 });
    const early = createApp({ store, webRoot: folder, estimator });
    await early.request(`/api/days/${id}/solve`, { method: 'POST' });
    const retelling = async () => (await ask('GET', `/api/days/${id}/retelling`)).json;
    expect(await retelling()).toEqual({ number: 1, ...nothing });
    await store.update('day', id, { ...past, date: new Date().toISOString().slice(0, 10) });
    await ask('POST', `/api/days/${id}/solve`);
    expect(await retelling()).toEqual({ number: 2, ...nothing });
    expect((await ask('GET', '/api/days/day-9/retelling')).status).toBe(404);
  });

  test('not yet begun says whose strength the log has moved since it was solved; begun or past it says nothing', async () => {
    const { ask, store } = await testApp(smallClub());
    const today = new Date().toISOString().slice(0, 10);
    const { id, ...day } = (await store.list('day'))[0]!;
    await store.update('day', id, { ...day, date: today });
    const moved = async () => (await ask('GET', `/api/days/${id}/moved`)).json;
    const nobody = { moved: [], awaited: [] };
    expect(await moved()).toEqual(nobody);
    await ask('POST', `/api/days/${id}/solve`);
    expect(await moved()).toEqual(nobody);
    const setup = { start: { way: 'free' }, barKg: 240 };
    await store.logSets([squatSet({ setup, doneOn: '2026-10-10' })]);
    expect(await moved()).toEqual({ moved: ['lifter-1'], awaited: [] });
    const { sets } = await store.logSets([squatSet({ dayId: id, doneOn: today })]);
    expect(await moved()).toEqual(nobody);
    await store.strikeSet(sets[0]!.id);
    expect(await moved()).toMatchObject({ moved: ['lifter-1'] });
    await store.update('day', id, { ...day, date: '2026-11-01' });
    expect(await moved()).toEqual(nobody);
    expect((await ask('GET', '/api/days/day-9/moved')).status).toBe(404);
  });

  test('that the club does not have is not solved', async () => {
    const { ask } = await testApp(smallClub());
    const missing = { status: 404, json: { error: { field: 'id' } } };
    expect(await ask('POST', '/api/days/day-9/solve')).toMatchObject(missing);
    expect(await ask('GET', '/api/days/day-9/prescription')).toMatchObject(missing);
    expect(await ask('GET', '/api/days/day-9/retelling')).toMatchObject(missing);
    expect(await ask('POST', '/api/days/day-9/retelling', { number: 1 })).toMatchObject(missing);
  });
});

const nothing = { lifters: [], likelyToMiss: [], awaited: [] };
const never = () => new Promise<never>(() => {});

/** What is the same for ever of what was solved last. */
function kept(last: Record<string, unknown>) {
  const { basisNow: _, ...signed } = last;
  return signed;
}

/** What the store keeps of an answer. */
function stored(answer: Record<string, unknown>) {
  const { fingerprint: _, ...prescription } = kept(answer);
  return prescription;
}

test('a clock that is put back leaves changes in their order, and a plan still knows what was changed since', async () => {
  const { ask, store } = await testApp(smallClub());
  vi.useFakeTimers({ toFake: ['Date'], now: Date.now() });
  onTestFinished(() => void vi.useRealTimers());
  await store.create('bar', { label: 'Before', massKg: 20 });
  const anHourMs = 3_600_000;
  vi.setSystemTime(Date.now() - anHourMs);
  expect((await ask('POST', '/api/days/day-1/solve')).status).toBe(200);
  expect((await ask('GET', '/api/days/day-1/changed')).json).toEqual({ changes: [] });
  vi.setSystemTime(Date.now() - anHourMs);
  await store.update('lifter', 'lifter-1', { ...smallClub().lifter[0]!, statureM: 1.6 });
  const { changes } = (await ask('GET', '/api/days/day-1/changed')).json;
  expect(changes).toMatchObject([{ kind: 'lifter' }]);
  const moments = (await store.changesAfter(0)).map(({ madeAt }) => madeAt);
  expect(moments).toEqual([...new Set(moments)].toSorted());
});
