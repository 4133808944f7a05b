import { QueryClient, QueryObserver } from '@tanstack/react-query';
import { expect, onTestFinished, test, vi } from 'vitest';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';
import { fetchClub } from './fetchClub.ts';
import { refreshClub } from './refreshClub.ts';
import { request } from './request.ts';
import { clubKey } from './useClub.ts';

/** A screen that shows the club, its sets and an estimate, before the real server without a socket. */
async function screen({ moved = false } = {}) {
  const { app, store } = await testApp(smallClub());
  const asked: string[] = [];
  vi.stubGlobal('fetch', async (path: string, options: RequestInit) => {
    asked.push(path.replace(/\?.*/, ''));
    return app.request(path, options);
  });
  onTestFinished(() => void vi.unstubAllGlobals());
  const client = new QueryClient({
    defaultOptions: { queries: { staleTime: Number.POSITIVE_INFINITY, retry: false } },
  });
  const shown = [
    { queryKey: clubKey, queryFn: fetchClub },
    { queryKey: [...clubKey, 'sets', {}], queryFn: () => request('GET', '/api/sets') },
    { queryKey: [...clubKey, 'evidence'], queryFn: () => request('GET', '/api/records/best') },
    ...(moved
      ? [{ queryKey: [...clubKey, 'moved', 'day-1'], queryFn: () => request('GET', '/api/records/day') }]
      : []),
  ].map((options) => {
    const observer = new QueryObserver<unknown>(client, options);
    onTestFinished(observer.subscribe(() => {}));
    return observer;
  });
  const [club, sets, evidence] = shown as [(typeof shown)[0], (typeof shown)[0], (typeof shown)[0]];
  const allThere = () =>
    vi.waitFor(() => {
      for (const one of shown)
        expect(one.getCurrentResult()).toMatchObject({ fetchStatus: 'idle', status: 'success' });
    });
  await allThere();
  /** What is asked for when something was done, in any order. */
  async function askedAfter(
    doing: () => Promise<unknown>,
    how?: Parameters<typeof refreshClub>[1],
  ): Promise<string[]> {
    asked.length = 0;
    await doing();
    await refreshClub(client, how);
    await allThere();
    return asked.toSorted();
  }
  const data = (one: typeof club) => one.getCurrentResult().data;
  return {
    store,
    client,
    club: () => data(club),
    sets: () => data(sets),
    evidence: () => data(evidence),
    askedAfter,
  };
}

const changes = '/api/club/changes';
const evidence = '/api/records/best';

test('after a change a screen asks for what was done alone, and again for what follows from it', async () => {
  const { store, club, askedAfter } = await screen();
  const { id, ...lifter } = smallClub().lifter[0]!;
  expect(await askedAfter(() => store.update('lifter', id, { ...lifter, note: 'late' }))).toEqual([
    changes,
    evidence,
  ]);
  expect(club()).toEqual(await store.records());
  expect(await askedAfter(async () => {})).toEqual([changes]);
  expect(club()).toEqual(await store.records());
});

test('sets are there again when the log has others, before whoever wrote is told', async () => {
  const { store, client, sets, askedAfter } = await screen();
  expect(await askedAfter(() => store.logSets([squatSet()]))).toEqual([changes, evidence]);
  await store.logSets([squatSet()]);
  await refreshClub(client);
  expect(sets()).toEqual({ sets: await store.loggedSets(), formerLabels: {}, next: null });
  // Where the news do not tell how the log reads now, the server is asked.
  const [mistaken] = await store.loggedSets();
  const correct = () => store.correctSets([{ id: mistaken!.id, set: squatSet({ reps: 4, made: 4 }) }]);
  expect(await askedAfter(correct)).toEqual([changes, evidence, '/api/sets']);
  expect(sets()).toMatchObject({ sets: await store.loggedSets() });
});

test('estimates that became better besides are asked for once, with a change and without one', async () => {
  const { store, askedAfter } = await screen({ moved: true });
  const moved = '/api/records/day';
  const withEstimates = { withEstimates: true };
  expect(await askedAfter(() => store.logSets([squatSet()]), withEstimates)).toEqual([
    changes,
    evidence,
    moved,
  ]);
  expect(await askedAfter(async () => {}, withEstimates)).toEqual([changes, moved]);
  expect(await askedAfter(async () => {})).toEqual([changes]);
});

test('a club that was replaced comes whole, and all that follows from it', async () => {
  const { store, club, askedAfter } = await screen();
  const [bar] = smallClub().bar;
  const other = {
    ...smallClub(),
    bar: smallClub().bar.map((one) => (one.id === bar!.id ? { ...one, massKg: 15 } : one)),
  };
  expect(await askedAfter(() => store.importRecords(other))).toEqual([changes, evidence, '/api/sets']);
  expect(club()).toEqual(await store.records());
});

test('two that ask at once end with the newest, and neither is told before what it wrote is there', async () => {
  const { store, client, club } = await screen();
  const { id, ...lifter } = smallClub().lifter[0]!;
  await store.update('lifter', id, { ...lifter, note: 'first' });
  const first = refreshClub(client);
  const both = Promise.all([first, refreshClub(client)]);
  await first;
  expect(club()).toEqual(await store.records());
  await store.update('lifter', id, { ...lifter, note: 'second' });
  await Promise.all([both, refreshClub(client)]);
  expect(club()).toEqual(await store.records());
});
