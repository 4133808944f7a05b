import { describe, expect, test } from 'vitest';
import { dayPlan } from '#contract/day/dayPlan.ts';
import { createApp } from '#server/app.ts';
import { strengthEstimator } from '#server/strength/strengthEstimator.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';

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
    expect(await ask('GET', `/api/days/${day!.id}/prescriptions/1`)).toEqual(first);
    expect(await ask('GET', `/api/days/${day!.id}/prescriptions/3`)).toMatchObject({ status: 404 });
    expect(second.json.document).toEqual(first.json.document);
    expect((await store.snapshot()).prescriptions).toEqual([first.json, second.json]);
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
    const still = await app.request(`/api/days/${day!.id}/awaited`);
    expect(await still.json()).toEqual({ awaited: [...everybody] });
  });

  test('solved before the log was worked out is told by it as soon as it is, with the bars as solved; what was kept stays', async () => {
    const { ask, store, folder } = await testApp(smallClub());
    const { id, ...day } = (await store.list('day'))[0]!;
    await store.update('day', id, { ...day, date: new Date().toISOString().slice(0, 10) });
    const early = createApp({
      store,
      webRoot: folder,
      estimator: strengthEstimator(store, never, { patienceMs: 0 }),
    });
    const solved = await (await early.request(`/api/days/${id}/solve`, { method: 'POST' })).json();
    const tooEarly = await (await early.request(`/api/days/${id}/expected`)).json();
    expect(tooEarly).toEqual({ number: 1, document: null, awaited: solved.document.awaited });

    const { json } = await ask('GET', `/api/days/${id}/expected`);
    expect(json).toMatchObject({ number: 1, awaited: [] });
    const [before, now] = [solved.document, json.document].map((plan) =>
      dayPlan.parse(plan).groups.flatMap(({ places }) => places.flatMap((p) => p.solved?.blocks ?? [])),
    );
    expect(now!.map(({ barKg }) => barKg)).toEqual(before!.map(({ barKg }) => barKg));
    expect(new Set(before!.map(({ expected }) => expected?.goesBy))).not.toContain('log');
    expect(now!.map(({ expected }) => expected?.goesBy)).toContain('log');
    expect((await ask('GET', `/api/days/${id}/prescription`)).json).toEqual(solved);

    // Solved with the log at hand nothing is to add, nor to a day that is past.
    const nothing = { document: null, awaited: [] };
    await store.update('day', id, { ...day, date: '2026-11-01' });
    expect((await ask('GET', `/api/days/${id}/expected`)).json).toEqual({ number: 1, ...nothing });
    await ask('POST', `/api/days/${id}/solve`);
    expect((await ask('GET', `/api/days/${id}/expected`)).json).toEqual({ number: 2, ...nothing });
    expect((await ask('GET', '/api/days/day-9/expected')).status).toBe(404);
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
    expect(await ask('GET', '/api/days/day-9/awaited')).toMatchObject(missing);
  });
});

const never = () => new Promise<never>(() => {});
